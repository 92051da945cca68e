package org.tankrounds.pages;

import java.util.List;

/**
 * A season in figures, on screen and on paper.
 *
 * @param address of this page, to which a format's ending is added
 * @param ledger school by school: its tanks, then what they come to together
 * @param total the chapter's line of the ledger
 * @param water school by school, held against the limits
 * @param causes what the dead are put down to, where somebody said so
 * @param surplus a sentence where the count leaves something unexplained; empty where it balances
 * @param made when and by which version this was made
 */
public record SummaryPage(
        String title, String chapter, String season, String period, String address, String lead,
        List<LedgerGroup> ledger, LedgerLine total, List<WaterGroup> water, WaterLine waterTotal, List<Cause> causes, String surplus,
        List<String> notes, String made) implements Page {

    /** @param sum shown where the school has several tanks */
    public record LedgerGroup(String school, List<LedgerLine> tanks, LedgerLine sum) {
        public boolean several() {
            return tanks.size() > 1;
        }
    }

    /**
     * @param name room and tank, or what is summed up
     * @param moved away to other tanks, less those that came from them
     */
    public record LedgerLine(
            String name, String code, String received, String deadAsEggs, String deadAsSacFry, String deadFeeding,
            String dead, String moved, String thinned, String released, String alive, String unexplained, String survival) {}

    public record Cause(String name, String dead) {}

    public record WaterGroup(String school, List<WaterLine> tanks) {}

    /** @param readings how many, and how many of them corrected */
    public record WaterLine(String name, String code, String readings, String span, List<Within> series) {}

    /** @param days such as "41 of 44 days"; @param worst such as "14.2 °C on 3 Feb" */
    public record Within(String days, String undecided, String worst, String counts) {}
}
