package org.tankrounds.pages;

import java.util.List;

/**
 * One season: what came into each tank and what became of it.
 *
 * @param period its days; empty where the chapter has no season yet
 * @param edit address of its form
 * @param calendar address of what is ahead
 * @param summary address of its summary
 * @param eggDay address of its egg day
 */
public record SeasonPage(
        String title, String period, String edit, String calendar, String summary, String eggDay, List<Row> rows,
        List<Other> others) implements Page {

    /**
     * @param dead deaths recorded; empty where there is nothing to count
     * @param unexplained empty where the count balances
     * @param released how many were, in words; empty for none
     * @param calendar address of what is ahead of the tank
     * @param count address of the tank's count
     */
    public record Row(
            String school, String room, String code, List<LotLine> lots, String dead, String alive, String unexplained,
            String released, String stage, String calendar, String addLot, String count) {

        public String place() {
            return school + ", " + room;
        }
    }

    /** @param eggs how many, and when they came */
    public record LotLine(String eggs, String thermalUnits, String papers, String edit) {}

    public record Other(String name, String period, String address) {}

    public boolean exists() {
        return !period.isEmpty();
    }
}
