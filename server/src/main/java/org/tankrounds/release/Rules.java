package org.tankrounds.release;

import java.util.Optional;

/**
 * A chapter's own rules for days at the water.
 *
 * @param childrenPerAdult how many children one adult may be with
 * @param deepestCm deepest water that a child may stand in, cm; 0 where none may
 */
public record Rules(int childrenPerAdult, int deepestCm, Optional<String> others) {

    /** Adults that so many children need; two at least, so that one can go for help. */
    public int adultsFor(int children) {
        return Math.max(LEAST_ADULTS, (children + childrenPerAdult - 1) / childrenPerAdult);
    }

    static final int LEAST_ADULTS = 2;
}
