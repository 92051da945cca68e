package org.tankrounds.belief;

import java.util.List;

/**
 * The chloride that is held to be in the water, mg/L. It comes with salt and with the source water, and leaves only
 * with the water: a change brings it nearer to the source's. What the lowest colour of a strip says is "less than
 * this", and fits what is held where that is less. A fall that no change explains waits for a second look, unless it is
 * back to the source's or to what was held before a rise; so does more than tanks ever show. The one would make nitrite
 * the worst of dangers, the other none, for the rest of the season.
 */
final class ChlorideReadings {

    /** Taken where nobody has said, mg/L. */
    static final double WHERE_UNKNOWN_MG_PER_L = 5;
    /** Of a titration by drops, mg/L (common practice, no source). */
    private static final double USUAL_HALF_STEP_MG_PER_L = 2.5;
    /** Two values that differ by more than this factor are not about the same (the project's choice). */
    private static final double ABOUT = 2;

    private final SecondLooks secondLooks;
    private final boolean sourceIsTold;
    private double sourceMgPerL;
    private double heldMgPerL;
    private double beforeRiseMgPerL;
    private boolean isRead;
    private Observation setAside;

    private ChlorideReadings(TankFacts facts, SecondLooks secondLooks) {
        this.secondLooks = secondLooks;
        sourceIsTold = facts.chlorideMgPerL().isPresent();
        sourceMgPerL = facts.chlorideMgPerL().orElse(WHERE_UNKNOWN_MG_PER_L);
        heldMgPerL = sourceMgPerL;
        beforeRiseMgPerL = sourceMgPerL;
    }

    /**
     * @param readings of chloride that nobody doubts, oldest first
     * @param changes of water, % of the volume, oldest first
     */
    static double held(TankFacts facts, List<Observation> readings, List<Observation> changes, SecondLooks secondLooks) {
        ChlorideReadings chloride = new ChlorideReadings(facts, secondLooks);
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
        if (!isRise(reading) && !isUnexplainedFall(reading)) {
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
        double before = heldMgPerL;
        heldMgPerL = fits ? heldMgPerL : saysLessOnly ? said.high() / 2 : reading.value();
        if (heldMgPerL > ABOUT * before) {
            beforeRiseMgPerL = before;
        }
        learnSource();
        setAside = null;
    }

    /** Where nobody told it, the least that was read of the tank is most like it. */
    private void learnSource() {
        if (!sourceIsTold) {
            sourceMgPerL = isRead ? Math.min(sourceMgPerL, heldMgPerL) : heldMgPerL;
        }
        isRead = true;
    }

    private boolean isUnexplainedFall(Observation reading) {
        boolean isKnown = sourceIsTold || isRead;
        double most = Interval.of(reading, USUAL_HALF_STEP_MG_PER_L).high();
        return isKnown && most * ABOUT < heldMgPerL && !isAbout(reading, sourceMgPerL)
                && !isAbout(reading, beforeRiseMgPerL);
    }

    private static boolean isAbout(Observation reading, double mgPerL) {
        return reading.value() * ABOUT >= mgPerL && reading.value() <= mgPerL * ABOUT;
    }

    private static boolean isRise(Observation reading) {
        return !reading.analyte().isLikely(reading.value());
    }
}
