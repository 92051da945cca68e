package org.tankrounds.people;

import static org.tankrounds.db.schema.Tables.CHAPTERS;
import static org.tankrounds.db.schema.Tables.PEOPLE;
import static org.tankrounds.db.schema.Tables.SESSIONS;

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
import org.tankrounds.web.Secrets;

/** Who is signed in on which browser. The browser holds a random value, the database its hash. */
public final class Sessions {
    private static final Duration SEEN_EVERY = Duration.ofMinutes(1);

    private final Transactions transactions;
    private final Clock clock;

    public Sessions(Transactions transactions, Clock clock) {
        this.transactions = transactions;
        this.clock = clock;
    }

    /** @return the value for the cookie */
    String open(DSLContext tx, int chapterId, int personId, Role role) {
        String secret = Secrets.next();
        Instant now = clock.instant();
        forgetEnded(tx, chapterId, now);
        tx.insertInto(SESSIONS)
                .set(SESSIONS.CHAPTER_ID, chapterId)
                .set(SESSIONS.SESSION_HASH, Secrets.sha256(secret))
                .set(SESSIONS.PERSON_ID, personId)
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

    /** The person behind a cookie's value; empty when the session is over or the person is disabled. */
    Optional<Caller> find(String secret) {
        byte[] hash = Secrets.sha256(secret);
        return transactions.bySecret(hash, tx -> {
            Record session = tx.selectFrom(SESSIONS).where(SESSIONS.SESSION_HASH.eq(hash)).fetchOne();
            if (session == null) {
                return Optional.empty();
            }
            Transactions.enter(tx, session.get(SESSIONS.CHAPTER_ID));
            return person(tx, session).filter(person -> stillOpen(tx, session, person))
                    .map(person -> caller(person, secret));
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

    private static Optional<Record> person(DSLContext tx, Record session) {
        return tx.select(PEOPLE.CHAPTER_ID, PEOPLE.PERSON_ID, PEOPLE.CODE, PEOPLE.NAME, PEOPLE.ROLE,
                CHAPTERS.NAME, CHAPTERS.TIME_ZONE)
                .from(PEOPLE)
                .join(CHAPTERS).on(CHAPTERS.CHAPTER_ID.eq(PEOPLE.CHAPTER_ID))
                .where(PEOPLE.CHAPTER_ID.eq(session.get(SESSIONS.CHAPTER_ID)))
                .and(PEOPLE.PERSON_ID.eq(session.get(SESSIONS.PERSON_ID)))
                .and(PEOPLE.DISABLED_AT.isNull())
                .fetchOptional().map(row -> (Record) row);
    }

    private boolean stillOpen(DSLContext tx, Record session, Record person) {
        Instant now = clock.instant();
        Instant seen = session.get(SESSIONS.LAST_SEEN_AT);
        Duration idle = SessionLimits.of(PersonRepository.role(person.get(PEOPLE.ROLE))).idle();
        if (!now.isBefore(session.get(SESSIONS.EXPIRES_AT)) || !now.isBefore(seen.plus(idle))) {
            return false;
        }
        if (!now.isBefore(seen.plus(SEEN_EVERY))) {
            tx.update(SESSIONS)
                    .set(SESSIONS.LAST_SEEN_AT, now)
                    .where(SESSIONS.CHAPTER_ID.eq(session.get(SESSIONS.CHAPTER_ID)))
                    .and(SESSIONS.SESSION_HASH.eq(session.get(SESSIONS.SESSION_HASH)))
                    .execute();
        }
        return true;
    }

    private static Caller caller(Record person, String secret) {
        return new Caller(
                PersonRepository.role(person.get(PEOPLE.ROLE)),
                person.get(PEOPLE.CHAPTER_ID),
                OptionalInt.of(person.get(PEOPLE.PERSON_ID)),
                OptionalInt.empty(),
                person.get(PEOPLE.CODE),
                person.get(PEOPLE.NAME),
                person.get(CHAPTERS.NAME),
                ZoneId.of(person.get(CHAPTERS.TIME_ZONE)),
                FormToken.of(secret));
    }
}
