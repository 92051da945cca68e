package org.tankrounds.belief;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * The chloride that is held to be in the water, mg/L. It comes with salt and with the source water, and leaves only
 * with the water: a change brings it nearer to the source's. What the lowest colour of a strip says is "less than
 * this", and fits what is held where that is less. A fall that no change explains waits for a second look, unless it is
 * back to the source's or to what was held before a rise; so does more than tanks ever show. The one would make nitrite
 * the worst of dangers, the other none, for the rest of the season.
 */
final class ChlorideReadings {

    /** Of a titration by drops, mg/L (common practice, no source). */
    private static final double USUAL_HALF_STEP_MG_PER_L = 2.5;

    private final SecondLooks secondLooks;
    private final ChlorideSource source;
    private double heldMgPerL;
    private OptionalDouble beforeRiseMgPerL = OptionalDouble.empty();
    private Observation setAside;

    private ChlorideReadings(TankFacts facts, SecondLooks secondLooks) {
        this.secondLooks = secondLooks;
        source = new ChlorideSource(facts.chlorideMgPerL());
        heldMgPerL = source.mgPerL();
    }

    /**
     * @param readings of chloride that nobody doubts, oldest first
     * @param changes of water, % of the volume, oldest first
     */
    static double held(
            TankFacts facts, List<Observation> readings, List<Observation> changes, SecondLooks secondLooks) {
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
        heldMgPerL += share * (source.mgPerL() - heldMgPerL);
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
        double before = heldMgPerL;
        heldMgPerL = taken(reading);
        if (source.isKnown() && heldMgPerL > ChlorideSource.ABOUT * before) {
            beforeRiseMgPerL = OptionalDouble.of(before);
        }
        source.learn(heldMgPerL, before);
        setAside = null;
    }

    /** "Less than this" is what is held, or the source's, or halfway, whichever can be first. */
    private double taken(Observation reading) {
        Interval said = said(reading);
        boolean saysLessOnly = said.low() == 0;
        if (!saysLessOnly) {
            return reading.value();
        }
        return DoubleStream.of(heldMgPerL, source.mgPerL()).filter(mgPerL -> mgPerL <= said.high()).findFirst()
                .orElse(said.high() / 2);
    }

    private boolean isUnexplainedFall(Observation reading) {
        return source.isKnown() && said(reading).high() * ChlorideSource.ABOUT < heldMgPerL
                && !isAbout(reading, source.mgPerL()) && !source.isLikelier(reading.value(), heldMgPerL)
                && beforeRiseMgPerL.stream().noneMatch(before -> isAbout(reading, before));
    }

    private static boolean isAbout(Observation reading, double mgPerL) {
        Interval said = said(reading);
        double most = said.low() == 0 ? said.high() : reading.value();
        return most * ChlorideSource.ABOUT >= mgPerL && reading.value() <= mgPerL * ChlorideSource.ABOUT;
    }

    private static Interval said(Observation reading) {
        return Interval.of(reading, USUAL_HALF_STEP_MG_PER_L);
    }

    private static boolean isRise(Observation reading) {
        return !reading.analyte().isLikely(reading.value());
    }
}
