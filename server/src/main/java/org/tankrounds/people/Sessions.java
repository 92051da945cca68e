package org.tankrounds.people;

import static org.tankrounds.db.schema.Tables.CHAPTERS;
import static org.tankrounds.db.schema.Tables.CLASS_CARDS;
import static org.tankrounds.db.schema.Tables.PEOPLE;
import static org.tankrounds.db.schema.Tables.SESSIONS;
import static org.tankrounds.db.schema.Tables.TANKS;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.db.Transactions;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Role;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Secrets;
import org.tankrounds.web.Speech.Chosen;

/** Who is signed in on which browser. The browser holds a random value, the database its hash. */
public final class Sessions {
    private static final Duration SEEN_EVERY = Duration.ofMinutes(1);

    /** Who a session belongs to, before it is clear that it is still open. */
    private record Owner(Role role, OptionalInt personId, OptionalInt cardId, OptionalInt tankId, Chosen chosen,
            String account, String name) {}

    private final Transactions transactions;
    private final Clock clock;
    private final ClassCardRepository cards = new ClassCardRepository();

    public Sessions(Transactions transactions, Clock clock) {
        this.transactions = transactions;
        this.clock = clock;
    }

    /** @return the value for the cookie */
    String open(DSLContext tx, int chapterId, int personId, Role role) {
        return open(tx, chapterId, personId, null, role);
    }

    /** @return the value for the cookie of a class that came with its card */
    String openForCard(DSLContext tx, int chapterId, int cardId) {
        return open(tx, chapterId, null, cardId, Role.CLASS_CARD);
    }

    private String open(DSLContext tx, int chapterId, Integer personId, Integer cardId, Role role) {
        String secret = Secrets.next();
        Instant now = clock.instant();
        forgetEnded(tx, chapterId, now);
        tx.insertInto(SESSIONS)
                .set(SESSIONS.CHAPTER_ID, chapterId)
                .set(SESSIONS.SESSION_HASH, Secrets.sha256(secret))
                .set(SESSIONS.PERSON_ID, personId)
                .set(SESSIONS.CARD_ID, cardId)
                .set(SESSIONS.CREATED_AT, now)
                .set(SESSIONS.LAST_SEEN_AT, now)
                .set(SESSIONS.EXPIRES_AT, now.plus(SessionLimits.of(role).atMost()))
                .execute();
        return secret;
    }

    /** Deletes a chapter's sessions that are over. */
    public void forgetEnded(int chapterId) {
        transactions.inChapter(chapterId, tx -> forgetEnded(tx, chapterId, clock.instant()));
    }

    private static int forgetEnded(DSLContext tx, int chapterId, Instant now) {
        return tx.deleteFrom(SESSIONS)
                .where(SESSIONS.CHAPTER_ID.eq(chapterId)).and(SESSIONS.EXPIRES_AT.le(now))
                .execute();
    }

    /** Who is behind a cookie's value; empty when the session is over, the person disabled or the card revoked. */
    Optional<Caller> find(String secret) {
        byte[] hash = Secrets.sha256(secret);
        return transactions.bySecret(hash, tx -> {
            Record session = tx.selectFrom(SESSIONS).where(SESSIONS.SESSION_HASH.eq(hash)).fetchOne();
            if (session == null) {
                return Optional.empty();
            }
            Transactions.enter(tx, session.get(SESSIONS.CHAPTER_ID));
            return owner(tx, session).filter(owner -> stillOpen(tx, session, owner))
                    .map(owner -> caller(tx, session, owner, secret));
        });
    }

    /** Ends the session of a cookie's value, if it is one. */
    void end(String secret) {
        byte[] hash = Secrets.sha256(secret);
        transactions.bySecret(hash, tx -> tx.select(SESSIONS.CHAPTER_ID).from(SESSIONS)
                .where(SESSIONS.SESSION_HASH.eq(hash))
                .fetchOptional(SESSIONS.CHAPTER_ID)
                .map(chapterId -> {
                    Transactions.enter(tx, chapterId);
                    return tx.deleteFrom(SESSIONS)
                            .where(SESSIONS.CHAPTER_ID.eq(chapterId)).and(SESSIONS.SESSION_HASH.eq(hash))
                            .execute();
                }));
    }

    void endAll(DSLContext tx, int chapterId, int personId) {
        tx.deleteFrom(SESSIONS)
                .where(SESSIONS.CHAPTER_ID.eq(chapterId)).and(SESSIONS.PERSON_ID.eq(personId))
                .execute();
    }

