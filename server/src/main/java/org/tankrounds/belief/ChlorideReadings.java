package org.tankrounds.belief;

import java.util.List;

/**
 * The chloride that is held to be in the water, mg/L. It comes with salt and with the source water, and leaves only
 * with the water: a change brings it nearer to the source's. What the lowest colour of a strip says is "less than
 * this", and fits what is held where that is less. A fall that no change explains, and more than tanks ever show, waits
 * for a second look: the one would make nitrite the worst of dangers, the other none, for the rest of the season.
 */
final class ChlorideReadings {

    /** Taken where nobody has said, mg/L. */
    static final double WHERE_UNKNOWN_MG_PER_L = 5;
    /** Of a titration by drops, mg/L (common practice, no source). */
    private static final double USUAL_HALF_STEP_MG_PER_L = 2.5;
    /** From there on a fall wants an explanation, share of what is held (the project's choice). */
    private static final double UNEXPLAINED = 0.5;

    private final double sourceMgPerL;
    private final SecondLooks secondLooks;
    private double heldMgPerL;
    private Observation setAside;

    private ChlorideReadings(double sourceMgPerL, SecondLooks secondLooks) {
        this.sourceMgPerL = sourceMgPerL;
        this.heldMgPerL = sourceMgPerL;
        this.secondLooks = secondLooks;
    }

    /**
     * @param readings of chloride that nobody doubts, oldest first
     * @param changes of water, % of the volume, oldest first
     */
    static double held(TankFacts facts, List<Observation> readings, List<Observation> changes, SecondLooks secondLooks) {
        ChlorideReadings chloride =
                new ChlorideReadings(facts.chlorideMgPerL().orElse(WHERE_UNKNOWN_MG_PER_L), secondLooks);
        int next = 0;
        for (Observation reading : readings) {
            while (next < changes.size() && changes.get(next).at().isBefore(reading.at())) {
                chloride.change(changes.get(next++));
            }
            chloride.see(reading);
        }
        changes.subList(next, changes.size()).forEach(chloride::change);
        return chloride.heldMgPerL;
    }

    private void change(Observation change) {
        double share = Math.min(1, change.value() / 100);
        heldMgPerL += share * (sourceMgPerL - heldMgPerL);
    }

    private void see(Observation reading) {
        if (!isOdd(reading)) {
            take(reading);
        } else if (setAside == null || isRise(setAside) != isRise(reading)) {
            setAside = reading;
        } else if (secondLooks.areTwo(setAside, reading)) {
            take(reading);
        }
    }

    private void take(Observation reading) {
        Interval said = Interval.of(reading, USUAL_HALF_STEP_MG_PER_L);
        boolean saysLessOnly = said.low() == 0;
        boolean fits = saysLessOnly && heldMgPerL <= said.high();
        heldMgPerL = fits ? heldMgPerL : saysLessOnly ? said.high() / 2 : reading.value();
        setAside = null;
    }

    private boolean isOdd(Observation reading) {
        return isRise(reading)
                || Interval.of(reading, USUAL_HALF_STEP_MG_PER_L).high() < UNEXPLAINED * heldMgPerL;
    }

    private static boolean isRise(Observation reading) {
        return !reading.analyte().isLikely(reading.value());
    }
}
