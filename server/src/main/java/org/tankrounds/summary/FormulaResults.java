package org.tankrounds.summary;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.Worksheet;

/**
 * What the formulas of a workbook come to, written beside them: a reader that does not reckon, such as a phone's
 * preview or a script, would find their cells empty. A spreadsheet reckons them anew all the same.
 */
final class FormulaResults {
    private static final String WORKBOOK = "xl/workbook.xml";
    private static final Pattern FORMULA = Pattern.compile("(<c r=\"([A-Z]+[0-9]+)\"[^>]*><f>[^<]*</f>)</c>");

    private final Map<String, Number> results = new HashMap<>();

    /** @param sheetNumber from 1, in the order of the workbook */
    void put(Worksheet sheet, int sheetNumber, int row, int column, String formula, Number result) {
        sheet.formula(row, column, formula);
        results.put(part(sheetNumber) + letter(column) + (row + 1), result);
    }

    /** Of one part of the workbook's zip. */
    byte[] written(String name, byte[] part) {
        if (name.equals(WORKBOOK)) {
            return text(part).replace("</workbook>", "<calcPr fullCalcOnLoad=\"1\"/></workbook>")
                    .getBytes(StandardCharsets.UTF_8);
        }
        if (results.keySet().stream().noneMatch(cell -> cell.startsWith(name))) {
            return part;
        }
        return FORMULA.matcher(text(part)).replaceAll(cell -> Matcher.quoteReplacement(
                cell.group(1) + "<v>" + results.get(name + cell.group(2)) + "</v></c>"))
                .getBytes(StandardCharsets.UTF_8);
    }

    static String letter(int column) {
        return column < 26
                ? String.valueOf((char) ('A' + column))
                : letter(column / 26 - 1) + (char) ('A' + column % 26);
    }

    private static String part(int sheetNumber) {
        return "xl/worksheets/sheet" + sheetNumber + ".xml";
    }

    private static String text(byte[] part) {
        return new String(part, StandardCharsets.UTF_8);
    }
}
