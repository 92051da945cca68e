package org.tankrounds.forecast;

import java.time.Duration;
import org.tankrounds.belief.Draws;
import org.tankrounds.belief.LocalTrend;
import org.tankrounds.belief.SeriesBelief;
import org.tankrounds.belief.TrendModel;

/** Carries one series forward on every path: a draw from what is held now, then trend and noise. */
final class SeriesPaths {

    private static final int BLOCK_H = 6;
    private static final int BLOCKS = Forecast.HORIZON_HOURS / BLOCK_H;

    private SeriesPaths() {
    }

    /** Values by hour and path, in the model's unit; {@code stream} keeps series independent. */
    static double[][] of(SeriesBelief belief, int paths, int stream) {
        double[] levelDraw = Draws.spreadNormal(paths, stream);
        double[] slopeDraw = Draws.spreadNormal(paths, stream + 1);
        double[] alternativeDraw = Draws.spread(paths, stream + 2);
        double[] population = population(belief);
        TrendModel model = belief.model();
        LocalTrend noise = new LocalTrend(0, 0, 0, 0, 0).after(BLOCK_H / 24.0, model);
        LocalTrend unit = new LocalTrend(1, 0, 0, 0, 0).after(BLOCK_H / 24.0, model);
        LocalTrend slopeUnit = new LocalTrend(0, 1, 0, 0, 0).after(BLOCK_H / 24.0, model);
        double levelSd = Math.sqrt(noise.levelVar());
        double slopeSd = Math.sqrt(noise.slopeVar());
        double[][] values = new double[Forecast.HORIZON_HOURS + 1][paths];
        for (int i = 0; i < paths; i++) {
            LocalTrend held = alternativeDraw[i] < belief.alternativeChance()
                    ? belief.alternative() : belief.state();
            double sd = Math.sqrt(held.levelVar());
            double level = held.level() + sd * levelDraw[i];
            double slopeLeft = Math.sqrt(
                    Math.max(0, held.slopeVar() - held.cov() * held.cov() / held.levelVar()));
            double slope = held.slope() + held.cov() / sd * levelDraw[i] + slopeLeft * slopeDraw[i];
            double from = model.scale().valueOf(population[0] + level);
            values[0][i] = from;
            for (int block = 0; block < BLOCKS; block++) {
                int draw = (stream * BLOCKS + block) * 2 * paths + 2 * i;
                level = unit.level() * level + slopeUnit.level() * slope + levelSd * Draws.normal(draw);
                slope = slopeUnit.slope() * slope + slopeSd * Draws.normal(draw + 1);
                double to = model.scale().valueOf(population[block + 1] + level);
                for (int h = 1; h <= BLOCK_H; h++) {
                    values[block * BLOCK_H + h][i] = from + (to - from) * h / BLOCK_H;
                }
                from = to;
            }
        }
        return values;
    }

    private static double[] population(SeriesBelief belief) {
        double[] population = new double[BLOCKS + 1];
        for (int block = 0; block <= BLOCKS; block++) {
            population[block] = belief.population()
                    .applyAsDouble(belief.asOf().plus(Duration.ofHours((long) block * BLOCK_H)));
        }
        return population;
    }
}
