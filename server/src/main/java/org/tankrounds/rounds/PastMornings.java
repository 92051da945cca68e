package org.tankrounds.rounds;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.season.Season;
import org.tankrounds.season.SeasonRepository;

/** Works a past morning's rounds out anew, from what was measured by then, and gathers what happened after it. */
public final class PastMornings {
    private final TankRepository tanks;
    private final SeasonRepository seasons;
    private final TankInputs inputs;
    private final ForecastMaker maker;

    public PastMornings(TankRepository tanks, SeasonRepository seasons, TankInputs inputs, ForecastMaker maker) {
        this.tanks = tanks;
        this.seasons = seasons;
        this.inputs = inputs;
        this.maker = maker;
    }

    /**
     * What the database holds of it; nothing is worked out yet, so that no connection waits for that.
     *
     * @param season empty where none was on that day
     * @param firstDay of the first season; empty without any
     */
    record Loaded(Morning morning, Optional<Season> season, Optional<LocalDate> firstDay, List<LoadedTank> tanks) {}

    /** @param later what was measured in the 72 hours after, oldest first */
    record LoadedTank(TankInput input, List<Observation> later) {
        private boolean wasThere() {
            return input.lot().isPresent() || !input.observations().isEmpty();
        }
    }

    /** @param forecast as it stood, its pictures with what was read later */
    record PastTank(Tank tank, TankForecast forecast, Aftermath then) {}

    Loaded load(DSLContext tx, int chapterId, Morning morning, Instant now) {
        List<Season> all = seasons.list(tx, chapterId);
        Optional<Season> season = all.stream().filter(one -> !morning.asOf().isBefore(one.from(morning.zone()))
                && !morning.asOf().isAfter(one.until(morning.zone()))).findFirst();
        Optional<LocalDate> firstDay = all.stream().map(one -> one.details().startsOn()).min(Comparator.naturalOrder());
        boolean betweenSeasons = season.isEmpty() && !all.isEmpty();
        return new Loaded(morning, season, firstDay,
                betweenSeasons ? List.of() : tanks(tx, chapterId, morning.asOf(), now));
    }

    private List<LoadedTank> tanks(DSLContext tx, int chapterId, Instant asOf, Instant now) {
        Instant end = asOf.plus(Aftermath.SPAN);
        Instant until = end.isAfter(now) ? now : end;
        return tanks.listWithRetired(tx, chapterId).stream()
                .filter(tank -> tank.isInUseAt(asOf))
                .map(tank -> new LoadedTank(inputs.load(tx, chapterId, tank, asOf),
                        inputs.after(tx, chapterId, tank, asOf, until)))
                .filter(LoadedTank::wasThere).toList();
    }

    /** In parallel: each tank takes tens of milliseconds, and somebody waits for the page. */
    List<PastTank> workOut(Loaded loaded, Instant now) {
        return loaded.tanks().parallelStream().map(tank -> workOut(tank, loaded.morning().asOf(), now)).toList();
    }

    private PastTank workOut(LoadedTank loaded, Instant asOf, Instant now) {
        TankForecast row = maker.make(loaded.input(), asOf, now);
        Optional<Development> development = TankSeason.development(loaded.input(), asOf);
        Function<Instant, Stage> stage = at -> development.map(lot -> lot.stageAt(at)).orElse(row.forecast().stage());
        Aftermath then = Aftermath.of(loaded.input(), stage, loaded.later(), asOf, now);
        return new PastTank(loaded.input().tank(), row.withRecent(withLater(row, loaded, asOf)), then);
    }

    /** The pictures' points with those that were read after the morning. */
    private static Map<Driver, List<SeriesPoint>> withLater(TankForecast row, LoadedTank loaded, Instant asOf) {
        Map<Driver, List<SeriesPoint>> recent = new EnumMap<>(Driver.class);
        List<Observation> around = Stream.concat(loaded.input().observations().stream()
                .filter(seen -> seen.at().isAfter(asOf.minus(Aftermath.SPAN))), loaded.later().stream()).toList();
        for (Driver series : SeriesOfTank.DRAWN) {
            List<SeriesPoint> points = new ArrayList<>(row.recent(series));
            points.addAll(ForecastMaker.thinned(SeriesOfTank.of(series, around).stream()
                    .filter(point -> point.at().isAfter(asOf)).toList()));
            recent.put(series, points);
        }
        return recent;
    }
}
