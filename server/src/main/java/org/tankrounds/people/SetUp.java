package org.tankrounds.people;

import static org.tankrounds.db.schema.Tables.SETUP_LINKS;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.db.Transactions;
import org.tankrounds.people.PersonRepository.Details;
import org.tankrounds.places.KitRepository;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Role;
import org.tankrounds.web.Secrets;
import org.tankrounds.words.Saying;

/** The very first chapter and its coordinator, made by whoever can read what the service printed when it started. */
public final class SetUp {
    static final Duration VALID = Duration.ofHours(24);
    private static final Logger LOG = LoggerFactory.getLogger(SetUp.class);

    /**
     * What the page asks for.
     *
     * @param kit what the kit to start from is called
     */
    record First(String chapter, ZoneId zone, String kit, String name, String email, String password) {}

    private final Transactions transactions;
    private final ChapterRepository chapters;
    private final PersonRepository people;
    private final KitRepository kits;
    private final PasswordHashes passwords;
    private final Sessions sessions;
    private final Clock clock;

    public SetUp(Transactions transactions, ChapterRepository chapters, PersonRepository people, KitRepository kits,
            PasswordHashes passwords, Sessions sessions, Clock clock) {
        this.transactions = transactions;
        this.chapters = chapters;
        this.people = people;
        this.kits = kits;
        this.passwords = passwords;
        this.sessions = sessions;
        this.clock = clock;
    }

    /** @return the path of a new link while there is no chapter yet */
    public Optional<String> newLink() {
        if (!transactions.chapterIds().isEmpty()) {
            return Optional.empty();
        }
        String secret = Secrets.next();
        Instant now = clock.instant();
        transactions.outside(tx -> tx.insertInto(SETUP_LINKS)
                .set(SETUP_LINKS.LINK_HASH, Secrets.sha256(secret))
                .set(SETUP_LINKS.CREATED_AT, now)
                .set(SETUP_LINKS.EXPIRES_AT, now.plus(VALID))
                .execute());
        return Optional.of("/set-up/" + secret);
    }

    /** @throws RefusedException when the link opens nothing */
    void look(String secret) {
        byte[] hash = Secrets.sha256(secret);
        boolean open = transactions.chapterIds().isEmpty() && transactions.bySecret(hash, tx -> tx.fetchExists(
                SETUP_LINKS, SETUP_LINKS.LINK_HASH.eq(hash)
                        .and(SETUP_LINKS.USED_AT.isNull())
                        .and(SETUP_LINKS.EXPIRES_AT.gt(clock.instant()))));
        if (!open) {
            throw gone();
        }
    }

    /**
     * Uses the link up.
     *
     * @return the cookie's value of the coordinator's session
     */
    String make(String secret, First first) {
        String passwordHash = passwords.hash(first.password());
        look(secret);
        byte[] hash = Secrets.sha256(secret);
        return transactions.bySecret(hash, tx -> {
            int used = tx.update(SETUP_LINKS)
                    .set(SETUP_LINKS.USED_AT, clock.instant())
                    .where(SETUP_LINKS.LINK_HASH.eq(hash)).and(SETUP_LINKS.USED_AT.isNull())
                    .execute();
            if (used == 0) {
                throw gone();
            }
            return make(tx, first, passwordHash);
        });
    }

    private String make(DSLContext tx, First first, String passwordHash) {
        Chapter chapter = chapters.add(tx, first.chapter(), first.zone());
        kits.addGeneric(tx, chapter.chapterId(), first.kit());
        Details details = new Details(first.email(), first.name(), Role.COORDINATOR);
        Person coordinator = people.add(tx, chapter.chapterId(), details, Optional.of(passwordHash));
        LOG.info("chapter {} was set up", chapter.chapterId());
        return sessions.open(tx, chapter.chapterId(), coordinator.personId(), Role.COORDINATOR);
    }

    private static RefusedException gone() {
        return RefusedException.of(404, Saying.of("people.setUp.gone"));
    }
}
