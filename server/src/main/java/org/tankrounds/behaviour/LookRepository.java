package org.tankrounds.behaviour;

import static org.tankrounds.db.schema.Tables.FISH_LOOKS;

import java.time.Instant;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.ResultQuery;
import org.tankrounds.db.schema.tables.records.FishLooksRecord;
import org.tankrounds.web.Caller;

/** What was seen of the fish; a look that was taken back is nowhere shown. */
public final class LookRepository {

    /** @return false where the same form was stored before */
    public boolean add(DSLContext tx, Caller caller, int tankId, UUID submissionId, List<Seen> seen,
            Instant now) {
        return tx.insertInto(FISH_LOOKS)
                .set(FISH_LOOKS.CHAPTER_ID, caller.chapterId())
                .set(FISH_LOOKS.TANK_ID, tankId)
                .set(FISH_LOOKS.SUBMISSION_ID, submissionId)
                .set(FISH_LOOKS.SEEN_AT, now)
                .set(FISH_LOOKS.SEEN, seen.stream().map(Seen::code).toArray(String[]::new))
                .set(FISH_LOOKS.PERSON_ID, caller.personIdOrNull())
                .set(FISH_LOOKS.CARD_ID, caller.cardIdOrNull())
                .onConflict(FISH_LOOKS.CHAPTER_ID, FISH_LOOKS.TANK_ID, FISH_LOOKS.SUBMISSION_ID).doNothing()
                .execute() == 1;
    }

    /** @return false where the tank has no such look, or it was taken back before */
    public boolean withdraw(DSLContext tx, int chapterId, int tankId, int lookId, Instant now) {
        return tx.update(FISH_LOOKS)
                .set(FISH_LOOKS.WITHDRAWN_AT, now)
                .where(FISH_LOOKS.CHAPTER_ID.eq(chapterId)).and(FISH_LOOKS.LOOK_ID.eq(lookId))
                .and(FISH_LOOKS.TANK_ID.eq(tankId)).and(FISH_LOOKS.WITHDRAWN_AT.isNull())
                .execute() == 1;
    }

    /** The newest first. */
    public List<Look> list(DSLContext tx, int chapterId, int tankId, int limit) {
        return tx.selectFrom(FISH_LOOKS)
                .where(FISH_LOOKS.CHAPTER_ID.eq(chapterId)).and(FISH_LOOKS.TANK_ID.eq(tankId))
                .and(FISH_LOOKS.WITHDRAWN_AT.isNull())
                .orderBy(FISH_LOOKS.SEEN_AT.desc(), FISH_LOOKS.LOOK_ID.desc())
                .limit(limit)
                .fetch(LookRepository::look);
    }

    /** @return moments by tank; a tank whose fish nobody looked at is missing */
    public Map<Integer, Set<Instant>> moments(
            DSLContext tx, int chapterId, Collection<Integer> tankIds, Instant from, Instant until) {
        Map<Integer, Set<Instant>> moments = new HashMap<>();
        since(tx, FISH_LOOKS.CHAPTER_ID.eq(chapterId).and(FISH_LOOKS.TANK_ID.in(tankIds))
                .and(FISH_LOOKS.SEEN_AT.le(until)), from).fetchGroups(FISH_LOOKS.TANK_ID, FISH_LOOKS.SEEN_AT)
                .forEach((tankId, seenAt) -> moments.put(tankId, Set.copyOf(seenAt)));
        return moments;
    }

    /** What stands of each tank's looks; a tank that nobody looked at is missing. */
    public Map<Integer, SeenLately> lately(DSLContext tx, int chapterId, Instant now) {
        Map<Integer, SeenLately> standing = new HashMap<>();
        since(tx, FISH_LOOKS.CHAPTER_ID.eq(chapterId), now.minus(Look.GRAVE_STANDS))
                .fetchGroups(FISH_LOOKS.TANK_ID, LookRepository::look)
                .forEach((tankId, looks) -> standing.put(tankId, SeenLately.of(looks, now)));
        return standing;
    }

    public SeenLately latelyIn(DSLContext tx, int chapterId, int tankId, Instant now) {
        Condition its = FISH_LOOKS.CHAPTER_ID.eq(chapterId).and(FISH_LOOKS.TANK_ID.eq(tankId));
        return SeenLately.of(since(tx, its, now.minus(Look.GRAVE_STANDS)).fetch(LookRepository::look), now);
    }

    private static ResultQuery<FishLooksRecord> since(DSLContext tx, Condition which, Instant since) {
        return tx.selectFrom(FISH_LOOKS)
                .where(which).and(FISH_LOOKS.SEEN_AT.ge(since)).and(FISH_LOOKS.WITHDRAWN_AT.isNull())
                .orderBy(FISH_LOOKS.SEEN_AT.desc(), FISH_LOOKS.LOOK_ID.desc());
    }

    private static Look look(Record row) {
        return new Look(row.get(FISH_LOOKS.LOOK_ID), row.get(FISH_LOOKS.SEEN_AT),
                Arrays.stream(row.get(FISH_LOOKS.SEEN)).flatMap(code -> Seen.ofCode(code).stream()).toList());
    }
}
