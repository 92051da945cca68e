package org.tankrounds.places;

import static org.tankrounds.db.schema.Tables.CLASSROOMS;

import java.util.OptionalInt;
import org.jooq.DSLContext;

/** The rooms of a school; inside it a room is known by what stands on its door. */
public final class ClassroomRepository {

    public OptionalInt find(DSLContext tx, int chapterId, int schoolId, String name) {
        Integer id = tx.select(CLASSROOMS.CLASSROOM_ID).from(CLASSROOMS)
                .where(CLASSROOMS.CHAPTER_ID.eq(chapterId))
                .and(CLASSROOMS.SCHOOL_ID.eq(schoolId))
                .and(CLASSROOMS.NAME.eq(name))
                .fetchOne(CLASSROOMS.CLASSROOM_ID);
        return id == null ? OptionalInt.empty() : OptionalInt.of(id);
    }

    /** @throws org.jooq.exception.DataAccessException also when the school has such a room */
    public int add(DSLContext tx, int chapterId, int schoolId, String name) {
        return tx.insertInto(CLASSROOMS)
                .set(CLASSROOMS.CHAPTER_ID, chapterId)
                .set(CLASSROOMS.SCHOOL_ID, schoolId)
                .set(CLASSROOMS.NAME, name)
                .returning(CLASSROOMS.CLASSROOM_ID)
                .fetchSingle(CLASSROOMS.CLASSROOM_ID);
    }

    /** @return false where the room is called otherwise by now */
    boolean rename(DSLContext tx, int chapterId, int schoolId, String from, String to) {
        return tx.update(CLASSROOMS)
                .set(CLASSROOMS.NAME, to)
                .where(CLASSROOMS.CHAPTER_ID.eq(chapterId))
                .and(CLASSROOMS.SCHOOL_ID.eq(schoolId))
                .and(CLASSROOMS.NAME.eq(from))
                .execute() == 1;
    }
}
