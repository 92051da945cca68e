package org.tankrounds.release;

import static org.tankrounds.db.schema.Tables.PEOPLE;
import static org.tankrounds.db.schema.Tables.STREAM_CHECKS;
import static org.tankrounds.db.schema.Tables.STREAM_CHECK_COUNTS;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.stream.StreamGroup;
import org.tankrounds.water.Digits;
import org.tankrounds.web.NotFoundException;

/** Looks at streams; one that was taken back is nowhere shown. */
public final class StreamCheckRepository {

    /** The newest first. */
    public List<StreamCheck> list(DSLContext tx, int chapterId, int siteId) {
        return read(tx, chapterId, STREAM_CHECKS.SITE_ID.eq(siteId).and(STREAM_CHECKS.WITHDRAWN_AT.isNull()));
    }

    /** At all sites of the chapter, the oldest first. */
    public List<StreamCheck> listBetween(DSLContext tx, int chapterId, Instant from, Instant until) {
        List<StreamCheck> checks = new ArrayList<>(read(tx, chapterId, STREAM_CHECKS.LOOKED_AT.ge(from)
                .and(STREAM_CHECKS.LOOKED_AT.lt(until)).and(STREAM_CHECKS.WITHDRAWN_AT.isNull())));
        Collections.reverse(checks);
        return checks;
    }

    /** @param checkId as an address names it */
    StreamCheck get(DSLContext tx, int chapterId, int siteId, OptionalInt checkId) {
        return list(tx, chapterId, siteId).stream().filter(check -> check.checkId() == checkId.orElse(0)).findFirst()
                .orElseThrow(() -> new NotFoundException("check"));
    }

    /** What a form was stored as, taken back since or not; empty while it was not. */
    Optional<StreamCheck> writtenBy(DSLContext tx, int chapterId, int siteId, UUID submissionId) {
        return read(tx, chapterId, STREAM_CHECKS.SITE_ID.eq(siteId)
                .and(STREAM_CHECKS.SUBMISSION_ID.eq(submissionId))).stream().findFirst();
    }

    /** @return the number that the database gave it */
    public int add(DSLContext tx, int chapterId, UUID submissionId, StreamCheck check, int personId) {
        int checkId = tx.insertInto(STREAM_CHECKS)
                .set(STREAM_CHECKS.CHAPTER_ID, chapterId)
                .set(STREAM_CHECKS.SITE_ID, check.siteId())
                .set(STREAM_CHECKS.SUBMISSION_ID, submissionId)
                .set(STREAM_CHECKS.LOOKED_AT, check.at())
                .set(STREAM_CHECKS.TEMPERATURE_C, single(check.temperatureC()))
                .set(STREAM_CHECKS.PH, single(check.ph()))
                .set(STREAM_CHECKS.OXYGEN_MG_L, single(check.oxygenMgPerL()))
                .set(STREAM_CHECKS.NOTE, check.note().orElse(null))
                .set(STREAM_CHECKS.WRITTEN_BY, personId)
                .returning(STREAM_CHECKS.CHECK_ID)
                .fetchSingle(STREAM_CHECKS.CHECK_ID);
        check.counts().forEach((group, found) -> tx.insertInto(STREAM_CHECK_COUNTS)
                .set(STREAM_CHECK_COUNTS.CHAPTER_ID, chapterId)
                .set(STREAM_CHECK_COUNTS.CHECK_ID, checkId)
                .set(STREAM_CHECK_COUNTS.ANIMAL, group.code())
                .set(STREAM_CHECK_COUNTS.FOUND, found)
                .execute());
        return checkId;
    }

    /** Nobody else stores a look at the site until the transaction ends. */
    void lock(DSLContext tx, int chapterId) {
        tx.fetch("SELECT pg_advisory_xact_lock(hashtext('stream_checks'), ?)", chapterId);
    }

    void withdraw(DSLContext tx, int chapterId, int checkId, Instant now) {
        tx.update(STREAM_CHECKS)
                .set(STREAM_CHECKS.WITHDRAWN_AT, now)
                .where(STREAM_CHECKS.CHAPTER_ID.eq(chapterId)).and(STREAM_CHECKS.CHECK_ID.eq(checkId))
                .and(STREAM_CHECKS.WITHDRAWN_AT.isNull())
                .execute();
    }

    private static List<StreamCheck> read(DSLContext tx, int chapterId, Condition which) {
        List<Record> rows = List.copyOf(tx.select(STREAM_CHECKS.fields()).select(PEOPLE.NAME)
                .from(STREAM_CHECKS)
                .join(PEOPLE).on(PEOPLE.CHAPTER_ID.eq(STREAM_CHECKS.CHAPTER_ID))
                .and(PEOPLE.PERSON_ID.eq(STREAM_CHECKS.WRITTEN_BY))
                .where(STREAM_CHECKS.CHAPTER_ID.eq(chapterId)).and(which)
                .orderBy(STREAM_CHECKS.LOOKED_AT.desc(), STREAM_CHECKS.CHECK_ID.desc())
                .fetch());
        Map<Integer, Map<StreamGroup, Integer>> counts = new HashMap<>();
        tx.selectFrom(STREAM_CHECK_COUNTS)
                .where(STREAM_CHECK_COUNTS.CHAPTER_ID.eq(chapterId)).and(STREAM_CHECK_COUNTS.CHECK_ID.in(
                        rows.stream().map(row -> row.get(STREAM_CHECKS.CHECK_ID)).toList()))
                .fetch().forEach(row -> StreamGroup.ofCode(row.get(STREAM_CHECK_COUNTS.ANIMAL)).ifPresent(group ->
                        counts.computeIfAbsent(row.get(STREAM_CHECK_COUNTS.CHECK_ID), id ->
                                new EnumMap<>(StreamGroup.class)).put(group, row.get(STREAM_CHECK_COUNTS.FOUND))));
        return rows.stream().map(row -> new StreamCheck(row.get(STREAM_CHECKS.CHECK_ID), row.get(STREAM_CHECKS.SITE_ID),
                row.get(STREAM_CHECKS.LOOKED_AT), known(row.get(STREAM_CHECKS.TEMPERATURE_C)),
                known(row.get(STREAM_CHECKS.PH)), known(row.get(STREAM_CHECKS.OXYGEN_MG_L)),
                counts.getOrDefault(row.get(STREAM_CHECKS.CHECK_ID), Map.of()),
                Optional.ofNullable(row.get(STREAM_CHECKS.NOTE)), Optional.of(row.get(PEOPLE.NAME)))).toList();
    }

    private static Float single(OptionalDouble value) {
        return value.isPresent() ? (float) value.getAsDouble() : null;
    }

    private static OptionalDouble known(Float value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(Digits.kept(value));
    }
}