    void endAllOfCard(DSLContext tx, int chapterId, int cardId) {
        tx.deleteFrom(SESSIONS)
                .where(SESSIONS.CHAPTER_ID.eq(chapterId)).and(SESSIONS.CARD_ID.eq(cardId))
                .execute();
    }

    private static Optional<Owner> owner(DSLContext tx, Record session) {
        return session.get(SESSIONS.CARD_ID) == null ? person(tx, session) : card(tx, session);
    }

    private static Optional<Owner> person(DSLContext tx, Record session) {
        return tx.select(PEOPLE.PERSON_ID, PEOPLE.CODE, PEOPLE.NAME, PEOPLE.ROLE, PEOPLE.LANGUAGE,
                        PEOPLE.TEMPERATURE_UNIT)
                .from(PEOPLE)
                .where(PEOPLE.CHAPTER_ID.eq(session.get(SESSIONS.CHAPTER_ID)))
                .and(PEOPLE.PERSON_ID.eq(session.get(SESSIONS.PERSON_ID)))
                .and(PEOPLE.DISABLED_AT.isNull())
                .fetchOptional(row -> new Owner(PersonRepository.role(row.get(PEOPLE.ROLE)),
                        OptionalInt.of(row.get(PEOPLE.PERSON_ID)), OptionalInt.empty(), OptionalInt.empty(),
                        PersonRepository.chosen(row), row.get(PEOPLE.CODE), row.get(PEOPLE.NAME)));
    }

    /** The account is the tank's class, not the card: what was kept under one card goes out under the next. */
    private static Optional<Owner> card(DSLContext tx, Record session) {
        return tx.select(CLASS_CARDS.CARD_ID, CLASS_CARDS.TANK_ID, TANKS.CODE, TANKS.THERMOMETER_UNIT)
                .from(CLASS_CARDS)
                .join(TANKS).on(TANKS.CHAPTER_ID.eq(CLASS_CARDS.CHAPTER_ID)).and(TANKS.TANK_ID.eq(CLASS_CARDS.TANK_ID))
                .where(CLASS_CARDS.CHAPTER_ID.eq(session.get(SESSIONS.CHAPTER_ID)))
                .and(CLASS_CARDS.CARD_ID.eq(session.get(SESSIONS.CARD_ID)))
                .and(CLASS_CARDS.REVOKED_AT.isNull())
                .fetchOptional(row -> new Owner(Role.CLASS_CARD, OptionalInt.empty(),
                        OptionalInt.of(row.get(CLASS_CARDS.CARD_ID)), OptionalInt.of(row.get(CLASS_CARDS.TANK_ID)),
                        new Chosen(Optional.empty(), Scale.ofUnit(row.get(TANKS.THERMOMETER_UNIT))),
                        "class-" + row.get(TANKS.CODE), ""));
    }

    private boolean stillOpen(DSLContext tx, Record session, Owner owner) {
        Instant now = clock.instant();
        Instant seen = session.get(SESSIONS.LAST_SEEN_AT);
        Duration idle = SessionLimits.of(owner.role()).idle();
        if (!now.isBefore(session.get(SESSIONS.EXPIRES_AT)) || !now.isBefore(seen.plus(idle))) {
            return false;
        }
        if (!now.isBefore(seen.plus(SEEN_EVERY))) {
            noteSeen(tx, session, owner, now);
        }
        return true;
    }

    private void noteSeen(DSLContext tx, Record session, Owner owner, Instant now) {
        int chapterId = session.get(SESSIONS.CHAPTER_ID);
        tx.update(SESSIONS)
                .set(SESSIONS.LAST_SEEN_AT, now)
                .where(SESSIONS.CHAPTER_ID.eq(chapterId))
                .and(SESSIONS.SESSION_HASH.eq(session.get(SESSIONS.SESSION_HASH)))
                .execute();
        owner.cardId().ifPresent(cardId -> cards.noteUse(tx, chapterId, cardId, now));
    }

    private static Caller caller(DSLContext tx, Record session, Owner owner, String secret) {
        int chapterId = session.get(SESSIONS.CHAPTER_ID);
        Record chapter = tx.selectFrom(CHAPTERS).where(CHAPTERS.CHAPTER_ID.eq(chapterId)).fetchSingle();
        return new Caller(owner.role(), chapterId, owner.personId(), owner.cardId(), owner.tankId(),
                owner.chosen(), owner.account(), owner.name(),
                chapter.get(CHAPTERS.NAME), ZoneId.of(chapter.get(CHAPTERS.TIME_ZONE)), FormToken.of(secret));
    }
}
