package org.tankrounds.breaks;

import static org.tankrounds.db.schema.Tables.BREAK_DAYS;
import static org.tankrounds.db.schema.Tables.SCHOOL_BREAKS;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.web.Caller;

/** Breaks and who looks in on which of their days. One that was dropped is nowhere shown. */
public final class BreakRepository {

    /** Of a tank, those that are not over on a day; the first comes first. */
    public List<SchoolBreak> list(DSLContext tx, int chapterId, int tankId, LocalDate endingFrom) {
        return read(tx, chapterId, standing(chapterId).and(SCHOOL_BREAKS.TANK_ID.eq(tankId))
                .and(SCHOOL_BREAKS.LAST_DAY.ge(endingFrom))).stream().map(Owned::schoolBreak).toList();
    }

    /** Of each tank of the chapter, the one that runs or comes next within some days. */
    public Map<Integer, SchoolBreak> next(DSLContext tx, int chapterId, LocalDate endingFrom,
            LocalDate beginningUntil) {
        return read(tx, chapterId, standing(chapterId)
                .and(SCHOOL_BREAKS.LAST_DAY.ge(endingFrom)).and(SCHOOL_BREAKS.FIRST_DAY.le(beginningUntil))).stream()
                .collect(Collectors.toMap(Owned::tankId, Owned::schoolBreak, (first, later) -> first));
    }

    /** The newest break that another tank's class entered: schools of one chapter often share their calendar. */
    Optional<SchoolBreak> suggest(DSLContext tx, int chapterId, int tankId, LocalDate endingFrom) {
        return read(tx, chapterId, standing(chapterId).and(SCHOOL_BREAKS.TANK_ID.ne(tankId))
                .and(SCHOOL_BREAKS.FIRST_DAY.ge(endingFrom))).stream().map(Owned::schoolBreak).findFirst();
    }

    /** As {@link #list}, and nobody else changes this tank's breaks until the transaction ends. */
    List<SchoolBreak> lock(DSLContext tx, int chapterId, int tankId, LocalDate endingFrom) {
        tx.fetch("SELECT pg_advisory_xact_lock(?, ?)", chapterId, tankId);
        return list(tx, chapterId, tankId, endingFrom);
    }

    /** @return the number that the database gave it */
    public int add(DSLContext tx, Caller caller, int tankId, SchoolBreak planned, Instant now) {
        int breakId = tx.insertInto(SCHOOL_BREAKS)
                .set(SCHOOL_BREAKS.CHAPTER_ID, caller.chapterId())
                .set(SCHOOL_BREAKS.TANK_ID, tankId)
                .set(SCHOOL_BREAKS.NAME, planned.name())
                .set(SCHOOL_BREAKS.FIRST_DAY, planned.firstDay())
                .set(SCHOOL_BREAKS.LAST_DAY, planned.lastDay())
                .set(SCHOOL_BREAKS.PLANNED_BY, caller.personId().orElseThrow())
                .set(SCHOOL_BREAKS.PLANNED_AT, now)
                .returning(SCHOOL_BREAKS.BREAK_ID)
                .fetchSingle(SCHOOL_BREAKS.BREAK_ID);
        plan(tx, caller.chapterId(), breakId, planned.lookers());
        return breakId;
    }

    /** Puts other people on its days than before. */
    void plan(DSLContext tx, int chapterId, int breakId, Map<LocalDate, String> lookers) {
        tx.deleteFrom(BREAK_DAYS)
                .where(BREAK_DAYS.CHAPTER_ID.eq(chapterId)).and(BREAK_DAYS.BREAK_ID.eq(breakId)).execute();
        lookers.forEach((day, looker) -> tx.insertInto(BREAK_DAYS)
                .set(BREAK_DAYS.CHAPTER_ID, chapterId)
                .set(BREAK_DAYS.BREAK_ID, breakId)
                .set(BREAK_DAYS.DAY, day)
                .set(BREAK_DAYS.LOOKER, looker)
                .execute());
    }

    /** @return false where the tank has no such break */
    boolean drop(DSLContext tx, int chapterId, int tankId, int breakId, Instant now) {
        return tx.update(SCHOOL_BREAKS)
                .set(SCHOOL_BREAKS.DROPPED_AT, now)
                .where(standing(chapterId)).and(SCHOOL_BREAKS.TANK_ID.eq(tankId))
                .and(SCHOOL_BREAKS.BREAK_ID.eq(breakId))
                .execute() == 1;
    }

    private record Owned(int tankId, SchoolBreak schoolBreak) {}

    private static Condition standing(int chapterId) {
        return SCHOOL_BREAKS.CHAPTER_ID.eq(chapterId).and(SCHOOL_BREAKS.DROPPED_AT.isNull());
    }

    private static List<Owned> read(DSLContext tx, int chapterId, Condition which) {
        List<Record> rows = List.copyOf(tx.selectFrom(SCHOOL_BREAKS).where(which)
                .orderBy(SCHOOL_BREAKS.FIRST_DAY, SCHOOL_BREAKS.BREAK_ID).fetch());
        Map<Integer, Map<LocalDate, String>> days = tx.selectFrom(BREAK_DAYS)
                .where(BREAK_DAYS.CHAPTER_ID.eq(chapterId))
                .and(BREAK_DAYS.BREAK_ID.in(rows.stream().map(row -> row.get(SCHOOL_BREAKS.BREAK_ID)).toList()))
                .fetch().stream().collect(Collectors.groupingBy(row -> row.get(BREAK_DAYS.BREAK_ID),
                        Collectors.toMap(row -> row.get(BREAK_DAYS.DAY), row -> row.get(BREAK_DAYS.LOOKER))));
        return rows.stream().map(row -> new Owned(row.get(SCHOOL_BREAKS.TANK_ID), new SchoolBreak(
                row.get(SCHOOL_BREAKS.BREAK_ID), row.get(SCHOOL_BREAKS.NAME), row.get(SCHOOL_BREAKS.FIRST_DAY),
                row.get(SCHOOL_BREAKS.LAST_DAY), days.getOrDefault(row.get(SCHOOL_BREAKS.BREAK_ID), Map.of()))))
                .toList();
    }
}
