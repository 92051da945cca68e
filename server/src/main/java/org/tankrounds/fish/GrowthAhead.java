package org.tankrounds.fish;

import java.time.Duration;
import java.time.Instant;
import org.tankrounds.fish.WarmthPath.Side;

/**
 * How large the fish of a tank will be, by {@link Growth} over the warmth that is to be expected.
 *
 * @param from when one fish weighed {@code weightG}; of fry that have yet to feed, the window in which they will
 * @param weightG of one fish then, g
 * @param condition their condition factor, {@link LengthWeight}
 * @param pace how fast they grow
 * @param warmth of their water
 */
public record GrowthAhead(DateWindow from, double weightG, double condition, GrowthPace pace, Warmth warmth) {
    private static final Duration FURTHEST = Duration.ofDays(500);

    /** Fry that nobody has measured, from their first feeding on. */
    public static GrowthAhead ofFry(DateWindow firstFeeding, Warmth warmth) {
        return new GrowthAhead(firstFeeding, Growth.SWIM_UP_G, LengthWeight.USUAL_CONDITION,
                GrowthPace.OF_CLASSROOMS, warmth);
    }

    /** g of one fish at a moment, as it most likely goes; before they feed, what they begin with. */
    public double weightG(Instant at) {
        return Growth.weightG(weightG, pace.usual(), warmth.middle().growthDegreeDaysC(from.expected(), at));
    }

    /** mm of one fish of a weight. */
    public double lengthMm(double ofWeightG) {
        return LengthWeight.lengthMm(ofWeightG, condition);
    }

    /** When they will be so long: the fastest in the warmest water that may be, the slowest in the coldest. */
    public DateWindow reaches(double aimMm) {
        double aimG = LengthWeight.weightG(aimMm, condition);
        return DateWindow.around(when(aimG, Side.WARM, from.earliest(), pace.fast()),
                when(aimG, Side.MIDDLE, from.expected(), pace.usual()),
                when(aimG, Side.COLD, from.latest(), pace.slow()));
    }

    /** °C to be expected at a moment. */
    public double temperatureC(Instant at) {
        return warmth.middle().at(at);
    }

    private Instant when(double aimG, Side side, Instant start, double tgcPercent) {
        return warmth.of(side).whenGrownBy(Growth.degreeDaysC(weightG, aimG, tgcPercent), start, start.plus(FURTHEST));
    }
}
