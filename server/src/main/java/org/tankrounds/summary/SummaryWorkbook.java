package org.tankrounds.summary;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.tankrounds.summary.SeasonSummary.Row;
import org.tankrounds.summary.Column.Kind;
import org.tankrounds.words.Words;

/** The summary as a workbook: typed cells, a header that stays, sums that are formulas over the tanks' rows. */
final class SummaryWorkbook {
    private static final String TANKS = "Tanks";
    private static final String PROPERTIES = "docProps/core.xml";
    private static final String PALE = "EEF4F5";
    private static final int FIRST_ROW = SheetTable.FIRST_ROW;
    /** Sheets by their order. */
    private static final int TANK_SHEET = 1;
    private static final int SCHOOL_SHEET = 2;
    private static final int RELEASE_SHEET = 3;
    private static final int DELIVERY_SHEET = 4;
    private static final int NAME_COLUMNS = 5;
    private static final int SCHOOL_NAME_COLUMNS = 3;
    private static final List<Column<Row>> COLUMNS = SummaryColumns.ALL;

    private final SeasonSummary summary;
    private final Stamp stamp;
    private final FormulaResults formulas = new FormulaResults();

    private SummaryWorkbook(SeasonSummary summary, Stamp stamp) {
        this.summary = summary;
        this.stamp = stamp;
    }

