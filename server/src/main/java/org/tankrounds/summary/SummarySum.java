package org.tankrounds.summary;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tankrounds.config.CommandException;
import org.tankrounds.season.Ledger;
import org.tankrounds.season.Survivors;
import org.tankrounds.summary.Column.Kind;

/**
 * Several chapters' season summaries, as their CSV files have them, added up for whoever gets them all. Nothing is
 * added that does not balance in its own file, where every count of tanks stands once more in their schools and chapter
 * and what left a tank for another came there, and no egg is counted twice: a chapter's season stands in one file
 * only, and a tank in one chapter's season only.
 */
public final class SummarySum {
    private static final List<String> NAMES = List.of("chapter_code", "chapter", "season_code", "season");
    private static final String LEVEL = "level";
    private static final String TANK = "tank";
    private static final String SCHOOL = "school";
    private static final String SCHOOL_CODE = "school_code";
    private static final String CHAPTER = "chapter";
    private static final String ALL = "all";
    private static final String MOVED_IN = "moved_in";
    private static final String MOVED_OUT = "moved_out";
    private static final String CHANGED = "; the file was changed after it was made.";
    private static final String UNEXPLAINED = "unexplained";
    /** More than this no tank, school or chapter has of anything. */
    private static final long MOST = 10_000_000;

    private final Map<String, String> fileOfSeason = new HashMap<>();
    private final Map<String, String> fileOfTank = new HashMap<>();
    private final Set<String> header = new LinkedHashSet<>();
    private final List<NamedCsvRecord> rows = new ArrayList<>();

    /**
     * @param file as it is to be named in sentences
     * @throws CommandException where it is no summary, does not balance, or tells of what another one has told
     */
    public void add(String file, byte[] csv) {
        List<NamedCsvRecord> read = read(file, csv);
        NamedCsvRecord first = read.get(0);
        if (fileOfSeason.containsValue(file)) {
            throw CommandException.failed("Eggs would count twice: " + file + " is given twice.");
        }
        String season = first.getField(CHAPTER) + ", season " + first.getField("season");
        refuseTwice(fileOfSeason, first.getField("chapter_code") + " " + first.getField("season_code"), season, file);
        for (NamedCsvRecord row : read) {
            if (isTank(row)) {
                refuseTwice(fileOfTank, row.getField(TANK) + " " + row.getField("season"),
                        "tank " + row.getField(TANK) + " in season " + row.getField("season"), file);
                checkBalance(file, row);
            }
        }
        checkSums(file, read);
        checkMoves(file, read);
        header.addAll(first.getHeader());
        rows.addAll(read);
    }

