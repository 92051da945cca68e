package org.tankrounds.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tankrounds.belief.RisingOrder;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.fish.Stage;

/** The spread of each series over the paths, every six hours. */
final class Fans {

    private static final int EVERY_H = 6;
    /** Half of the paths are enough for five quantiles, and sorting is what this costs. */
    private static final int EVERY_NTH_PATH = 2;

    private Fans() {
    }

    static List<SeriesForecast> of(Paths course, int[] picked, TankBelief belief, Limits limits) {
        Stage stage = course.stage()[0];
        double chloride = belief.chlorideMgPerL();
        return List.of(
                fan(Driver.TEMPERATURE, "°C", course, picked, stage, chloride, limits),
                fan(Driver.UN_IONISED_AMMONIA, "mg/L as NH₃", course, picked, stage, chloride, limits),
                fan(Driver.NITRITE, "mg/L as N", course, picked, stage, chloride, limits),
                fan(Driver.DISSOLVED_OXYGEN, "mg/L", course, picked, stage, chloride, limits),
                fan(Driver.PH, "pH", course, picked, stage, chloride, limits));
    }

    private static SeriesForecast fan(Driver series, String unit, Paths course, int[] picked,
            Stage stage, double chloride, Limits limits) {
        OptionalDouble upper = limits.upper(series, stage, chloride);
        OptionalDouble lower = limits.lower(series, stage);
        List<FanPoint> fan = new ArrayList<>();
        for (int h = 0; h <= Forecast.HORIZON_HOURS; h += EVERY_H) {
            fan.add(point(h, course.of(series)[h], picked));
        }
        return new SeriesForecast(series, unit, upper, lower, fan);
    }

    private static FanPoint point(int hour, double[] values, int[] picked) {
        double[] some = new double[(picked.length + 1) / EVERY_NTH_PATH];
        for (int i = 0; i < some.length; i++) {
            some[i] = values[picked[EVERY_NTH_PATH * i]];
        }
        double[] sorted = RisingOrder.sorted(some);
        return new FanPoint(hour, quantile(sorted, 0.05), quantile(sorted, 0.25),
                quantile(sorted, 0.5), quantile(sorted, 0.75), quantile(sorted, 0.95));
    }

    /** Linear between order statistics. */
    static double quantile(double[] sorted, double p) {
        double place = p * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
