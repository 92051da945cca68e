package org.tankrounds.forecast;

import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.SeriesBelief;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.fish.Stage;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.Analyte;

/** Reads the signs of a tank from what is held of it, from the look ahead and from the readings themselves. */
final class Signs {

    private static final double FORTNIGHT_DAYS = 14;
    private static final double HABIT_DAYS = 28;
    private static final double NEUTRAL_PH = 7;
    /** As far as a forecast sees: earlier than that before first feeding, all are alike. */
    private static final double SOON_DAYS = 3;
    /** From then on a filter is as ripe as it gets. */
    private static final double LONG_FED_DAYS = 90;

    private final double[] values = new double[Sign.values().length];
    private final TankBelief belief;
    private final Limits limits;
    private final Instant asOf;
    private final Stage stage;
    private final Map<Analyte, List<Observation>> readings;

    private Signs(TankBelief belief, List<Observation> observations, Limits limits) {
        this.belief = belief;
        this.limits = limits;
        asOf = belief.asOf();
        stage = belief.development().stageAt(asOf);
        readings = observations.stream().filter(o -> !o.at().isAfter(asOf)).distinct()
                .sorted(Comparator.comparing(Observation::at).thenComparingDouble(Observation::value)
                        .thenComparingDouble(Observation::halfStep))
                .collect(Collectors.groupingBy(Observation::analyte, () -> new EnumMap<>(Analyte.class),
                        Collectors.toList()));
        Arrays.fill(values, Double.NaN);
    }

    /** By {@link Sign#ordinal}. */
    static double[] of(TankBelief belief, Outcome outcome, List<Observation> observations, Limits limits) {
        Signs signs = new Signs(belief, observations, limits);
        signs.ahead(outcome);
        signs.held();
        signs.temperature();
        signs.ammonia();
        signs.nitrite();
        signs.ph();
        signs.otherTests();
        signs.tank();
        signs.habits();
        return signs.values;
    }

    private void put(Sign sign, double value) {
        values[sign.ordinal()] = value;
    }

    private void ahead(Outcome outcome) {
        put(Sign.LOOK_AHEAD_CHANCE, outcome.chanceOnPaths());
        put(Sign.BEYOND_NOW_CHANCE, outcome.beyondNowChance());
        ahead(outcome, Driver.TEMPERATURE, Sign.TEMPERATURE_EXCESS, Sign.TEMPERATURE_CHANCE);
        ahead(outcome, Driver.UN_IONISED_AMMONIA, Sign.AMMONIA_EXCESS, Sign.AMMONIA_CHANCE);
        ahead(outcome, Driver.NITRITE, Sign.NITRITE_EXCESS, Sign.NITRITE_CHANCE);
        ahead(outcome, Driver.DISSOLVED_OXYGEN, Sign.OXYGEN_EXCESS, Sign.OXYGEN_CHANCE);
        ahead(outcome, Driver.PH, Sign.PH_EXCESS, Sign.PH_CHANCE);
    }

    private void ahead(Outcome outcome, Driver limit, Sign excess, Sign chance) {
        put(excess, StrictMath.log1p(outcome.excess(limit)));
        put(chance, outcome.chanceOf(limit));
    }

    private void held() {
        double temperatureC = belief.temperature().medianC();
        double ammonia = belief.totalAmmonia().valueNow();
        double ph = belief.ph().valueNow();
        put(Sign.CHILLER_STANDS_CHANCE, belief.temperature().stoppedChance());
        put(Sign.TEMPERATURE_U, limits.ofTemperature(stage, temperatureC));
        put(Sign.AMMONIA_MG_PER_L, ammonia);
        put(Sign.UN_IONISED_U, unIonisedU(ammonia, ph));
        put(Sign.NITRITE_U, nitriteU(belief.nitrite().valueNow()));
        put(Sign.ACIDITY, acidity(ph));
        put(Sign.OXYGEN_SHARE, belief.oxygenShare().valueNow());
        put(Sign.AMMONIA_SLOPE, belief.totalAmmonia().state().slope());
        put(Sign.NITRITE_SLOPE, belief.nitrite().state().slope());
        put(Sign.AMMONIA_HIGH_MG_PER_L, belief.totalAmmonia().highNow());
        put(Sign.NITRITE_HIGH_U, nitriteU(belief.nitrite().highNow()));
        put(Sign.PH_SD, Math.sqrt(belief.ph().state().levelVar()));
    }

