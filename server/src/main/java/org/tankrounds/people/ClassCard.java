package org.tankrounds.people;

import java.time.Instant;
import java.util.Optional;

/**
 * A printed card with which a class puts readings in, without its code.
 *
 * @param madeBy name of who made it; empty where nobody who was signed in did
 * @param revokedAt from then on it opens nothing
 */
record ClassCard(
        int cardId, Optional<String> madeBy, Instant createdAt, Optional<Instant> lastUsedAt,
        Optional<Instant> revokedAt) {

    boolean inUse() {
        return revokedAt.isEmpty();
    }
}
