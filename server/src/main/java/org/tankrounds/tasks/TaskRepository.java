package org.tankrounds.tasks;

import static org.tankrounds.db.schema.Tables.PEOPLE;
import static org.tankrounds.db.schema.Tables.TASKS;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.tankrounds.web.Caller;

/** What classes are asked to do. A task that was dropped is nowhere shown. */
public final class TaskRepository {

    /** @return the number that the database gave it */
    public int ask(DSLContext tx, Caller caller, int tankId, String words, Instant now) {
        return tx.insertInto(TASKS)
                .set(TASKS.CHAPTER_ID, caller.chapterId())
                .set(TASKS.TANK_ID, tankId)
                .set(TASKS.WORDS, words)
                .set(TASKS.ASKED_BY, caller.personId().orElseThrow())
                .set(TASKS.ASKED_AT, now)
                .returning(TASKS.TASK_ID)
                .fetchSingle(TASKS.TASK_ID);
    }

    /**
     * A class did what the advice said.
     *
     * @return false where somebody ticked it just before: that is one deed
     */
    public boolean tick(DSLContext tx, Caller caller, int tankId, String act, String words, Instant now) {
        tx.fetch("SELECT pg_advisory_xact_lock(?, ?)", caller.chapterId(), tankId);
        if (tx.fetchExists(TASKS, TASKS.CHAPTER_ID.eq(caller.chapterId()).and(TASKS.TANK_ID.eq(tankId))
                .and(TASKS.ACT.eq(act)).and(TASKS.DROPPED_AT.isNull())
                .and(TASKS.DONE_AT.gt(now.minus(Task.SAME_DEED))))) {
            return false;
        }
        return tx.insertInto(TASKS)
                .set(TASKS.CHAPTER_ID, caller.chapterId())
                .set(TASKS.TANK_ID, tankId)
                .set(TASKS.ACT, act)
                .set(TASKS.WORDS, words)
                .set(TASKS.ASKED_AT, now)
                .set(TASKS.DONE_AT, now)
                .set(TASKS.DONE_BY, caller.personIdOrNull())
                .set(TASKS.CARD_ID, caller.cardIdOrNull())
                .execute() == 1;
    }

    /** @return false where the tank has no such task that is open */
    public boolean finish(DSLContext tx, Caller caller, int tankId, int taskId, Instant now) {
        return tx.update(TASKS)
                .set(TASKS.DONE_AT, now)
                .set(TASKS.DONE_BY, caller.personIdOrNull())
                .set(TASKS.CARD_ID, caller.cardIdOrNull())
                .where(one(caller.chapterId(), tankId, taskId)).and(TASKS.DONE_AT.isNull())
                .execute() == 1;
    }

    /** A tick by mistake: what a person asked for is open again, what was advised stands in the advice anyway. */
    public boolean undo(DSLContext tx, int chapterId, int tankId, int taskId, Instant now) {
        return tx.update(TASKS)
                .set(TASKS.DROPPED_AT, DSL.when(TASKS.ACT.isNotNull(), DSL.val(now)))
                .set(TASKS.DONE_AT, DSL.when(TASKS.ACT.isNotNull(), TASKS.DONE_AT))
                .where(one(chapterId, tankId, taskId)).and(TASKS.DONE_AT.isNotNull())
                .execute() == 1;
    }

    /** @return false where the tank has no such task */
    public boolean drop(DSLContext tx, int chapterId, int tankId, int taskId, Instant now) {
        return tx.update(TASKS)
                .set(TASKS.DROPPED_AT, now)
                .where(one(chapterId, tankId, taskId))
                .execute() == 1;
    }

    /** Those that are open, and those done since a moment; the newest first. */
    public List<Task> list(DSLContext tx, int chapterId, int tankId, Instant doneSince) {
        return tx.select(TASKS.asterisk()).select(PEOPLE.NAME)
                .from(TASKS)
                .leftJoin(PEOPLE).on(PEOPLE.CHAPTER_ID.eq(TASKS.CHAPTER_ID).and(PEOPLE.PERSON_ID.eq(TASKS.ASKED_BY)))
                .where(TASKS.CHAPTER_ID.eq(chapterId)).and(TASKS.TANK_ID.eq(tankId)).and(TASKS.DROPPED_AT.isNull())
                .and(TASKS.DONE_AT.isNull().or(TASKS.DONE_AT.ge(doneSince)))
                .orderBy(TASKS.ASKED_AT.desc(), TASKS.TASK_ID.desc())
                .fetch(TaskRepository::task);
    }

    /** Those asked from one moment to another, both included, the oldest first; of advice, when it was ticked. */
    public List<Task> listAsked(DSLContext tx, int chapterId, int tankId, Instant from, Instant until) {
        return tx.select(TASKS.asterisk()).select(PEOPLE.NAME)
                .from(TASKS)
                .leftJoin(PEOPLE).on(PEOPLE.CHAPTER_ID.eq(TASKS.CHAPTER_ID).and(PEOPLE.PERSON_ID.eq(TASKS.ASKED_BY)))
                .where(TASKS.CHAPTER_ID.eq(chapterId)).and(TASKS.TANK_ID.eq(tankId)).and(TASKS.DROPPED_AT.isNull())
                .and(TASKS.ASKED_AT.between(from, until))
                .orderBy(TASKS.ASKED_AT, TASKS.TASK_ID)
                .fetch(TaskRepository::task);
    }

    private static Condition one(int chapterId, int tankId, int taskId) {
        return TASKS.CHAPTER_ID.eq(chapterId).and(TASKS.TASK_ID.eq(taskId)).and(TASKS.TANK_ID.eq(tankId))
                .and(TASKS.DROPPED_AT.isNull());
    }

    private static Task task(Record row) {
        return new Task(row.get(TASKS.TASK_ID), Optional.ofNullable(row.get(TASKS.ACT)), row.get(TASKS.WORDS),
                Optional.ofNullable(row.get(PEOPLE.NAME)), row.get(TASKS.ASKED_AT),
                Optional.ofNullable(row.get(TASKS.DONE_AT)));
    }
}
