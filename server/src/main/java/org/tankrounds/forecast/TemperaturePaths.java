package org.tankrounds.forecast;

import org.tankrounds.belief.ChillerFailure;
import org.tankrounds.belief.Draws;
import org.tankrounds.belief.TemperatureBelief;

/** Carries the temperature forward on every path; nobody steps in, so what stands goes on standing. */
final class TemperaturePaths {

    private static final int STREAM = 100;

    private TemperaturePaths() {
    }

    static double[][] of(TemperatureBelief belief) {
        int paths = belief.nowC().length;
        int hours = Forecast.HORIZON_HOURS;
        double[][] values = new double[hours + 1][paths];
        double[] failDraw = Draws.spread(paths, STREAM);
        double[] roomDraw = Draws.spreadNormal(paths, STREAM + 1);
        double[] constantDraw = Draws.spreadNormal(paths, STREAM + 2);
        double fails = ChillerFailure.chanceWithin(hours / 24.0);
        double settle = StrictMath.exp(-1 / ChillerFailure.RUN_HOURS);
        double roomSd = ChillerFailure.ROOM_WALK_SD_C / Math.sqrt(24);
        double settleSd = ChillerFailure.RUN_SD_C * Math.sqrt(1 - settle * settle);
        for (int i = 0; i < paths; i++) {
            double now = belief.nowC()[i];
            double held = belief.heldC()[i];
            double end = belief.endC()[i];
            double keep = 0;
            int failsAt = belief.stopped()[i] ? 0
                    : failDraw[i] < fails ? (int) (hours * failDraw[i] / fails) : hours + 1;
            if (belief.stopped()[i]) {
                keep = StrictMath.exp(-1 / belief.timeConstantH()[i]);
            } else if (failsAt <= hours) {
                ChillerFailure failure = ChillerFailure.of(held, roomDraw[i], constantDraw[i],
                        Draws.uniform(2 * i), Draws.uniform(2 * i + 1));
                end = failure.endC();
                keep = StrictMath.exp(-1 / failure.timeConstantH());
            }
            values[0][i] = now;
            for (int h = 1; h <= hours; h++) {
                double drawn = Draws.normal(i * hours + h);
                if (h > failsAt) {
                    end += roomSd * drawn;
                    now = end - (end - now) * keep;
                } else {
                    now = held + (now - held) * settle + settleSd * drawn;
                }
                values[h][i] = now;
            }
        }
        return values;
    }
}
