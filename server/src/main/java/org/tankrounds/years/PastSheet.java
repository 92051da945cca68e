package org.tankrounds.years;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.tankrounds.season.DeathCause;
import org.tankrounds.season.DeathCauses;
import org.tankrounds.season.Ledger;
import org.tankrounds.season.Survivors;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/**
 * The counts of a past season, read from what was copied out of a spreadsheet: a line of headings, then one line a
 * tank. Every cell is kept as it was; what is understood of it is counted.
 *
 * @param header as it was
 * @param lines as they were, without empty ones
 * @param counted lines of tanks, with their numbers
 * @param uncounted headings that say nothing that is counted here
 * @param sums line numbers of what looks like a sum of others, which is not counted
 * @param faults why it cannot be taken, by line
 */
record PastSheet(List<String> header, List<Line> lines, List<Counted> counted, List<String> uncounted,
        List<Integer> sums, List<Fault> faults) {
    private static final int MOST_LINES = 2000;
    private static final int MOST_COLUMNS = 200;
    /** Of one line; all lines together stay below two thousand millions. */
    private static final int MOST = 100_000;
    private static final String CAUSE = "dead_of_";
    private static final Set<String> SUM = Set.of("total", "totals", "sum", "suma", "totales", "all");

    record Line(int number, List<String> cells) {}

    record Counted(int line, String place, Ledger ledger, Survivors survivors, int deadUnstaged,
            DeathCauses causes) {}

    /** @param line 0 of the whole sheet */
    record Fault(int line, Saying why) {}

    static PastSheet read(String text) {
        return new Reader().read(text);
    }

    /** From lines as they are stored. */
    static PastSheet of(List<String> header, List<Line> lines) {
        Reader reader = new Reader();
        reader.header(header);
        lines.forEach(reader::line);
        return reader.sheet();
    }

    /** All tanks together. */
    Ledger total() {
        return counted.stream().map(Counted::ledger).reduce(Ledger.EMPTY, Ledger::plus);
    }

    Survivors survivors() {
        return counted.stream().map(Counted::survivors).reduce(Survivors.NONE, Survivors::plus);
    }

    int deadUnstaged() {
        return counted.stream().mapToInt(Counted::deadUnstaged).sum();
    }

    DeathCauses causes() {
        return counted.stream().map(Counted::causes).reduce(DeathCauses.NONE, DeathCauses::plus);
    }

    private static final class Reader {
        private List<String> header = List.of();
        private final Map<PastColumn, Integer> columns = new EnumMap<>(PastColumn.class);
        private final Map<DeathCause, Integer> causes = new EnumMap<>(DeathCause.class);
        private final List<String> uncounted = new ArrayList<>();
        private final List<Line> lines = new ArrayList<>();
        private final List<Counted> counted = new ArrayList<>();
        private final List<Integer> sums = new ArrayList<>();
        private final List<Fault> faults = new ArrayList<>();

        PastSheet read(String text) {
            String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
            try (CsvReader<CsvRecord> csv = CsvReader.builder().fieldSeparator(separator(plain))
                    .allowMissingFields(true).allowExtraFields(true).ofCsvRecord(plain)) {
                for (CsvRecord row : csv) {
                    List<String> cells = row.getFields();
                    if (header.isEmpty()) {
                        header(cells);
                    } else if (cells.stream().anyMatch(cell -> !cell.isBlank())) {
                        if (lines.size() == MOST_LINES) {
                            refuse((int) row.getStartingLineNumber(), "years.sheet.long", MOST_LINES);
                            break;
                        }
                        line(new Line((int) row.getStartingLineNumber(), cells));
                    }
                }
            } catch (CsvParseException e) {
                refuse(0, "years.sheet.unreadable");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return sheet();
        }

        PastSheet sheet() {
            if (header.isEmpty()) {
                refuse(0, "years.sheet.empty");
            } else if (lines.isEmpty() && faults.isEmpty()) {
                refuse(0, "years.sheet.noLines");
            } else if (counted.isEmpty() && faults.isEmpty()) {
                refuse(0, "years.sheet.noTanks");
            }
            return new PastSheet(header, List.copyOf(lines), List.copyOf(counted), List.copyOf(uncounted),
                    List.copyOf(sums), List.copyOf(faults));
        }

        void header(List<String> cells) {
            header = cells.size() > MOST_COLUMNS ? cells.subList(0, MOST_COLUMNS) : cells;
            if (cells.size() > MOST_COLUMNS) {
                refuse(1, "years.sheet.wide", MOST_COLUMNS);
            }
            for (int i = 0; i < header.size(); i++) {
                int at = i;
                Optional<PastColumn> column = PastColumn.of(header.get(i));
                Optional<DeathCause> cause = cause(header.get(i));
                column.ifPresent(known -> put(columns, known, at));
                cause.ifPresent(known -> put(causes, known, at));
                if (column.isEmpty() && cause.isEmpty() && !header.get(i).isBlank()) {
                    uncounted.add(header.get(i));
                }
            }
            if (!columns.containsKey(PastColumn.RECEIVED)) {
                refuse(1, "years.sheet.noEggs");
            }
            if (!columns.containsKey(PastColumn.SCHOOL) && !columns.containsKey(PastColumn.TANK)) {
                refuse(1, "years.sheet.noSchool");
            }
        }

        private <K> void put(Map<K, Integer> places, K key, int at) {
            if (places.putIfAbsent(key, at) != null) {
                refuse(1, "years.sheet.twice", header.get(at));
            }
        }

        private static Optional<DeathCause> cause(String heading) {
            return heading.startsWith(CAUSE) ? DeathCause.ofCode(heading.substring(CAUSE.length())) : Optional.empty();
        }

        void line(Line line) {
            lines.add(line);
            String level = text(line, PastColumn.LEVEL);
            String place = String.join(", ", Stream.of(PastColumn.SCHOOL, PastColumn.ROOM, PastColumn.TANK)
                    .map(column -> text(line, column)).filter(one -> !one.isEmpty()).toList());
            boolean isSum = !level.isEmpty() && !level.equals("tank")
                    || line.cells().stream().limit(3)
                            .anyMatch(cell -> SUM.contains(cell.strip().toLowerCase(Locale.ROOT)));
            if (isSum) {
                sums.add(line.number());
            } else if (place.isEmpty()) {
                refuse(line.number(), "years.sheet.whichSchool");
            } else if (columns.containsKey(PastColumn.RECEIVED)) {
                count(line, place);
            }
        }

        private void count(Line line, String place) {
            int before = faults.size();
            int received = number(line, PastColumn.RECEIVED).orElse(0);
            int movedIn = number(line, PastColumn.MOVED_IN).orElse(0);
            int eggs = number(line, PastColumn.DEAD_AS_EGGS).orElse(0);
            int sacFry = number(line, PastColumn.DEAD_AS_SAC_FRY).orElse(0);
            int feeding = number(line, PastColumn.DEAD_FEEDING).orElse(0);
            int staged = eggs + sacFry + feeding;
            int dead = number(line, PastColumn.DEAD).orElse(staged);
            int movedOut = number(line, PastColumn.MOVED_OUT).orElse(0);
            int thinned = number(line, PastColumn.THINNED).orElse(0);
            int released = number(line, PastColumn.RELEASED).orElse(0);
            int alive = number(line, PastColumn.ALIVE).orElse(0);
            int over = received + movedIn - dead - movedOut - thinned - released - alive;
            int unexplained = number(line, PastColumn.UNEXPLAINED).orElse(over);
            if (faults.size() > before) {
                return;
            }
            if (dead < staged) {
                refuse(line.number(), "years.sheet.deadLess", dead, staged);
            } else if (unexplained != over) {
                refuse(line.number(), "years.sheet.unbalanced", unexplained, over);
            } else {
                // The ledger knows the dead by stage; those without one stand beside it,
                // and its balance leaves them over.
                Ledger ledger = new Ledger(received, movedIn, eggs, sacFry, feeding, movedOut, thinned, released, alive,
                        over + dead - staged);
                Survivors survivors = Survivors.of(new Ledger(
                        received, movedIn, 0, 0, dead, movedOut, thinned, released, alive, over));
                counted.add(new Counted(line.number(), place, ledger, survivors, dead - staged, causes(line)));
            }
        }

        private DeathCauses causes(Line line) {
            Map<DeathCause, Integer> dead = new EnumMap<>(DeathCause.class);
            causes.forEach((cause, at) -> parse(cell(line, at)).stream().filter(fish -> fish > 0)
                    .forEach(fish -> dead.put(cause, fish)));
            return new DeathCauses(dead);
        }

        /** Empty where the cell is; a fault where it holds no count. */
        private OptionalInt number(Line line, PastColumn column) {
            String cell = columns.containsKey(column) ? cell(line, columns.get(column)) : "";
            if (cell.isEmpty()) {
                return OptionalInt.empty();
            }
            OptionalInt number = parse(cell);
            boolean mayBeNegative = column == PastColumn.UNEXPLAINED;
            if (number.isEmpty() || number.getAsInt() > MOST || number.getAsInt() < (mayBeNegative ? -MOST : 0)) {
                refuse(line.number(), "years.sheet.notACount", header.get(columns.get(column)), cell);
                return OptionalInt.empty();
            }
            return number;
        }

        private static OptionalInt parse(String cell) {
            String plain = cell.replace('\u2212', '-');
            OptionalInt size = TypedNumber.whole(plain.startsWith("-") ? plain.substring(1) : plain);
            return size.isPresent() && plain.startsWith("-") ? OptionalInt.of(-size.getAsInt()) : size;
        }

        private String text(Line line, PastColumn column) {
            return columns.containsKey(column) ? cell(line, columns.get(column)) : "";
        }

        private static String cell(Line line, int at) {
            return at < line.cells().size() ? line.cells().get(at).strip() : "";
        }

        private void refuse(int line, String key, Object... with) {
            faults.add(new Fault(line, Saying.of(key, with)));
        }

        /** A spreadsheet copies with tabs; files have commas or semicolons. */
        private static char separator(String text) {
            String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
            long tabs = first.chars().filter(c -> c == '\t').count();
            long semicolons = first.chars().filter(c -> c == ';').count();
            long commas = first.chars().filter(c -> c == ',').count();
            return tabs > 0 ? '\t' : semicolons > commas ? ';' : ',';
        }
    }
}