    static byte[] write(SeasonSummary summary, Stamp stamp) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        // An application's version must be two numbers here; the full one stands on the sheet "About".
        SummaryWorkbook writer = new SummaryWorkbook(summary, stamp);
        try (Workbook workbook = new Workbook(bytes, "Tankrounds", "1.0")) {
            writer.tanks(workbook.newWorksheet(TANKS));
            writer.schools(workbook.newWorksheet("Schools"));
            Figures all = summary.chapter().figures();
            writer.list(workbook.newWorksheet("Releases"), RELEASE_SHEET, releaseColumns(), all.releases(), "fish",
                    "All releases");
            writer.list(workbook.newWorksheet("Eggs received"), DELIVERY_SHEET, deliveryColumns(), all.deliveries(),
                    "eggs", "All schools");
            if (!summary.looks().isEmpty()) {
                new SheetTable<>(workbook.newWorksheet("Stream checks"), WatersideColumns.LOOKS).write(summary.looks());
                new SheetTable<>(workbook.newWorksheet("Stream animals"), animalColumns()).write(
                        summary.looks().stream().flatMap(look -> WatersideColumns.found(look).stream()).toList());
            }
            if (!stamp.changes().isEmpty()) {
                new SheetTable<>(workbook.newWorksheet("Changes"), changeColumns()).write(stamp.changes());
            }
            writer.about(workbook.newWorksheet("About"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return FixedZip.again(bytes.toByteArray(), stamp.at(),
                (name, part) -> name.equals(PROPERTIES)
                ? dated(part, stamp.at()) : writer.formulas.written(name, part));
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
        total(sheet, TANK_SHEET, row, letter -> "SUM(" + letter + "2:" + letter + (last + 1) + ")");
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
                    String letter = FormulaResults.letter(c);
                    String range = TANKS + "!$B$2:$B$" + lastTank;
                    formulas.put(sheet, SCHOOL_SHEET, row, c, "SUMIF(" + range + ",B" + (row + 1) + "," + TANKS + "!"
                            + letter + "$2:" + letter + "$" + lastTank + ")", number(COLUMNS.get(c), school));
                }
            }
            row++;
        }
        int last = row;
        total(sheet, SCHOOL_SHEET, row, letter -> "SUM(" + letter + "2:" + letter + last + ")");
        fit(sheet, row);
    }

    /** @param sum from a column's letter to the formula that adds it up */
    private void total(Worksheet sheet, int number, int row, UnaryOperator<String> sum) {
        cells(sheet, row, summary.chapter());
        sheet.value(row, 2, "All schools");
        for (int c = 0; c < COLUMNS.size(); c++) {
            if (COLUMNS.get(c).kind() == Kind.COUNT && row > FIRST_ROW) {
                formulas.put(sheet, number, row, c, sum.apply(FormulaResults.letter(c)),
                        number(COLUMNS.get(c), summary.chapter()));
            }
        }
        sheet.range(row, 0, row, COLUMNS.size() - 1).style().bold().fillColor(PALE).set();
    }

    private void columns(Worksheet sheet, int namesStay) {
        for (int c = 0; c < COLUMNS.size(); c++) {
            sheet.value(0, c, COLUMNS.get(c).name());
        }
        SheetTable.header(sheet, COLUMNS.size());
        sheet.freezePane(namesStay, FIRST_ROW);
    }

    private static Number number(Column<Row> column, Row row) {
        return (Number) column.value().apply(row);
    }

    private static void cells(Worksheet sheet, int row, Row figures) {
        for (int c = 0; c < COLUMNS.size(); c++) {
            SheetTable.cell(sheet, row, c, COLUMNS.get(c).value().apply(figures));
        }
    }

    /** Widths, and how numbers are shown. */
    private static void fit(Worksheet sheet, int lastRow) {
        for (int c = 0; c < COLUMNS.size(); c++) {
            Kind kind = COLUMNS.get(c).kind();
            sheet.width(c, kind == Kind.TEXT ? c == 2 ? 26 : 13 : kind == Kind.TIME ? 18 : 13);
            SheetTable.style(sheet, FIRST_ROW, lastRow, c, kind);
        }
    }

    /** With a sum below that is a formula. */
    private <T> void list(Worksheet sheet, int number, List<Column<T>> columns, List<T> rows,
            String summed, String sumName) {
        SheetTable<T> table = new SheetTable<>(sheet, columns);
        int last = table.write(rows);
        int column = table.column(summed);
        sheet.value(last, 0, sumName);
        if (last > FIRST_ROW) {
            String letter = FormulaResults.letter(column);
            formulas.put(sheet, number, last, column, "SUM(" + letter + "2:" + letter + last + ")",
                    rows.stream().map(columns.get(column).value()).mapToInt(count -> (Integer) count).sum());
        } else {
            sheet.value(last, column, 0);
        }
        sheet.range(last, 0, last, table.width() - 1).style().bold().fillColor(PALE).set();
    }

    private static List<Column<Delivery>> deliveryColumns() {
        return List.of(column("day", Kind.DAY, Delivery::day), column("school_code", Kind.TEXT, Delivery::schoolCode),
                column("school", Kind.TEXT, Delivery::school), column("classroom", Kind.TEXT, Delivery::classroom),
                column("tank", Kind.TEXT, Delivery::tank), column("eggs", Kind.COUNT, Delivery::eggs),
                column("count_off_by_95", Kind.COUNT, Delivery::spread),
                column("counted_how", Kind.TEXT, one -> one.method().code()),
                column("thermal_units_deg_c_days", Kind.NUMBER, one -> one.thermalUnitsC().isPresent()
                        ? Rounded.to(one.thermalUnitsC().getAsDouble(), 1) : null),
                column("supplier", Kind.TEXT, one -> one.supplier().orElse(null)),
                column("certificate", Kind.TEXT, one -> one.certificate().orElse(null)));
    }

    private static List<Column<Release>> releaseColumns() {
        List<Column<Release>> columns = new ArrayList<>(List.of(
                column("site", Kind.TEXT, Release::place), column("approval", Kind.TEXT, Release::approval),
                column("day", Kind.DAY, Release::day), column("school_code", Kind.TEXT, Release::schoolCode),
                column("school", Kind.TEXT, Release::school), column("classroom", Kind.TEXT, Release::classroom),
                column("tank", Kind.TEXT, Release::tank), column("fish", Kind.COUNT, Release::fish),
                column("count_off_by_95", Kind.COUNT, Release::spread),
                column("counted_how", Kind.TEXT, one -> one.method().code()),
                column("tank_temperature_deg_c", Kind.NUMBER, one -> one.tankC().isPresent()
                        ? Rounded.value(Series.TEMPERATURE, one.tankC().getAsDouble()) : null)));
        columns.addAll(WatersideColumns.SEEN);
        return List.copyOf(columns);
    }

    /** What was found in each look at a stream, group by group. */
    private static List<Column<WatersideColumns.Found>> animalColumns() {
        return List.of(column("check", Kind.COUNT, one -> one.look().check().checkId()),
                column("site", Kind.TEXT, one -> one.look().site().name()),
                column("day", Kind.DAY, one -> one.look().day()),
                column("animal", Kind.TEXT, one -> one.group().code()),
                column("found", Kind.COUNT, WatersideColumns.Found::animals));
    }

    /** What is otherwise than in the version before. */
    private static List<Column<Change>> changeColumns() {
        return List.of(column("tank", Kind.TEXT, Change::where), column("place", Kind.TEXT, Change::place),
                column("column", Kind.TEXT, Change::column), column("before", Kind.TEXT, Change::before),
                column("now", Kind.TEXT, Change::now));
    }

    private static <T> Column<T> column(String name, Kind kind, Function<T, Object> value) {
        return new Column<>(name, kind, "", value);
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
}
