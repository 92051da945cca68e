package org.tankrounds.readings;

import static org.jooq.impl.DSL.row;
import static org.tankrounds.db.schema.Tables.READINGS;

import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.JSONB;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** Readings and their versions. A row is never changed but for the mark that a later version took its place. */
public final class ReadingRepository {
    private static final int FEW = 500;

    /** Where a page of the log begins: behind this reading, newest first. */
    record Position(Instant measuredAt, long readingId) {}

    /** The readings of a tank that hold, newest first. */
    public List<Reading> listLatest(DSLContext tx, int chapterId, int tankId, Instant from, int limit) {
        return list(tx, chapterId, tankId, READINGS.MEASURED_AT.ge(from), limit);
    }

    /**
     * The same, from one time (included) to another (not included).
     *
     * @param behind empty for the first page
     */
    List<Reading> listPage(DSLContext tx, int chapterId, int tankId, Optional<Instant> from, Optional<Instant> to,
            Optional<Position> behind, int limit) {
        Condition wanted = from.<Condition>map(READINGS.MEASURED_AT::ge).orElse(DSL.noCondition())
                .and(to.<Condition>map(READINGS.MEASURED_AT::lt).orElse(DSL.noCondition()))
                .and(behind.map(ReadingRepository::isBehind).orElse(DSL.noCondition()));
        return list(tx, chapterId, tankId, wanted, limit);
    }

    /** All readings of a tank that hold, oldest first, a few at a time; to be closed. */
    Stream<Reading> stream(DSLContext tx, int chapterId, int tankId) {
        return tx.selectFrom(READINGS)
                .where(READINGS.CHAPTER_ID.eq(chapterId)).and(READINGS.TANK_ID.eq(tankId))
                .and(READINGS.SUPERSEDED_AT.isNull())
                .orderBy(READINGS.MEASURED_AT, READINGS.READING_ID)
                .fetchSize(FEW)
                .fetchLazy().stream().map(ReadingRepository::reading);
    }

    /** The version that holds. */
    public Optional<Reading> findHolding(DSLContext tx, int chapterId, int tankId, String code) {
        return tx.selectFrom(READINGS)
                .where(READINGS.CHAPTER_ID.eq(chapterId)).and(READINGS.CODE.eq(code))
                .and(READINGS.TANK_ID.eq(tankId)).and(READINGS.SUPERSEDED_AT.isNull())
                .fetchOptional(ReadingRepository::reading);
    }

    /** Every version of a reading, newest first; empty where the tank has no such reading. */
    public List<Reading> listVersions(DSLContext tx, int chapterId, int tankId, String code) {
        return tx.selectFrom(READINGS)
                .where(READINGS.CHAPTER_ID.eq(chapterId)).and(READINGS.CODE.eq(code))
                .and(READINGS.TANK_ID.eq(tankId))
                .orderBy(READINGS.VERSION.desc())
                .fetch(ReadingRepository::reading);
    }

    /** The words that readings measured since a time were taken back, newest first. */
    public List<Reading> listTakenBack(DSLContext tx, int chapterId, int tankId, Instant from, int limit) {
        return tx.selectFrom(READINGS)
                .where(READINGS.CHAPTER_ID.eq(chapterId)).and(READINGS.TANK_ID.eq(tankId))
                .and(READINGS.SUPERSEDED_AT.isNotNull()).and(READINGS.MEASURED_AT.ge(from))
                .and(READINGS.FLAGS.contains(new String[] {Reading.TAKEN_BACK}))
                .orderBy(READINGS.RECEIVED_AT.desc(), READINGS.READING_ID.desc())
                .limit(limit)
                .fetch(ReadingRepository::reading);
    }

    /** Of those that hold, newest first. */
    List<Reading> listNewest(DSLContext tx, int chapterId, int tankId, Condition wanted, int limit) {
        return list(tx, chapterId, tankId, wanted, limit);
    }

    /** Of those that hold, oldest first. */
    List<Reading> listWhere(DSLContext tx, int chapterId, int tankId, Condition wanted) {
        return tx.selectFrom(READINGS)
                .where(READINGS.CHAPTER_ID.eq(chapterId)).and(READINGS.TANK_ID.eq(tankId))
                .and(READINGS.SUPERSEDED_AT.isNull()).and(wanted)
                .orderBy(READINGS.MEASURED_AT, READINGS.READING_ID)
                .fetch(ReadingRepository::reading);
    }

    /** The readings of a tank that hold, from one time (included) to another (not included), oldest first. */
    public List<Reading> listBetween(DSLContext tx, int chapterId, int tankId, Instant from, Instant to) {
        return listWhere(tx, chapterId, tankId, READINGS.MEASURED_AT.ge(from).and(READINGS.MEASURED_AT.lt(to)));
    }

    /** By the numbers that the database gave them. */
    List<Reading> listNumbered(DSLContext tx, int chapterId, List<Long> readingIds) {
        return tx.selectFrom(READINGS).where(READINGS.CHAPTER_ID.eq(chapterId))
                .and(READINGS.READING_ID.eq(DSL.any(readingIds.toArray(Long[]::new))))
                .fetch(ReadingRepository::reading);
    }

    /** The newest label that a person wrote on this tank's readings. */
    Optional<String> findLastLabel(DSLContext tx, int chapterId, int tankId, int personId) {
        return tx.select(READINGS.BY_LABEL).from(READINGS)
                .where(READINGS.CHAPTER_ID.eq(chapterId)).and(READINGS.TANK_ID.eq(tankId))
                .and(READINGS.SUPERSEDED_AT.isNull())
                .and(READINGS.PERSON_ID.eq(personId)).and(READINGS.BY_LABEL.isNotNull())
                .orderBy(READINGS.MEASURED_AT.desc(), READINGS.READING_ID.desc())
                .limit(1)
                .fetchOptional(READINGS.BY_LABEL);
    }

