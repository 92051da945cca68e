package org.tankrounds.season;

import static org.tankrounds.db.schema.Tables.DEATH_CAUSES;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;

/** What was said of a day's dead: the newest word alone. */
public final class DeathCauseRepository {

    /** By day. */
    public Map<LocalDate, DeathCause> list(DSLContext tx, int chapterId, int tankId) {
        Map<LocalDate, DeathCause> causes = new HashMap<>();
        tx.select(DEATH_CAUSES.DAY, DEATH_CAUSES.CAUSE).from(DEATH_CAUSES)
                .where(DEATH_CAUSES.CHAPTER_ID.eq(chapterId)).and(DEATH_CAUSES.TANK_ID.eq(tankId))
                .forEach(row -> DeathCause.ofCode(row.value2()).ifPresent(cause -> causes.put(row.value1(), cause)));
        return causes;
    }

    /** @param cause empty takes back what was said */
    void put(DSLContext tx, int chapterId, int tankId, LocalDate day, Optional<DeathCause> cause, int personId,
            Instant now) {
        if (cause.isEmpty()) {
            tx.deleteFrom(DEATH_CAUSES)
                    .where(DEATH_CAUSES.CHAPTER_ID.eq(chapterId)).and(DEATH_CAUSES.TANK_ID.eq(tankId))
                    .and(DEATH_CAUSES.DAY.eq(day))
                    .execute();
            return;
        }
        tx.insertInto(DEATH_CAUSES)
                .set(DEATH_CAUSES.CHAPTER_ID, chapterId)
                .set(DEATH_CAUSES.TANK_ID, tankId)
                .set(DEATH_CAUSES.DAY, day)
                .set(DEATH_CAUSES.CAUSE, cause.get().code())
                .set(DEATH_CAUSES.TOLD_BY, personId)
                .set(DEATH_CAUSES.TOLD_AT, now)
                .onConflict(DEATH_CAUSES.CHAPTER_ID, DEATH_CAUSES.TANK_ID, DEATH_CAUSES.DAY).doUpdate()
                .set(DEATH_CAUSES.CAUSE, cause.get().code())
                .set(DEATH_CAUSES.TOLD_BY, personId)
                .set(DEATH_CAUSES.TOLD_AT, now)
                .execute();
    }
}
