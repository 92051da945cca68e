package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.LOGGER_FILES;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;
import static org.tankrounds.db.schema.Tables.READINGS;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.JSONB;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.files.Choices;
import org.tankrounds.web.Secrets;

/** Files of loggers, and what became of their readings. */
final class LoggerFileRepository {
    private static final int CODE_LENGTH = 10;
    private static final int LONGEST_NAME = 200;
    private static final int LISTED = 50;
    /** What nobody kept within a while is forgotten. */
    private static final Duration WAITS = Duration.ofDays(2);

    /** All but the file itself, which is large. */
    private static final List<Field<?>> FIELDS = List.of(LOGGER_FILES.FILE_ID, LOGGER_FILES.TANK_ID, LOGGER_FILES.CODE,
            LOGGER_FILES.NAME, LOGGER_FILES.HEADER, LOGGER_FILES.CHOICES, LOGGER_FILES.PERSON_ID,
            LOGGER_FILES.RECEIVED_AT, LOGGER_FILES.KEPT_AT, LOGGER_FILES.STORED, LOGGER_FILES.TAKEN_BACK_AT);

    /** What is known of a file before it is kept. */
    record Sent(String name, byte[] packed, String header, Choices choices, int personId) {}

    /** @return the code under which it is found again */
    String add(DSLContext tx, int chapterId, Tank tank, Sent sent, Instant now) {
        String code = Secrets.code(CODE_LENGTH);
        tx.insertInto(LOGGER_FILES)
                .set(LOGGER_FILES.CHAPTER_ID, chapterId)
                .set(LOGGER_FILES.TANK_ID, tank.tankId())
                .set(LOGGER_FILES.CODE, code)
                .set(LOGGER_FILES.NAME, sent.name().substring(0, Math.min(LONGEST_NAME, sent.name().length())))
                .set(LOGGER_FILES.CONTENT, sent.packed())
                .set(LOGGER_FILES.HEADER, sent.header())
                .set(LOGGER_FILES.CHOICES, json(sent.choices()))
                .set(LOGGER_FILES.PERSON_ID, sent.personId())
                .set(LOGGER_FILES.RECEIVED_AT, now)
                .execute();
        return code;
    }

    void forgetWaiting(DSLContext tx, int chapterId, Instant now) {
        tx.deleteFrom(LOGGER_FILES).where(LOGGER_FILES.CHAPTER_ID.eq(chapterId))
                .and(LOGGER_FILES.KEPT_AT.isNull()).and(LOGGER_FILES.RECEIVED_AT.lt(now.minus(WAITS))).execute();
    }

    List<KeptFile> list(DSLContext tx, int chapterId, int tankId) {
        return tx.select(FIELDS).from(LOGGER_FILES)
                .where(LOGGER_FILES.CHAPTER_ID.eq(chapterId)).and(LOGGER_FILES.TANK_ID.eq(tankId))
                .orderBy(LOGGER_FILES.RECEIVED_AT.desc(), LOGGER_FILES.FILE_ID.desc()).limit(LISTED)
                .fetch(LoggerFileRepository::file);
    }

    Optional<KeptFile> find(DSLContext tx, int chapterId, int tankId, String code) {
        return tx.select(FIELDS).from(LOGGER_FILES).where(called(chapterId, tankId, code))
                .fetchOptional(LoggerFileRepository::file);
    }

    /** Nobody else keeps it or takes it back until the transaction ends. */
    Optional<KeptFile> findAlone(DSLContext tx, int chapterId, int tankId, String code) {
        return tx.select(FIELDS).from(LOGGER_FILES).where(called(chapterId, tankId, code)).forUpdate()
                .fetchOptional(LoggerFileRepository::file);
    }

    /** As it was sent, packed; empty of a file that is kept already. */
    Optional<byte[]> packed(DSLContext tx, int chapterId, KeptFile file) {
        return tx.select(LOGGER_FILES.CONTENT).from(LOGGER_FILES).where(numbered(chapterId, file.fileId()))
                .fetchOptional(LOGGER_FILES.CONTENT);
    }

    /** How the last file with the same columns was read, for this tank. */
    Optional<Choices> findLastChoices(DSLContext tx, int chapterId, int tankId, String header) {
        return tx.select(LOGGER_FILES.CHOICES).from(LOGGER_FILES)
                .where(LOGGER_FILES.CHAPTER_ID.eq(chapterId)).and(LOGGER_FILES.TANK_ID.eq(tankId))
                .and(LOGGER_FILES.HEADER.eq(header)).and(LOGGER_FILES.KEPT_AT.isNotNull())
                .and(LOGGER_FILES.TAKEN_BACK_AT.isNull())
                .orderBy(LOGGER_FILES.KEPT_AT.desc()).limit(1)
                .fetchOptional(row -> choices(row.value1()));
    }

    void choose(DSLContext tx, int chapterId, KeptFile file, Choices choices) {
        tx.update(LOGGER_FILES).set(LOGGER_FILES.CHOICES, json(choices))
                .where(numbered(chapterId, file.fileId())).execute();
    }

    void kept(DSLContext tx, int chapterId, KeptFile file, int stored, Instant now) {
        tx.update(LOGGER_FILES).set(LOGGER_FILES.KEPT_AT, now).set(LOGGER_FILES.STORED, stored)
                .setNull(LOGGER_FILES.CONTENT)
                .where(numbered(chapterId, file.fileId())).execute();
    }

