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
    private final SeriesDraws draws;
    private final int paths;
    private final double[] population;
    private final double[][] values;
    private final double[] level;
    private final double[] slope;
    private final LocalTrend levelLeft;
    private final LocalTrend slopeLeft;
    private final double levelSd;
    private final double slopeSd;

    private SeriesPaths(SeriesBelief belief, SeriesDraws draws) {
        this.model = belief.model();
        this.draws = draws;
        paths = draws.paths();
        population = population(belief);
        values = new double[Forecast.HORIZON_HOURS + 1][paths];
        level = new double[paths];
        slope = new double[paths];
        levelLeft = new LocalTrend(1, 0, 0, 0, 0).after(BLOCK_H / 24.0, model);
        slopeLeft = new LocalTrend(0, 1, 0, 0, 0).after(BLOCK_H / 24.0, model);
        LocalTrend noise = new LocalTrend(0, 0, 0, 0, 0).after(BLOCK_H / 24.0, model);
        levelSd = Math.sqrt(noise.levelVar());
        slopeSd = Math.sqrt(noise.slopeVar());
    }

    /** Values by hour and path, in the model's unit. */
    static double[][] of(SeriesBelief belief, SeriesDraws draws) {
        SeriesPaths series = new SeriesPaths(belief, draws);
        series.start(belief);
        for (int block = 0; block < BLOCKS; block++) {
            series.pass(block);
        }
        return series.values;
    }

    private void start(SeriesBelief belief) {
        for (int i = 0; i < paths; i++) {
            start(i, draws.alternative()[i] < belief.alternativeChance() ? belief.alternative() : belief.state());
        }
        write(0);
    }

    /** From a draw of level and slope as they hang together. */
    private void start(int i, LocalTrend held) {
        double sd = Math.sqrt(held.levelVar());
        double ownSlopeSd = Math.sqrt(
                Math.max(0, held.slopeVar() - held.cov() * held.cov() / held.levelVar()));
        level[i] = held.level() + sd * draws.level()[i];
        slope[i] = held.slope() + held.cov() / sd * draws.level()[i] + ownSlopeSd * draws.slope()[i];
    }

    private void pass(int block) {
        int draw = (draws.stream() * BLOCKS + block) * 2 * paths;
        for (int i = 0; i < paths; i++) {
            level[i] = levelLeft.level() * level[i] + slopeLeft.level() * slope[i]
                    + levelSd * Draws.normal(draw + 2 * i);
            slope[i] = slopeLeft.slope() * slope[i] + slopeSd * Draws.normal(draw + 2 * i + 1);
        }
        write(block + 1);
        between(values[block * BLOCK_H], values[(block + 1) * BLOCK_H], block * BLOCK_H);
    }

    private void write(int block) {
        for (int i = 0; i < paths; i++) {
            values[block * BLOCK_H][i] = model.scale().valueOf(population[block] + level[i]);
        }
    }

    /** Straight from the one to the other, over the hours after one. */
    private void between(double[] from, double[] to, int hour) {
        for (int h = 1; h <= BLOCK_H; h++) {
            double[] now = values[hour + h];
            for (int i = 0; i < paths; i++) {
                now[i] = from[i] + (to[i] - from[i]) * h / BLOCK_H;
            }
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
