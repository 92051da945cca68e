package org.tankrounds.readings.files;

import java.time.LocalTime;
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
 * @param sure whether it can be nothing else; where not, somebody is to say so
 */
public record TimeColumns(int date, int clock, How how, boolean sure) {

    /** How it stands there. */
    public enum How {
        WRITTEN,
        /** Days counted as spreadsheets do. */
        SERIAL,
        /** A day without a time of day: it is taken for its noon. */
        DAY_ALONE
    }

    private static final double MOST_OF = 0.8;
    /** Too few to go by, and enough to ask about. */
    private static final double SOME_OF = 0.2;
    private static final LocalTime NOON = LocalTime.NOON;

    /** Empty for a row without a time that can be read. */
    Optional<WrittenTime> read(FileRow row) {
        if (how == How.SERIAL) {
            return WrittenTime.readSerial(row.cell(date));
        }
        if (how == How.DAY_ALONE) {
            return WrittenTime.read(row.cell(date)).filter(TimeColumns::isDay).map(day -> day.at(NOON));
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

    /** All that the table can be read by, the likeliest first; what is not sure only where nothing else is there. */
    static List<TimeColumns> all(FileTable table) {
        List<TimeColumns> found = new ArrayList<>();
        columns(table, MOST_OF, WrittenTime::isMoment).stream().filter(column -> varies(table, column))
                .forEach(column -> found.add(new TimeColumns(column, column, How.WRITTEN, true)));
        if (found.isEmpty()) {
            List<Integer> clocks = columns(table, MOST_OF, time -> time.date().isEmpty() && time.time().isPresent());
            columns(table, MOST_OF, TimeColumns::isDay).forEach(date ->
                    clocks.forEach(clock -> found.add(new TimeColumns(date, clock, How.WRITTEN, true))));
        }
        if (found.isEmpty()) {
            serials(table, MOST_OF).filter(column -> isNamedAsTime(table, column))
                    .forEach(column -> found.add(new TimeColumns(column, column, How.SERIAL, true)));
        }
        return found.isEmpty() ? perhaps(table) : found;
    }

    /** Days alone, days counted under any name, a moment that is the same in each row, or missing in many. */
    private static List<TimeColumns> perhaps(FileTable table) {
        List<TimeColumns> found = new ArrayList<>();
        columns(table, SOME_OF, WrittenTime::isMoment)
                .forEach(column -> found.add(new TimeColumns(column, column, How.WRITTEN, false)));
        columns(table, SOME_OF, TimeColumns::isDay)
                .forEach(column -> found.add(new TimeColumns(column, column, How.DAY_ALONE, false)));
        serials(table, SOME_OF).forEach(column -> found.add(new TimeColumns(column, column, How.SERIAL, false)));
        return found;
    }

    private static boolean isDay(WrittenTime time) {
        return time.date().isPresent() && time.time().isEmpty();
    }

    /** As the page's form names it. */
    public String code() {
        return date == clock ? Integer.toString(date) : date + "-" + clock;
    }

    private static List<Integer> columns(FileTable table, double share, Predicate<WrittenTime> wanted) {
        return IntStream.range(0, table.width()).filter(column -> often(table, share, row ->
                WrittenTime.read(row.cell(column)).filter(wanted).isPresent())).boxed().toList();
    }

    private static IntStream serials(FileTable table, double share) {
        return IntStream.range(0, table.width()).filter(column ->
                often(table, share, row -> WrittenTime.readSerial(row.cell(column)).isPresent()));
    }

    private static boolean isNamedAsTime(FileTable table, int column) {
        String name = table.name(column).toLowerCase(Locale.ROOT);
        return name.contains("date") || name.contains("time") || name.contains("fecha");
    }

    /** A number that is the same in every row is a serial number, however much it looks like a time. */
    private static boolean varies(FileTable table, int column) {
        Set<String> cells = new HashSet<>();
        table.sample().stream().map(row -> row.cell(column)).filter(cell -> !cell.isBlank()).forEach(cells::add);
        return cells.size() > 1 || table.sample().size() == 1;
    }

    private static boolean often(FileTable table, double share, Predicate<FileRow> holds) {
        List<FileRow> rows = table.sample();
        return rows.stream().filter(holds).count() >= share * rows.size();
    }
}
