package org.tankrounds.summary;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.tankrounds.summary.SeasonSummary.Row;
import org.tankrounds.summary.Column.Kind;
import org.tankrounds.web.FormulaGuard;

/** The summary as CSV (RFC 4180): CRLF, one header row, UTF-8 without a byte-order mark, points as decimal signs. */
final class SummaryCsv {
    private SummaryCsv() {}

    static byte[] write(SeasonSummary summary) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(header());
            for (Row row : summary.rows()) {
                csv.writeRecord(cells(summary, row));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> header() {
        List<String> names = new ArrayList<>(List.of("chapter_code", "chapter", "season_code", "season"));
        SummaryColumns.ALL.forEach(column -> names.add(column.name()));
        return names;
    }

    private static List<String> cells(SeasonSummary summary, Row row) {
        SeasonSummary.Heading heading = summary.heading();
        List<String> cells = new ArrayList<>(List.of(
                heading.chapterCode(), FormulaGuard.guard(heading.chapter()), heading.seasonCode(),
                FormulaGuard.guard(heading.season())));
        for (Column<Row> column : SummaryColumns.ALL) {
            cells.add(cell(column, column.value().apply(row)));
        }
        return cells;
    }

    private static String cell(Column<Row> column, Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Instant at) {
            return SummaryColumns.text(at);
        }
        if (value instanceof BigDecimal number) {
            return number.toPlainString();
        }
        return column.kind() == Kind.TEXT ? FormulaGuard.guard(value.toString()) : value.toString();
    }
}
