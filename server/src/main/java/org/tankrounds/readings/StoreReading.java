package org.tankrounds.readings;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jooq.exception.DataAccessException;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.LastTemperatures.Moment;
import org.tankrounds.readings.MeasurementRepository.Rows;
import org.tankrounds.readings.SubmissionRepository.Submission;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Caller;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Secrets;
import org.tankrounds.words.Saying;

/**
 * Stores one reading in one transaction: the sender's key, the reading, its measurements and the mark that the
 * tank's forecast is out of date. What this answers is durable; the same key never stores twice.
 */
public final class StoreReading {
    static final int CODE_LENGTH = 12;
    static final Saying OTHER_READING = Saying.of("readings.otherReading");
    private static final Set<String> WAITED_TOO_LONG = Set.of("55P03", "40P01", "40001");

    /**
     * What is to be stored.
     *
     * @param kit that the cards were read with
     * @param confirmed analytes of which the writer was asked back and said that the value is right
     */
    record Submitted(String key, byte[] fingerprint, GivenReading given, Faults faults, Kit kit,
            Set<Analyte> confirmed) {}

    /** @param isNew false where the same submission had been stored before */
    record Outcome(Tank tank, Reading reading, boolean isNew) {}

    /**
     * From whom a version comes.
     *
     * @param fileId the logger file that it, or the version before it, came with
     */
    record Sender(OptionalInt personId, OptionalInt cardId, OptionalInt fileId) {
        static final Sender TOKEN = new Sender(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty());

        static Sender of(Caller caller) {
            return new Sender(caller.personId(), caller.cardId(), OptionalInt.empty());
        }

        Sender withFile(OptionalInt file) {
            return new Sender(personId, cardId, file);
        }
    }

    private final Transactions transactions;
    private final TankRepository tanks;
    private final KitRepository kits;
    private final ReadingRepository readings;
    private final AfterChange afterChange;
    private final Clock clock;
    private final SubmissionRepository submissions = new SubmissionRepository();
    private final MeasurementRepository measurements = new MeasurementRepository();
    private final LastTemperatures lastTemperatures = new LastTemperatures();
    private final DirtyTanks dirtyTanks;

    public StoreReading(Transactions transactions, TankRepository tanks, KitRepository kits,
            ReadingRepository readings, DirtyTanks dirtyTanks, AfterChange afterChange, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.kits = kits;
        this.readings = readings;
        this.dirtyTanks = dirtyTanks;
        this.afterChange = afterChange;
        this.clock = clock;
    }

    /** Hears what is found of each of several readings before anything is stored. */
    interface Hearing {
        /** @return false where it may not be stored yet */
        boolean accept(Submitted submitted, JudgedReading judged);

        /** Its key has stored another reading before. */
        void overtaken(Submitted submitted);
    }

    /** One of several may not be stored yet: nothing of what was written stays. */
    private static final class NotAllException extends RuntimeException {}

    /** Works for a tank that the caller may post to. */
    @FunctionalInterface
    private interface Work<T> {
        T with(DSLContext tx, Tank tank, Kit kit);
    }

    /**
     * @param submitted reads what was sent, once it is clear that the caller may post to the tank; may refuse
     * @param accept hears the judgement before anything is stored, for asking back; false stores nothing
     * @return empty where {@code accept} said no
     */
    Optional<Outcome> store(Caller caller, String tankCode, String channel,
            BiFunction<Tank, Kit, Submitted> submitted, BiFunction<Submitted, JudgedReading, Boolean> accept) {
        Optional<Outcome> outcome = work(caller, tankCode, (tx, tank, kit) ->
                inside(tx, caller, tank, channel, submitted.apply(tank, kit), accept));
        tell(caller, outcome.stream());
        return outcome;
    }

    /**
     * The same for several at once, each with a key of its own: all are stored, or none.
     *
     * @return empty where {@code hearing} said no to one of them, having heard all
     */
    Optional<List<Outcome>> storeAll(Caller caller, String tankCode, String channel,
            BiFunction<Tank, Kit, List<Submitted>> submitted, Hearing hearing) {
        try {
            List<Outcome> outcomes = work(caller, tankCode, (tx, tank, kit) ->
                    allInside(tx, caller, tank, channel, submitted.apply(tank, kit), hearing));
            tell(caller, outcomes.stream());
            return Optional.of(outcomes);
        } catch (NotAllException e) {
            return Optional.empty();
        }
    }

    /** Within a transaction that writes more than this; nothing is asked back, and telling others is the caller's. */
    Outcome alongside(
            DSLContext tx, Caller caller, Tank tank, String channel, Function<Kit, Submitted> submitted) {
        Submitted one = submitted.apply(kits.get(tx, caller.chapterId(), tank.kitId()));
        return inside(tx, caller, tank, channel, one, (given, judged) -> true).orElseThrow();
    }

