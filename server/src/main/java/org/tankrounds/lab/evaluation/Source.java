package org.tankrounds.lab.evaluation;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.fish.SeenStages;
import org.tankrounds.lab.TankSeason;
import org.tankrounds.water.Analyte;

/** Something that the engine is told, and that it can be asked to do without. */
public enum Source {
    TEMPERATURE(Analyte.TEMPERATURE),
    /** Thermometers that write a value every few hours, to a tenth of a degree. */
    PROBE(Source::isOfProbe, facts -> facts),
    PH(Analyte.PH),
    AMMONIA(Analyte.TOTAL_AMMONIA),
    NITRITE(Analyte.NITRITE),
    NITRATE(Analyte.NITRATE),
    OXYGEN(Analyte.DISSOLVED_OXYGEN),
    EVENTS(Analyte.FEED, Analyte.DEATHS, Analyte.WATER_CHANGE),
    FEED(Analyte.FEED),
    DEATHS(Analyte.DEATHS),
    CHANGES(Analyte.WATER_CHANGE),
    /** When the eggs came and how far they were. */
    STAGE(reading -> false, facts -> known(facts)
            .eggsReceivedAt(null).thermalUnitsC(null).seen(SeenStages.NONE).build()),
    EGGS(reading -> false, facts -> known(facts).eggs(null).build()),
    CHLORIDE(reading -> reading.analyte() == Analyte.CHLORIDE,
            facts -> known(facts).chlorideMgPerL(null).build()),
    ALKALINITY(reading -> reading.analyte() == Analyte.ALKALINITY,
            facts -> known(facts).sourceAlkalinityMgPerL(null).build()),
    VOLUME(reading -> false, facts -> known(facts).volumeL(null).build());

    private static final double PROBE_HALF_STEP_C = 0.05;

    private final Predicate<Observation> told;
    private final UnaryOperator<TankFacts> facts;

    Source(Analyte... analytes) {
        this(reading -> List.of(analytes).contains(reading.analyte()), known -> known);
    }

    Source(Predicate<Observation> told, UnaryOperator<TankFacts> without) {
        this.told = told;
        this.facts = without;
    }

    /** By its name on the command line. */
    public static Optional<Source> named(String name) {
        return Stream.of(values()).filter(source -> source.title().equals(name)).findFirst();
    }

    /** All names, as a sentence lists them. */
    public static String names() {
        return Stream.of(values()).map(Source::title).collect(Collectors.joining(", "));
    }

    public String title() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The same season, told without it. */
    TankSeason without(TankSeason tank) {
        return tank.told(facts.apply(tank.facts()),
                tank.observations().stream().filter(told.negate()).toList());
    }

    /** Whether it says anything of a tank. */
    boolean tells(TankSeason tank) {
        return tank.observations().stream().anyMatch(told) || !facts.apply(tank.facts()).equals(tank.facts());
    }

    private static boolean isOfProbe(Observation reading) {
        return reading.analyte() == Analyte.TEMPERATURE
                && reading.halfStep() > 0 && reading.halfStep() <= PROBE_HALF_STEP_C;
    }

    private static TankFacts.Builder known(TankFacts facts) {
        TankFacts.Builder same = TankFacts.of(facts.tank()).zone(facts.zone());
        facts.volumeL().ifPresent(same::volumeL);
        facts.eggs().ifPresent(same::eggs);
        facts.eggsReceivedAt().ifPresent(same::eggsReceivedAt);
        facts.thermalUnitsC().ifPresent(same::thermalUnitsC);
        facts.sourceAlkalinityMgPerL().ifPresent(same::sourceAlkalinityMgPerL);
        facts.chlorideMgPerL().ifPresent(same::chlorideMgPerL);
        facts.chillerSetPointC().ifPresent(same::chillerSetPointC);
        facts.elevationM().ifPresent(same::elevationM);
        same.seen(facts.seen());
        return same;
    }
}
