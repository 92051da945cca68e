package org.tankrounds.rounds;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Advice;
import org.tankrounds.advice.Remedy;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Effect;
import org.tankrounds.forecast.FanPoint;
import org.tankrounds.forecast.Held;
import org.tankrounds.forecast.Reason;
import org.tankrounds.forecast.Ripeness;
import org.tankrounds.forecast.SeriesForecast;
import org.tankrounds.forecast.Telling;
import org.tankrounds.forecast.Way;
import org.tankrounds.forecast.Ways;
import org.tankrounds.water.Analyte;

/**
 * The part of a forecast row that nobody queries, as it lies in {@code tank_forecasts.detail}. Unknown members
 * are passed over, so that two versions of the service may share a database while one replaces the other.
 */
@JsonIgnoreProperties(ignoreUnknown = true)
@JsonInclude(JsonInclude.Include.NON_NULL)
record ForecastDetail(
        String stage,
        int fishAlive,
        List<ReasonRow> reasons,
        List<ActRow> acts,
        EffectRow together,
        List<SeriesRow> series,
        List<WayRow> ways,
        TellingRow telling,
        HeldRow held,
        Map<String, List<PointRow>> recent) {

    static ForecastDetail of(TankForecast row) {
        Map<String, List<PointRow>> recent = new TreeMap<>();
        row.recent().forEach((series, points) ->
                recent.put(series.code(), points.stream().map(PointRow::of).toList()));
        return new ForecastDetail(
                row.forecast().stage().name(),
                row.forecast().fishAlive(),
                row.forecast().reasons().stream().map(ReasonRow::of).toList(),
                row.advice().remedies().stream().map(ActRow::of).toList(),
                row.advice().together().map(EffectRow::of).orElse(null),
                row.forecast().series().stream().map(SeriesRow::of).toList(),
                row.ways().map(ways -> ways.beyond().stream().map(WayRow::of).toList()).orElse(null),
                row.telling().map(TellingRow::of).orElse(null),
                row.held().map(HeldRow::of).orElse(null),
                recent);
    }

    Advice advice() {
        return new Advice(acts.stream().filter(ActRow::isKnown).map(ActRow::remedy).toList(),
                Optional.ofNullable(together).map(EffectRow::effect));
    }

    Stage stageHeld() {
        return Stage.valueOf(stage);
    }

    Map<Driver, List<SeriesPoint>> recentPoints() {
        return recent.entrySet().stream().collect(Collectors.toMap(
                entry -> Driver.ofCode(entry.getKey()).orElseThrow(),
                entry -> entry.getValue().stream().map(PointRow::point).toList()));
    }

    Optional<Ways> waysHeld() {
        return Optional.ofNullable(ways).map(rows -> new Ways(rows.stream().map(WayRow::way).toList()));
    }

    Optional<Held> heldThen() {
        return Optional.ofNullable(held).flatMap(HeldRow::held);
    }

    Optional<Telling> tellingHeld() {
        return Optional.ofNullable(telling).map(TellingRow::telling);
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record ReasonRow(
            String kind, String driver, double share, Double value, String unit, Double limit, Double previous,
            Double change, Double overHours, Long at, Long since, Integer count, Double hoursToLimit, Double oneIn,
            Long earliest, Long latest) {

        static ReasonRow of(Reason reason) {
            return new ReasonRow(
                    reason.kind().name(), reason.driver().map(Driver::code).orElse(null), reason.share(),
                    bare(reason.value()), reason.unit(), bare(reason.limit()), bare(reason.previous()),
                    bare(reason.change()), bare(reason.overHours()), bare(reason.at()), bare(reason.since()),
                    reason.count().isPresent() ? reason.count().getAsInt() : null,
                    bare(reason.hoursToLimit()), bare(reason.oneIn()), bare(reason.earliest()), bare(reason.latest()));
        }

        Reason reason() {
            return new Reason(
                    Reason.Kind.valueOf(kind), Optional.ofNullable(driver).flatMap(Driver::ofCode), share,
                    known(value), unit, known(limit), known(previous), known(change), known(overHours), time(at),
                    time(since), count == null ? OptionalInt.empty() : OptionalInt.of(count), known(hoursToLimit),
                    known(oneIn), time(earliest), time(latest));
        }
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record ActRow(
            String kind, String driver, Double amount, String unit, Double secondAmount, String secondUnit,
            String asks, String basis, EffectRow effect, Set<Act.Kind> leansOn) {

        static ActRow of(Remedy remedy) {
            Act act = remedy.act();
            return new ActRow(act.kind().name(), act.driver().map(Driver::code).orElse(null), bare(act.amount()),
                    act.unit(), bare(act.secondAmount()), act.secondUnit(), act.asks(), act.basis(),
                    remedy.effect().map(EffectRow::of).orElse(null),
                    remedy.leansOn().isEmpty() ? null : remedy.leansOn());
        }

        /** A newer version may advise what this one has no words for. */
        boolean isKnown() {
            return Stream.of(Act.Kind.values()).anyMatch(known -> known.name().equals(kind));
        }

        Remedy remedy() {
            return new Remedy(act(), Optional.ofNullable(effect).map(EffectRow::effect),
                    leansOn == null ? Set.of() : leansOn);
        }

        private Act act() {
            return new Act(Act.Kind.valueOf(kind), Optional.ofNullable(driver).flatMap(Driver::ofCode),
                    known(amount), unit, known(secondAmount), secondUnit, asks, basis);
        }
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record EffectRow(
            String driver, double chanceWithout, double chanceWith, double exposureWithout, double exposureWith,
            Double levelWithout, Double levelWith, Double hoursToLimitWithout, Double hoursToLimitWith) {

        static EffectRow of(Effect effect) {
            return new EffectRow(effect.driver().code(), effect.chanceWithout(), effect.chanceWith(),
                    effect.exposureWithout(), effect.exposureWith(), bare(effect.levelWithout()),
                    bare(effect.levelWith()), bare(effect.hoursToLimitWithout()), bare(effect.hoursToLimitWith()));
        }

        Effect effect() {
            return new Effect(Driver.ofCode(driver).orElseThrow(), chanceWithout, chanceWith, exposureWithout,
                    exposureWith, known(levelWithout), known(levelWith), known(hoursToLimitWithout),
                    known(hoursToLimitWith));
        }
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record SeriesRow(String series, String unit, Double upper, Double lower, List<FanPoint> fan) {

        static SeriesRow of(SeriesForecast series) {
            return new SeriesRow(series.series().code(), series.unit(), bare(series.upperLimit()),
                    bare(series.lowerLimit()), series.fan());
        }

        SeriesForecast forecast() {
            return new SeriesForecast(
                    Driver.ofCode(series).orElseThrow(), unit, known(upper), known(lower), fan);
        }
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record WayRow(Integer afterHours, String limit) {

        static WayRow of(Way way) {
            return new WayRow(way.afterHours().isPresent() ? way.afterHours().getAsInt() : null,
                    way.limit().map(Driver::code).orElse(null));
        }

        Way way() {
            return new Way(afterHours == null ? OptionalInt.empty() : OptionalInt.of(afterHours),
                    Optional.ofNullable(limit).flatMap(Driver::ofCode));
        }
    }

    /** Another version of the service may hold other things of a tank: then nothing is said of it for an hour. */
    @JsonIgnoreProperties(ignoreUnknown = true)
    record HeldRow(
            Double setPointC, Double stoppedChance, Double totalAmmonia, Double nitrite, String filter,
            Double chloride, Double changesPerWeek, Double changeShare) {

        static HeldRow of(Held held) {
            return new HeldRow(held.setPointC(), held.stoppedChance(), held.totalAmmoniaMgPerL(), held.nitriteMgPerL(),
                    held.filter().name(), held.chlorideMgPerL(), held.changesPerWeek(), held.changeShare());
        }

        Optional<Held> held() {
            Optional<Ripeness> known =
                    Stream.of(Ripeness.values()).filter(kind -> kind.name().equals(filter)).findFirst();
            boolean whole = Stream.of(setPointC, stoppedChance, totalAmmonia, nitrite, chloride, changesPerWeek,
                    changeShare).allMatch(Objects::nonNull);
            return known.filter(kind -> whole).map(kind -> new Held(setPointC, stoppedChance, totalAmmonia, nitrite,
                    kind, chloride, changesPerWeek, changeShare));
        }
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    record TellingRow(String analyte, double share) {

        static TellingRow of(Telling telling) {
            return new TellingRow(telling.analyte().code(), telling.share());
        }

        Telling telling() {
            return new Telling(Analyte.ofCode(analyte).orElseThrow(), share);
        }
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record PointRow(long at, double value, Boolean notDetected) {

        static PointRow of(SeriesPoint point) {
            return new PointRow(point.at().toEpochMilli(), point.value(), point.notDetected() ? true : null);
        }

        SeriesPoint point() {
            return new SeriesPoint(Instant.ofEpochMilli(at), value, notDetected != null && notDetected);
        }
    }

    private static Double bare(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private static Long bare(Optional<Instant> time) {
        return time.map(Instant::toEpochMilli).orElse(null);
    }

    private static OptionalDouble known(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static Optional<Instant> time(Long epochMilli) {
        return Optional.ofNullable(epochMilli).map(Instant::ofEpochMilli);
    }
}
