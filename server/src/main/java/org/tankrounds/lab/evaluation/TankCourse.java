package org.tankrounds.lab.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.TankSeason;

/**
 * What a tank went through in its season.
 *
 * <p>An episode begins with the first hour beyond a limit after 72 hours within all of them, and comes to two
 * hours or more beyond within the 72 hours that follow. So whoever saw it coming did not merely report the
 * last one.
 *
 * @param months of 30 days, from the day the eggs came to the end of the season
 * @param episodes hours of the year at which they began
 */
record TankCourse(LabTank tank, double months, List<Integer> episodes) {

    static final int BEFORE_HOURS = 72;
    private static final double MONTH_HOURS = 30 * 24;

    static TankCourse of(LabTank name, TankSeason tank) {
        List<Integer> episodes = new ArrayList<>();
        int calmSince = 0;
        for (int hour = tank.arrivedAt(); hour < LabSeason.HOURS; hour++) {
            if (tank.excess()[hour] > 0) {
                if (hour - calmSince >= BEFORE_HOURS && hour + BEFORE_HOURS <= LabSeason.HOURS
                        && tank.after(hour).beyond()) {
                    episodes.add(hour);
                }
                calmSince = hour + 1;
            }
        }
        return new TankCourse(
                name, (LabSeason.HOURS - tank.arrivedAt()) / MONTH_HOURS, List.copyOf(episodes));
    }
}
