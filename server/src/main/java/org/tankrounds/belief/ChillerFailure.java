package org.tankrounds.belief;

/**
 * What a chiller that fails does: how often, where the temperature then goes and how fast. Shared by the belief
 * and by the look ahead. Figures: common practice, no source; time constants span a bare tank (12 h) and a
 * foamed one (88 h) of the heat balance.
 *
 * @param endC where the temperature goes
 * @param timeConstantH how fast
 */
public record ChillerFailure(double endC, double timeConstantH) {

    /** Chance per day that a running chiller fails: about 4 % a week. */
    public static final double STOPS_PER_DAY = 0.006;
    /** A running chiller's swing about the temperature it holds, °C. */
    public static final double RUN_SD_C = 0.35;
    /** How fast a running chiller returns to it, h. */
    public static final double RUN_HOURS = 6;
    /** How far the room that warms a tank wanders in a day, °C. */
    public static final double ROOM_WALK_SD_C = 0.6;

    /** A classroom (common practice, no source). */
    public static final double ROOM_C = 21;
    private static final double ROOM_SD_C = 1.5;
    private static final double WEAK_SHARE = 0.35;
    private static final double MEDIAN_TIME_CONSTANT_H = 30;
    private static final double TIME_CONSTANT_LOG_SD = 0.6;

    /** One failure by a time constant and three draws: normal for the room, uniform for weak or dead and how weak. */
    public static ChillerFailure of(
            double heldC, double roomDraw, double timeConstantH, double weakDraw, double howWeakDraw) {
        double room = ROOM_C + ROOM_SD_C * roomDraw;
        double end = weakDraw < WEAK_SHARE ? Math.min(room, heldC + 2 + 6 * howWeakDraw) : room;
        return new ChillerFailure(end, timeConstantH);
    }

    /** The time constant of a standard normal draw, h. */
    public static double timeConstantH(double draw) {
        return MEDIAN_TIME_CONSTANT_H * StrictMath.exp(TIME_CONSTANT_LOG_SD * draw);
    }

    /** Chance that a running chiller fails within some days. */
    public static double chanceWithin(double days) {
        return 1 - StrictMath.exp(-STOPS_PER_DAY * days);
    }
}
