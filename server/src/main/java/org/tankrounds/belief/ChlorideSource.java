package org.tankrounds.belief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The chloride of the water that a tank is filled from, mg/L: as somebody told it, else as the readings of the tank
 * show. One alone may be a slip of the pen, so the lowest is taken that another is about the same as, and while there
 * is none, the likeliest. Much chloride is held for salt, and so is much more than was in the tank; what changes left
 * of salt tells nothing of the source either. A tap that has so much of it has to be told.
 */
final class ChlorideSource {

    /** Taken where nobody has said, mg/L. */
    static final double WHERE_UNKNOWN_MG_PER_L = 5;
    /** Of most taps, mg/L (from memory); a tank with more was likely salted. */
    private static final double MOST_WITHOUT_SALT_MG_PER_L = 50;
    /** A rise to no more than this puts a slip right, and does not tell of salt, mg/L (the project's choice). */
    private static final double USUAL_MG_PER_L = 20;
    /** Two values that differ by more than this factor are not about the same (the project's choice). */
    static final double ABOUT = 2;

    private static final double TENTH = 10;
    private static final double ROUNDING = 0.01;

    private final boolean isTold;
    private final List<Double> readMgPerL = new ArrayList<>();
    private double mgPerL;

    ChlorideSource(OptionalDouble toldMgPerL) {
        isTold = toldMgPerL.isPresent();
        mgPerL = toldMgPerL.orElse(WHERE_UNKNOWN_MG_PER_L);
    }

    double mgPerL() {
        return mgPerL;
    }

    /** Told, or read at least once in a tank that was hardly salted. */
    boolean isKnown() {
        return isTold || !readMgPerL.isEmpty();
    }

    /**
     * Whether what is taken for it rests on one reading only, and another would be the likelier. A tenth of it to the
     * digit is a slip of the point. In a tank that was salted since, a fall says nothing of the source.
     */
    boolean isLikelier(double readMgPerL, double heldMgPerL) {
        boolean isTenth = Math.abs(TENTH * readMgPerL - mgPerL) < ROUNDING * mgPerL;
        boolean isUsual = readMgPerL <= USUAL_MG_PER_L && mgPerL > USUAL_MG_PER_L;
        return !isTold && this.readMgPerL.size() == 1 && !isTenth && isAbout(heldMgPerL, mgPerL)
                && (isUsual || timesAnother(readMgPerL) < timesAnother(mgPerL));
    }

    /** @param heldMgPerL what was held to be in the tank before it was read */
    void learn(double readInTankMgPerL, double heldMgPerL) {
        if (!isTold && readInTankMgPerL <= MOST_WITHOUT_SALT_MG_PER_L && !tellsOfSalt(readInTankMgPerL, heldMgPerL)) {
            readMgPerL.add(readInTankMgPerL);
            mgPerL = lowestReadTwice().orElseGet(this::likeliest);
        }
    }

    private boolean tellsOfSalt(double readInTankMgPerL, double heldMgPerL) {
        boolean isSalted = readInTankMgPerL > Math.max(USUAL_MG_PER_L, ABOUT * heldMgPerL) && !readMgPerL.isEmpty();
        boolean isLeftOfSalt = heldMgPerL > ABOUT * mgPerL && isAbout(readInTankMgPerL, heldMgPerL);
        return isSalted || isLeftOfSalt;
    }

    private OptionalDouble lowestReadTwice() {
        double[] rising = readMgPerL.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return IntStream.range(1, rising.length).filter(i -> isAbout(rising[i - 1], rising[i]))
                .mapToDouble(i -> rising[i - 1]).findFirst();
    }

    /** By as few times as possible another than what is taken where nobody knows. */
    private double likeliest() {
        return readMgPerL.stream().min(Comparator.comparingDouble(ChlorideSource::timesAnother)).orElseThrow();
    }

    private static double timesAnother(double mgPerL) {
        return Math.max(mgPerL / WHERE_UNKNOWN_MG_PER_L, WHERE_UNKNOWN_MG_PER_L / mgPerL);
    }

    private static boolean isAbout(double oneMgPerL, double otherMgPerL) {
        return oneMgPerL * ABOUT >= otherMgPerL && oneMgPerL <= otherMgPerL * ABOUT;
    }
}
