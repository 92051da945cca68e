package org.tankrounds.people;

import static org.tankrounds.db.schema.Tables.CLASS_CARDS;
import static org.tankrounds.db.schema.Tables.TANKS;

import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.db.Transactions;
import org.tankrounds.web.Caller;

/** Checks the code of a class card. */
public final class CardSignIn {
    private static final Logger LOG = LoggerFactory.getLogger(CardSignIn.class);

    sealed interface Outcome permits Opened, Refused, Wait {}

    /** @param secret for the cookie */
    record Opened(String secret, String tank) implements Outcome {}

    record Refused() implements Outcome {}

    record Wait(Duration left) implements Outcome {}

    private record Found(int chapterId, int cardId) {}

    private final Transactions transactions;
    private final PasswordHashes hashes;
    private final SignInThrottle throttle = new SignInThrottle();
    private final ClassCardRepository cards = new ClassCardRepository();
    private final Sessions sessions;
    private final Clock clock;

    public CardSignIn(Transactions transactions, PasswordHashes hashes, Sessions sessions, Clock clock) {
        this.transactions = transactions;
        this.hashes = hashes;
        this.sessions = sessions;
        this.clock = clock;
    }

    Outcome with(CardCode code) {
        byte[] account = code.account();
        Optional<Duration> wait = transactions.bySecret(account, tx -> throttle.enter(tx, account, clock.instant()));
        if (wait.isPresent()) {
            LOG.warn("class card slowed down: too many wrong codes with one first group");
            return new Wait(wait.get());
        }
        Optional<Found> card = find(code.hash(hashes));
        if (card.isEmpty()) {
            LOG.info("class card refused");
            return new Refused();
        }
        transactions.bySecret(account, tx -> {
            throttle.forget(tx, account);
            throttle.forgetOld(tx, clock.instant());
            return null;
        });
        return transactions.inChapter(card.get().chapterId(), tx -> open(tx, card.get()));
    }

    /** The code of the tank that a class's card opens. */
    String tank(Caller caller) {
        return transactions.inChapter(caller.chapterId(), tx -> tank(tx, new Found(
                caller.chapterId(), caller.cardId().orElseThrow())));
    }

    private Optional<Found> find(byte[] hash) {
        return transactions.bySecret(hash, tx -> tx.selectFrom(CLASS_CARDS)
                .where(CLASS_CARDS.CODE_HASH.eq(hash)).and(CLASS_CARDS.REVOKED_AT.isNull())
                .limit(1)
                .fetchOptional(row -> new Found(row.getChapterId(), row.getCardId())));
    }

    private Opened open(DSLContext tx, Found card) {
        cards.noteUse(tx, card.chapterId(), card.cardId(), clock.instant());
        LOG.info("class card {} of chapter {} was opened", card.cardId(), card.chapterId());
        return new Opened(sessions.openForCard(tx, card.chapterId(), card.cardId()), tank(tx, card));
    }

    private static String tank(DSLContext tx, Found card) {
        Record row = tx.select(TANKS.CODE).from(TANKS)
                .join(CLASS_CARDS).on(CLASS_CARDS.CHAPTER_ID.eq(TANKS.CHAPTER_ID)
                        .and(CLASS_CARDS.TANK_ID.eq(TANKS.TANK_ID)))
                .where(CLASS_CARDS.CHAPTER_ID.eq(card.chapterId())).and(CLASS_CARDS.CARD_ID.eq(card.cardId()))
                .fetchSingle();
        return row.get(TANKS.CODE);
    }
}
