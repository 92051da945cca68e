package org.tankrounds.readings;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tankrounds.web.FormulaGuard;

/**
 * A tank's own readings as CSV (RFC 4180), one value a line as somebody wrote it, oldest first; one without a value,
 * which is no more than its note, has a line of its own. The first six columns are
 * those that {@code rank} reads. A byte-order mark stands in front, without which spreadsheets take UTF-8 for something
 * else.
 */
final class ReadingsFile {
    private static final String BYTE_ORDER_MARK = "\ufeff";
    private static final List<String> HEADER = List.of("tank", "measured_at", "analyte", "value", "unit", "step",
            "below", "by", "note", "received_at", "version", "flags");

    private static final List<String> NO_VALUE = List.of("", "", "", "", "");

    private ReadingsFile() {}

    /** @param readings that hold, oldest first */
    static void write(OutputStream out, String tankCode, Stream<Reading> readings) throws IOException {
        BufferedWriter text = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        text.write(BYTE_ORDER_MARK);
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(HEADER);
            readings.forEach(reading -> rows(reading)
                    .forEach(value -> csv.writeRecord(cells(tankCode, reading, value))));
        }
    }

    private static Stream<List<String>> rows(Reading reading) {
        return reading.values().isEmpty() ? Stream.of(NO_VALUE) : reading.values().stream().map(ReadingsFile::cells);
    }

    private static List<String> cells(EnteredValue value) {
        return List.of(value.analyte().code(), value.value().toPlainString(), value.form().spelling(),
                value.step().map(step -> step.toPlainString()).orElse(""), Boolean.toString(value.below()));
    }

    private static List<String> cells(String tankCode, Reading reading, List<String> value) {
        List<String> cells = new ArrayList<>(List.of(tankCode, reading.measuredAt().toString()));
        cells.addAll(value);
        cells.addAll(List.of(FormulaGuard.guard(reading.by().orElse("")),
                FormulaGuard.guard(reading.note().orElse("")), reading.receivedAt().toString(),
                Integer.toString(reading.version()), String.join(" ", reading.flags())));
        return cells;
    }
}
