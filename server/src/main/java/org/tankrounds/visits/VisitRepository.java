package org.tankrounds.visits;

import static org.tankrounds.db.schema.Tables.PEOPLE;
import static org.tankrounds.db.schema.Tables.VISITS;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;

/** The chapter's visits; one that was taken back is nowhere shown. */
public final class VisitRepository {

    /** Of one tank, the newest first. */
    public List<Visit> list(DSLContext tx, int chapterId, int tankId, Instant from, Instant until) {
        return tx.select(VISITS.fields()).select(PEOPLE.NAME)
                .from(VISITS)
                .join(PEOPLE).on(PEOPLE.CHAPTER_ID.eq(VISITS.CHAPTER_ID)).and(PEOPLE.PERSON_ID.eq(VISITS.WRITTEN_BY))
                .where(VISITS.CHAPTER_ID.eq(chapterId)).and(VISITS.TANK_ID.eq(tankId))
                .and(VISITS.VISITED_AT.between(from, until)).and(VISITS.WITHDRAWN_AT.isNull())
                .orderBy(VISITS.VISITED_AT.desc(), VISITS.VISIT_ID.desc())
                .fetch(VisitRepository::visit);
    }

    /** @return false where the same form was stored before */
    boolean add(DSLContext tx, int chapterId, int tankId, UUID submissionId, Visit visit, int personId, Instant now) {
        return tx.insertInto(VISITS)
                .set(VISITS.CHAPTER_ID, chapterId)
                .set(VISITS.TANK_ID, tankId)
                .set(VISITS.SUBMISSION_ID, submissionId)
                .set(VISITS.VISITED_AT, visit.at())
                .set(VISITS.DEEDS, visit.deeds().stream().map(Deed::code).toArray(String[]::new))
                .set(VISITS.NOTE, visit.note().orElse(null))
                .set(VISITS.WRITTEN_BY, personId)
                .set(VISITS.WRITTEN_AT, now)
                .onConflict(VISITS.CHAPTER_ID, VISITS.TANK_ID, VISITS.SUBMISSION_ID).doNothing()
                .execute() == 1;
    }

    /** One that was taken back before stays so. */
    void withdraw(DSLContext tx, int chapterId, int tankId, int visitId, int personId, Instant now) {
        tx.update(VISITS)
                .set(VISITS.WITHDRAWN_BY, personId)
                .set(VISITS.WITHDRAWN_AT, now)
                .where(VISITS.CHAPTER_ID.eq(chapterId)).and(VISITS.TANK_ID.eq(tankId))
                .and(VISITS.VISIT_ID.eq(visitId)).and(VISITS.WITHDRAWN_AT.isNull())
                .execute();
    }

    private static Visit visit(Record row) {
        return new Visit(row.get(VISITS.VISIT_ID), row.get(VISITS.VISITED_AT),
                Arrays.stream(row.get(VISITS.DEEDS)).map(code -> Deed.ofCode(code).orElseThrow()).toList(),
                Optional.ofNullable(row.get(VISITS.NOTE)), row.get(PEOPLE.NAME));
    }
}