    private List<Outcome> allInside(DSLContext tx, Caller caller, Tank tank, String channel,
            List<Submitted> submitted, Hearing hearing) {
        List<Outcome> outcomes = new ArrayList<>();
        for (Submitted one : submitted) {
            try {
                inside(tx, caller, tank, channel, one, hearing::accept).ifPresent(outcomes::add);
            } catch (RefusedException refusal) {
                hearing.overtaken(one);
            }
        }
        if (outcomes.size() < submitted.size()) {
            throw new NotAllException();
        }
        return outcomes;
    }

    private <T> T work(Caller caller, String tankCode, Work<T> work) {
        try {
            return transactions.inChapter(caller.chapterId(), tx -> {
                Tank tank = tanks.get(tx, caller, tankCode);
                return work.with(tx, tank, kits.get(tx, caller.chapterId(), tank.kitId()));
            });
        } catch (DataAccessException e) {
            if (waitedTooLong(e)) {
                throw RefusedException.of(409, Saying.of("readings.beingStored"));
            }
            throw e;
        }
    }

    private void tell(Caller caller, Stream<Outcome> outcomes) {
        if (outcomes.anyMatch(Outcome::isNew)) {
            afterChange.changed(caller.chapterId());
        }
    }

    /** Two transactions wanted the same rows at once; trying again will do. */
    static boolean waitedTooLong(DataAccessException e) {
        return WAITED_TOO_LONG.contains(String.valueOf(e.sqlState()));
    }

    private Optional<Outcome> inside(DSLContext tx, Caller caller, Tank tank, String channel,
            Submitted submitted, BiFunction<Submitted, JudgedReading, Boolean> accept) {
        Optional<Submission> before = submissions.find(tx, caller.chapterId(), tank.tankId(), submitted.key());
        if (before.isPresent()) {
            return Optional.of(repeated(tx, caller, tank, submitted, before.get()));
        }
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        Judge.Known known = new Judge.Known(tank, submitted.kit(), now,
                at -> lastTemperatures.find(tx, caller.chapterId(), new Moment(tank.tankId(), at)));
        JudgedReading judged = Judge.judge(submitted.given(), known, submitted.confirmed(), submitted.faults());
        if (!accept.apply(submitted, judged)) {
            return Optional.empty();
        }
        submitted.faults().refuse();
        String code = Secrets.code(CODE_LENGTH);
        Submission submission = new Submission(submitted.fingerprint(), code);
        if (!submissions.claim(tx, caller.chapterId(), tank.tankId(), submitted.key(), submission, now)) {
            Submission other = submissions.find(tx, caller.chapterId(), tank.tankId(), submitted.key()).orElseThrow();
            return Optional.of(repeated(tx, caller, tank, submitted, other));
        }
        Reading reading = version(tank, code, 1, channel, Sender.of(caller), now, judged, Optional.empty());
        return Optional.of(new Outcome(tank, insert(tx, caller.chapterId(), reading, judged), true));
    }

    private Outcome repeated(DSLContext tx, Caller caller, Tank tank, Submitted submitted, Submission before) {
        if (!Arrays.equals(before.fingerprint(), submitted.fingerprint())) {
            throw RefusedException.of(409, OTHER_READING);
        }
        Reading stored = readings.listVersions(tx, caller.chapterId(), tank.tankId(), before.readingCode()).stream()
                .filter(version -> !version.isTakingBack()).findFirst().orElseThrow();
        return new Outcome(tank, stored, false);
    }

    /** Writes a version with what is derived from it. */
    Reading insert(DSLContext tx, int chapterId, Reading reading, JudgedReading judged) {
        long readingId = readings.insert(tx, chapterId, reading);
        measurements.insert(tx, chapterId, List.of(
                new Rows(reading.tankId(), readingId, reading.measuredAt(), judged.measured())));
        dirtyTanks.mark(tx, chapterId, reading.tankId(), reading.receivedAt());
        return reading;
    }

    /** Writes down that a reading was taken back, with nothing derived from it; no version of it holds then. */
    void insertTakingBack(DSLContext tx, int chapterId, Reading word) {
        readings.supersede(tx, chapterId, readings.insert(tx, chapterId, word), word.receivedAt());
        dirtyTanks.mark(tx, chapterId, word.tankId(), word.receivedAt());
    }

    static Reading version(Tank tank, String code, int version, String channel, Sender sender, Instant now,
            JudgedReading judged, Optional<String> reason) {
        return new Reading(0, tank.tankId(), code, version, judged.measuredAt(), now, channel, judged.by(),
                sender.personId(), sender.cardId(), sender.fileId(), judged.values(), judged.note(), judged.flags(),
                reason, Optional.empty());
    }
}
