package org.tankrounds.readings;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.readings.BatchTanks.Place;
import org.tankrounds.readings.MeasurementRepository.Rows;
import org.tankrounds.readings.SubmissionRepository.Submission;
import org.tankrounds.readings.SubmissionRepository.TankKey;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Secrets;
import org.tankrounds.words.Words;

/** The lines of one transaction: a handful of statements for all of them together. */
final class BatchTransaction {

    /** A line whose tank and key are known. */
    record Placed(BatchLine line, Place place, TankKey key) {}

    /** A line that is to be stored. */
    private record Judged(Placed placed, JudgedReading reading, Submission submission) {}

    private final DSLContext tx;
    private final int chapterId;
    private final BatchTanks tanks;
    private final ReadingRepository readings;
    private final DirtyTanks dirtyTanks;
    private final Instant now;
    private final SubmissionRepository submissions = new SubmissionRepository();
    private final MeasurementRepository measurements = new MeasurementRepository();
    private final Map<Integer, BatchAnswer> answers = new LinkedHashMap<>();

    BatchTransaction(DSLContext tx, int chapterId, BatchTanks tanks, ReadingRepository readings,
            DirtyTanks dirtyTanks, Instant now) {
        this.tx = tx;
        this.chapterId = chapterId;
        this.tanks = tanks;
        this.readings = readings;
        this.dirtyTanks = dirtyTanks;
        this.now = now.truncatedTo(ChronoUnit.MICROS);
    }

    List<BatchAnswer> store(List<BatchLine> lines) {
        List<Placed> placed = new ArrayList<>();
        lines.forEach(line -> place(line).ifPresent(placed::add));
        Map<TankKey, Submission> known = submissions.findAll(tx, chapterId, keys(placed));
        BatchTemperatures temperatures = BatchTemperatures.find(tx, chapterId,
                placed.stream().filter(one -> !known.containsKey(one.key())).toList(), now);
        Map<TankKey, Judged> fresh = new LinkedHashMap<>();
        List<Placed> repeated = new ArrayList<>();
        for (Placed one : placed) {
            if (known.containsKey(one.key()) || fresh.containsKey(one.key())) {
                repeated.add(one);
            } else {
                judge(one, temperatures.known(one)).ifPresent(judged -> fresh.put(one.key(), judged));
            }
        }
        known.putAll(insert(fresh, repeated));
        repeated.forEach(one -> answers.put(one.line().number(), again(one, known.get(one.key()))));
        return lines.stream().map(line -> answers.get(line.number())).toList();
    }

    private Optional<Placed> place(BatchLine line) {
        Optional<Place> place = line.tankCode().flatMap(code -> tanks.find(tx, code));
        if (line.tankCode().isPresent() && place.isEmpty()) {
            answers.put(line.number(), BatchAnswer.refused(line.number(), 404,
                    "There is no such tank, or it belongs to somebody else."));
            return Optional.empty();
        }
        if (place.isEmpty() || line.key().isEmpty()) {
            answers.put(line.number(), unacceptable(line));
            return Optional.empty();
        }
        TankKey key = new TankKey(place.get().tank().tankId(), line.key().get());
        return Optional.of(new Placed(line, place.get(), key));
    }

    private Optional<Judged> judge(Placed placed, Judge.Known known) {
        BatchLine line = placed.line();
        JudgedReading judged = Judge.judge(line.given(), known, Set.of(), line.faults());
        if (!line.faults().none()) {
            answers.put(line.number(), unacceptable(line));
            return Optional.empty();
        }
        Submission submission = new Submission(line.fingerprint(), Secrets.code(StoreReading.CODE_LENGTH));
        return Optional.of(new Judged(placed, judged, submission));
    }

    /** @return the submissions that now stand behind the keys of this transaction */
    private Map<TankKey, Submission> insert(Map<TankKey, Judged> fresh, List<Placed> repeated) {
        if (fresh.isEmpty()) {
            return Map.of();
        }
        Set<TankKey> claimed = submissions.claimAll(tx, chapterId, List.copyOf(fresh.keySet()),
                fresh.values().stream().map(Judged::submission).toList(), now);
        List<Judged> mine = fresh.values().stream().filter(one -> claimed.contains(one.placed().key())).toList();
        List<Placed> others = fresh.values().stream().map(Judged::placed)
                .filter(one -> !claimed.contains(one.key())).toList();
        repeated.addAll(others);
        write(mine);
        Map<TankKey, Submission> known = submissions.findAll(tx, chapterId, keys(others));
        mine.forEach(one -> known.put(one.placed().key(), one.submission()));
        return known;
    }

    private void write(List<Judged> mine) {
        List<Reading> rows = mine.stream().map(one -> StoreReading.version(one.placed().place().tank(),
                one.submission().readingCode(), 1, Reading.CHANNEL_BATCH, StoreReading.Sender.TOKEN, now,
                one.reading(), Optional.empty())).toList();
        if (rows.isEmpty()) {
            return;
        }
        Map<String, Long> readingIds = readings.insertAll(tx, chapterId, rows);
        measurements.insert(tx, chapterId, mine.stream().map(one -> new Rows(one.placed().key().tankId(),
                readingIds.get(one.submission().readingCode()), one.reading().measuredAt(),
                one.reading().measured())).toList());
        rows.stream().map(Reading::tankId).distinct().sorted()
                .forEach(tankId -> dirtyTanks.mark(tx, chapterId, tankId, now));
        mine.forEach(one -> answers.put(one.placed().line().number(), BatchAnswer.stored(
                one.placed().line().number(), 201, one.submission().readingCode())));
    }

    private static BatchAnswer again(Placed placed, Submission before) {
        int line = placed.line().number();
        return Arrays.equals(before.fingerprint(), placed.line().fingerprint())
                ? BatchAnswer.stored(line, 200, before.readingCode())
                : BatchAnswer.refused(line, 409, Words.english().say(StoreReading.OTHER_READING));
    }

    private static BatchAnswer unacceptable(BatchLine line) {
        return BatchAnswer.refused(line.number(),
                new RefusedException(422, Faults.TITLE, line.faults().errors()));
    }

    private static List<TankKey> keys(List<Placed> placed) {
        return placed.stream().map(Placed::key).toList();
    }
}
