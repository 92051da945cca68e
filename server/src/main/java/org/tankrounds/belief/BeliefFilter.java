package org.tankrounds.belief;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.tankrounds.fish.DatedTemperature;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.LotCalendar;
import org.tankrounds.fish.Warmth;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.OxygenSaturation;

/** From facts and observations to what is held of the tank at a moment. */
public final class BeliefFilter {

    /** Eggs taken where nobody has said how many came. */
    public static final int EGGS_WHERE_UNKNOWN = 100;
    /** Chloride taken where nobody has said, mg/L. */
    public static final double CHLORIDE_WHERE_UNKNOWN_MG_PER_L = ChlorideSource.WHERE_UNKNOWN_MG_PER_L;
    /** Chlorine is driven out by the air stones to 1/e in this time, h (common practice, no source). */
    public static final double CHLORINE_HOURS = 20;
    /** No classroom raises more (common practice, no source). */
    private static final double MOST_EGGS_PER_L = 20;
    private static final double LARGE_TANK_L = 1000;
    private static final int NEWEST_TEMPERATURES = 16;
    private static final Duration TEMPERATURES_SINCE = Duration.ofDays(30);
    private static final double USUAL_HALF_STEP_C = 0.5;
    private static final double LONGEST_STEP_H = 72;
    /** By so much lots differ in when they swim up; a feed noted earlier waits for another (the project's choice). */
    private static final Duration SWIM_UP_SPREAD = Duration.ofDays(5);
    private static final Duration ANOTHER_FEED_AFTER = Duration.ofHours(12);
    /** Feed may be noted for a week at once, and a week may be left out. */
    private static final Duration ANOTHER_FEED_WITHIN = Duration.ofDays(15);

    private final TankFacts facts;
    private final Instant asOf;
    private final History history;
    private final List<Observation> temperatures;
    private final List<DatedTemperature> trace;
    private final Development computed;
    private final Optional<Instant> fed;

    private BeliefFilter(TankFacts facts, List<Observation> observations, Instant asOf) {
        this.facts = facts;
        this.asOf = asOf;
        this.history = new History(observations, asOf);
        this.temperatures = TemperatureReadings.looks(TemperatureReadings.setRight(
                history.of(Analyte.TEMPERATURE), facts.chillerSetPointC().orElse(Population.HELD_C),
                history.secondLooks()));
        this.trace = TemperatureReadings.trace(temperatures);
        this.computed = developmentWith(facts.firstFeedingAt());
        this.fed = firstFeed();
    }

    /** What is held at {@code asOf}; observations may come in any order, later ones do not count. */
    public static TankBelief believe(
            TankFacts facts, List<Observation> observations, Instant asOf) {
        return new BeliefFilter(facts, observations, asOf).belief();
    }

    private TankBelief belief() {
        Development development = development();
        ToDoubleFunction<Instant> ph = at -> Population.ph(facts.sourceAlkalinityMgPerL().orElse(Double.NaN));
        ChlorineReadings chlorine =
                ChlorineReadings.of(history.of(Analyte.CHLORINE), history.secondLooks());
        return new TankBelief(facts, asOf, development, fishAlive(), temperature(),
                nitrogen(Analyte.TOTAL_AMMONIA, TrendModel.TOTAL_AMMONIA, development),
                nitrogen(Analyte.NITRITE, TrendModel.NITRITE, development),
                series(Analyte.PH, TrendModel.PH, ph),
                oxygenShare(),
                chlorine.held().map(this::chlorineLeft).orElse(0.0), chlorine.held(), chlorine.setAside(),
                ChlorideReadings.held(facts, history.sure(Analyte.CHLORIDE), history.sure(Analyte.WATER_CHANGE),
                        history.secondLooks()),
                history.newest(Analyte.ALKALINITY), history.routine(asOf),
                history.deaths(asOf, eggs()), history.newest(), fed, calendar(development));
    }

    private Development development() {
        boolean fedEarlier = facts.firstFeedingAt().isEmpty() && fed.isPresent()
                && fed.get().isBefore(computed.firstFeedingAt());
        return fedEarlier ? developmentWith(fed) : computed;
    }