    private double unIonisedU(double totalMgPerL, double ph) {
        return limits.ofUnIonisedAmmonia(
                Ammonia.unIonisedMgPerL(totalMgPerL, ph, belief.temperature().medianC()));
    }

    private static double acidity(double ph) {
        return Math.max(0, NEUTRAL_PH - ph);
    }

    private double nitriteU(double mgPerL) {
        return limits.ofNitrite(mgPerL, belief.chlorideMgPerL());
    }

    /** Without those that cannot be. */
    private ReadSeries of(Analyte analyte) {
        return read(analyte, Observation::isCredible);
    }

    /** Without the newest one where that is set aside, and with what cannot be where it is believed. */
    private ReadSeries of(Analyte analyte, SeriesBelief series) {
        return read(analyte, o -> !isSetAside(o, series) && (o.isCredible() || series.readings().contains(o)));
    }

    /** Or was sent again since. */
    private static boolean isSetAside(Observation reading, SeriesBelief series) {
        return series.setAside().filter(setAside -> reading.value() == setAside.value()
                && !reading.at().isBefore(setAside.at())).isPresent();
    }

    private ReadSeries read(Analyte analyte, Predicate<Observation> counts) {
        return new ReadSeries(readings.getOrDefault(analyte, List.of()).stream().filter(counts).toList(), asOf);
    }

    private void temperature() {
        ReadSeries read = new ReadSeries(belief.temperature().readings(), asOf);
        put(Sign.TEMPERATURE_READ_U, limits.ofTemperature(stage, read.newest(0)));
        put(Sign.TEMPERATURE_MEAN_U, limits.ofTemperature(stage, read.recentMean()));
        put(Sign.TEMPERATURE_MEDIAN_U, limits.ofTemperature(stage, read.median()));
        put(Sign.TEMPERATURE_HIGHEST_U, limits.ofTemperature(stage, of(Analyte.TEMPERATURE).highestButOne()));
        put(Sign.TEMPERATURE_AGE, read.ageDays());
    }

    private void ammonia() {
        ReadSeries read = of(Analyte.TOTAL_AMMONIA, belief.totalAmmonia());
        put(Sign.AMMONIA_READ_MG_PER_L, read.newest(0));
        put(Sign.AMMONIA_READ_BEFORE_MG_PER_L, read.newest(1));
        put(Sign.AMMONIA_MEAN_MG_PER_L, read.recentMean());
        put(Sign.AMMONIA_MEDIAN_MG_PER_L, read.median());
        put(Sign.AMMONIA_HIGHEST_MG_PER_L, read.highestButOne());
        put(Sign.AMMONIA_AGE, read.ageDays());
        put(Sign.AMMONIA_HALF_STEP_MG_PER_L, read.halfStep());
    }

    private void nitrite() {
        ReadSeries read = of(Analyte.NITRITE, belief.nitrite());
        put(Sign.NITRITE_READ_U, nitriteU(read.newest(0)));
        put(Sign.NITRITE_READ_BEFORE_U, nitriteU(read.newest(1)));
        put(Sign.NITRITE_MEAN_U, nitriteU(read.recentMean()));
        put(Sign.NITRITE_MEDIAN_U, nitriteU(read.median()));
        put(Sign.NITRITE_HIGHEST_U, nitriteU(read.highestButOne()));
        put(Sign.NITRITE_HALF_STEP_U, nitriteU(read.halfStep()));
    }

    private void ph() {
        ReadSeries read = of(Analyte.PH, belief.ph());
        ReadSeries ammonia = of(Analyte.TOTAL_AMMONIA, belief.totalAmmonia());
        put(Sign.ACIDITY_READ, acidity(read.newest(0)));
        put(Sign.ACIDITY_MEAN, acidity(read.recentMean()));
        put(Sign.ACIDITY_MEDIAN, acidity(read.median()));
        put(Sign.ACIDITY_HIGHEST, acidity(read.lowestButOne()));
        put(Sign.UN_IONISED_READ_U, unIonisedU(ammonia.newest(0), read.newest(0)));
        put(Sign.UN_IONISED_MEAN_U, unIonisedU(ammonia.recentMean(), read.recentMean()));
        put(Sign.UN_IONISED_MEDIAN_U, unIonisedU(ammonia.median(), read.median()));
        put(Sign.PH_AGE, read.ageDays());
    }

