package org.tankrounds.people;

import java.time.Instant;
import java.util.Optional;

/**
 * A bearer token of a script or probe, without the secret itself.
 *
 * @param tank code of the one tank it opens; empty for every tank of the chapter and the rounds
 */
public record Token(
        int tokenId, Optional<String> tank, String label, Instant createdAt, Optional<Instant> lastUsedAt,
        Optional<Instant> revokedAt) {}
