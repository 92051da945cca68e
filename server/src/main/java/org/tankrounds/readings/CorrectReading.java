package org.tankrounds.readings;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.LastTemperatures.Moment;
import org.tankrounds.readings.StoreReading.Sender;
import org.tankrounds.web.Caller;
import org.tankrounds.web.NotFoundException;

/**
 * Puts a further version in the place of the one that holds, or takes the reading back, in one transaction; nothing is
 * overwritten. A reading that was taken back has a last version of which only who, when and why count.
 */
public final class CorrectReading {

    /**
     * @param seen the version that the writer had before them
     * @param judged empty stores nothing
     */
    record Correction(int seen, Optional<JudgedReading> judged, String reason) {}

    /** @param accepted false stores nothing */
    record TakingBack(int seen, boolean accepted, String reason) {}

    /** How it ended. */
    enum Result {
        STORED,
        /** The same correction by the same person had been stored before, such as by a second press of the button. */
        REPEATED,
        NOT_ACCEPTED,
        /** Somebody else was faster: the writer has not seen the version that holds. */
        OVERTAKEN
    }

    private final Transactions transactions;
    private final TankRepository tanks;
    private final ReadingRepository readings;
    private final StoreReading storeReading;
    private final AfterChange afterChange;
    private final Clock clock;
    private final MeasurementRepository measurements = new MeasurementRepository();
    private final LastTemperatures lastTemperatures = new LastTemperatures();

    public CorrectReading(Transactions transactions, TankRepository tanks, ReadingRepository readings,
            StoreReading storeReading, AfterChange afterChange, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.readings = readings;
        this.storeReading = storeReading;
        this.afterChange = afterChange;
        this.clock = clock;
    }

    /**
     * @param correction judges what was typed against the version that holds; hears what temperature the tank had
     *         last at a time, as far as other readings say
     */
    Result correct(Caller caller, String tankCode, String code,
            BiFunction<Reading, ToDoubleFunction<Instant>, Correction> correction) {
        Result result = transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, tankCode);
            Reading newest = versions(tx, caller, tank, code).get(0);
            return newest.holds()
                    ? inside(tx, caller, tank, newest, correction.apply(newest, at -> lastTemperatures.find(
                            tx, caller.chapterId(), new Moment(tank.tankId(), at), newest.readingId())))
                    : Result.OVERTAKEN;
        });
        return told(caller, result);
    }

    /** Its values count nowhere from then on. */
    Result takeBack(Caller caller, String tankCode, String code, TakingBack word) {
        return told(caller, transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, tankCode);
            Reading newest = versions(tx, caller, tank, code).get(0);
            return word.accepted() ? takeBack(tx, caller, newest, word) : Result.NOT_ACCEPTED;
        }));
    }

    /** Within a transaction that takes more back than this; one that was taken back before stays so. */
    void takeBackAlong(DSLContext tx, Caller caller, Tank tank, String code, String reason) {
        Reading newest = versions(tx, caller, tank, code).get(0);
        if (newest.holds()) {
            takeBack(tx, caller, newest, new TakingBack(newest.version(), true, reason));
        }
    }

    private Result takeBack(DSLContext tx, Caller caller, Reading newest, TakingBack word) {
        Instant at = clock.instant().truncatedTo(ChronoUnit.MICROS);
        if (newest.isTakingBack() && newest.version() == word.seen() + 1
                && newest.personId().equals(caller.personId())) {
            return Result.REPEATED;
        }
        if (word.seen() != newest.version() || !readings.supersede(tx, caller.chapterId(), newest.readingId(), at)) {
            return Result.OVERTAKEN;
        }
        measurements.delete(tx, caller.chapterId(), newest);
        storeReading.insertTakingBack(tx, caller.chapterId(), takingBack(caller, newest, at, word.reason()));
        return Result.STORED;
    }

    private static Reading takingBack(Caller caller, Reading newest, Instant at, String reason) {
        return new Reading(0, newest.tankId(), newest.code(), newest.version() + 1, newest.measuredAt(), at,
                Reading.CHANNEL_PAGE, newest.by(), caller.personId(), caller.cardId(), newest.fileId(), newest.values(),
                newest.note(), List.of(Reading.TAKEN_BACK), Optional.of(reason), Optional.empty());
    }

    private Result told(Caller caller, Result result) {
        if (result == Result.STORED) {
            afterChange.changed(caller.chapterId());
        }
        return result;
    }

    private Result inside(DSLContext tx, Caller caller, Tank tank, Reading holding, Correction correction) {
        if (correction.judged().isEmpty()) {
            return Result.NOT_ACCEPTED;
        }
        Instant at = clock.instant().truncatedTo(ChronoUnit.MICROS);
        if (correction.seen() != holding.version()
                || !readings.supersede(tx, caller.chapterId(), holding.readingId(), at)) {
            return readings.findHolding(tx, caller.chapterId(), tank.tankId(), holding.code())
                    .filter(now -> repeats(caller, correction, now))
                    .map(now -> Result.REPEATED).orElse(Result.OVERTAKEN);
        }
        measurements.delete(tx, caller.chapterId(), holding);
        JudgedReading judged = correction.judged().get();
        Reading next = StoreReading.version(tank, holding.code(), holding.version() + 1, Reading.CHANNEL_PAGE,
                Sender.of(caller).withFile(holding.fileId()), at, judged, Optional.of(correction.reason()));
        storeReading.insert(tx, caller.chapterId(), next, judged);
        return Result.STORED;
    }

    private static boolean repeats(Caller caller, Correction correction, Reading holding) {
        JudgedReading judged = correction.judged().orElseThrow();
        return holding.version() == correction.seen() + 1 && holding.personId().equals(caller.personId())
                && holding.reason().equals(Optional.of(correction.reason()))
                && holding.measuredAt().equals(judged.measuredAt()) && holding.values().equals(judged.values())
                && holding.by().equals(judged.by()) && holding.note().equals(judged.note());
    }

    /** Every version, newest first. */
    List<Reading> versions(DSLContext tx, Caller caller, Tank tank, String code) {
        List<Reading> versions = readings.listVersions(tx, caller.chapterId(), tank.tankId(), code);
        if (versions.isEmpty()) {
            throw new NotFoundException("reading");
        }
        return versions;
    }
}
