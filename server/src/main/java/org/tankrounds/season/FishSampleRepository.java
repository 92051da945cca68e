package org.tankrounds.season;

import static org.tankrounds.db.schema.Tables.FISH_SAMPLES;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.water.Digits;
import org.tankrounds.web.Caller;

/** Fish that were measured; a sample that was taken back is nowhere shown. */
public final class FishSampleRepository {

    /** @return false where the same form was stored before */
    public boolean add(DSLContext tx, Caller caller, int tankId, UUID submissionId, FishSample sample) {
        return tx.insertInto(FISH_SAMPLES)
                .set(FISH_SAMPLES.CHAPTER_ID, caller.chapterId())
                .set(FISH_SAMPLES.TANK_ID, tankId)
                .set(FISH_SAMPLES.SUBMISSION_ID, submissionId)
                .set(FISH_SAMPLES.MEASURED_AT, sample.measuredAt())
                .set(FISH_SAMPLES.FISH, sample.fish())
                .set(FISH_SAMPLES.MEAN_LENGTH_MM, (float) sample.meanLengthMm())
                .set(FISH_SAMPLES.TOTAL_WEIGHT_G,
                        sample.totalWeightG().isPresent() ? (float) sample.totalWeightG().getAsDouble() : null)
                .set(FISH_SAMPLES.PERSON_ID, caller.personIdOrNull())
                .set(FISH_SAMPLES.CARD_ID, caller.cardIdOrNull())
                .onConflict(FISH_SAMPLES.CHAPTER_ID, FISH_SAMPLES.TANK_ID, FISH_SAMPLES.SUBMISSION_ID).doNothing()
                .execute() == 1;
    }

    /** @return false where the tank has no such sample, or it was taken back before */
    public boolean withdraw(DSLContext tx, int chapterId, int tankId, int sampleId, Instant now) {
        return tx.update(FISH_SAMPLES)
                .set(FISH_SAMPLES.WITHDRAWN_AT, now)
                .where(FISH_SAMPLES.CHAPTER_ID.eq(chapterId)).and(FISH_SAMPLES.SAMPLE_ID.eq(sampleId))
                .and(FISH_SAMPLES.TANK_ID.eq(tankId)).and(FISH_SAMPLES.WITHDRAWN_AT.isNull())
                .execute() == 1;
    }

    /** Since a moment, the newest first. */
    public List<FishSample> list(DSLContext tx, int chapterId, int tankId, Instant since) {
        return tx.selectFrom(FISH_SAMPLES)
                .where(FISH_SAMPLES.CHAPTER_ID.eq(chapterId)).and(FISH_SAMPLES.TANK_ID.eq(tankId))
                .and(FISH_SAMPLES.MEASURED_AT.ge(since)).and(FISH_SAMPLES.WITHDRAWN_AT.isNull())
                .orderBy(FISH_SAMPLES.MEASURED_AT.desc(), FISH_SAMPLES.SAMPLE_ID.desc())
                .fetch(FishSampleRepository::sample);
    }

    private static FishSample sample(Record row) {
        Float weight = row.get(FISH_SAMPLES.TOTAL_WEIGHT_G);
        return new FishSample(row.get(FISH_SAMPLES.SAMPLE_ID), row.get(FISH_SAMPLES.MEASURED_AT),
                row.get(FISH_SAMPLES.FISH), Digits.kept(row.get(FISH_SAMPLES.MEAN_LENGTH_MM)),
                weight == null ? OptionalDouble.empty() : OptionalDouble.of(Digits.kept(weight)));
    }
}
