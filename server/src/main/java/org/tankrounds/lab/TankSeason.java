package org.tankrounds.lab;

import java.util.List;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Limits;

/**
 * One tank's season: what is known of it, and what was true.
 *
 * @param facts as the chapter has them
 * @param observations as the class noted them, oldest first
 * @param arrivedAt hour of the year in which the eggs came
 * @param excess by hour of the year: the sum over the limits of how far the water was beyond; 0 before arrival
 * @param alive by hour of the year
 * @param nearest by hour of the year: the largest level as a share of its limit; 0 before arrival
 */
public record TankSeason(TankFacts facts, List<Observation> observations, int arrivedAt, float[] excess,
        short[] alive, float[] nearest) {

    private static final int HORIZON_HOURS = 72;
    private static final int BEYOND_HOURS = 2;

    /** What came of it. @param beyond two hours or more beyond a limit @param exposure fish-hours */
    public record Outcome(boolean beyond, double exposure) {
    }

    /** What then happened in the 72 hours from an hour of the year. */
    public Outcome after(int hour) {
        int hours = 0;
        double exposure = 0;
        for (int h = hour; h < hour + HORIZON_HOURS; h++) {
            hours += excess[h] > 0 ? 1 : 0;
            exposure += excess[h] * alive[h];
        }
        return new Outcome(hours >= BEYOND_HOURS, exposure);
    }

    /** The same water, of which something else is known. */
    public TankSeason told(TankFacts otherFacts, List<Observation> otherObservations) {
        return new TankSeason(otherFacts, otherObservations, arrivedAt, excess, alive, nearest);
    }

    /** Plays it. The same world, seed and number give the same season. */
    static TankSeason played(World world, long seed, int number, SchoolCalendar calendar) {
        TankLife life = TankLife.begun(world, seed, number, calendar);
        float[] excess = new float[SchoolCalendar.HOURS];
        short[] alive = new short[SchoolCalendar.HOURS];
        float[] nearest = new float[SchoolCalendar.HOURS];
        for (int hour = life.arrivedAt(); hour < SchoolCalendar.HOURS; hour++) {
            LimitShares shares = life.water().shares(Limits.DEFAULT);
            excess[hour] = (float) shares.excess();
            nearest[hour] = (float) shares.nearest();
            alive[hour] = (short) life.water().alive();
            life.pass(hour);
        }
        return new TankSeason(
                life.facts(), List.copyOf(life.notes()), life.arrivedAt(), excess, alive, nearest);
    }
}
