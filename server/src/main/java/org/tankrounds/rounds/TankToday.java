package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.tankrounds.advice.Act;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Held;
import org.tankrounds.forecast.Limits;
import org.tankrounds.forecast.MassDeaths;
import org.tankrounds.forecast.Reason;
import org.tankrounds.forecast.Ripeness;
import org.tankrounds.pages.TankPage;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;

/** What is known of one tank today, for pages beside the rounds: its newest levels, its lot, its advice in words. */
public final class TankToday {
    /** What the class's page speaks of, in the order in which it is read. */
    private static final List<Analyte> TOLD = List.of(Analyte.TEMPERATURE, Analyte.PH, Analyte.TOTAL_AMMONIA,
            Analyte.NITRITE, Analyte.NITRATE, Analyte.DISSOLVED_OXYGEN);
    private static final List<Driver> EXPLAINED = List.of(Driver.TEMPERATURE, Driver.UN_IONISED_AMMONIA,
            Driver.NITRITE, Driver.PH);
    private static final Map<Analyte, Driver> SET_ASIDE = Map.of(Analyte.TEMPERATURE, Driver.TEMPERATURE,
            Analyte.PH, Driver.PH, Analyte.TOTAL_AMMONIA, Driver.UN_IONISED_AMMONIA, Analyte.NITRITE, Driver.NITRITE,
            Analyte.DISSOLVED_OXYGEN, Driver.DISSOLVED_OXYGEN);
    private static final Duration KEPT_TO = Duration.ofMillis(1);
    /** Put in again so soon it is the same look, not a second. */
    private static final Duration TWIN = Duration.ofMinutes(30);
    private static final Duration USUAL_SINCE = Duration.ofDays(16);
    private static final Duration USUAL_UNTIL = Duration.ofDays(2);
    /** For so long the dead are told to a class: over a weekend. */
    public static final Duration LATELY = Duration.ofDays(3);

    /**
     * The newest level of one analyte that nobody doubts.
     *
     * @param setAside it does not fit what was read before, so the forecast waits for another that agrees
     * @param value in the analyte's canonical unit
     * @param ofLimit the level as a share of its limit; of ammonia, that of its harmful part; empty where there is no
     *     limit, or where pH or temperature are not known for it
     * @param harmfulShare which part of the ammonia is the harmful one, 0 to 1; empty of anything else
     */
    public record Level(Analyte analyte, double value, boolean notDetected, Instant at, boolean setAside,
            OptionalDouble ofLimit, OptionalDouble harmfulShare) {}

    /**
     * An act of the advice, and the words for it.
     *
     * @param asks what to read, of an act that asks for a reading
     */
    public record Advised(Act.Kind kind, OptionalDouble amount, Optional<Analyte> asks, TankPage.Advice words) {}

    private final TankInput input;
    private final Optional<TankForecast> row;
    private final Instant now;

    TankToday(TankInput input, Optional<TankForecast> row, Instant now) {
        this.input = input;
        this.row = row;
        this.now = now;
    }

    public Tank tank() {
        return input.tank();
    }

    /** Empty while no eggs are there. */
    public Optional<Development> development() {
        return TankSeason.development(input, now);
    }

    public Stage stage() {
        return development().map(lot -> lot.stageAt(now)).orElse(Stage.EGG);
    }

    /** °C-days from fertilisation that the lot has had at a moment; 0 while no eggs are there. */
    public double degreeDaysAt(Instant moment) {
        return TankSeason.development(input, moment).map(Development::thermalUnitsC).orElse(0.0);
    }

    public double degreeDaysNow() {
        return degreeDaysAt(now);
    }

    /** When the lot is expected to hatch, or to feed; empty where that is past or not foreseen. */
    public Optional<Reason> expected(Reason.Kind event) {
        return row.stream().flatMap(known -> known.forecast().reasons().stream())
                .filter(reason -> reason.kind() == event && reason.latest().isPresent()).findFirst();
    }

    /** Believed alive; the eggs that came until there is a forecast. */
    public int fishAlive() {
        return row.map(known -> known.forecast().fishAlive()).orElse(input.lot().map(lot -> lot.eggs()).orElse(0));
    }

    /** What the water most likely has now, °C. */
    public double temperatureC() {
        return believed(Analyte.TEMPERATURE).map(Observation::value)
                .orElse(input.tank().chillerSetPointC().orElse(TankSeason.USUAL_C));
    }

    /** What the water had in the two weeks before the last two days, °C, the middle one; empty where nobody read it. */
    public OptionalDouble usualTemperatureC() {
        double[] before = input.observations().stream()
                .filter(seen -> seen.analyte() == Analyte.TEMPERATURE && !seen.doubtful())
                .filter(seen -> seen.at().isAfter(now.minus(USUAL_SINCE)) && seen.at().isBefore(now.minus(USUAL_UNTIL)))
                .mapToDouble(Observation::value).sorted().toArray();
        return before.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(before[before.length / 2]);
    }

    /** How far the filter has come; empty before the first forecast. */
    public Optional<Ripeness> filter() {
        return row.flatMap(TankForecast::held).map(Held::filter);
    }

    /** Whether the board has it under those to go to today. */
    public boolean needsCareToday() {
        return row.map(known -> Tier.of(known.forecast()) == Tier.GO_TODAY).orElse(false);
    }

    /** More than chance takes, whether or not the water tells why. */
    public boolean dieInNumbers() {
        return row.map(TankForecast::forecast)
                .map(forecast -> MassDeaths.in(forecast) || Tier.diesUnexplained(forecast)).orElse(false);
    }

