package org.tankrounds.season;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;

/** How many fish a forecast starts from: those that are there by count, and the dead that it takes off itself. */
public final class Stock {
    private final SeasonReads reads;

    public Stock(SeasonReads reads) {
        this.reads = reads;
    }

    /**
     * @param held the lot that the tank holds
     * @param counted what the forecast is made of, none after {@code asOf}
     * @return empty where one lot came and nothing was written down since: then it is as many as came
     */
    public OptionalInt of(
            DSLContext tx, int chapterId, Tank tank, Optional<Lot> held, List<Observation> counted, Instant asOf) {
        Optional<Season> season = season(tx, chapterId, tank, held, asOf);
        return season.isEmpty() ? OptionalInt.empty() : of(tx, chapterId, tank, season.get(), counted, asOf);
    }

    private OptionalInt of(
            DSLContext tx, int chapterId, Tank tank, Season season, List<Observation> counted, Instant asOf) {
        List<CountEntry> all = reads.counts().list(tx, chapterId, season.seasonId());
        List<CountEntry> entries = CountRepository.of(tank.tankId(), all).stream()
                .filter(entry -> !entry.at().isAfter(asOf)).toList();
        List<Lot> lots = reads.lots().listOfTank(tx, chapterId, season.seasonId(), tank.tankId()).stream()
                .filter(one -> !one.receivedAt().isAfter(asOf)).toList();
        if (entries.isEmpty() && lots.size() <= 1) {
            return OptionalInt.empty();
        }
        List<Observation> dead = reads.observations().deaths(
                tx, chapterId, tank.tankId(), season.from(tank.zone()), asOf);
        int alive = LotHistory.of(tank, lots, dead, asOf).account(entries).ledger().alive();
        return OptionalInt.of(Math.max(1, alive + counted.stream().filter(seen -> seen.analyte() == Analyte.DEATHS)
                .mapToInt(seen -> (int) Math.round(seen.value())).sum()));
    }

    /** Of a tank without eggs of its own, the one that runs: fish may have been moved there. */
    private Optional<Season> season(DSLContext tx, int chapterId, Tank tank, Optional<Lot> held, Instant asOf) {
        List<Season> seasons = reads.seasons().list(tx, chapterId);
        return held.isEmpty() ? Season.runningOn(asOf.atZone(tank.zone()).toLocalDate(), seasons)
                : seasons.stream().filter(season -> season.seasonId() == held.get().seasonId()).findFirst();
    }
}
