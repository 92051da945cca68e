package org.tankrounds.rounds;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;

/**
 * Keeps one forecast a tank up to date. A tank is marked by whoever learns something of it; the marks are taken,
 * computed and stored in one transaction under the chapter's lock, so that of two threads or nodes the later one
 * sees what the earlier one knew, and a crash loses no mark.
 */
public final class ForecastKeeper implements AfterChange {
    /** After an hour a forecast has drifted enough that "by tonight" may no longer be true. */
    static final Duration MOVE_ON_AFTER = Duration.ofHours(1);
    /** So few in one transaction that nobody waits long for the lock. */
    private static final int SLICE = 20;
    private static final int LOCK = 0x726f756e;
    private static final Logger LOG = LoggerFactory.getLogger(ForecastKeeper.class);

    private final Transactions transactions;
    private final Clock clock;
    private final DirtyTanks dirtyTanks;
    private final TankRepository tanks;
    private final TankInputs inputs;
    private final ForecastMaker maker;
    private final ForecastRepository forecasts;
    private final RoundsVersions versions;

    public ForecastKeeper(
            Transactions transactions, Clock clock, DirtyTanks dirtyTanks, TankRepository tanks, TankInputs inputs,
            ForecastMaker maker, ForecastRepository forecasts, RoundsVersions versions) {
        this.transactions = transactions;
        this.clock = clock;
        this.dirtyTanks = dirtyTanks;
        this.tanks = tanks;
        this.inputs = inputs;
        this.maker = maker;
        this.forecasts = forecasts;
        this.versions = versions;
    }

    /** Forecasts every marked tank anew, now. What fails stays marked, and the next round of the jobs tries again. */
    @Override
    public void changed(int chapterId) {
        try {
            drain(chapterId);
        } catch (RuntimeException e) {
            LOG.warn("chapter {}: forecasts wait for the next try", chapterId, e);
        }
    }

    /** Moves the chapter's forecasts forward when one is an hour old or missing, and does what was left undone. */
    public void keep(int chapterId) {
        transactions.inChapter(chapterId, tx -> {
            lock(tx, chapterId);
            Instant now = clock.instant();
            if (forecasts.isBehind(tx, chapterId, now, MOVE_ON_AFTER)) {
                tanks.listOfChapter(tx, chapterId)
                        .forEach(tank -> dirtyTanks.mark(tx, chapterId, tank.tankId(), now));
            }
            return null;
        });
        drain(chapterId);
    }

    private void drain(int chapterId) {
        int taken;
        do {
            taken = transactions.inChapter(chapterId, tx -> drainSlice(tx, chapterId));
        } while (taken == SLICE);
    }

    private int drainSlice(DSLContext tx, int chapterId) {
        lock(tx, chapterId);
        Instant now = clock.instant();
        List<Integer> taken = dirtyTanks.take(tx, chapterId, SLICE);
        taken.forEach(tankId -> forecast(tx, chapterId, tankId, now));
        if (!taken.isEmpty()) {
            versions.bump(tx, chapterId, now);
        }
        return taken.size();
    }

    private void forecast(DSLContext tx, int chapterId, int tankId, Instant now) {
        Optional<Tank> tank = tanks.findById(tx, chapterId, tankId).filter(found -> found.retiredAt().isEmpty());
        if (tank.isEmpty()) {
            forecasts.remove(tx, chapterId, tankId);
            return;
        }
        TankInput input = inputs.load(tx, chapterId, tank.get(), now);
        forecasts.replace(tx, chapterId, maker.make(input, now, clock.instant()));
        if (input.moreSoon()) {
            dirtyTanks.mark(tx, chapterId, tankId, now);
        }
    }

    private static void lock(DSLContext tx, int chapterId) {
        tx.fetch("SELECT pg_advisory_xact_lock(?, ?)", LOCK, chapterId);
    }
}
