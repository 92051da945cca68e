package org.tankrounds.advice;

import java.util.Objects;
import java.util.Optional;
import org.tankrounds.forecast.Effect;

/**
 * An act with what it is expected to do.
 *
 * @param effect of this act alone; empty where there is nothing to compute, as of a reading asked for
 */
public record Remedy(Act act, Optional<Effect> effect) {

    public Remedy {
        Objects.requireNonNull(act, "act");
        Objects.requireNonNull(effect, "effect");
    }
}