    private void otherTests() {
        ReadSeries nitrate = of(Analyte.NITRATE);
        put(Sign.NITRATE_READ_MG_PER_L, nitrate.newest(0));
        put(Sign.NITRATE_AGE, nitrate.ageDays());
        ReadSeries alkalinity = of(Analyte.ALKALINITY);
        put(Sign.ALKALINITY_READ_MG_PER_L, alkalinity.newest(0));
        put(Sign.ALKALINITY_AGE, alkalinity.ageDays());
        put(Sign.OXYGEN_READ_MG_PER_L, of(Analyte.DISSOLVED_OXYGEN, belief.oxygenShare()).newest(0));
    }

    private void tank() {
        put(Sign.NITRITE_LIMIT_MG_PER_L, limits.nitriteMgPerL(belief.chlorideMgPerL()));
        put(Sign.SOURCE_ALKALINITY_MG_PER_L, belief.facts().sourceAlkalinityMgPerL().orElse(Double.NaN));
        put(Sign.VOLUME_L, belief.facts().volumeL().orElse(Double.NaN));
        put(Sign.FISH_PER_100_L, belief.facts().eggs().isEmpty() || belief.facts().volumeL().isEmpty() ? Double.NaN
                : 100 * belief.fishAlive() / belief.facts().volumeL().getAsDouble());
        put(Sign.DAYS_FEEDING, belief.facts().eggsReceivedAt().isEmpty() && readings.isEmpty() ? Double.NaN
                : Math.min(LONG_FED_DAYS, Math.max(-SOON_DAYS, belief.development().daysFeedingAt(asOf))));
        put(Sign.WEEKDAY, asOf.atZone(belief.facts().zone()).getDayOfWeek().getValue());
    }

    private void habits() {
        put(Sign.SILENT_DAYS, belief.newest().map(at -> days(at)).orElse(Double.NaN));
        put(Sign.DAYS_READ, readings.values().stream().flatMap(List::stream).map(o -> days(o.at()))
                .filter(days -> days < FORTNIGHT_DAYS).map(Double::intValue).distinct().count());
        ReadSeries changes = of(Analyte.WATER_CHANGE);
        put(Sign.CHANGE_AGE, changes.ageDays());
        put(Sign.CHANGES, changes.countOf(HABIT_DAYS));
        put(Sign.CHANGED_SHARE, changes.sumOf(HABIT_DAYS) / 100);
        ReadSeries feed = of(Analyte.FEED);
        put(Sign.FEED_G_PER_100_L,
                feed.isEmpty() ? Double.NaN : 100 * feed.sumOf(7) / belief.facts().volumeL().orElse(150));
        ReadSeries deaths = deaths();
        put(Sign.DEAD_OF_3_DAYS, 100 * deaths.sumOf(3) / belief.deaths().alive());
        put(Sign.DEAD_OF_14_DAYS, 100 * deaths.sumOf(FORTNIGHT_DAYS) / belief.deaths().alive());
    }

    /** The same signs, had nobody found a fish dead. */
    static double[] hadNoneDied(double[] signs) {
        double[] without = signs.clone();
        without[Sign.DEAD_OF_3_DAYS.ordinal()] = 0;
        without[Sign.DEAD_OF_14_DAYS.ordinal()] = 0;
        return without;
    }

    /** A count that is doubted for being large is of as many as are likely at least. */
    private ReadSeries deaths() {
        return new ReadSeries(readings.getOrDefault(Analyte.DEATHS, List.of()).stream()
                .map(o -> Observation.of(o.at(), o.analyte(), o.analyte().likely().nearest(o.value()), o.halfStep()))
                .toList(), asOf);
    }

    private double days(Instant at) {
        return (asOf.getEpochSecond() - at.getEpochSecond()) / 86_400.0;
    }
}
