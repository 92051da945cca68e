package org.tankrounds.lab;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Forecaster;

/**
 * The signs of a tank at a moment and what came of it.
 *
 * @param signs by {@link org.tankrounds.forecast.Sign}
 * @param harm true fish-hours beyond a limit, per fish alive
 */
record Lesson(double[] signs, boolean beyond, double harm) {

    private static final int HORIZON_HOURS = 72;
    /** Share of the lessons in which the class is taken to have said nothing for up to ten weeks, or nothing at all. */
    private static final double HUSHED = 0.12;
    private static final double NEVER_HEARD = 0.025;
    /** Share in which nobody has filled in what the tank is. */
    private static final double NOTHING_KNOWN = 0.06;

    /** Lessons from tanks of one drawn world, at moments of any hour. */
    static List<Lesson> of(int world, int tanks, int moments, Forecaster forecaster) {
        LabSeason season = LabSeason.played(World.drawn(world), 1, tanks, 1);
        Luck luck = Luck.of(world, "lessons");
        List<Lesson> lessons = new ArrayList<>();
        for (TankSeason tank : season.tanks()) {
            for (int i = 0; i < moments; i++) {
                int hour = luck.happens(0.5)
                        ? season.mornings().get(luck.between(0, season.mornings().size() - 1))
                        : luck.between(0, SchoolCalendar.HOURS - HORIZON_HOURS);
                if (hour > tank.arrivedAt() && tank.alive()[hour] > 0) {
                    lessons.add(lesson(tank, hour, luck, forecaster));
                }
            }
        }
        return lessons;
    }

    private static Lesson lesson(TankSeason tank, int hour, Luck luck, Forecaster forecaster) {
        Instant asOf = LabSeason.at(hour);
        TankSeason.Outcome outcome = tank.after(hour);
        TankFacts facts = luck.happens(NOTHING_KNOWN)
                ? TankFacts.of(tank.facts().tank()).zone(SchoolCalendar.ZONE).build() : tank.facts();
        return new Lesson(forecaster.signs(facts, heard(tank, asOf, luck), asOf),
                outcome.beyond(), outcome.exposure() / tank.alive()[hour]);
    }

    private static List<Observation> heard(TankSeason tank, Instant asOf, Luck luck) {
        if (luck.happens(NEVER_HEARD)) {
            return List.of();
        }
        Instant until = luck.happens(HUSHED) ? asOf.minusSeconds(86_400L * luck.between(1, 70)) : asOf;
        return tank.observations().stream().filter(o -> !o.at().isAfter(until)).toList();
    }
}