    /** Only while there is something to come to. */
    private Optional<LotCalendar> calendar(Development development) {
        return facts.eggsReceivedAt().filter(received -> development.stageAt(asOf).isBeforeFirstFeeding())
                .map(received -> LotCalendar.of(received, facts.thermalUnitsC(),
                        Warmth.of(trace, facts.chillerSetPointC().orElse(Population.HELD_C)), facts.seen()));
    }

    private Development developmentWith(Optional<Instant> firstFeeding) {
        Instant received = facts.eggsReceivedAt().or(history::first).orElse(asOf);
        return Development.of(received, facts.thermalUnitsC(), trace,
                facts.chillerSetPointC().orElse(Population.HELD_C),
                facts.seen().withFirstFeedingAt(firstFeeding), asOf);
    }

    /**
     * A number in the wrong box would make feeding fish of sac fry, and the tighter limits theirs no more. What was
     * given before there were fish fed the filter.
     */
    private Optional<Instant> firstFeed() {
        List<Instant> feeds = feeds().stream().filter(feed -> facts.eggsReceivedAt().isEmpty()
                || feed.isAfter(computed.hatchAt())).toList();
        Instant swimUp = computed.firstFeedingAt().minus(SWIM_UP_SPREAD);
        return feeds.stream().filter(feed -> !feed.isBefore(swimUp) || feeds.stream().anyMatch(other ->
                other.isAfter(feed.plus(ANOTHER_FEED_AFTER)) && other.isBefore(feed.plus(ANOTHER_FEED_WITHIN))))
                .findFirst();
    }

    private List<Instant> feeds() {
        return history.of(Analyte.FEED).stream().filter(feed -> feed.value() > 0).map(Observation::at).toList();
    }

    private int fishAlive() {
        return FishAlive.of(eggs(), history.sure(Analyte.DEATHS), history.secondLooks());
    }

    /** As told, unless it cannot be: more than the tank holds, or none where somebody feeds them. */
    private int eggs() {
        int told = facts.eggs().orElse(EGGS_WHERE_UNKNOWN);
        double most = MOST_EGGS_PER_L * facts.volumeL().orElse(LARGE_TANK_L);
        return told > most || told == 0 && !feeds().isEmpty() ? EGGS_WHERE_UNKNOWN : told;
    }

    private TemperatureBelief temperature() {
        List<Observation> recent = recentTemperatures();
        TemperatureFilter filter = temperatureFilter();
        List<Observation> fitting = new ArrayList<>();
        Observation setAside = null;
        Instant at = recent.isEmpty() ? asOf.minus(Duration.ofDays(14)) : recent.get(0).at();
        for (Observation reading : recent) {
            advance(filter, at, reading.at());
            at = reading.at();
            double half = reading.halfStep() > 0 ? reading.halfStep() : USUAL_HALF_STEP_C;
            if (isAgain(setAside, reading, filter)) {
                continue;
            }
            if (reading == temperatures.get(0)) {
                filter.seeFirst(reading.value(), half, reading.doubtful());
                fitting.add(reading);
            } else if (filter.see(reading.value(), half, reading.doubtful())) {
                fitting.add(reading);
                setAside = null;
            } else if (setAside != null && filter.isSame(setAside, reading)) {
                filter.beginAgainAt(reading.value(), half);
                fitting.add(setAside);
                fitting.add(reading);
                setAside = null;
            } else {
                setAside = reading;
            }
        }
        advance(filter, at, asOf);
        return filter.belief(fitting, Optional.ofNullable(setAside));
    }

    private boolean isAgain(Observation setAside, Observation reading, TemperatureFilter filter) {
        return setAside != null && filter.isSame(setAside, reading)
                && !history.secondLooks().areTwo(setAside, reading);
    }

    private List<Observation> recentTemperatures() {
        Instant since = asOf.minus(TEMPERATURES_SINCE);
        List<Observation> recent = temperatures.stream().filter(o -> o.at().isAfter(since)).toList();
        return recent.subList(Math.max(0, recent.size() - NEWEST_TEMPERATURES), recent.size());
    }

