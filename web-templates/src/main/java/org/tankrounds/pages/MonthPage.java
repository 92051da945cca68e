package org.tankrounds.pages;

import java.util.List;
import org.tankrounds.pages.LogPage.Hidden;
import org.tankrounds.pages.LogPage.Step;
import org.tankrounds.pages.SheetPage.OtherMonth;

/**
 * A filled log sheet to be typed in: one row a day, one box for each column of the paper.
 *
 * @param place school and room
 * @param month as in addresses
 * @param submissionId one for each page shown: sent twice, it stores once
 * @param saved what was stored just now; empty where nothing was
 * @param time the usual time of day
 * @param scales of the thermometer
 * @param repeats rows that are in already, with what is to become of them
 * @param kept answers already given, to be sent along
 * @param wrong what is wrong, in the order of the page; each with the name of its box
 */
public record MonthPage(
        String title, String heading, String place, String month, String tankTo, String action, String submissionId,
        String saved, List<OtherMonth> months, String sheetTo, FormField time, List<Step> scales, List<AskBack> asks,
        Repeats repeats, List<Hidden> kept, List<Column> columns, List<Row> rows, List<FormField> wrong)
        implements Page {

    /** @param width word for how wide it is, of the style sheet */
    public record Column(String name, String unit, String width) {}

    /**
     * @param code starts the names of its boxes
     * @param there what is stored of that day already; may be empty
     * @param closed for a day still to come
     * @param errors what is wrong in it
     */
    public record Row(String code, String day, String there, boolean weekend, boolean closed, List<Cell> cells,
            List<String> errors) {
        /** For readers; null where nothing is wrong. */
        public String said() {
            return errors.isEmpty() ? null : code + "said";
        }
    }

    /** @param label day and column, for readers */
    public record Cell(String name, String label, String value, String width, String inputMode, boolean wrong) {}

    /**
     * Rows that are in already; none of them is asked about where there are none.
     *
     * @param asked the days in one word, to go along with the answer
     */
    public record Repeats(List<Repeated> rows, String asked, List<Step> choices) {}

    /** @param typed what the row says, or that it says the same */
    public record Repeated(String day, String there, String typed) {}

    /** Whether any day can be filled in. */
    public boolean isOpen() {
        return rows.stream().anyMatch(row -> !row.closed());
    }
}
