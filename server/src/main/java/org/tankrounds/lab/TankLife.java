package org.tankrounds.lab;

import java.util.List;
import java.util.Map;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Limits;

/** One tank with its class, hour by hour; at any hour it can be copied to see what else could come. */
final class TankLife {

    private final TankFacts facts;
    private final int arrivedAt;
    private final SchoolCalendar calendar;
    private final TankWater water;
    private final SchoolClass schoolClass;

    private TankLife(TankFacts facts, int arrivedAt, SchoolCalendar calendar, TankWater water,
            SchoolClass schoolClass) {
        this.facts = facts;
        this.arrivedAt = arrivedAt;
        this.calendar = calendar;
        this.water = water;
        this.schoolClass = schoolClass;
    }

    /** On the day the eggs come. The same world, seed and number give the same life. */
    static TankLife begun(World world, long seed, int number, SchoolCalendar calendar) {
        Luck luck = Luck.of(seed * 1_009 + number, world.name());
        Map<Trait, Double> traits = world.tank(luck);
        int arrivedAt = 24 * traits.get(Trait.ARRIVES_DAY).intValue() + 10;
        TankFacts facts = facts(traits, number, calendar, arrivedAt, luck);
        TankWater water = new TankWater(traits, world.mechanics(),
                facts.chlorideMgPerL().orElse(Limits.CHLORIDE_WHERE_UNKNOWN_MG_PER_L), luck);
        return new TankLife(facts, arrivedAt, calendar, water, 
                new SchoolClass(water, world.mechanics().visits(), arrivedAt, luck));
    }

    /** The same tank and class from now on with luck of their own. */
    TankLife copy(Luck watersLuck, Luck classesLuck) {
        TankWater same = new TankWater(water, watersLuck);
        return new TankLife(facts, arrivedAt, calendar, same, new SchoolClass(schoolClass, same, classesLuck));
    }

    /** One hour on. */
    void pass(int hour) {
        schoolClass.pass(hour, calendar);
        water.pass(hour, calendar);
    }

    /** One hour on, its class doing what another did at such a tank, but for feed where it is not to feed. */
    void passHandled(int hour, List<Handling> handlings) {
        if (calendar.hourOfDay(hour) == 0) {
            water.deaths();
        }
        handlings.stream()
                .filter(handling -> handling.kind() != Handling.Kind.FEED || !schoolClass.fasts(hour))
                .forEach(handling -> handling.on(water));
        water.pass(hour, calendar);
    }

    TankFacts facts() {
        return facts;
    }

    int arrivedAt() {
        return arrivedAt;
    }

    TankWater water() {
        return water;
    }

    SchoolClass schoolClass() {
        return schoolClass;
    }

    List<Observation> notes() {
        return schoolClass.notes();
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
