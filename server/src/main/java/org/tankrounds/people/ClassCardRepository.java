package org.tankrounds.people;

import static org.tankrounds.db.schema.Tables.CLASS_CARDS;
import static org.tankrounds.db.schema.Tables.PEOPLE;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.jooq.Record;

/** Class cards. A tank has one in use at most; what is kept of its code is a hash. */
final class ClassCardRepository {

    /** The newest card of a tank, in use or not. */
    Optional<ClassCard> findNewest(DSLContext tx, int chapterId, int tankId) {
        return tx.select(CLASS_CARDS.asterisk()).select(PEOPLE.NAME)
                .from(CLASS_CARDS)
                .leftJoin(PEOPLE).on(PEOPLE.CHAPTER_ID.eq(CLASS_CARDS.CHAPTER_ID)
                        .and(PEOPLE.PERSON_ID.eq(CLASS_CARDS.MADE_BY)))
                .where(CLASS_CARDS.CHAPTER_ID.eq(chapterId)).and(CLASS_CARDS.TANK_ID.eq(tankId))
                .orderBy(CLASS_CARDS.CARD_ID.desc())
                .limit(1)
                .fetchOptional(ClassCardRepository::card);
    }

    boolean isInUse(DSLContext tx, int chapterId, int tankId, byte[] codeHash) {
        return tx.fetchExists(CLASS_CARDS, CLASS_CARDS.CHAPTER_ID.eq(chapterId)
                .and(CLASS_CARDS.TANK_ID.eq(tankId)).and(CLASS_CARDS.CODE_HASH.eq(codeHash))
                .and(CLASS_CARDS.REVOKED_AT.isNull()));
    }

    /** @return false where the tank has a card in use */
    boolean add(DSLContext tx, int chapterId, int tankId, byte[] codeHash, OptionalInt madeBy, Instant now) {
        return tx.insertInto(CLASS_CARDS)
                .set(CLASS_CARDS.CHAPTER_ID, chapterId)
                .set(CLASS_CARDS.TANK_ID, tankId)
                .set(CLASS_CARDS.CODE_HASH, codeHash)
                .set(CLASS_CARDS.MADE_BY, madeBy.isPresent() ? madeBy.getAsInt() : null)
                .set(CLASS_CARDS.CREATED_AT, now)
                .onConflict(CLASS_CARDS.CHAPTER_ID, CLASS_CARDS.TANK_ID).where(CLASS_CARDS.REVOKED_AT.isNull())
                .doNothing()
                .execute() == 1;
    }

    /** @return false where it is no card of the tank, or was revoked before */
    boolean revoke(DSLContext tx, int chapterId, int tankId, int cardId, Instant now) {
        return tx.update(CLASS_CARDS)
                .set(CLASS_CARDS.REVOKED_AT, now)
                .where(CLASS_CARDS.CHAPTER_ID.eq(chapterId)).and(CLASS_CARDS.CARD_ID.eq(cardId))
                .and(CLASS_CARDS.TANK_ID.eq(tankId)).and(CLASS_CARDS.REVOKED_AT.isNull())
                .execute() == 1;
    }

    void noteUse(DSLContext tx, int chapterId, int cardId, Instant now) {
        tx.update(CLASS_CARDS)
                .set(CLASS_CARDS.LAST_USED_AT, now)
                .where(CLASS_CARDS.CHAPTER_ID.eq(chapterId)).and(CLASS_CARDS.CARD_ID.eq(cardId))
                .execute();
    }

    private static ClassCard card(Record row) {
        return new ClassCard(
                row.get(CLASS_CARDS.CARD_ID),
                Optional.ofNullable(row.get(PEOPLE.NAME)),
                row.get(CLASS_CARDS.CREATED_AT),
                Optional.ofNullable(row.get(CLASS_CARDS.LAST_USED_AT)),
                Optional.ofNullable(row.get(CLASS_CARDS.REVOKED_AT)));
    }
}
