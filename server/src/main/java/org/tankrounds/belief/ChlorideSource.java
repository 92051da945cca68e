package org.tankrounds.belief;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The chloride of the water that a tank is filled from, mg/L: as somebody told it, else as the readings of the tank
 * show. One alone may be a slip of the pen, so the lowest is taken that another is about the same as, and while there
 * is none, the latest. Much chloride is held for salt, until it is there again when the water that was salted has gone.
 */
final class ChlorideSource {

    /** Taken where nobody has said, mg/L. */
    static final double WHERE_UNKNOWN_MG_PER_L = 5;
    /** Of most taps, mg/L (from memory); a tank with more was likely salted. */
    private static final double MOST_WITHOUT_SALT_MG_PER_L = 50;
    /** From so much new water on, a tank that was salted would show it (the project's choice). */
    private static final double MUCH_RENEWED = 0.5;
    /** Two values that differ by more than this factor are not about the same (the project's choice). */
    private static final double ABOUT = 2;

    private final boolean isTold;
    private final List<Double> readMgPerL = new ArrayList<>();
    private double mgPerL;
    private double lastReadMgPerL;

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

    /** @param renewed how much of the water is new since the reading before, 0 to 1 */
    void learn(double tankMgPerL, double renewed) {
        boolean isUnsalted = tankMgPerL <= MOST_WITHOUT_SALT_MG_PER_L
                || renewed >= MUCH_RENEWED && isAbout(tankMgPerL, lastReadMgPerL);
        lastReadMgPerL = tankMgPerL;
        if (!isTold && isUnsalted) {
            readMgPerL.add(tankMgPerL);
            mgPerL = lowestReadTwice().orElse(tankMgPerL);
        }
    }

    private OptionalDouble lowestReadTwice() {
        double[] rising = readMgPerL.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return IntStream.range(1, rising.length).filter(i -> isAbout(rising[i - 1], rising[i]))
                .mapToDouble(i -> rising[i - 1]).findFirst();
    }

    private static boolean isAbout(double oneMgPerL, double otherMgPerL) {
        return oneMgPerL * ABOUT >= otherMgPerL && oneMgPerL <= otherMgPerL * ABOUT;
    }
}