    void remove(DSLContext tx, int chapterId, KeptFile file) {
        tx.deleteFrom(LOGGER_FILES).where(numbered(chapterId, file.fileId())).execute();
    }

    void takenBack(DSLContext tx, int chapterId, KeptFile file, Instant now) {
        tx.update(LOGGER_FILES).set(LOGGER_FILES.TAKEN_BACK_AT, now)
                .where(numbered(chapterId, file.fileId())).execute();
    }

    /** Readings whose place the file takes. */
    void replace(DSLContext tx, int chapterId, KeptFile file, Set<String> codes, Instant now) {
        Condition replaced = READINGS.CHAPTER_ID.eq(chapterId).and(READINGS.TANK_ID.eq(file.tankId()))
                .and(READINGS.CODE.eq(DSL.any(codes.toArray(String[]::new)))).and(READINGS.SUPERSEDED_AT.isNull());
        forgetMeasurements(tx, chapterId, file.tankId(), replaced);
        tx.update(READINGS).set(READINGS.SUPERSEDED_AT, now).set(READINGS.SUPERSEDED_BY_FILE, file.fileId())
                .where(replaced).execute();
    }

    /** Its readings hold no more, corrected or not. */
    void withdraw(DSLContext tx, int chapterId, KeptFile file, Instant now) {
        Condition brought = READINGS.CHAPTER_ID.eq(chapterId).and(READINGS.FILE_ID.eq(file.fileId()))
                .and(READINGS.SUPERSEDED_AT.isNull());
        forgetMeasurements(tx, chapterId, file.tankId(), brought);
        tx.update(READINGS).set(READINGS.SUPERSEDED_AT, now).where(brought).execute();
    }

    /** @return the numbers of the readings that hold again, but for those whose own file was taken back since */
    List<Long> bringBack(DSLContext tx, int chapterId, KeptFile file) {
        return tx.update(READINGS).setNull(READINGS.SUPERSEDED_AT).setNull(READINGS.SUPERSEDED_BY_FILE)
                .where(READINGS.CHAPTER_ID.eq(chapterId)).and(READINGS.SUPERSEDED_BY_FILE.eq(file.fileId()))
                .and(READINGS.FILE_ID.isNull().or(READINGS.FILE_ID.notIn(
                        DSL.select(LOGGER_FILES.FILE_ID).from(LOGGER_FILES)
                                .where(LOGGER_FILES.CHAPTER_ID.eq(chapterId))
                                .and(LOGGER_FILES.TAKEN_BACK_AT.isNotNull()))))
                .returning(READINGS.READING_ID).fetch(READINGS.READING_ID);
    }

    /** How many of its readings somebody corrected. */
    int countCorrected(DSLContext tx, int chapterId, KeptFile file) {
        return tx.fetchCount(READINGS, READINGS.CHAPTER_ID.eq(chapterId).and(READINGS.FILE_ID.eq(file.fileId()))
                .and(READINGS.SUPERSEDED_AT.isNull()).and(READINGS.VERSION.gt((short) 1)));
    }

    /** In two steps: before a table is analysed, the planner takes many new rows for one and joins them row by row. */
    private static void forgetMeasurements(DSLContext tx, int chapterId, int tankId, Condition ofReadings) {
        List<Long> readingIds = tx.select(READINGS.READING_ID).from(READINGS).where(ofReadings)
                .fetch(READINGS.READING_ID);
        tx.deleteFrom(MEASUREMENTS)
                .where(MEASUREMENTS.CHAPTER_ID.eq(chapterId)).and(MEASUREMENTS.TANK_ID.eq(tankId))
                .and(MEASUREMENTS.READING_ID.eq(DSL.any(readingIds.toArray(Long[]::new))))
                .execute();
    }

    private static Condition called(int chapterId, int tankId, String code) {
        return LOGGER_FILES.CHAPTER_ID.eq(chapterId).and(LOGGER_FILES.TANK_ID.eq(tankId))
                .and(LOGGER_FILES.CODE.eq(code));
    }

    private static Condition numbered(int chapterId, int fileId) {
        return LOGGER_FILES.CHAPTER_ID.eq(chapterId).and(LOGGER_FILES.FILE_ID.eq(fileId));
    }

    private static KeptFile file(Record row) {
        return new KeptFile(row.get(LOGGER_FILES.FILE_ID), row.get(LOGGER_FILES.TANK_ID), row.get(LOGGER_FILES.CODE),
                row.get(LOGGER_FILES.NAME), row.get(LOGGER_FILES.HEADER), choices(row.get(LOGGER_FILES.CHOICES)),
                row.get(LOGGER_FILES.PERSON_ID), row.get(LOGGER_FILES.RECEIVED_AT),
                Optional.ofNullable(row.get(LOGGER_FILES.KEPT_AT)), row.get(LOGGER_FILES.STORED),
                Optional.ofNullable(row.get(LOGGER_FILES.TAKEN_BACK_AT)));
    }

    private static JSONB json(Choices choices) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        choices.said().forEach(node::put);
        return JSONB.valueOf(JsonText.writeString(node));
    }

    private static Choices choices(JSONB json) {
        Map<String, String> said = new LinkedHashMap<>();
        JsonText.readOwn(json.data()).properties().forEach(one -> said.put(one.getKey(), one.getValue().asText()));
        return new Choices(said);
    }
}
