package org.tankrounds.lab;

import java.util.List;
import java.util.Map;
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
        Luck luck = Luck.of(seed * 1_009 + number, world.name());
        Map<Trait, Double> traits = world.tank(luck);
        int arrivedAt = 24 * traits.get(Trait.ARRIVES_DAY).intValue() + 10;
        TankFacts facts = facts(traits, number, calendar, arrivedAt, luck);
        TankWater tank = new TankWater(traits,
                facts.chlorideMgPerL().orElse(Limits.CHLORIDE_WHERE_UNKNOWN_MG_PER_L), luck);
        SchoolClass schoolClass = new SchoolClass(tank, arrivedAt, luck);
        float[] excess = new float[SchoolCalendar.HOURS];
        short[] alive = new short[SchoolCalendar.HOURS];
        float[] nearest = new float[SchoolCalendar.HOURS];
        for (int hour = arrivedAt; hour < SchoolCalendar.HOURS; hour++) {
            excess[hour] = (float) tank.excess(Limits.DEFAULT);
            alive[hour] = (short) tank.alive();
            nearest[hour] = (float) tank.nearest(Limits.DEFAULT);
            schoolClass.pass(hour, calendar);
            tank.pass(hour, calendar);
        }
        return new TankSeason(facts, List.copyOf(schoolClass.notes()), arrivedAt, excess, alive, nearest);
    }

    private static TankFacts facts(
            Map<Trait, Double> traits, int number, SchoolCalendar calendar, int arrivedAt, Luck luck) {
        double missing = traits.get(Trait.FACTS_MISSING);
        return TankFacts.of(String.format("T%03d", number))
                .volumeL(luck.happens(missing) ? null : Math.rint(traits.get(Trait.VOLUME_L)))
                .eggs(luck.happens(missing) ? null : traits.get(Trait.EGGS).intValue())
                .eggsReceivedAt(luck.happens(missing / 2) ? null : calendar.at(arrivedAt))
                .thermalUnitsC(luck.happens(missing) ? null : Math.rint(traits.get(Trait.THERMAL_UNITS_C)))
                .sourceAlkalinityMgPerL(luck.happens(missing) ? null : Math.rint(traits.get(Trait.ALKALINITY_MG_PER_L)))
                .chlorideMgPerL(luck.happens(missing) ? null : Math.rint(traits.get(Trait.CHLORIDE_MG_PER_L)))
                .zone(SchoolCalendar.ZONE)
                .build();
    }
}
