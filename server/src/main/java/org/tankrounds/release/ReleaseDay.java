package org.tankrounds.release;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;

/**
 * What was seen and measured when fish of a tank were released; how many they were stands in the count.
 *
 * @param submission the form, by which it is found in the count
 * @param boxC water of the box on arrival, °C
 * @param lengthsMm of a sample, in the order of measuring
 * @param kept fish kept back, by why; missing for none
 */
public record ReleaseDay(int planId, int tankId, UUID submission, Instant at, OptionalDouble boxC,
        OptionalDouble streamC, OptionalInt temperedMinutes, List<Double> lengthsMm, Map<KeptBack, Integer> kept,
        Optional<String> note) {

    public ReleaseDay {
        lengthsMm = List.copyOf(lengthsMm);
    }

    public OptionalDouble meanLengthMm() {
        return lengthsMm.stream().mapToDouble(Double::doubleValue).average();
    }

    public OptionalDouble shortestMm() {
        return lengthsMm.stream().mapToDouble(Double::doubleValue).min();
    }

    public OptionalDouble longestMm() {
        return lengthsMm.stream().mapToDouble(Double::doubleValue).max();
    }
}
