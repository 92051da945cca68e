package org.tankrounds.advice;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tankrounds.forecast.Effect;

/**
 * An act with what it is expected to do.
 *
 * @param effect of this act, with what it leans on; empty where there is nothing to compute, as of a reading asked for
 * @param leansOn the acts of the same advice without which it may harm; empty where it is good by itself
 */
public record Remedy(Act act, Optional<Effect> effect, Set<Act.Kind> leansOn) {

    public Remedy(Act act, Optional<Effect> effect) {
        this(act, effect, EnumSet.noneOf(Act.Kind.class));
    }

    public Remedy {
        Objects.requireNonNull(act, "act");
        Objects.requireNonNull(effect, "effect");
        leansOn = Collections.unmodifiableSet(new TreeSet<>(leansOn));
    }
}
