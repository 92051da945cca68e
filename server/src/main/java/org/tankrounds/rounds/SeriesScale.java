package org.tankrounds.rounds;

import java.util.Collection;
import org.tankrounds.forecast.Driver;

/**
 * From level to height. A series has the same scale in all rows of a page, so that heights compare.
 *
 * @param low level at the bottom
 * @param high level at the top
 */
record SeriesScale(double low, double high) {

    /** Room for what tanks usually show, with the limits inside. */
    static SeriesScale usual(Driver series) {
        return switch (series) {
            case TEMPERATURE -> new SeriesScale(4, 22);
            case UN_IONISED_AMMONIA -> new SeriesScale(0, 0.025);
            case NITRITE -> new SeriesScale(0, 0.5);
            case DISSOLVED_OXYGEN -> new SeriesScale(4, 13);
            case PH -> new SeriesScale(5.5, 9.5);
            case CHLORINE -> new SeriesScale(0, 0.025);
            default -> new SeriesScale(0, 1);
        };
    }

    /** Wide enough for these levels too. */
    SeriesScale covering(Collection<Double> levels) {
        double lowest = Math.min(low, levels.stream().mapToDouble(Double::doubleValue).min().orElse(low));
        double highest = Math.max(high, levels.stream().mapToDouble(Double::doubleValue).max().orElse(high));
        return new SeriesScale(lowest, highest);
    }

    /** Pixels from the top of a picture so high. */
    double y(double level, double height) {
        return height - (level - low) / (high - low) * height;
    }
}
