package org.tankrounds.eggday;

import static org.tankrounds.db.schema.Tables.EGG_RECEIPTS;
import static org.tankrounds.db.schema.Tables.EGG_STOPS;
import static org.tankrounds.db.schema.Tables.PEOPLE;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectConditionStep;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.LotReceipts;

/** What classes received; a receipt that was taken back counts nowhere. */
public final class ReceiptRepository implements LotReceipts {

    /** Of a run's stops, by the stop's number. */
    Map<Integer, EggReceipt> ofRun(DSLContext tx, int chapterId, int runId) {
        return select(tx, EGG_RECEIPTS.CHAPTER_ID.eq(chapterId).and(EGG_STOPS.RUN_ID.eq(runId))
                .and(EGG_RECEIPTS.WITHDRAWN_AT.isNull()))
                .fetchMap(EGG_RECEIPTS.STOP_ID, ReceiptRepository::receipt);
    }

    /** The receipt that a form was written down as, also one that was taken back since. */
    Optional<EggReceipt> writtenBy(DSLContext tx, int chapterId, int stopId, UUID submissionId) {
        return select(tx, EGG_RECEIPTS.CHAPTER_ID.eq(chapterId).and(EGG_RECEIPTS.STOP_ID.eq(stopId))
                .and(EGG_RECEIPTS.SUBMISSION_ID.eq(submissionId)))
                .fetchOptional(ReceiptRepository::receipt);
    }

    private static SelectConditionStep<Record> select(DSLContext tx, Condition wanted) {
        return tx.select(EGG_RECEIPTS.fields()).select(PEOPLE.NAME)
                .from(EGG_RECEIPTS)
                .join(EGG_STOPS).on(EGG_STOPS.CHAPTER_ID.eq(EGG_RECEIPTS.CHAPTER_ID))
                .and(EGG_STOPS.STOP_ID.eq(EGG_RECEIPTS.STOP_ID))
                .join(PEOPLE).on(PEOPLE.CHAPTER_ID.eq(EGG_RECEIPTS.CHAPTER_ID))
                .and(PEOPLE.PERSON_ID.eq(EGG_RECEIPTS.WRITTEN_BY))
                .where(wanted);
    }

    /** Lots of the chapter that a receipt made which holds. */
    @Override
    public Set<Integer> lotIds(DSLContext tx, int chapterId) {
        return tx.select(EGG_RECEIPTS.LOT_ID).from(EGG_RECEIPTS)
                .where(EGG_RECEIPTS.CHAPTER_ID.eq(chapterId)).and(EGG_RECEIPTS.LOT_ID.isNotNull())
                .fetchSet(EGG_RECEIPTS.LOT_ID);
    }

    void add(DSLContext tx, int chapterId, int stopId, UUID submissionId, EggReceipt.Details details, int lotId,
            Optional<String> readingCode, int personId, Instant now) {
        tx.insertInto(EGG_RECEIPTS)
                .set(EGG_RECEIPTS.CHAPTER_ID, chapterId)
                .set(EGG_RECEIPTS.STOP_ID, stopId)
                .set(EGG_RECEIPTS.SUBMISSION_ID, submissionId)
                .set(EGG_RECEIPTS.RECEIVED_AT, details.receivedAt())
                .set(EGG_RECEIPTS.EGGS, details.eggs())
                .set(EGG_RECEIPTS.DEAD, details.dead().isPresent() ? details.dead().getAsInt() : null)
                .set(EGG_RECEIPTS.METHOD, details.method().code())
                .set(EGG_RECEIPTS.SPREAD, details.spread())
                .set(EGG_RECEIPTS.CLASS_LABEL, details.classLabel())
                .set(EGG_RECEIPTS.ADULT, details.adult().code())
                .set(EGG_RECEIPTS.NOTE, details.note().orElse(null))
                .set(EGG_RECEIPTS.LOT_ID, lotId)
                .set(EGG_RECEIPTS.READING_CODE, readingCode.orElse(null))
                .set(EGG_RECEIPTS.WRITTEN_BY, personId)
                .set(EGG_RECEIPTS.WRITTEN_AT, now)
                .execute();
    }

    /** It refers to no lot any more. */
    void withdraw(DSLContext tx, int chapterId, int receiptId, int personId, Instant now) {
        tx.update(EGG_RECEIPTS)
                .setNull(EGG_RECEIPTS.LOT_ID)
                .set(EGG_RECEIPTS.WITHDRAWN_BY, personId)
                .set(EGG_RECEIPTS.WITHDRAWN_AT, now)
                .where(EGG_RECEIPTS.CHAPTER_ID.eq(chapterId)).and(EGG_RECEIPTS.RECEIPT_ID.eq(receiptId))
                .execute();
    }

    private static EggReceipt receipt(Record row) {
        Integer dead = row.get(EGG_RECEIPTS.DEAD);
        return new EggReceipt(row.get(EGG_RECEIPTS.RECEIPT_ID), row.get(EGG_RECEIPTS.STOP_ID),
                new EggReceipt.Details(row.get(EGG_RECEIPTS.RECEIVED_AT), row.get(EGG_RECEIPTS.EGGS),
                        dead == null ? OptionalInt.empty() : OptionalInt.of(dead),
                        CountMethod.ofCode(row.get(EGG_RECEIPTS.METHOD)).orElseThrow(), row.get(EGG_RECEIPTS.SPREAD),
                        row.get(EGG_RECEIPTS.CLASS_LABEL),
                        EggReceipt.Adult.ofCode(row.get(EGG_RECEIPTS.ADULT)).orElseThrow(),
                        Optional.ofNullable(row.get(EGG_RECEIPTS.NOTE))),
                Optional.ofNullable(row.get(EGG_RECEIPTS.LOT_ID)).orElse(0),
                Optional.ofNullable(row.get(EGG_RECEIPTS.READING_CODE)), row.get(PEOPLE.NAME));
    }
}
