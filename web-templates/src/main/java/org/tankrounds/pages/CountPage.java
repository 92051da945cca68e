package org.tankrounds.pages;

import java.util.List;

/**
 * The count of one tank's fish in a season.
 *
 * @param season its name
 * @param seasonTo its page; empty for who may not see it
 * @param tankTo the tank's page
 * @param saved what was just done; empty for nothing
 * @param doubt what the count leaves unexplained, in a sentence; empty where it balances
 * @param emptied what to do now that no fish is left, in a sentence; empty while there are
 * @param acts what can be written down
 * @param rows the newest first
 * @param gone eggs that were taken away as mistakes, in sentences
 */
public record CountPage(String title, String season, String seasonTo, String tank, String tankTo, String saved,
        List<Figure> figures, String doubt, String emptied, List<Act> acts, List<Row> rows,
        List<String> gone) implements Page {

    public record Figure(String name, String fish) {}

    public record Act(String text, String to) {}

    /**
     * @param detail how it was counted, by what approval, by whom
     * @param change with its sign; empty where the count stays
     * @param left by count after it
     * @param undo where it is taken back; empty of what is not written down here
     * @param cause where it is said what they died of; empty of all but the dead
     * @param takeAway where eggs are taken away that were written down by mistake; empty of all else,
     *     and for who may not
     */
    public record Row(String when, String what, String detail, String change, String left, String undo, String cause,
            String takeAway) {}
}
