package org.tankrounds.advice;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.tankrounds.forecast.Effect;

/**
 * What to do about a tank.
 *
 * @param remedies those for breath first, then by the weight of their reasons; empty for a tank that needs nothing
 * @param together what all of them are expected to do; empty where fewer than two have an effect
 */
public record Advice(List<Remedy> remedies, Optional<Effect> together) {

    public static final Advice NONE = new Advice(List.of(), Optional.empty());

    public Advice {
        remedies = List.copyOf(remedies);
        Objects.requireNonNull(together, "together");
    }

    public List<Act> acts() {
        return remedies.stream().map(Remedy::act).toList();
    }
}
