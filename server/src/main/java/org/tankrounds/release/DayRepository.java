package org.tankrounds.release;

import static org.tankrounds.db.schema.Tables.RELEASE_DAYS;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.TableField;
import org.tankrounds.water.Digits;

/** What was seen and measured at releases. */
public final class DayRepository {
    private static final Map<KeptBack, TableField<?, Integer>> KEPT = new EnumMap<>(Map.of(
            KeptBack.SMALL, RELEASE_DAYS.KEPT_SMALL, KeptBack.SICK, RELEASE_DAYS.KEPT_SICK,
            KeptBack.DEAD, RELEASE_DAYS.KEPT_DEAD, KeptBack.REASON, RELEASE_DAYS.KEPT_OTHER));

    /** In the order of time, with those whose count entry was taken back since. */
    public List<ReleaseDay> list(DSLContext tx, int chapterId) {
        return tx.selectFrom(RELEASE_DAYS)
                .where(RELEASE_DAYS.CHAPTER_ID.eq(chapterId))
                .orderBy(RELEASE_DAYS.RELEASED_AT, RELEASE_DAYS.DAY_ID)
                .fetch(DayRepository::day);
    }

    /** Whether the same form was written down before. */
    boolean isWritten(DSLContext tx, int chapterId, ReleaseDay day) {
        return tx.fetchExists(RELEASE_DAYS, RELEASE_DAYS.CHAPTER_ID.eq(chapterId)
                .and(RELEASE_DAYS.TANK_ID.eq(day.tankId()))
                .and(RELEASE_DAYS.SUBMISSION_ID.eq(day.submission())));
    }

    /** The same form again changes nothing. */
    public void add(DSLContext tx, int chapterId, ReleaseDay day) {
        tx.insertInto(RELEASE_DAYS)
                .set(RELEASE_DAYS.CHAPTER_ID, chapterId)
                .set(RELEASE_DAYS.PLAN_ID, day.planId())
                .set(RELEASE_DAYS.TANK_ID, day.tankId())
                .set(RELEASE_DAYS.SUBMISSION_ID, day.submission())
                .set(RELEASE_DAYS.RELEASED_AT, day.at())
                .set(RELEASE_DAYS.BOX_C, single(day.boxC()))
                .set(RELEASE_DAYS.STREAM_C, single(day.streamC()))
                .set(RELEASE_DAYS.TEMPERED_MINUTES,
                        day.temperedMinutes().isPresent() ? day.temperedMinutes().getAsInt() : null)
                .set(RELEASE_DAYS.LENGTHS_MM, day.lengthsMm().stream().map(Double::floatValue).toArray(Float[]::new))
                .set(RELEASE_DAYS.KEPT_SMALL, day.kept().getOrDefault(KeptBack.SMALL, 0))
                .set(RELEASE_DAYS.KEPT_SICK, day.kept().getOrDefault(KeptBack.SICK, 0))
                .set(RELEASE_DAYS.KEPT_DEAD, day.kept().getOrDefault(KeptBack.DEAD, 0))
                .set(RELEASE_DAYS.KEPT_OTHER, day.kept().getOrDefault(KeptBack.REASON, 0))
                .set(RELEASE_DAYS.NOTE, day.note().orElse(null))
                .onConflict(RELEASE_DAYS.CHAPTER_ID, RELEASE_DAYS.TANK_ID, RELEASE_DAYS.SUBMISSION_ID).doNothing()
                .execute();
    }

    private static ReleaseDay day(Record row) {
        Map<KeptBack, Integer> kept = new EnumMap<>(KeptBack.class);
        KEPT.forEach((why, column) -> {
            if (row.get(column) > 0) {
                kept.put(why, row.get(column));
            }
        });
        Integer minutes = row.get(RELEASE_DAYS.TEMPERED_MINUTES);
        return new ReleaseDay(row.get(RELEASE_DAYS.PLAN_ID), row.get(RELEASE_DAYS.TANK_ID),
                row.get(RELEASE_DAYS.SUBMISSION_ID), row.get(RELEASE_DAYS.RELEASED_AT),
                known(row.get(RELEASE_DAYS.BOX_C)), known(row.get(RELEASE_DAYS.STREAM_C)),
                minutes == null ? OptionalInt.empty() : OptionalInt.of(minutes),
                Arrays.stream(row.get(RELEASE_DAYS.LENGTHS_MM)).map(length -> Digits.kept(length)).toList(), kept,
                Optional.ofNullable(row.get(RELEASE_DAYS.NOTE)));
    }

    private static Float single(OptionalDouble value) {
        return value.isPresent() ? (float) value.getAsDouble() : null;
    }

    private static OptionalDouble known(Float value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(Digits.kept(value));
    }
}
