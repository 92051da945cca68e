package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Limits;
import org.tankrounds.water.Analyte;

/**
 * What readings say of a tank in the 72 hours after a morning. Doubtful ones are left out; where nothing was detected
 * nothing is beyond.
 *
 * @param read the series that were read, un-ionised ammonia where what it is made of was
 * @param worst the level read that was furthest beyond its limit, else the nearest to it
 * @param deathsCounted whether anybody counted, be it none
 * @param changedPercent each water change noted
 * @param looks how many times somebody wrote something down
 * @param isOver whether the 72 hours have passed
 */
record Aftermath(Set<Driver> read, Optional<Worst> worst, boolean deathsCounted, int dead,
        List<Observation> changedPercent, int looks, boolean isOver) {

    /** @param u the level as a share of its limit; above 1 is beyond */
    record Worst(Driver series, double level, double limit, double u, Instant at) {}

    private static final List<Driver> READ =
            Stream.concat(SeriesOfTank.DRAWN.stream(), Stream.of(Driver.CHLORINE)).toList();
    static final Duration SPAN = Duration.ofHours(Forecast.HORIZON_HOURS);
    /** What was read before the morning may still make ammonia of it after. */
    private static final Duration TOGETHER = Duration.ofDays(3);

    /**
     * @param then what was known that morning
     * @param stage of its fish at a moment, as far as was known then
     * @param later what was measured after it, oldest first
     */
    static Aftermath of(TankInput then, Function<Instant, Stage> stage, List<Observation> later, Instant asOf,
            Instant now) {
        List<Observation> sure = later.stream().filter(seen -> !seen.doubtful()).toList();
        List<Observation> around = Stream.concat(then.observations().stream()
                .filter(seen -> !seen.doubtful() && seen.at().isAfter(asOf.minus(TOGETHER))), sure.stream()).toList();
        Set<Driver> read = new TreeSet<>();
        List<Worst> levels = new ArrayList<>();
        for (Driver series : READ) {
            List<SeriesPoint> points = SeriesOfTank.of(series, around).stream()
                    .filter(point -> point.at().isAfter(asOf)).toList();
            if (!points.isEmpty()) {
                read.add(series);
            }
            points.stream().filter(point -> !point.notDetected()).forEach(point -> levels.add(
                    judged(series, point, stage.apply(point.at()), chloride(series, point.at(), then, sure))));
        }
        List<Observation> deaths = of(Analyte.DEATHS, sure);
        return new Aftermath(read, levels.stream().max(Comparator.comparingDouble(Worst::u)), !deaths.isEmpty(),
                (int) Math.round(deaths.stream().mapToDouble(Observation::value).sum()),
                of(Analyte.WATER_CHANGE, sure).stream().filter(change -> change.value() > 0).toList(),
                (int) later.stream().map(Observation::at).distinct().count(), !now.isBefore(asOf.plus(SPAN)));
    }

    boolean wentBeyond() {
        return worst.isPresent() && worst.get().u() > 1;
    }

    private static Worst judged(Driver series, SeriesPoint point, Stage stage, double chlorideMgPerL) {
        Limits limits = Limits.DEFAULT;
        double level = point.value();
        double u = switch (series) {
            case TEMPERATURE -> limits.ofTemperature(stage, level);
            case UN_IONISED_AMMONIA -> limits.ofUnIonisedAmmonia(level);
            case NITRITE -> limits.ofNitrite(level, chlorideMgPerL);
            case DISSOLVED_OXYGEN -> limits.ofOxygen(stage, level);
            case PH -> limits.ofPh(level);
            default -> limits.ofChlorine(level);
        };
        double limit = series == Driver.PH
                ? level < limits.lowestPh() ? limits.lowestPh() : limits.highestPh()
                : limits.upper(series, stage, chlorideMgPerL)
                        .orElseGet(() -> limits.lower(series, stage).orElseThrow());
        return new Worst(series, level, limit, u, point.at());
    }

    /** Only nitrite's limit goes by it. */
    private static double chloride(Driver series, Instant at, TankInput then, List<Observation> later) {
        double source = then.tank().chlorideMgPerL().orElse(Limits.CHLORIDE_WHERE_UNKNOWN_MG_PER_L);
        return series != Driver.NITRITE ? source : Stream.concat(then.observations().stream(), later.stream())
                .filter(seen -> seen.analyte() == Analyte.CHLORIDE && !seen.at().isAfter(at))
                .reduce((before, after) -> after).map(Observation::value).orElse(source);
    }

    private static List<Observation> of(Analyte analyte, List<Observation> observations) {
        return observations.stream().filter(seen -> seen.analyte() == analyte).toList();
    }
}
