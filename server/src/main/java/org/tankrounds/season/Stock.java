package org.tankrounds.season;

import java.time.Instant;
import java.util.List;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Stage;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;

/** How many fish a tank was ever given, less those that left it alive: what its deaths are held against. */
public final class Stock {
    private final LotRepository lots;
    private final CountRepository counts;

    public Stock(LotRepository lots, CountRepository counts) {
        this.lots = lots;
        this.counts = counts;
    }

    /**
     * The lot with as many eggs as its tank's count comes to; as it is while nothing was written down.
     *
     * @param observations of the tank in the season, none after {@code asOf}
     */
    public Lot asCounted(DSLContext tx, int chapterId, Tank tank, Lot lot, List<Observation> observations, Instant asOf) {
        List<CountEntry> entries = CountRepository.of(tank.tankId(), counts.list(tx, chapterId, lot.seasonId())).stream()
                .filter(entry -> !entry.at().isAfter(asOf)).toList();
        if (entries.isEmpty()) {
            return lot;
        }
        List<Lot> received = lots.listOfTank(tx, chapterId, lot.seasonId(), tank.tankId()).stream()
                .filter(one -> !one.receivedAt().isAfter(asOf)).toList();
        List<Observation> deaths = observations.stream().filter(seen -> seen.analyte() == Analyte.DEATHS).toList();
        // By which stage they died is all the same here.
        Ledger ledger = Account.of(tank.tankId(), received, deaths, at -> Stage.FEEDING, entries, tank.zone()).ledger();
        return lot.withEggs(Math.max(1, ledger.alive() + ledger.dead()));
    }
}