    private TemperatureFilter temperatureFilter() {
        double[] earlier = temperatures.stream().mapToDouble(Observation::value).toArray();
        boolean knowsUsual = earlier.length >= 5;
        double usual = knowsUsual ? TemperatureReadings.median(earlier)
                : facts.chillerSetPointC().orElse(Population.HELD_C);
        return new TemperatureFilter(usual, knowsUsual || facts.chillerSetPointC().isPresent());
    }

    private static void advance(TemperatureFilter filter, Instant from, Instant to) {
        double left = TemperatureFilter.hours(from, to);
        boolean isRead = left <= TemperatureFilter.UNREAD_HOURS;
        while (left > 0) {
            double step = Math.min(left, LONGEST_STEP_H);
            filter.advance(step, isRead);
            left -= step;
        }
    }

    private SeriesBelief nitrogen(Analyte analyte, TrendModel model, Development development) {
        ToDoubleFunction<Instant> population = at -> model.scale().of(
                Population.medianMgPerL(analyte, development.daysFeedingAt(at)));
        SeriesFilter filter = new SeriesFilter(model, population, start(analyte), history.secondLooks());
        List<Observation> changes = history.sure(Analyte.WATER_CHANGE);
        int change = 0;
        for (Observation reading : history.of(analyte)) {
            while (change < changes.size() && changes.get(change).at().isBefore(reading.at())) {
                dilute(filter, changes.get(change++), analyte);
            }
            see(filter, reading, model);
        }
        while (change < changes.size()) {
            dilute(filter, changes.get(change++), analyte);
        }
        return filter.until(asOf);
    }

    /** Changes before the first reading tell nothing that the spread of tanks does not hold already. */
    private void dilute(SeriesFilter filter, Observation change, Analyte analyte) {
        if (change.at().isAfter(start(analyte))) {
            filter.dilute(change.at(), Math.min(0.95, change.value() / 100));
        }
    }

    private Instant start(Analyte analyte) {
        List<Observation> readings = history.of(analyte);
        return readings.isEmpty() ? asOf : readings.get(0).at();
    }

    private SeriesBelief series(
            Analyte analyte, TrendModel model, ToDoubleFunction<Instant> population) {
        SeriesFilter filter = new SeriesFilter(model, population, start(analyte), history.secondLooks());
        history.of(analyte).forEach(reading -> see(filter, reading, model));
        return filter.until(asOf);
    }

    private static void see(SeriesFilter filter, Observation reading, TrendModel model) {
        Interval interval = Interval.of(reading, model.usualHalfStep());
        filter.see(reading, interval.low(), interval.high());
    }

    private SeriesBelief oxygenShare() {
        TrendModel model = TrendModel.OXYGEN_SHARE;
        SeriesFilter filter = new SeriesFilter(
                model, at -> Population.OXYGEN_SHARE, start(Analyte.DISSOLVED_OXYGEN), history.secondLooks());
        for (Observation reading : history.of(Analyte.DISSOLVED_OXYGEN)) {
            double saturation = OxygenSaturation.mgPerL(
                    temperatureAt(reading.at()), facts.elevationM().orElse(0));
            Interval interval = Interval.of(reading, model.usualHalfStep() * saturation);
            filter.see(reading, interval.low() / saturation, interval.high() / saturation);
        }
        return filter.until(asOf);
    }

    /** The newest temperature at or before a moment. */
    private double temperatureAt(Instant at) {
        double found = facts.chillerSetPointC().orElse(Population.HELD_C);
        for (DatedTemperature dated : trace) {
            if (dated.at().isAfter(at)) {
                break;
            }
            found = dated.temperatureC();
        }
        return found;
    }

    private double chlorineLeft(Observation reading) {
        if (reading.below()) {
            return 0;
        }
        return reading.value()
                * StrictMath.exp(-TemperatureFilter.hours(reading.at(), asOf) / CHLORINE_HOURS);
    }
}