    /** All rows as they were, and one that adds the tanks up; a column that one of them lacks is left empty there. */
    public byte[] write() {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(header);
            for (NamedCsvRecord row : rows) {
                csv.writeRecord(header.stream().map(name -> row.findField(name).orElse("")).toList());
            }
            Map<String, String> total = total();
            csv.writeRecord(header.stream().map(name -> total.getOrDefault(name, "")).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** In a sentence for the terminal. */
    public String words() {
        Map<String, String> total = total();
        return fileOfSeason.size() + " summaries, " + rows.stream().filter(SummarySum::isTank).count() + " tanks, "
                + total.get("eggs_received") + " eggs received, " + total.get("released") + " released, "
                + total.get(UNEXPLAINED) + " unexplained";
    }

    private static List<NamedCsvRecord> read(String file, byte[] csv) {
        List<NamedCsvRecord> read;
        try {
            String text = new String(csv, StandardCharsets.UTF_8);
            String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
            read = CsvReader.builder().ofNamedCsvRecord(plain).stream().toList();
        } catch (CsvParseException e) {
            throw CommandException.wrongCall(file + " is no season summary: it is not CSV throughout.");
        }
        if (read.isEmpty()) {
            throw CommandException.wrongCall(file + " is no season summary as CSV: it has no rows.");
        }
        if (read.get(0).getHeader().size() == 1 && read.get(0).getHeader().get(0).matches(".*[;\t].*")) {
            throw CommandException.wrongCall(file + " is no season summary as CSV: commas stand between its columns in"
                    + " the file that Tankrounds makes, here is something else. Take that file as it was made.");
        }
        Set<String> needed = new LinkedHashSet<>(NAMES);
        needed.addAll(List.of(LEVEL, SCHOOL_CODE, TANK, "eggs_received", "dead", "alive_by_count", UNEXPLAINED,
                MOVED_IN, MOVED_OUT, "taken_out_early", "released"));
        for (String name : needed) {
            if (read.get(0).findField(name).isEmpty()) {
                throw CommandException.wrongCall(
                        file + " is no season summary as CSV: it has no column \"" + name + "\".");
            }
        }
        return read;
    }

    private static void refuseTwice(Map<String, String> files, String key, String what, String file) {
        String before = files.putIfAbsent(key, file);
        if (before != null) {
            throw CommandException.failed("Eggs would count twice: " + what + ", stands "
                    + (before.equals(file) ? "twice in " + file : "in " + before + " and in " + file) + ".");
        }
    }

    /** Received and moved in are dead, moved out, taken out, released, alive and unexplained. */
    private static void checkBalance(String file, NamedCsvRecord row) {
        long came = count(file, row, "eggs_received") + count(file, row, MOVED_IN);
        long gone = count(file, row, "dead") + count(file, row, MOVED_OUT) + count(file, row, "taken_out_early")
                + count(file, row, "released") + count(file, row, "alive_by_count") + count(file, row, UNEXPLAINED);
        if (came != gone) {
            throw CommandException.failed(file + ": tank " + row.getField(TANK) + " does not balance, " + came
                    + " came and " + gone + " are told of" + CHANGED);
        }
    }

    /** What the tanks add up to stands once more in their schools and in their chapter. */
    private static void checkSums(String file, List<NamedCsvRecord> read) {
        List<NamedCsvRecord> tanks = read.stream().filter(SummarySum::isTank).toList();
        for (Column<SeasonSummary.Row> column : SummaryColumns.ALL) {
            if (column.kind() == Kind.COUNT && isTold(column.name(), tanks)) {
                checkSums(file, column.name(), read, CHAPTER, row -> "");
                checkSums(file, column.name(), read, SCHOOL, row -> row.getField(SCHOOL_CODE));
            }
        }
    }

    /** @param part of the season that the row tells of */
    private static void checkSums(String file, String column, List<NamedCsvRecord> read, String level,
            Function<NamedCsvRecord, String> part) {
        Map<List<String>, Long> inTanks = sums(file, column, read, TANK, part);
        Map<List<String>, Long> above = sums(file, column, read, level, part);
        Set<List<String>> all = new LinkedHashSet<>(inTanks.keySet());
        all.addAll(above.keySet());
        for (List<String> one : all) {
            long tanks = inTanks.getOrDefault(one, 0L);
            long told = above.getOrDefault(one, 0L);
            if (tanks != told) {
                String school = one.get(one.size() - 1);
                throw CommandException.failed(file + ": \"" + column + "\" is " + tanks + " in "
                        + (level.equals(CHAPTER) ? "its tanks and " + told + " in its chapter"
                                : "tanks of school " + school + " and " + told + " there") + CHANGED);
            }
        }
    }

    private static Map<List<String>, Long> sums(String file, String column, List<NamedCsvRecord> read, String level,
            Function<NamedCsvRecord, String> part) {
        return read.stream().filter(row -> row.getField(LEVEL).equals(level)).collect(Collectors.groupingBy(
                row -> List.of(row.getField("chapter_code"), row.getField("season_code"), part.apply(row)),
                LinkedHashMap::new, Collectors.summingLong(row -> count(file, row, column))));
    }

    /** A move goes from a tank to another one of its chapter, in one season. */
    private static void checkMoves(String file, List<NamedCsvRecord> read) {
        Map<List<String>, Long> out = sums(file, MOVED_OUT, read, TANK, row -> "");
        sums(file, MOVED_IN, read, TANK, row -> "").forEach((season, in) -> {
            if (!in.equals(out.get(season))) {
                throw CommandException.failed(file + ": \"" + MOVED_IN + "\" is " + in + " over its tanks and \""
                        + MOVED_OUT + "\" is " + out.get(season) + ", though fish move from one of them to another"
                        + CHANGED);
            }
        });
    }

    private static boolean isTold(String column, List<NamedCsvRecord> tanks) {
        return tanks.stream().allMatch(row -> row.findField(column).filter(cell -> !cell.isEmpty()).isPresent());
    }

    private static long count(String file, NamedCsvRecord row, String column) {
        long least = column.equals(UNEXPLAINED) ? -MOST : 0;
        try {
            long count = Long.parseLong(row.getField(column));
            if (count >= least && count <= MOST) {
                return count;
            }
        } catch (NumberFormatException e) {
            // As one beyond what is accepted.
        }
        throw CommandException.failed(file + ": \"" + column + "\" of " + where(row) + " is \""
                + row.getField(column) + "\"; a whole number from " + least + " to " + MOST + " is accepted.");
    }

    private static String where(NamedCsvRecord row) {
        return switch (row.getField(LEVEL)) {
            case TANK -> "tank " + row.getField(TANK);
            case SCHOOL -> "school " + row.getField(SCHOOL_CODE);
            default -> "the chapter";
        };
    }

    private Map<String, String> total() {
        Map<String, String> total = new LinkedHashMap<>();
        total.put(LEVEL, ALL);
        List<NamedCsvRecord> tanks = rows.stream().filter(SummarySum::isTank).toList();
        for (Column<SeasonSummary.Row> column : SummaryColumns.ALL) {
            if (column.kind() == Kind.COUNT && isTold(column.name(), tanks)) {
                total.put(column.name(), Long.toString(
                        tanks.stream().mapToLong(row -> count("", row, column.name())).sum()));
            }
        }
        survival(total);
        return total;
    }

    /** As of one chapter: each tank by itself, then together. */
    private void survival(Map<String, String> total) {
        Survivors all = rows.stream().filter(SummarySum::isTank).map(row -> Survivors.of(ledger(row)))
                .reduce(Survivors.NONE, Survivors::plus);
        if (all.came() > 0) {
            Wilson interval = Wilson.of(all.survived(), all.came());
            total.put("survival", Rounded.share((double) all.survived() / all.came()).toPlainString());
            total.put("survival_low_wilson_95", Rounded.share(interval.low()).toPlainString());
            total.put("survival_high_wilson_95", Rounded.share(interval.high()).toPlainString());
            ClopperPearson exact = ClopperPearson.of(all.survived(), all.came());
            total.put("survival_low_exact_95", Rounded.share(exact.low()).toPlainString());
            total.put("survival_high_exact_95", Rounded.share(exact.high()).toPlainString());
        }
    }

    /** At which stage they died does not matter here. */
    private static Ledger ledger(NamedCsvRecord row) {
        return new Ledger(cell(row, "eggs_received"), cell(row, MOVED_IN), 0, 0, cell(row, "dead"),
                cell(row, MOVED_OUT), cell(row, "taken_out_early"), cell(row, "released"),
                cell(row, "alive_by_count"), cell(row, UNEXPLAINED));
    }

    private static int cell(NamedCsvRecord row, String column) {
        return Math.toIntExact(count("", row, column));
    }

    private static boolean isTank(NamedCsvRecord row) {
        return row.getField(LEVEL).equals(TANK);
    }
}
