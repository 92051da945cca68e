package org.tankrounds.classroom;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tankrounds.behaviour.Behaviour;
import org.tankrounds.behaviour.Look;
import org.tankrounds.behaviour.Seen;
import org.tankrounds.season.FishSample;
import org.tankrounds.web.FormulaGuard;

/**
 * What a class saw of its fish, and how long and heavy they were, as CSV (RFC 4180): one look or measurement a line,
 * oldest first, in the words that forms and the database have for what was seen.
 */
final class FishFile {
    private static final String BYTE_ORDER_MARK = "\ufeff";
    private static final List<String> MEASURES = List.of("fish", "mean_length_mm", "total_weight_g");

    /** A line with its time. */
    private record Line(Instant at, Map<String, String> cells) {}

    private FishFile() {}

    static String of(String tankCode, List<Look> looks, List<FishSample> samples) {
        StringWriter text = new StringWriter();
        text.write(BYTE_ORDER_MARK);
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(Stream.concat(Stream.of("tank", "at"), columns().stream()).toList());
            Stream.concat(looks.stream().map(FishFile::line), samples.stream().map(FishFile::line))
                    .sorted(Comparator.comparing(Line::at))
                    .forEach(line -> csv.writeRecord(cells(tankCode, line)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static List<String> columns() {
        return Stream.concat(Arrays.stream(Behaviour.values()).map(Behaviour::code), MEASURES.stream()).toList();
    }

    private static List<String> cells(String tankCode, Line line) {
        List<String> cells = new ArrayList<>(List.of(tankCode, line.at().toString()));
        columns().forEach(column -> cells.add(FormulaGuard.guard(line.cells().getOrDefault(column, ""))));
        return cells;
    }

    private static Line line(Look look) {
        Map<String, String> cells = new TreeMap<>();
        for (Seen seen : look.seen()) {
            cells.put(seen.behaviour().code(), seen.code());
        }
        return new Line(look.seenAt(), cells);
    }

    private static Line line(FishSample sample) {
        Map<String, String> cells = new TreeMap<>(Map.of("fish", Integer.toString(sample.fish()),
                "mean_length_mm", Double.toString(sample.meanLengthMm())));
        sample.totalWeightG().ifPresent(weight -> cells.put("total_weight_g", Double.toString(weight)));
        return new Line(sample.measuredAt(), cells);
    }
}