    /** @return the number that the database gave it */
    long insert(DSLContext tx, int chapterId, Reading reading) {
        return tx.insertInto(READINGS)
                .set(READINGS.CHAPTER_ID, chapterId)
                .set(READINGS.TANK_ID, reading.tankId())
                .set(READINGS.CODE, reading.code())
                .set(READINGS.VERSION, (short) reading.version())
                .set(READINGS.MEASURED_AT, reading.measuredAt())
                .set(READINGS.RECEIVED_AT, reading.receivedAt())
                .set(READINGS.CHANNEL, reading.channel())
                .set(READINGS.BY_LABEL, reading.by().orElse(null))
                .set(READINGS.PERSON_ID, nullable(reading.personId()))
                .set(READINGS.CARD_ID, nullable(reading.cardId()))
                .set(READINGS.FILE_ID, nullable(reading.fileId()))
                .set(READINGS.ENTERED, JSONB.valueOf(ReadingJson.entered(reading.values())))
                .set(READINGS.NOTE, reading.note().orElse(null))
                .set(READINGS.FLAGS, reading.flags().toArray(String[]::new))
                .set(READINGS.REASON, reading.reason().orElse(null))
                .returning(READINGS.READING_ID)
                .fetchSingle(READINGS.READING_ID);
    }

    /**
     * Writes many first versions that tokens posted or a file brought.
     *
     * @return the number that the database gave each, by its code
     */
    Map<String, Long> insertAll(DSLContext tx, int chapterId, List<Reading> readings) {
        Map<String, Long> readingIds = new HashMap<>();
        tx.fetch("""
                INSERT INTO readings (chapter_id, tank_id, code, measured_at, received_at, channel, by_label, entered,
                                      note, flags, person_id, file_id)
                SELECT ?, tank_id, code, measured_at, received_at, channel, by_label, entered::jsonb, note,
                       string_to_array(flags, ' '), person_id, file_id
                FROM unnest(?::int[], ?::text[], ?::timestamptz[], ?::timestamptz[], ?::text[], ?::text[], ?::text[],
                            ?::text[], ?::text[], ?::int[], ?::int[])
                    AS given (tank_id, code, measured_at, received_at, channel, by_label, entered, note, flags,
                              person_id, file_id)
                RETURNING code, reading_id
                """, chapterId,
                readings.stream().map(Reading::tankId).toArray(Integer[]::new),
                column(readings, Reading::code),
                column(readings, reading -> reading.measuredAt().toString()),
                column(readings, reading -> reading.receivedAt().toString()),
                column(readings, Reading::channel),
                column(readings, reading -> reading.by().orElse(null)),
                column(readings, reading -> ReadingJson.entered(reading.values())),
                column(readings, reading -> reading.note().orElse(null)),
                column(readings, reading -> String.join(" ", reading.flags())),
                numbers(readings, Reading::personId),
                numbers(readings, Reading::fileId))
                .forEach(row -> readingIds.put(row.get(0, String.class), row.get(1, Long.class)));
        return readingIds;
    }

    /** @return false where it held no more already */
    boolean supersede(DSLContext tx, int chapterId, long readingId, Instant at) {
        return tx.update(READINGS)
                .set(READINGS.SUPERSEDED_AT, at)
                .where(READINGS.CHAPTER_ID.eq(chapterId)).and(READINGS.READING_ID.eq(readingId))
                .and(READINGS.SUPERSEDED_AT.isNull())
                .execute() == 1;
    }

    private static String[] column(List<Reading> readings, Function<Reading, String> column) {
        return readings.stream().map(column).toArray(String[]::new);
    }

    private static Integer[] numbers(List<Reading> readings, Function<Reading, OptionalInt> column) {
        return readings.stream().map(column).map(ReadingRepository::nullable).toArray(Integer[]::new);
    }

    private static List<Reading> list(DSLContext tx, int chapterId, int tankId, Condition wanted, int limit) {
        return tx.selectFrom(READINGS)
                .where(READINGS.CHAPTER_ID.eq(chapterId)).and(READINGS.TANK_ID.eq(tankId))
                .and(READINGS.SUPERSEDED_AT.isNull())
                .and(wanted)
                .orderBy(READINGS.MEASURED_AT.desc(), READINGS.READING_ID.desc())
                .limit(limit)
                .fetch(ReadingRepository::reading);
    }

    private static Condition isBehind(Position position) {
        return row(READINGS.MEASURED_AT, READINGS.READING_ID)
                .lt(position.measuredAt(), position.readingId());
    }

    private static Integer nullable(OptionalInt number) {
        return number.isPresent() ? number.getAsInt() : null;
    }

    private static OptionalInt known(Integer number) {
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    private static Reading reading(Record row) {
        return new Reading(
                row.get(READINGS.READING_ID),
                row.get(READINGS.TANK_ID),
                row.get(READINGS.CODE),
                row.get(READINGS.VERSION),
                row.get(READINGS.MEASURED_AT),
                row.get(READINGS.RECEIVED_AT),
                row.get(READINGS.CHANNEL),
                Optional.ofNullable(row.get(READINGS.BY_LABEL)),
                known(row.get(READINGS.PERSON_ID)),
                known(row.get(READINGS.CARD_ID)),
                known(row.get(READINGS.FILE_ID)),
                ReadingJson.values(row.get(READINGS.ENTERED).data()),
                Optional.ofNullable(row.get(READINGS.NOTE)),
                Arrays.asList(row.get(READINGS.FLAGS)),
                Optional.ofNullable(row.get(READINGS.REASON)),
                Optional.ofNullable(row.get(READINGS.SUPERSEDED_AT)));
    }
}
