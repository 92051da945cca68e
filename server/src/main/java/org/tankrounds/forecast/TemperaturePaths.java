package org.tankrounds.forecast;

import java.util.Arrays;
import org.tankrounds.belief.ChillerFailure;
import org.tankrounds.belief.Draws;
import org.tankrounds.belief.TemperatureBelief;

/** Carries the temperature forward on every path; nobody steps in, so what stands goes on standing. */
final class TemperaturePaths {

    private static final int STREAM = 100;
    private static final int HOURS = Forecast.HORIZON_HOURS;
    private static final double FAILS = ChillerFailure.chanceWithin(HOURS / 24.0);
    private static final double SETTLE = StrictMath.exp(-1 / ChillerFailure.RUN_HOURS);
    private static final double SETTLE_SD = ChillerFailure.RUN_SD_C * Math.sqrt(1 - SETTLE * SETTLE);
    private static final double ROOM_SD = ChillerFailure.ROOM_WALK_SD_C / Math.sqrt(24);
    private static final int NEVER = HOURS + 1;
    private static final double[] FAIL_DRAW = Draws.spread(TemperatureBelief.STATES, STREAM);
    private static final double[] ROOM_DRAW = Draws.spreadNormal(TemperatureBelief.STATES, STREAM + 1);
    private static final double[] TIME_CONSTANT_H =
            Arrays.stream(Draws.spreadNormal(TemperatureBelief.STATES, STREAM + 2))
                    .map(ChillerFailure::timeConstantH).toArray();

    private TemperaturePaths() {
    }

    /** When a path's chiller fails, where the water then goes, and what an hour leaves of the way. */
    private record Fate(int failsAtH, double endC, double keepsPerHour) {
    }

    static double[][] of(TemperatureBelief belief) {
        int paths = belief.nowC().length;
        double[][] values = new double[HOURS + 1][paths];
        for (int i = 0; i < paths; i++) {
            run(i, belief, fate(i, belief), values);
        }
        return values;
    }

    private static Fate fate(int i, TemperatureBelief belief) {
        if (belief.stopped()[i]) {
            return new Fate(0, belief.endC()[i], StrictMath.exp(-1 / belief.timeConstantH()[i]));
        }
        if (FAIL_DRAW[i] >= FAILS) {
            return new Fate(NEVER, belief.heldC()[i], 0);
        }
        ChillerFailure failure = ChillerFailure.of(belief.heldC()[i], ROOM_DRAW[i], TIME_CONSTANT_H[i],
                Draws.uniform(2 * i), Draws.uniform(2 * i + 1));
        return new Fate((int) (HOURS * FAIL_DRAW[i] / FAILS), failure.endC(),
                StrictMath.exp(-1 / failure.timeConstantH()));
    }

    private static void run(int i, TemperatureBelief belief, Fate fate, double[][] values) {
        double held = belief.heldC()[i];
        double now = belief.nowC()[i];
        double end = fate.endC();
        values[0][i] = now;
        for (int h = 1; h <= HOURS; h++) {
            double drawn = Draws.normal(i * HOURS + h);
            if (h > fate.failsAtH()) {
                end += ROOM_SD * drawn;
                now = end - (end - now) * fate.keepsPerHour();
            } else {
                now = held + (now - held) * SETTLE + SETTLE_SD * drawn;
            }
            values[h][i] = now;
        }
    }
}
