package org.tankrounds.summary;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import org.dhatim.fastexcel.Worksheet;
import org.tankrounds.summary.Column.Kind;

/** Rows of one sort on a sheet: typed cells below a header that stays. */
final class SheetTable<T> {
    static final int FIRST_ROW = 1;
    private static final String DARK = "0D4F5C";
    private static final int NARROWEST = 11;
    private static final int WIDEST = 40;

    private final Worksheet sheet;
    private final List<Column<T>> columns;

    SheetTable(Worksheet sheet, List<Column<T>> columns) {
        this.sheet = sheet;
        this.columns = columns;
    }

    /** @return the row below them */
    int write(List<T> rows) {
        for (int c = 0; c < columns.size(); c++) {
            sheet.value(0, c, columns.get(c).name());
            sheet.width(c, width(columns.get(c), rows));
        }
        header(sheet, columns.size());
        sheet.freezePane(0, FIRST_ROW);
        int row = FIRST_ROW;
        for (T one : rows) {
            for (int c = 0; c < columns.size(); c++) {
                cell(sheet, row, c, columns.get(c).value().apply(one));
                style(sheet, row, row, c, columns.get(c).kind());
            }
            row++;
        }
        return row;
    }

    /** As wide as what stands in it, in characters; headings go over two lines. */
    private int width(Column<T> column, List<T> rows) {
        int longest = rows.stream().map(column.value()).filter(Objects::nonNull)
                .mapToInt(value -> value.toString().length()).max().orElse(0);
        return Math.max(NARROWEST, Math.min(WIDEST, Math.max(longest, column.name().length() / 2) + 2));
    }

    int column(String name) {
        return columns.stream().map(Column::name).toList().indexOf(name);
    }

    int width() {
        return columns.size();
    }

    static void header(Worksheet sheet, int columns) {
        sheet.range(0, 0, 0, columns - 1).style()
                .bold().fontColor("FFFFFF").fillColor(DARK).wrapText(true).verticalAlignment("center").set();
        sheet.rowHeight(0, 62);
        sheet.repeatRows(0);
        sheet.pageOrientation("landscape");
    }

    /** @param value null and empty text leave the cell empty */
    static void cell(Worksheet sheet, int row, int column, Object value) {
        if (value instanceof Instant at) {
            sheet.value(row, column, LocalDateTime.ofInstant(at, ZoneOffset.UTC));
        } else if (value instanceof LocalDate day) {
            sheet.value(row, column, day);
        } else if (value instanceof BigDecimal || value instanceof Integer) {
            sheet.value(row, column, (Number) value);
        } else if (value != null && !value.toString().isEmpty()) {
            sheet.value(row, column, value.toString());
        }
    }

    /** How numbers of a kind are shown. */
    static void style(Worksheet sheet, int firstRow, int lastRow, int column, Kind kind) {
        String format = switch (kind) {
            case DAY -> "yyyy-mm-dd";
            case TIME -> "yyyy-mm-dd hh:mm";
            case SHARE -> "0.0%";
            case TEXT, COUNT, NUMBER -> "";
        };
        if (!format.isEmpty()) {
            sheet.range(firstRow, column, lastRow, column).style().format(format).set();
        }
    }
}
