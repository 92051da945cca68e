package org.tankrounds.summary;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.UnaryOperator;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.tankrounds.summary.SeasonSummary.Row;
import org.tankrounds.summary.SummaryColumns.Column;
import org.tankrounds.summary.SummaryColumns.Kind;
import org.tankrounds.words.Words;

/** The summary as a workbook: typed cells, a header that stays, sums that are formulas over the tanks' rows. */
final class SummaryWorkbook {
    private static final String TANKS = "Tanks";
    private static final String PROPERTIES = "docProps/core.xml";
    private static final String DARK = "0D4F5C";
    private static final String PALE = "EEF4F5";
    private static final int FIRST_ROW = 1;
    private static final int NAME_COLUMNS = 5;
    private static final int SCHOOL_NAME_COLUMNS = 3;
    private static final List<Column> COLUMNS = SummaryColumns.ALL;

    private final SeasonSummary summary;
    private final Stamp stamp;

    private SummaryWorkbook(SeasonSummary summary, Stamp stamp) {
        this.summary = summary;
        this.stamp = stamp;
    }

    static byte[] write(SeasonSummary summary, Stamp stamp) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        // An application's version must be two numbers here; the full one stands on the sheet "About".
        try (Workbook workbook = new Workbook(bytes, "Tankrounds", "1.0")) {
            SummaryWorkbook writer = new SummaryWorkbook(summary, stamp);
            writer.tanks(workbook.newWorksheet(TANKS));
            writer.schools(workbook.newWorksheet("Schools"));
            writer.releases(workbook.newWorksheet("Releases"));
            if (!stamp.changes().isEmpty()) {
                writer.changes(workbook.newWorksheet("Changes"));
            }
            writer.about(workbook.newWorksheet("About"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return FixedZip.again(bytes.toByteArray(), stamp.at(),
                (name, part) -> name.equals(PROPERTIES) ? dated(part, stamp.at()) : part);
    }

    /** The library dates a workbook by the machine's clock. */
    private static byte[] dated(byte[] properties, Instant at) {
        return new String(properties, StandardCharsets.UTF_8)
                .replaceAll("(<dcterms:(?:created|modified)[^>]*>)[^<]*", "$1" + at)
                .getBytes(StandardCharsets.UTF_8);
    }

    private void tanks(Worksheet sheet) {
        columns(sheet, NAME_COLUMNS);
        int row = FIRST_ROW;
        for (Row tank : summary.tanks()) {
            cells(sheet, row++, tank);
        }
        int last = row - 1;
        total(sheet, row, letter -> "SUM(" + letter + "2:" + letter + (last + 1) + ")");
        fit(sheet, row);
    }

    private void schools(Worksheet sheet) {
        columns(sheet, SCHOOL_NAME_COLUMNS);
        int row = FIRST_ROW;
        int lastTank = summary.tanks().size() + 1;
        for (Row school : summary.schools()) {
            cells(sheet, row, school);
            for (int c = 0; c < COLUMNS.size(); c++) {
                if (COLUMNS.get(c).kind() == Kind.COUNT) {
                    String letter = letter(c);
                    String range = TANKS + "!$B$2:$B$" + lastTank;
                    sheet.formula(row, c, "SUMIF(" + range + ",B" + (row + 1) + "," + TANKS + "!" + letter + "$2:"
                            + letter + "$" + lastTank + ")");
                }
            }
            row++;
        }
        int last = row;
        total(sheet, row, letter -> "SUM(" + letter + "2:" + letter + last + ")");
        fit(sheet, row);
    }

    /** @param sum from a column's letter to the formula that adds it up */
    private void total(Worksheet sheet, int row, UnaryOperator<String> sum) {
        cells(sheet, row, summary.chapter());
        sheet.value(row, 2, "All schools");
        for (int c = 0; c < COLUMNS.size(); c++) {
            if (COLUMNS.get(c).kind() == Kind.COUNT && row > FIRST_ROW) {
                sheet.formula(row, c, sum.apply(letter(c)));
            }
        }
        sheet.range(row, 0, row, COLUMNS.size() - 1).style().bold().fillColor(PALE).set();
    }

    private void columns(Worksheet sheet, int namesStay) {
        for (int c = 0; c < COLUMNS.size(); c++) {
            sheet.value(0, c, COLUMNS.get(c).name());
        }
        header(sheet, COLUMNS.size());
        sheet.freezePane(namesStay, FIRST_ROW);
    }

    private static void header(Worksheet sheet, int columns) {
        sheet.range(0, 0, 0, columns - 1).style()
                .bold().fontColor("FFFFFF").fillColor(DARK).wrapText(true).verticalAlignment("center").set();
        sheet.rowHeight(0, 62);
        sheet.repeatRows(0);
        sheet.pageOrientation("landscape");
    }

    private static void cells(Worksheet sheet, int row, Row figures) {
        for (int c = 0; c < COLUMNS.size(); c++) {
            Object value = COLUMNS.get(c).value().apply(figures);
            if (value instanceof Instant at) {
                sheet.value(row, c, LocalDateTime.ofInstant(at, ZoneOffset.UTC));
            } else if (value instanceof LocalDate day) {
                sheet.value(row, c, day);
            } else if (value instanceof BigDecimal || value instanceof Integer) {
                sheet.value(row, c, (Number) value);
            } else if (value != null && !value.toString().isEmpty()) {
                sheet.value(row, c, value.toString());
            }
        }
    }

    /** Widths, and how numbers are shown. */
    private static void fit(Worksheet sheet, int lastRow) {
        for (int c = 0; c < COLUMNS.size(); c++) {
            Kind kind = COLUMNS.get(c).kind();
            sheet.width(c, kind == Kind.TEXT ? c == 2 ? 26 : 13 : kind == Kind.TIME ? 18 : 13);
            if (kind == Kind.DAY) {
                sheet.range(FIRST_ROW, c, lastRow, c).style().format("yyyy-mm-dd").set();
            } else if (kind == Kind.TIME) {
                sheet.range(FIRST_ROW, c, lastRow, c).style().format("yyyy-mm-dd hh:mm").set();
            } else if (kind == Kind.SHARE) {
                sheet.range(FIRST_ROW, c, lastRow, c).style().format("0.0%").set();
            }
        }
    }

    /** By site and date; the sum is a formula. */
    private void releases(Worksheet sheet) {
        List<String> names = List.of("site", "approval", "day", "school_code", "school", "classroom", "tank", "fish",
                "count_off_by_95", "counted_how", "tank_temperature_deg_c");
        for (int c = 0; c < names.size(); c++) {
            sheet.value(0, c, names.get(c));
            sheet.width(c, c == 0 || c == 4 ? 26 : 14);
        }
        header(sheet, names.size());
        sheet.freezePane(0, FIRST_ROW);
        int row = FIRST_ROW;
        for (Release one : summary.chapter().figures().releases()) {
            int at = row;
            List<String> texts = List.of(one.place(), one.approval(), "", one.schoolCode(), one.school(),
                    one.classroom(), one.tank(), "", "", one.method().code());
            for (int c = 0; c < texts.size(); c++) {
                if (!texts.get(c).isEmpty()) {
                    sheet.value(row, c, texts.get(c));
                }
            }
            sheet.value(row, 2, one.day());
            sheet.style(row, 2).format("yyyy-mm-dd").set();
            sheet.value(row, 7, one.fish());
            sheet.value(row, 8, one.spread());
            one.tankC().ifPresent(celsius -> sheet.value(at, 10, Rounded.value(Series.TEMPERATURE, celsius)));
            row++;
        }
        sheet.value(row, 0, "All releases");
        if (row > FIRST_ROW) {
            sheet.formula(row, 7, "SUM(H2:H" + row + ")");
        } else {
            sheet.value(row, 7, 0);
        }
        sheet.range(row, 0, row, names.size() - 1).style().bold().fillColor(PALE).set();
    }

    /** What is otherwise than in the version before. */
    private void changes(Worksheet sheet) {
        List<String> names = List.of("tank", "place", "column", "before", "now");
        for (int c = 0; c < names.size(); c++) {
            sheet.value(0, c, names.get(c));
            sheet.width(c, 32);
        }
        header(sheet, names.size());
        sheet.freezePane(0, FIRST_ROW);
        int row = FIRST_ROW;
        for (Change change : stamp.changes()) {
            List<String> cells = List.of(
                    change.where(), change.place(), change.column(), change.before(), change.now());
            for (int c = 0; c < cells.size(); c++) {
                if (!cells.get(c).isEmpty()) {
                    sheet.value(row, c, cells.get(c));
                }
            }
            row++;
        }
    }

    private void about(Worksheet sheet) {
        SeasonSummary.Heading heading = summary.heading();
        String[][] facts = {
            {"Chapter", heading.chapter() + " (" + heading.chapterCode() + ")"},
            {"Season", heading.season() + " (" + heading.seasonCode() + ")"},
            {"First day", heading.startsOn().toString()},
            {"Last day", heading.endsOn().toString()},
            {stamp.version().isPresent() ? "Frozen at (UTC)" : "Made at (UTC)", stamp.at().toString()},
            {"Version", stamp.version().isPresent() ? Integer.toString(stamp.version().getAsInt()) : "not frozen"},
            {"Made by", "Tankrounds " + stamp.software()},
        };
        int row = 0;
        for (String[] fact : facts) {
            sheet.value(row, 0, fact[0]);
            sheet.value(row++, 1, fact[1]);
        }
        row++;
        sheet.value(row, 0, "How to read it");
        for (String note : SummaryNotes.in(Words.english())) {
            sheet.value(row, 1, note);
            sheet.style(row++, 1).wrapText(true).set();
        }
        sheet.range(0, 0, row, 0).style().bold().verticalAlignment("top").set();
        sheet.width(0, 18);
        sheet.width(1, 110);
    }

    private static String letter(int column) {
        return column < 26
                ? String.valueOf((char) ('A' + column))
                : letter(column / 26 - 1) + (char) ('A' + column % 26);
    }
}
