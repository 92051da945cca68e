package org.tankrounds.demo;

import static org.tankrounds.db.schema.Tables.CHAPTERS;
import static org.tankrounds.db.schema.Tables.COUNT_ENTRIES;
import static org.tankrounds.db.schema.Tables.FISH_LOOKS;
import static org.tankrounds.db.schema.Tables.FISH_SAMPLES;
import static org.tankrounds.db.schema.Tables.LOTS;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;
import static org.tankrounds.db.schema.Tables.READINGS;
import static org.tankrounds.db.schema.Tables.RELEASE_APPROVALS;
import static org.tankrounds.db.schema.Tables.RELEASE_PLANS;
import static org.tankrounds.db.schema.Tables.SEASONS;
import static org.tankrounds.db.schema.Tables.STREAM_CHECKS;
import static org.tankrounds.db.schema.Tables.TANKS;
import static org.tankrounds.db.schema.Tables.TASKS;
import static org.tankrounds.db.schema.Tables.VISITS;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.SQLDialect;
import org.jooq.TableField;
import org.jooq.conf.Settings;
import org.jooq.impl.DSL;
import org.jooq.types.DayToSecond;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.migrations.Login;

/**
 * A demo started again on a later day: everything that happened in it is moved on by whole days, with what visitors
 * posted, so that the newest reading is again less than a day old and every distance in time stays. What weekday a
 * reading fell on does not survive. Works as the owner of the tables, since the service itself may never rewrite a
 * reading's time.
 */
public final class StoryMove {
    private final Login owner;
    private final DirtyTanks dirtyTanks = new DirtyTanks();

    public StoryMove(Login owner) {
        this.owner = owner;
    }

    /** @return by how many days; 0 where the story is of today */
    public long toToday(Instant now) {
        Set<String> codes = DemoScenario.chapters().stream().map(DemoChapter::code).collect(Collectors.toSet());
        try (Connection connection = owner.open()) {
            DSLContext database = DSL.using(connection, SQLDialect.POSTGRES, new Settings().withRenderSchema(false));
            long most = 0;
            for (int chapterId : chapterIds(database)) {
                most = Math.max(most, database.transactionResult(configuration ->
                        move(DSL.using(configuration), chapterId, codes, now)));
            }
            return most;
        } catch (SQLException e) {
            throw new IllegalStateException("The demo could not be moved to today: " + e.getMessage(), e);
        }
    }

    private static List<Integer> chapterIds(DSLContext database) {
        return database.transactionResult(configuration -> {
            DSLContext tx = DSL.using(configuration);
            tx.fetch("SELECT set_config('tankrounds.listing', 'chapters', true)");
            return tx.select(CHAPTERS.CHAPTER_ID).from(CHAPTERS).fetch(CHAPTERS.CHAPTER_ID);
        });
    }

    private long move(DSLContext tx, int chapterId, Set<String> codes, Instant now) {
        Transactions.enter(tx, chapterId);
        var chapter = tx.select(CHAPTERS.CODE, CHAPTERS.CREATED_AT).from(CHAPTERS)
                .where(CHAPTERS.CHAPTER_ID.eq(chapterId)).fetchSingle();
        long days = Duration.between(chapter.get(CHAPTERS.CREATED_AT), now).toDays();
        if (days <= 0 || !codes.contains(chapter.get(CHAPTERS.CODE))) {
            return 0;
        }
        // Also what was measured a week ahead must find its month.
        tx.fetch("SELECT ensure_measurement_months(?::timestamptz)", now.plus(Duration.ofDays(62)).toString());
        Record running = tx.select(SEASONS.SEASON_ID, SEASONS.STARTS_ON).from(SEASONS).orderBy(SEASONS.STARTS_ON.desc())
                .limit(1).fetchSingle();
        Instant from = running.get(SEASONS.STARTS_ON).atStartOfDay(ZoneOffset.UTC).minusDays(1).toInstant();
        Condition runs = SEASONS.SEASON_ID.eq(running.get(SEASONS.SEASON_ID));
        moveTimes(tx, days, READINGS.MEASURED_AT.ge(from), READINGS.MEASURED_AT, READINGS.RECEIVED_AT,
                READINGS.SUPERSEDED_AT);
        moveTimes(tx, days, MEASUREMENTS.MEASURED_AT.ge(from), MEASUREMENTS.MEASURED_AT);
        moveTimes(tx, days, LOTS.RECEIVED_AT.ge(from), LOTS.RECEIVED_AT);
        moveTimes(tx, days, COUNT_ENTRIES.HAPPENED_AT.ge(from), COUNT_ENTRIES.HAPPENED_AT);
        moveTimes(tx, days, DSL.noCondition(), VISITS.VISITED_AT);
        moveTimes(tx, days, DSL.noCondition(), FISH_LOOKS.SEEN_AT);
        moveTimes(tx, days, DSL.noCondition(), FISH_SAMPLES.MEASURED_AT);
        moveTimes(tx, days, DSL.noCondition(), TASKS.ASKED_AT, TASKS.DONE_AT);
        moveTimes(tx, days, DSL.noCondition(), RELEASE_PLANS.STARTS_AT, RELEASE_PLANS.PLANNED_AT);
        moveTimes(tx, days, DSL.noCondition(), STREAM_CHECKS.LOOKED_AT);
        moveTimes(tx, days, DSL.noCondition(), CHAPTERS.CREATED_AT);
        tx.update(RELEASE_APPROVALS)
                .set(RELEASE_APPROVALS.FIRST_DAY, RELEASE_APPROVALS.FIRST_DAY.plus((int) days))
                .set(RELEASE_APPROVALS.LAST_DAY, RELEASE_APPROVALS.LAST_DAY.plus((int) days)).execute();
        tx.update(LOTS).set(LOTS.EYED_ON, LOTS.EYED_ON.plus((int) days))
                .set(LOTS.HATCHED_ON, LOTS.HATCHED_ON.plus((int) days))
                .set(LOTS.FIRST_FEEDING_ON, LOTS.FIRST_FEEDING_ON.plus((int) days))
                .where(LOTS.SEASON_ID.eq(running.get(SEASONS.SEASON_ID))).execute();
        tx.update(SEASONS).set(SEASONS.STARTS_ON, SEASONS.STARTS_ON.plus((int) days))
                .set(SEASONS.RELEASE_ON, SEASONS.RELEASE_ON.plus((int) days))
                .set(SEASONS.ENDS_ON, SEASONS.ENDS_ON.plus((int) days)).where(runs).execute();
        tx.update(TANKS).set(TANKS.FILTER_STARTED_ON, TANKS.FILTER_STARTED_ON.plus((int) days)).execute();
        tx.select(TANKS.TANK_ID).from(TANKS).fetch(TANKS.TANK_ID)
                .forEach(tankId -> dirtyTanks.mark(tx, chapterId, tankId, now));
        return days;
    }

    /** Only rows of the chapter that the transaction has entered are seen. Days of 24 hours, whatever the clocks do. */
    @SafeVarargs
    private static void moveTimes(DSLContext tx, long days, Condition which, TableField<?, Instant>... times) {
        var update = tx.updateQuery(times[0].getTable());
        update.addConditions(which);
        for (TableField<?, Instant> time : times) {
            Field<Instant> later = time.plus(DayToSecond.valueOf(Duration.ofDays(days)));
            update.addValue(time, later);
        }
        update.execute();
    }
}
