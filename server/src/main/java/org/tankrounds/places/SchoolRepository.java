package org.tankrounds.places;

import static org.tankrounds.db.schema.Tables.CLASSROOMS;
import static org.tankrounds.db.schema.Tables.SCHOOLS;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.tankrounds.water.Digits;
import org.tankrounds.web.NotFoundException;

/** The chapter's schools. */
public final class SchoolRepository {

    public List<School> list(DSLContext tx, int chapterId) {
        return tx.selectFrom(SCHOOLS)
                .where(SCHOOLS.CHAPTER_ID.eq(chapterId))
                .orderBy(DSL.lower(SCHOOLS.NAME), SCHOOLS.SCHOOL_ID)
                .fetch(row -> school(tx, row));
    }

    public School get(DSLContext tx, int chapterId, String code) {
        return tx.selectFrom(SCHOOLS)
                .where(coded(chapterId, code))
                .fetchOptional(row -> school(tx, row))
                .orElseThrow(() -> new NotFoundException("school"));
    }

    /** As {@link #get}, and nobody else changes it until this transaction ends. */
    School lock(DSLContext tx, int chapterId, String code) {
        tx.select(SCHOOLS.SCHOOL_ID).from(SCHOOLS).where(coded(chapterId, code)).forUpdate().fetch();
        return get(tx, chapterId, code);
    }

    /** @throws org.jooq.exception.DataAccessException also when the name is taken */
    public School add(DSLContext tx, int chapterId, School.Details details) {
        String code = PublicCode.firstFree(candidate -> tx.insertInto(SCHOOLS)
                .set(SCHOOLS.CHAPTER_ID, chapterId)
                .set(SCHOOLS.CODE, candidate)
                .set(SCHOOLS.NAME, details.name())
                .set(SCHOOLS.PLACE, details.place().orElse(null))
                .set(SCHOOLS.ELEVATION_M, Columns.single(details.elevationM()))
                .set(SCHOOLS.TIME_ZONE, details.zone().getId())
                .onConflict(SCHOOLS.CHAPTER_ID, SCHOOLS.CODE).doNothing()
                .execute());
        return get(tx, chapterId, code);
    }

    void update(DSLContext tx, int chapterId, int schoolId, School.Details details) {
        tx.update(SCHOOLS)
                .set(SCHOOLS.NAME, details.name())
                .set(SCHOOLS.PLACE, details.place().orElse(null))
                .set(SCHOOLS.ELEVATION_M, Columns.single(details.elevationM()))
                .set(SCHOOLS.TIME_ZONE, details.zone().getId())
                .where(SCHOOLS.CHAPTER_ID.eq(chapterId)).and(SCHOOLS.SCHOOL_ID.eq(schoolId))
                .execute();
    }

    private static Condition coded(int chapterId, String code) {
        return SCHOOLS.CHAPTER_ID.eq(chapterId).and(SCHOOLS.CODE.eq(code));
    }

    private static School school(DSLContext tx, Record row) {
        Float elevationM = row.get(SCHOOLS.ELEVATION_M);
        List<String> classrooms = tx.select(CLASSROOMS.NAME).from(CLASSROOMS)
                .where(CLASSROOMS.CHAPTER_ID.eq(row.get(SCHOOLS.CHAPTER_ID)))
                .and(CLASSROOMS.SCHOOL_ID.eq(row.get(SCHOOLS.SCHOOL_ID)))
                .orderBy(DSL.lower(CLASSROOMS.NAME), CLASSROOMS.NAME)
                .fetch(CLASSROOMS.NAME);
        School.Details details = new School.Details(
                row.get(SCHOOLS.NAME),
                Optional.ofNullable(row.get(SCHOOLS.PLACE)),
                elevationM == null ? OptionalDouble.empty() : OptionalDouble.of(Digits.kept(elevationM)),
                ZoneId.of(row.get(SCHOOLS.TIME_ZONE)));
        return new School(row.get(SCHOOLS.SCHOOL_ID), row.get(SCHOOLS.CODE), details, classrooms);
    }
}
