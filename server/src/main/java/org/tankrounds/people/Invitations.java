package org.tankrounds.people;

import static org.tankrounds.db.schema.Tables.INVITATIONS;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.db.Transactions;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Secrets;
import org.tankrounds.words.Saying;

/**
 * One-time links with which a person chooses a password. Mail scanners open links: looking at one uses nothing up, only
 * choosing a password does.
 */
public final class Invitations {
    static final Duration VALID = Duration.ofDays(3);
    private static final Logger LOG = LoggerFactory.getLogger(Invitations.class);

    /** Whom a link is for. */
    record Invited(Chapter chapter, Person person) {
        List<String> about() {
            return List.of(person.name(), person.email(), chapter.name());
        }
    }

    private final Transactions transactions;
    private final ChapterRepository chapters;
    private final PersonRepository people;
    private final PasswordHashes passwords;
    private final Sessions sessions;
    private final Clock clock;

    public Invitations(Transactions transactions, ChapterRepository chapters, PersonRepository people,
            PasswordHashes passwords, Sessions sessions, Clock clock) {
        this.transactions = transactions;
        this.chapters = chapters;
        this.people = people;
        this.passwords = passwords;
        this.sessions = sessions;
        this.clock = clock;
    }

    /** Makes a link; those made before for the same person open nothing any more. */
    String issue(DSLContext tx, int chapterId, int personId) {
        Instant now = clock.instant();
        String secret = Secrets.next();
        voidAll(tx, chapterId, personId, now);
        tx.insertInto(INVITATIONS)
                .set(INVITATIONS.CHAPTER_ID, chapterId)
                .set(INVITATIONS.INVITATION_HASH, Secrets.sha256(secret))
                .set(INVITATIONS.PERSON_ID, personId)
                .set(INVITATIONS.CREATED_AT, now)
                .set(INVITATIONS.EXPIRES_AT, now.plus(VALID))
                .execute();
        return secret;
    }

    /** @throws RefusedException when the link was used, is too old or never was one */
    Invited look(String secret) {
        return inside(secret, (tx, invited) -> invited);
    }

    /**
     * Uses the link up.
     *
     * @return the cookie's value of a new session
     */
    String choose(String secret, String password) {
        String hash = passwords.hash(password);
        Invited invited = look(secret);
        String session = inside(secret, (tx, still) -> accept(tx, still, hash));
        byte[] account = Email.hash(invited.person().email());
        transactions.bySecret(account, tx -> {
            new SignInThrottle().forget(tx, account);
            return null;
        });
        LOG.info("person {} of chapter {} chose a password", invited.person().personId(),
                invited.chapter().chapterId());
        return session;
    }

    void voidAll(DSLContext tx, int chapterId, int personId, Instant now) {
        tx.update(INVITATIONS)
                .set(INVITATIONS.USED_AT, now)
                .where(INVITATIONS.CHAPTER_ID.eq(chapterId)).and(INVITATIONS.PERSON_ID.eq(personId))
                .and(INVITATIONS.USED_AT.isNull())
                .execute();
    }

    private String accept(DSLContext tx, Invited invited, String passwordHash) {
        int chapterId = invited.chapter().chapterId();
        int personId = invited.person().personId();
        voidAll(tx, chapterId, personId, clock.instant());
        people.setPassword(tx, chapterId, personId, passwordHash);
        sessions.endAll(tx, chapterId, personId);
        return sessions.open(tx, chapterId, personId, invited.person().role());
    }

    private interface Work<T> {
        T with(DSLContext tx, Invited invited);
    }

    private <T> T inside(String secret, Work<T> work) {
        byte[] hash = Secrets.sha256(secret);
        return transactions.bySecret(hash, tx -> {
            Record found = tx.select(INVITATIONS.CHAPTER_ID, INVITATIONS.PERSON_ID)
                    .from(INVITATIONS)
                    .where(INVITATIONS.INVITATION_HASH.eq(hash))
                    .fetchOptional().orElseThrow(Invitations::gone);
            int chapterId = found.get(INVITATIONS.CHAPTER_ID);
            Transactions.enter(tx, chapterId);
            Person person = people.get(tx, chapterId, found.get(INVITATIONS.PERSON_ID));
            if (!person.enabled() || !open(tx, chapterId, hash)) {
                throw gone();
            }
            return work.with(tx, new Invited(chapters.get(tx, chapterId), person));
        });
    }

    /** Locks the link, so that of two who use it at the same moment only one gets through. */
    private boolean open(DSLContext tx, int chapterId, byte[] hash) {
        return tx.select(INVITATIONS.EXPIRES_AT).from(INVITATIONS)
                .where(INVITATIONS.CHAPTER_ID.eq(chapterId)).and(INVITATIONS.INVITATION_HASH.eq(hash))
                .and(INVITATIONS.USED_AT.isNull()).and(INVITATIONS.EXPIRES_AT.gt(clock.instant()))
                .forUpdate()
                .fetchOptional().isPresent();
    }

    private static RefusedException gone() {
        return RefusedException.of(404, Saying.of("people.invitation.gone"));
    }
}
