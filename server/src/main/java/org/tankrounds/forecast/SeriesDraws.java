package org.tankrounds.forecast;

import org.tankrounds.belief.Draws;
import org.tankrounds.belief.TemperatureBelief;

/**
 * What is drawn for the paths of one series: the same for every tank, so made once. Arrays by path; do not change them.
 *
 * @param stream keeps series independent of each other
 * @param level standard normal: where each path begins
 * @param slope standard normal: where it is headed
 * @param alternative uniform: which paths take the reading set aside for right
 */
record SeriesDraws(int stream, double[] level, double[] slope, double[] alternative) {

    static final SeriesDraws TOTAL_AMMONIA = of(10);
    static final SeriesDraws NITRITE = of(20);
    static final SeriesDraws PH = of(30);
    static final SeriesDraws OXYGEN_SHARE = of(40);

    private static SeriesDraws of(int stream) {
        int paths = TemperatureBelief.STATES;
        return new SeriesDraws(stream, Draws.spreadNormal(paths, stream), Draws.spreadNormal(paths, stream + 1),
                Draws.spread(paths, stream + 2));
    }

    int paths() {
        return level.length;
    }
}
