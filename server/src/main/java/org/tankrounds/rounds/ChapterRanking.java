package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jooq.DSLContext;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Ranking;
import org.tankrounds.places.TankRepository;

/**
 * A chapter's tanks ranked at one common moment, from their history: what {@code rank} gives for the same data. The
 * stored forecasts would not do, since each looks ahead from the moment it was made.
 */
public final class ChapterRanking {
    /** For so long the last answer still counts as now, if nothing was learned since. */
    private static final Duration STILL_NOW = Duration.ofMinutes(10);

    /** @param forecasts the tank to visit first in front */
    record Ranked(long version, Instant asOf, List<Forecast> forecasts) {}

    private final TankRepository tanks;
    private final TankInputs inputs;
    private final ForecastMaker maker;
    private final RoundsVersions versions;
    private final Map<Integer, Ranked> newest = new ConcurrentHashMap<>();

    public ChapterRanking(
            TankRepository tanks, TankInputs inputs, ForecastMaker maker, RoundsVersions versions) {
        this.tanks = tanks;
        this.inputs = inputs;
        this.maker = maker;
        this.versions = versions;
    }

    long version(DSLContext tx, int chapterId) {
        return versions.get(tx, chapterId);
    }

    Ranked now(DSLContext tx, int chapterId, Instant now) {
        long version = version(tx, chapterId);
        Ranked known = newest.get(chapterId);
        if (known != null && known.version() == version
                && Duration.between(known.asOf(), now).abs().compareTo(STILL_NOW) < 0) {
            return known;
        }
        // The next full second, so that what was measured in this one counts.
        Instant asOf = now.truncatedTo(ChronoUnit.SECONDS).equals(now)
                ? now
                : now.truncatedTo(ChronoUnit.SECONDS).plusSeconds(1);
        Ranked ranked = new Ranked(version, asOf, at(tx, chapterId, asOf));
        newest.put(chapterId, ranked);
        return ranked;
    }

    List<Forecast> at(DSLContext tx, int chapterId, Instant asOf) {
        return Ranking.order(tanks.listWithRetired(tx, chapterId).stream()
                .filter(tank -> tank.isInUseAt(asOf))
                .map(tank -> maker.forecast(inputs.load(tx, chapterId, tank, asOf), asOf))
                .toList());
    }
}
