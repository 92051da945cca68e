package org.tankrounds.readings.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Where a row's time stands.
 *
 * @param date the column of the date, or of all
 * @param clock the column of the time of day; the same where one column has both
 * @param serial days counted as spreadsheets do
 */
public record TimeColumns(int date, int clock, boolean serial) {
    private static final double MOST_OF = 0.8;

    /** Empty for a row without a time that can be read. */
    Optional<WrittenTime> read(FileRow row) {
        if (serial) {
            return WrittenTime.readSerial(row.cell(date));
        }
        Optional<WrittenTime> day = WrittenTime.read(row.cell(date));
        Optional<WrittenTime> whole = date == clock ? day
                : day.flatMap(first -> WrittenTime.read(row.cell(clock)).map(first::with));
        return whole.filter(WrittenTime::isMoment);
    }

    /** Whether a column belongs to the time. */
    boolean has(int column) {
        return column == date || column == clock;
    }

    /** All that the table can be read by, the likeliest first. */
    static List<TimeColumns> all(FileTable table) {
        List<TimeColumns> found = new ArrayList<>();
        columns(table, WrittenTime::isMoment).stream().filter(column -> varies(table, column))
                .forEach(column -> found.add(new TimeColumns(column, column, false)));
        if (found.isEmpty()) {
            List<Integer> dates = columns(table, time -> time.date().isPresent() && time.time().isEmpty());
            List<Integer> clocks = columns(table, time -> time.date().isEmpty() && time.time().isPresent());
            dates.forEach(date -> clocks.forEach(clock -> found.add(new TimeColumns(date, clock, false))));
        }
        if (found.isEmpty()) {
            IntStream.range(0, table.width()).filter(column -> isSerial(table, column))
                    .forEach(column -> found.add(new TimeColumns(column, column, true)));
        }
        return found;
    }

    /** As the page's form names it. */
    public String code() {
        return date == clock ? Integer.toString(date) : date + "-" + clock;
    }

    private static List<Integer> columns(FileTable table, Predicate<WrittenTime> wanted) {
        return IntStream.range(0, table.width()).filter(column -> mostly(table, row ->
                WrittenTime.read(row.cell(column)).filter(wanted).isPresent())).boxed().toList();
    }

    private static boolean isSerial(FileTable table, int column) {
        String name = table.name(column).toLowerCase(Locale.ROOT);
        return (name.contains("date") || name.contains("time") || name.contains("fecha"))
                && mostly(table, row -> WrittenTime.readSerial(row.cell(column)).isPresent());
    }

    /** A number that is the same in every row is a serial number, however much it looks like a time. */
    private static boolean varies(FileTable table, int column) {
        Set<String> cells = new HashSet<>();
        table.sample().forEach(row -> cells.add(row.cell(column)));
        return cells.size() > 1 || table.sample().size() == 1;
    }

    private static boolean mostly(FileTable table, Predicate<FileRow> holds) {
        List<FileRow> rows = table.sample();
        return rows.stream().filter(holds).count() >= MOST_OF * rows.size();
    }
}
