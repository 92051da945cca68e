package org.tankrounds.belief;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.water.Analyte;

/** A tank's observations up to a moment, oldest first and by analyte, whatever order they came in. */
final class History {

    private static final Comparator<Observation> IN_TIME = Comparator.comparing(Observation::at)
            .thenComparing(Observation::analyte)
            .thenComparingDouble(Observation::value)
            .thenComparingDouble(Observation::halfStep)
            .thenComparing(Observation::below)
            .thenComparing(Observation::doubtful);

    private final Map<Analyte, List<Observation>> byAnalyte = new EnumMap<>(Analyte.class);
    /** Nobody who began leaves a tank alone for so long; what was noted before has its date wrong (our choice). */
    private static final Duration ALONE = Duration.ofDays(60);

    private final Optional<Instant> first;
    private final Optional<Instant> newest;
    private final SecondLooks secondLooks;

    History(List<Observation> observations, Instant asOf) {
        List<Observation> known = observations.stream().filter(o -> !o.at().isAfter(asOf))
                .sorted(IN_TIME).toList();
        for (Observation observation : known) {
            byAnalyte.computeIfAbsent(observation.analyte(), a -> new ArrayList<>()).add(observation);
        }
        secondLooks = new SecondLooks(known);
        first = first(known);
        newest = known.isEmpty() ? Optional.empty() : Optional.of(known.get(known.size() - 1).at());
    }

    /** Of the season; one look long before all others does not begin it. */
    private static Optional<Instant> first(List<Observation> known) {
        Optional<Instant> oldest = known.stream().map(Observation::at).findFirst();
        Optional<Instant> next = known.stream().filter(o -> !o.isSameLookAs(known.get(0))).map(Observation::at)
                .findFirst();
        return next.filter(at -> at.isAfter(oldest.orElseThrow().plus(ALONE))).or(() -> oldest);
    }

    List<Observation> of(Analyte analyte) {
        return byAnalyte.getOrDefault(analyte, List.of());
    }

    /** Without those marked as doubtful: for what no filter judges, and what would hide bad water. */
    List<Observation> sure(Analyte analyte) {
        return of(analyte).stream().filter(o -> !o.doubtful()).toList();
    }

    Optional<Observation> newest(Analyte analyte) {
        return newest(of(analyte));
    }

    Optional<Observation> newestSure(Analyte analyte) {
        return newest(sure(analyte));
    }

    private static Optional<Observation> newest(List<Observation> all) {
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    SecondLooks secondLooks() {
        return secondLooks;
    }

    Optional<Instant> first() {
        return first;
    }

    Optional<Instant> newest() {
        return newest;
    }

    /** The water changes of the last four weeks as a habit. Twenty of those days are school days. */
    WaterRoutine routine(Instant asOf) {
        Instant since = asOf.minus(Duration.ofDays(28));
        double[] shares = of(Analyte.WATER_CHANGE).stream()
                .filter(o -> o.at().isAfter(since) && o.value() > 0)
                .mapToDouble(o -> o.value() / 100).toArray();
        if (shares.length == 0) {
            return WaterRoutine.NONE;
        }
        double sum = 0;
        for (double share : shares) {
            sum += share;
        }
        return new WaterRoutine(Math.min(1, shares.length / 20.0), Math.min(0.9, sum / shares.length));
    }

    /** Those of the last days; where nobody was heard since, of the last days before that. */
    RecentDeaths deaths(Instant asOf, int eggs) {
        Instant heard = newest.filter(at -> at.isAfter(asOf.minus(RecentDeaths.TOLD))).orElse(asOf);
        Instant since = heard.minus(Duration.ofHours((long) RecentDeaths.WINDOW_HOURS));
        int count = 0;
        boolean counted = false;
        Instant before = null;
        Instant last = null;
        Optional<Instant> newestDead = Optional.empty();
        for (Observation death : of(Analyte.DEATHS)) {
            if (!death.at().isAfter(since)) {
                before = death.at();
                continue;
            }
            counted = true;
            last = death.at();
            count += (int) death.value();
            newestDead = death.value() > 0 ? Optional.of(death.at()) : newestDead;
        }
        double hours = before == null || last == null ? RecentDeaths.WINDOW_HOURS
                : Math.min(336, Math.max(12, TemperatureFilter.hours(before, last)));
        return new RecentDeaths(counted, count, mostDeathsInADay(since),
                FishAlive.shouldAllBeRight(eggs, of(Analyte.DEATHS), secondLooks), hours, newestDead);
    }

    private int mostDeathsInADay(Instant since) {
        List<Observation> deaths = of(Analyte.DEATHS).stream().filter(o -> o.at().isAfter(since)).toList();
        return deaths.stream().mapToInt(last -> deaths.stream()
                .filter(o -> !o.at().isAfter(last.at()) && o.at().isAfter(last.at().minus(Duration.ofDays(1))))
                .mapToInt(o -> (int) o.value()).sum()).max().orElse(0);
    }
}