    /** How many were found dead in the last days. */
    public int deadLately() {
        return input.observations().stream()
                .filter(seen -> seen.analyte() == Analyte.DEATHS && !seen.doubtful())
                .filter(seen -> seen.at().isAfter(now.minus(LATELY)))
                .mapToInt(seen -> (int) Math.round(seen.value())).sum();
    }

    public Optional<Instant> lastLookAt() {
        return input.lastLook().map(look -> look.at());
    }

    public boolean isAdvised(Act.Kind kind) {
        return row.stream().flatMap(known -> known.acts().stream()).anyMatch(act -> act.kind() == kind);
    }

    /** In the order in which the tank page has them. */
    public List<Advised> advice(Formats formats) {
        ActWording wording = new ActWording(formats);
        return row.stream().flatMap(known -> known.acts().stream()).map(act -> new Advised(act.kind(), act.amount(),
                Analyte.ofCode(act.asks()),
                wording.of(act, stage().isBeforeFirstFeeding(), input.tank().hasChloramine()))).toList();
    }

    /**
     * As read last; what somebody's script sent though it is unlikely is told too,
     * as long as the forecast asks for another.
     */
    public List<Level> levels() {
        return TOLD.stream().flatMap(analyte -> newest(analyte, seen -> !seen.doubtful() || isSetAside(seen)).stream())
                .map(this::level).toList();
    }

    /** As read last, without what the forecast set aside. */
    public List<Level> believedLevels() {
        return TOLD.stream().flatMap(analyte -> believed(analyte).stream()).map(this::level).toList();
    }

    /** The season so far, without what may come. */
    public TankPage.Season pictures(Formats formats) {
        TankSeason season = TankSeason.of(input, Optional.empty(), now);
        SeasonAxis axis = SeasonAxis.past(season.from(), now);
        SeasonPictures pictures = new SeasonPictures(formats, axis);
        List<SeasonSeries> told = season.series().stream().filter(series -> series.points().size() > 1)
                .filter(series -> series.driver().map(EXPLAINED::contains)
                        .orElse(series.code().equals(Analyte.NITRATE.code()))).toList();
        return new TankPage.Season(told.stream().map(pictures::draw).toList(), axis.days(input.tank().zone(), formats),
                SeasonEvents.of(input.observations(), season.development(), axis, formats), List.of(), "",
                SeasonNumbers.of(told, season.from(), formats));
    }

    private Optional<Observation> believed(Analyte analyte) {
        return newest(analyte, seen -> !seen.doubtful() && !isSetAside(seen));
    }

    private Optional<Observation> newest(Analyte analyte, Predicate<Observation> wanted) {
        return input.observations().stream().filter(seen -> seen.analyte() == analyte).filter(wanted)
                .reduce((before, after) -> after);
    }

    /**
     * The one that the forecast names, to the millisecond that a forecast is kept by,
     * and any that says the same beside it.
     */
    private boolean isSetAside(Observation seen) {
        return row.stream().flatMap(known -> known.forecast().reasons().stream())
                .filter(reason -> reason.kind() == Reason.Kind.READING_SET_ASIDE)
                .filter(reason -> SET_ASIDE.get(seen.analyte()) == reason.driver().orElseThrow())
                .anyMatch(reason -> isOf(seen, reason));
    }

    private static boolean isOf(Observation seen, Reason reason) {
        Duration apart = Duration.between(reason.at().orElseThrow(), seen.at()).abs();
        boolean isThatOne = apart.compareTo(KEPT_TO) < 0;
        boolean isItsTwin = apart.compareTo(TWIN) <= 0 && reason.value().equals(OptionalDouble.of(seen.value()));
        return isThatOne || isItsTwin;
    }

    private Level level(Observation seen) {
        OptionalDouble share = seen.analyte() == Analyte.TOTAL_AMMONIA ? harmfulShare() : OptionalDouble.empty();
        return new Level(seen.analyte(), seen.value(), seen.below(), seen.at(), isSetAside(seen),
                ofLimit(seen, share), share);
    }

    private OptionalDouble harmfulShare() {
        return believed(Analyte.PH).map(ph -> OptionalDouble.of(Ammonia.unIonisedFraction(ph.value(), temperatureC())))
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble ofLimit(Observation seen, OptionalDouble harmfulShare) {
        Limits limits = Limits.DEFAULT;
        double level = SeriesOfTank.level(seen);
        return switch (seen.analyte()) {
            case TEMPERATURE -> OptionalDouble.of(limits.ofTemperature(stage(), level));
            case PH -> OptionalDouble.of(limits.ofPh(level));
            case NITRITE -> OptionalDouble.of(limits.ofNitrite(level, chlorideMgPerL()));
            case DISSOLVED_OXYGEN -> OptionalDouble.of(limits.ofOxygen(stage(), level));
            case TOTAL_AMMONIA -> harmfulShare.isEmpty() ? harmfulShare : OptionalDouble.of(
                    limits.ofUnIonisedAmmonia(level * Ammonia.NH3_PER_N * harmfulShare.getAsDouble()));
            default -> OptionalDouble.empty();
        };
    }

    private double chlorideMgPerL() {
        return row.flatMap(TankForecast::held).map(Held::chlorideMgPerL)
                .orElse(input.tank().chlorideMgPerL().orElse(Limits.CHLORIDE_WHERE_UNKNOWN_MG_PER_L));
    }
}
