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

    private final TrendModel model;
    private final int stream;
    private final double[] population;
    private final double[][] values;
    private final LocalTrend levelLeft;
    private final LocalTrend slopeLeft;
    private final double levelSd;
    private final double slopeSd;

    private SeriesPaths(SeriesBelief belief, int paths, int stream) {
        this.model = belief.model();
        this.stream = stream;
        population = population(belief);
        values = new double[Forecast.HORIZON_HOURS + 1][paths];
        levelLeft = new LocalTrend(1, 0, 0, 0, 0).after(BLOCK_H / 24.0, model);
        slopeLeft = new LocalTrend(0, 1, 0, 0, 0).after(BLOCK_H / 24.0, model);
        LocalTrend noise = new LocalTrend(0, 0, 0, 0, 0).after(BLOCK_H / 24.0, model);
        levelSd = Math.sqrt(noise.levelVar());
        slopeSd = Math.sqrt(noise.slopeVar());
    }

    /** Values by hour and path, in the model's unit; {@code stream} keeps series independent. */
    static double[][] of(SeriesBelief belief, int paths, int stream) {
        double[] levelDraw = Draws.spreadNormal(paths, stream);
        double[] slopeDraw = Draws.spreadNormal(paths, stream + 1);
        double[] alternativeDraw = Draws.spread(paths, stream + 2);
        SeriesPaths series = new SeriesPaths(belief, paths, stream);
        for (int i = 0; i < paths; i++) {
            LocalTrend held = alternativeDraw[i] < belief.alternativeChance()
                    ? belief.alternative() : belief.state();
            series.start(i, held, levelDraw[i], slopeDraw[i]);
        }
        return series.values;
    }

    /** From a draw of level and slope as they hang together. */
    private void start(int i, LocalTrend held, double levelDraw, double slopeDraw) {
        double sd = Math.sqrt(held.levelVar());
        double ownSlopeSd = Math.sqrt(
                Math.max(0, held.slopeVar() - held.cov() * held.cov() / held.levelVar()));
        run(i, held.level() + sd * levelDraw,
                held.slope() + held.cov() / sd * levelDraw + ownSlopeSd * slopeDraw);
    }

    private void run(int i, double level, double slope) {
        int paths = values[0].length;
        values[0][i] = model.scale().valueOf(population[0] + level);
        for (int block = 0; block < BLOCKS; block++) {
            int draw = (stream * BLOCKS + block) * 2 * paths + 2 * i;
            level = levelLeft.level() * level + slopeLeft.level() * slope + levelSd * Draws.normal(draw);
            slope = slopeLeft.slope() * slope + slopeSd * Draws.normal(draw + 1);
            between(i, block * BLOCK_H, model.scale().valueOf(population[block + 1] + level));
        }
    }

    private void between(int i, int hour, double to) {
        double from = values[hour][i];
        for (int h = 1; h <= BLOCK_H; h++) {
            values[hour + h][i] = from + (to - from) * h / BLOCK_H;
        }
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
