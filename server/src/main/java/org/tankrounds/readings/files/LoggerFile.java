package org.tankrounds.readings.files;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.tankrounds.readings.files.SetAside.Why;
import org.tankrounds.readings.files.UnreadableFileException.Trouble;
import org.tankrounds.water.Analyte;

/**
 * A logger's file, read: how it was understood, and its lines once nothing is to be asked any more.
 *
 * @param lines oldest first, each time once
 * @param repeated rows that say again what another row says
 * @param doubledHours rows in an hour that comes twice
 */
public record LoggerFile(
        Understanding understanding, int rows, List<LoggedLine> lines, List<SetAside> setAside, int repeated,
        int doubledHours) {

    /** Where and when a file is read. */
    public record Here(ZoneId school, Instant now) {}

    private static final Set<Why> UNREAD = Set.of(Why.NO_TIME, Why.NO_SUCH_DAY, Why.NOT_A_NUMBER);
    private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");
    private static final Duration CLOCKS_MAY_DIFFER = Duration.ofMinutes(10);

    /** @throws UnreadableFileException where it is no table with times */
    public static LoggerFile read(byte[] content, Choices choices, Here here) {
        FileTable table = FileTable.read(FileText.of(content), choices.delimiter());
        Understanding understood = Understanding.of(table, choices);
        if (understood.timesToChooseFrom().isEmpty()) {
            throw new UnreadableFileException(Trouble.NO_TIMES);
        }
        return understood.questions().isEmpty() ? new Reader(understood, here).read()
                : new LoggerFile(understood, table.rows().size(), List.of(), List.of(), 0, 0);
    }

    /** How many rows have no time that could be read. */
    public int timeless() {
        return (int) setAside.stream().filter(one -> Set.of(Why.NO_TIME, Why.NO_SUCH_DAY).contains(one.why())).count();
    }

    /** Rows in which something stands that nobody could read. */
    public int notUnderstood() {
        return (int) setAside.stream().filter(one -> UNREAD.contains(one.why())).map(SetAside::line).distinct().count();
    }

    /** The names of its columns, by which files of one logger are known. */
    public String header() {
        return String.join("\u001f", understanding.table().header().map(FileRow::cells).orElse(List.of()));
    }

    /** How the first rows stand in the file, for a look. */
    public List<List<String>> firstRows(int most) {
        return understanding.firstRows(most).stream().map(FileRow::cells).toList();
    }

    /** The names of its columns; empty where they have none. */
    public List<String> names() {
        return understanding.table().header().map(FileRow::cells).orElse(List.of());
    }

    /** One reading of the rows. */
    private static final class Reader {
        private final Understanding understood;
        private final Here here;
        private final LoggerClock clock;
        private final char mark;
        private final Map<Instant, LoggedLine> lines = new TreeMap<>();
        private final List<SetAside> setAside = new ArrayList<>();
        private int repeated;

        Reader(Understanding understood, Here here) {
            this.understood = understood;
            this.here = here;
            this.clock = new LoggerClock(understood.zone(here.school(), here.now()));
            this.mark = understood.decimal().value().orElse('.');
        }

        LoggerFile read() {
            oldestFirst().forEach(this::row);
            setAside.sort(Comparator.comparingInt(SetAside::line));
            return new LoggerFile(understood, understood.table().rows().size(), List.copyOf(lines.values()),
                    List.copyOf(setAside), repeated, clock.doubled());
        }

        /** Some loggers write the newest row first. */
        private List<FileRow> oldestFirst() {
            List<FileRow> rows = new ArrayList<>(understood.table().rows());
            Optional<LocalDateTime> first = local(rows.get(0));
            Optional<LocalDateTime> last = local(rows.get(rows.size() - 1));
            if (first.isPresent() && last.isPresent() && first.get().isAfter(last.get())) {
                Collections.reverse(rows);
            }
            return rows;
        }

        private void row(FileRow row) {
            TimeColumns columns = understood.time().value().orElseThrow();
            String written = columns.date() == columns.clock() ? row.cell(columns.date())
                    : row.cell(columns.date()) + " " + row.cell(columns.clock());
            Optional<Instant> at = columns.read(row).flatMap(time -> instant(row, written, time));
            if (columns.read(row).isEmpty()) {
                aside(row, written, Why.NO_TIME);
            }
            at.ifPresent(moment -> values(row, moment));
        }

        private Optional<Instant> instant(FileRow row, String written, WrittenTime time) {
            Optional<LocalDateTime> local = localOf(time);
            if (time.epoch().isEmpty() && local.isEmpty()) {
                aside(row, written, Why.NO_SUCH_DAY);
                return Optional.empty();
            }
            Optional<Instant> at = time.epoch()
                    .or(() -> time.offset().map(offset -> local.get().toInstant(offset)))
                    .or(() -> clock.instant(local.get()));
            if (at.isEmpty()) {
                aside(row, written, Why.SKIPPED_HOUR);
                return Optional.empty();
            }
            if (at.get().isBefore(EARLIEST) || at.get().isAfter(here.now().plus(CLOCKS_MAY_DIFFER))) {
                aside(row, written, at.get().isBefore(EARLIEST) ? Why.CLOCK_NOT_SET : Why.AHEAD);
                return Optional.empty();
            }
            return at;
        }

        private void values(FileRow row, Instant at) {
            Map<Analyte, BigDecimal> values = new EnumMap<>(Analyte.class);
            understood.taken().forEach((analyte, column) ->
                    value(row, row.cell(column), analyte).ifPresent(value -> values.put(analyte, value)));
            if (values.isEmpty()) {
                return;
            }
            LoggedLine before = lines.putIfAbsent(at, new LoggedLine(row.line(), at, values));
            if (before == null) {
                return;
            }
            if (same(before.values(), values)) {
                repeated++;
            } else {
                aside(row, row.cell(understood.taken().values().iterator().next()), Why.CONTRADICTED);
            }
        }

        private Optional<BigDecimal> value(FileRow row, String cell, Analyte analyte) {
            if (WrittenNumber.isNothing(cell)) {
                aside(row, cell, Why.NO_VALUE);
                return Optional.empty();
            }
            Optional<BigDecimal> number = WrittenNumber.read(cell, mark);
            Optional<Why> why = number.map(value -> LoggerFaults.of(analyte, understood.form(analyte), value))
                    .orElse(Optional.of(Why.NOT_A_NUMBER));
            why.ifPresent(reason -> aside(row, cell, reason));
            return why.isEmpty() ? number : Optional.empty();
        }

        private Optional<LocalDateTime> local(FileRow row) {
            return understood.time().value().orElseThrow().read(row).flatMap(time -> time.epoch()
                    .map(moment -> LocalDateTime.ofInstant(moment, ZoneOffset.UTC))
                    .or(() -> localOf(time)));
        }

        private Optional<LocalDateTime> localOf(WrittenTime time) {
            DateOrder order = understood.order().value().orElse(DateOrder.DAY_MONTH);
            Optional<LocalDate> day = time.date().flatMap(date -> date.day(order));
            return day.flatMap(date -> time.time().map(date::atTime));
        }

        private void aside(FileRow row, String cell, Why why) {
            setAside.add(new SetAside(row.line(), cell.strip(), why));
        }

        private static boolean same(Map<Analyte, BigDecimal> one, Map<Analyte, BigDecimal> other) {
            return one.keySet().equals(other.keySet()) && one.entrySet().stream()
                    .allMatch(entry -> entry.getValue().compareTo(other.get(entry.getKey())) == 0);
        }
    }
}
