package org.tankrounds.belief;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Digits;
import org.tankrounds.water.Range;

/**
 * What the engine takes in: one measurement or one husbandry act, in canonical units and with the digits that are
 * kept of it, whichever way it came.
 *
 * @param at when it was measured or done
 * @param analyte what
 * @param value in the analyte's canonical unit
 * @param halfStep half of what the method can tell apart, canonical unit; 0 where unknown, then a
 *         common kit's is taken
 * @param below not detected: {@code value} is then the lowest detectable step, or 0 for a card's
 *         lowest colour, which means "less than half the first step above it"
 * @param doubtful it stays marked as unlikely, or its time is in doubt: it counts for little
 */
public record Observation(
        Instant at, Analyte analyte, double value, double halfStep, boolean below, boolean doubtful) {

    /** Within this time a value that is there again is the same look, not a second witness. */
    private static final Duration LOOK = Duration.ofMinutes(10);
    /** Nobody draws the same share of a tank twice within this time; a change that was sent again is no fresh water. */
    private static final Duration WATER_CHANGE = Duration.ofMinutes(30);
    /** Trout die within the hour beyond these (from memory). */
    private static final Range BEARABLE_PH = new Range(4, 10.5);
    private static final double LEAST_OXYGEN_MG_PER_L = 1.5;
    /** From ice to where trout die within a day (Kaya 1978; Currie et al. 1998), °C. */
    private static final Range CREDIBLE_C = new Range(0.5, 30);

    public Observation {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(analyte, "analyte");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value must be a finite number, was " + value);
        }
        if (!(halfStep >= 0) || Double.isInfinite(halfStep)) {
            throw new IllegalArgumentException("halfStep must be 0 or more, was " + halfStep);
        }
        value = Digits.kept(value);
        halfStep = Digits.kept(halfStep);
    }

    /** A plain measurement that nobody doubts. */
    public static Observation of(Instant at, Analyte analyte, double value, double halfStep) {
        return new Observation(at, analyte, value, halfStep, false, false);
    }

    /** Deaths and deeds that are there again so soon, to the digit, were sent again. */
    public static List<Observation> deedsOnce(List<Observation> observations) {
        List<Observation> deeds = observations.stream().filter(o -> o.analyte().isHusbandry())
                .sorted(Comparator.comparing(Observation::at)).toList();
        Set<Observation> again = new HashSet<>();
        for (int i = 0; i < deeds.size(); i++) {
            Observation deed = deeds.get(i);
            for (int j = i - 1; j >= 0 && deeds.get(j).isWithin(WATER_CHANGE, deed); j--) {
                if (deeds.get(j).isSameDeedAs(deed)) {
                    again.add(deed);
                }
            }
        }
        return again.isEmpty() ? observations : observations.stream().filter(o -> !again.contains(o)).toList();
    }

    /** Temperatures are taken so by the belief, once mixed-up scales are set right; oxygen in % is set right itself. */
    public static List<Observation> asFarAsCredible(List<Observation> observations) {
        return observations.stream()
                .map(o -> o.analyte() == Analyte.TEMPERATURE || OxygenReadings.isInPercent(o) ? o : o.asFarAsCredible())
                .toList();
    }

    /**
     * A value that is doubted because no classroom tank shows it counts as it stands, or as the nearest that water
     * with fish can have: the worse of two readings must not count as the safer. What then still seems too odd, its
     * series finds out. One at which no fish lives tells of the reader, and stays in doubt.
     */
    Observation asFarAsCredible() {
        boolean staysAsItIs = !doubtful || analyte.isHusbandry() || analyte == Analyte.CHLORIDE
                || analyte.isLikely(value) || !isBearable();
        return staysAsItIs ? this
                : new Observation(at, analyte, credible().nearest(value), halfStep, below, false);
    }

    /** Whether water with fish in it can have such a value, or a class can have counted it. */
    public boolean isCredible() {
        return credible().holds(value);
    }

    /** Further than what classroom tanks show, since a limit may lie at the edge of that: a pH of 9.6 is beyond one. */
    private Range credible() {
        return switch (analyte) {
            case TEMPERATURE -> CREDIBLE_C;
            case PH -> BEARABLE_PH;
            case DISSOLVED_OXYGEN -> new Range(LEAST_OXYGEN_MG_PER_L, analyte.likely().max());
            default -> analyte.likely();
        };
    }

    /**
     * Whether fish live in such water at all, and taps bring it: utilities keep chlorine below 4 mg/L (US EPA, maximum
     * residual disinfectant level).
     */
    boolean isBearable() {
        return switch (analyte) {
            case PH -> BEARABLE_PH.holds(value);
            case DISSOLVED_OXYGEN -> value >= LEAST_OXYGEN_MG_PER_L;
            case CHLORINE -> analyte.isLikely(value);
            default -> true;
        };
    }

    /** Whether two observations of one analyte lie so near each other in time that they are one look. */
    boolean isSameLookAs(Observation other) {
        return isWithin(LOOK, other);
    }

    private boolean isSameDeedAs(Observation other) {
        Duration apart = analyte == Analyte.WATER_CHANGE ? WATER_CHANGE : LOOK;
        return analyte == other.analyte && value == other.value && isWithin(apart, other);
    }

    private boolean isWithin(Duration apart, Observation other) {
        return Duration.between(at, other.at).abs().compareTo(apart) < 0;
    }
}
