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
import org.tankrounds.config.CommandException;
import org.tankrounds.season.Ledger;
import org.tankrounds.season.Survivors;
import org.tankrounds.summary.SummaryColumns.Column;
import org.tankrounds.summary.SummaryColumns.Kind;

/**
 * Several chapters' season summaries, as their CSV files have them, added up for whoever gets them all. Nothing is
 * added that does not balance in its own file, and no egg is counted twice: a chapter's season stands in one file
 * only, and a tank in one chapter's season only.
 */
public final class SummarySum {
    private static final List<String> NAMES = List.of("chapter_code", "chapter", "season_code", "season");
    private static final String LEVEL = "level";
    private static final String TANK = "tank";
    private static final String ALL = "all";
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
        String season = first.getField("chapter") + ", season " + first.getField("season");
        refuseTwice(fileOfSeason, first.getField("chapter_code") + " " + first.getField("season_code"), season, file);
        for (NamedCsvRecord row : read) {
            if (isTank(row)) {
                refuseTwice(fileOfTank, row.getField(TANK) + " " + row.getField("season"),
                        "tank " + row.getField(TANK) + " in season " + row.getField("season"), file);
                checkBalance(file, row);
            }
        }
        checkSum(file, read);
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
        needed.addAll(List.of(LEVEL, TANK, "eggs_received", "dead", "alive_by_count", UNEXPLAINED, "moved_in",
                "moved_out", "taken_out_early", "released"));
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
            throw CommandException.failed(
                    "Eggs would count twice: " + what + ", stands in " + before + " and in " + file + ".");
        }
    }

    /** Received and moved in are dead, moved out, taken out, released, alive and unexplained. */
    private static void checkBalance(String file, NamedCsvRecord row) {
        long came = count(file, row, "eggs_received") + count(file, row, "moved_in");
        long gone = count(file, row, "dead") + count(file, row, "moved_out") + count(file, row, "taken_out_early")
                + count(file, row, "released") + count(file, row, "alive_by_count") + count(file, row, UNEXPLAINED);
        if (came != gone) {
            throw CommandException.failed(file + ": tank " + row.getField(TANK) + " does not balance, " + came
                    + " came and " + gone + " are told of; the file was changed after it was made.");
        }
    }

    private static void checkSum(String file, List<NamedCsvRecord> read) {
        for (String column : List.of("eggs_received", "dead", "released", "unexplained")) {
            long tanks = read.stream().filter(SummarySum::isTank).mapToLong(row -> count(file, row, column)).sum();
            long chapter = read.stream().filter(row -> row.getField(LEVEL).equals("chapter"))
                    .mapToLong(row -> count(file, row, column)).sum();
            if (tanks != chapter) {
                throw CommandException.failed(file + ": \"" + column + "\" is " + tanks + " in its tanks and " + chapter
                        + " in its chapter; the file was changed after it was made.");
            }
        }
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
        throw CommandException.failed(file + ": \"" + column + "\" of tank " + row.getField(TANK) + " is \""
                + row.getField(column) + "\"; a whole number from " + least + " to " + MOST + " is accepted.");
    }

    private Map<String, String> total() {
        Map<String, String> total = new LinkedHashMap<>();
        total.put(LEVEL, ALL);
        List<NamedCsvRecord> tanks = rows.stream().filter(SummarySum::isTank).toList();
        for (Column column : SummaryColumns.ALL) {
            boolean isToldByAll = tanks.stream().allMatch(row -> row.findField(column.name()).isPresent());
            if (column.kind() == Kind.COUNT && isToldByAll) {
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
        return new Ledger(cell(row, "eggs_received"), cell(row, "moved_in"), 0, 0, cell(row, "dead"),
                cell(row, "moved_out"), cell(row, "taken_out_early"), cell(row, "released"),
                cell(row, "alive_by_count"), cell(row, UNEXPLAINED));
    }

    private static int cell(NamedCsvRecord row, String column) {
        return Math.toIntExact(count("", row, column));
    }

    private static boolean isTank(NamedCsvRecord row) {
        return row.getField(LEVEL).equals(TANK);
    }
}
