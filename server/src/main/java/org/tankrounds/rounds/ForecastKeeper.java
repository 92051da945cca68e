package org.tankrounds.rounds;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.jobs.DirtyTanks.Mark;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;

/**
 * Keeps one forecast a tank up to date. A tank is marked by whoever learns something of it. One thread or node a
 * chapter at a time reads the marks, computes, stores and removes just those marks, in one transaction: a crash
 * loses none, and what was marked meanwhile is read in the next turn.
 */
public final class ForecastKeeper {
    /** After an hour a forecast has drifted enough that "by tonight" may no longer be true. */
    static final Duration MOVE_ON_AFTER = Duration.ofHours(1);
    private static final int MARKS_AT_ONCE = 100;
    static final int LOCK = 0x726f756e;

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

    /** Moves the chapter's forecasts forward when one is an hour old or missing, and does what was left undone. */
    public void keep(int chapterId) {
        transactions.inChapter(chapterId, tx -> {
            Instant now = clock.instant();
            if (isMine(tx, chapterId) && forecasts.isBehind(tx, chapterId, now, MOVE_ON_AFTER)) {
                tanks.listOfChapter(tx, chapterId)
                        .forEach(tank -> dirtyTanks.mark(tx, chapterId, tank.tankId(), now));
            }
            return null;
        });
        catchUp(chapterId);
    }

    /**
     * Forecasts every marked tank anew. Where another is at it, that one finds the marks too: it looks again after it
     * has let the chapter go.
     */
    public void catchUp(int chapterId) {
        Set<Long> putOff = new HashSet<>();
        boolean more;
        do {
            more = transactions.inChapter(chapterId, tx -> isMine(tx, chapterId) && turn(tx, chapterId, putOff));
        } while (more);
    }

    /** @return whether there was anything to do */
    private boolean turn(DSLContext tx, int chapterId, Set<Long> putOff) {
        Instant now = clock.instant();
        List<Mark> marks = dirtyTanks.oldest(tx, chapterId, putOff, MARKS_AT_ONCE);
        Set<Integer> comingSoon = new HashSet<>();
        marks.stream().map(Mark::tankId).distinct()
                .filter(tankId -> forecast(tx, chapterId, tankId, now)).forEach(comingSoon::add);
        dirtyTanks.remove(tx, chapterId, marks.stream().filter(mark -> !comingSoon.contains(mark.tankId())).toList());
        marks.stream().filter(mark -> comingSoon.contains(mark.tankId())).map(Mark::markId).forEach(putOff::add);
        if (!marks.isEmpty()) {
            versions.bump(tx, chapterId, now);
        }
        return !marks.isEmpty();
    }

    /** @return whether it has to be made again soon, because a reading's time has yet to come */
    private boolean forecast(DSLContext tx, int chapterId, int tankId, Instant now) {
        Optional<Tank> tank = tanks.findById(tx, chapterId, tankId).filter(found -> found.retiredAt().isEmpty());
        if (tank.isEmpty()) {
            forecasts.remove(tx, chapterId, tankId);
            return false;
        }
        TankInput input = inputs.load(tx, chapterId, tank.get(), now);
        forecasts.replace(tx, chapterId, maker.make(input, now, clock.instant()));
        return input.moreSoon();
    }

    /** Nobody waits for the lock. */
    private static boolean isMine(DSLContext tx, int chapterId) {
        return tx.fetchSingle("SELECT pg_try_advisory_xact_lock(?, ?)", LOCK, chapterId).get(0, Boolean.class);
    }
}
