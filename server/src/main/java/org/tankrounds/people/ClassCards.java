package org.tankrounds.people;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.db.Transactions;
import org.tankrounds.places.Tank;

/** Makes and revokes class cards. A tank has one at most, so that it is plain which print opens. */
public final class ClassCards {
    private static final Logger LOG = LoggerFactory.getLogger(ClassCards.class);

    private final Transactions transactions;
    private final ClassCardRepository cards = new ClassCardRepository();
    private final PasswordHashes hashes;
    private final Sessions sessions;
    private final Clock clock;

    public ClassCards(Transactions transactions, PasswordHashes hashes, Sessions sessions, Clock clock) {
        this.transactions = transactions;
        this.hashes = hashes;
        this.sessions = sessions;
        this.clock = clock;
    }

    Optional<ClassCard> findNewest(DSLContext tx, int chapterId, int tankId) {
        return cards.findNewest(tx, chapterId, tankId);
    }

    /**
     * Makes a card; the only time that its code is known.
     *
     * @param replaces the card in use that the maker had before them; it is revoked
     * @return empty where another card is in use than that: a form that was sent twice makes one card
     */
    Optional<CardCode> make(int chapterId, Tank tank, OptionalInt replaces, int madeBy) {
        CardCode code = CardCode.next();
        byte[] hash = code.hash(hashes);
        boolean made = transactions.inChapter(chapterId,
                tx -> replace(tx, chapterId, tank, replaces, hash, OptionalInt.of(madeBy)));
        if (made) {
            LOG.info("class card for tank {} of chapter {} was made by person {}",
                    tank.tankId(), chapterId, madeBy);
        }
        return made ? Optional.of(code) : Optional.empty();
    }

    /** In the place of whatever card is in use, and in nobody's name; gives the code as it is printed. */
    public String makeAnew(DSLContext tx, int chapterId, Tank tank) {
        CardCode code = CardCode.next();
        OptionalInt inUse = findNewest(tx, chapterId, tank.tankId()).filter(ClassCard::inUse)
                .map(card -> OptionalInt.of(card.cardId())).orElse(OptionalInt.empty());
        replace(tx, chapterId, tank, inUse, code.hash(hashes), OptionalInt.empty());
        return code.shown();
    }

    private boolean replace(DSLContext tx, int chapterId, Tank tank, OptionalInt replaces, byte[] hash,
            OptionalInt madeBy) {
        if (replaces.isPresent() && !revoke(tx, chapterId, tank, replaces.getAsInt())) {
            return false;
        }
        return cards.add(tx, chapterId, tank.tankId(), hash, madeBy, clock.instant());
    }

    boolean isInUse(int chapterId, Tank tank, CardCode code) {
        byte[] hash = code.hash(hashes);
        return transactions.inChapter(chapterId, tx -> cards.isInUse(tx, chapterId, tank.tankId(), hash));
    }

    /** Ends its sessions too, at once. */
    boolean revoke(DSLContext tx, int chapterId, Tank tank, int cardId) {
        Instant now = clock.instant();
        boolean revoked = cards.revoke(tx, chapterId, tank.tankId(), cardId, now);
        if (revoked) {
            sessions.endAllOfCard(tx, chapterId, cardId);
            LOG.info("class card {} of chapter {} was revoked", cardId, chapterId);
        }
        return revoked;
    }
}
