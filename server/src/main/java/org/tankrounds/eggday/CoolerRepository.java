package org.tankrounds.eggday;

import static org.tankrounds.db.schema.Tables.COOLER_CHECKS;
import static org.tankrounds.db.schema.Tables.PEOPLE;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.water.Digits;

/** How warm a run's cooler was; what was taken back counts nowhere. */
public final class CoolerRepository {

    /** In the order in which they were read. */
    List<CoolerCheck> list(DSLContext tx, int chapterId, int runId) {
        return tx.select(COOLER_CHECKS.fields()).select(PEOPLE.NAME)
                .from(COOLER_CHECKS)
                .join(PEOPLE).on(PEOPLE.CHAPTER_ID.eq(COOLER_CHECKS.CHAPTER_ID))
                .and(PEOPLE.PERSON_ID.eq(COOLER_CHECKS.WRITTEN_BY))
                .where(COOLER_CHECKS.CHAPTER_ID.eq(chapterId)).and(COOLER_CHECKS.RUN_ID.eq(runId))
                .and(COOLER_CHECKS.WITHDRAWN_AT.isNull())
                .orderBy(COOLER_CHECKS.CHECKED_AT, COOLER_CHECKS.CHECK_ID)
                .fetch(row -> new CoolerCheck(row.get(COOLER_CHECKS.CHECK_ID), row.get(COOLER_CHECKS.CHECKED_AT),
                        Digits.kept(row.get(COOLER_CHECKS.TEMPERATURE_C)),
                        CoolerCheck.Where.ofCode(row.get(COOLER_CHECKS.PLACE)).orElseThrow(), row.get(PEOPLE.NAME)));
    }

    /** Once for each form, however often it is sent. */
    void add(DSLContext tx, int chapterId, int runId, UUID submissionId, CoolerCheck check, int personId,
            Instant now) {
        tx.insertInto(COOLER_CHECKS)
                .set(COOLER_CHECKS.CHAPTER_ID, chapterId)
                .set(COOLER_CHECKS.RUN_ID, runId)
                .set(COOLER_CHECKS.SUBMISSION_ID, submissionId)
                .set(COOLER_CHECKS.CHECKED_AT, check.at())
                .set(COOLER_CHECKS.TEMPERATURE_C, (float) check.temperatureC())
                .set(COOLER_CHECKS.PLACE, check.where().code())
                .set(COOLER_CHECKS.WRITTEN_BY, personId)
                .set(COOLER_CHECKS.WRITTEN_AT, now)
                .onConflictDoNothing()
                .execute();
    }

    /** One that was taken back before stays so. */
    void withdraw(DSLContext tx, int chapterId, int runId, int checkId, int personId, Instant now) {
        tx.update(COOLER_CHECKS)
                .set(COOLER_CHECKS.WITHDRAWN_BY, personId)
                .set(COOLER_CHECKS.WITHDRAWN_AT, now)
                .where(COOLER_CHECKS.CHAPTER_ID.eq(chapterId)).and(COOLER_CHECKS.RUN_ID.eq(runId))
                .and(COOLER_CHECKS.CHECK_ID.eq(checkId)).and(COOLER_CHECKS.WITHDRAWN_AT.isNull())
                .execute();
    }
}
