package org.tankrounds.rounds;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.tankrounds.forecast.FanPoint;

/** The bands of a forecast as path data. */
final class Fan {
    private Fan() {}

    static String wide(List<FanPoint> fan, DoubleUnaryOperator x, DoubleUnaryOperator y) {
        return band(fan, FanPoint::q05, FanPoint::q95, x, y);
    }

    static String narrow(List<FanPoint> fan, DoubleUnaryOperator x, DoubleUnaryOperator y) {
        return band(fan, FanPoint::q25, FanPoint::q75, x, y);
    }

    private static String band(
            List<FanPoint> fan, ToDoubleFunction<FanPoint> lower, ToDoubleFunction<FanPoint> upper,
            DoubleUnaryOperator x, DoubleUnaryOperator y) {
        if (fan.isEmpty()) {
            return "";
        }
        SvgPath path = new SvgPath();
        fan.forEach(point -> path.to(x.applyAsDouble(point.hours()), y.applyAsDouble(upper.applyAsDouble(point))));
        for (int i = fan.size() - 1; i >= 0; i--) {
            FanPoint point = fan.get(i);
            path.to(x.applyAsDouble(point.hours()), y.applyAsDouble(lower.applyAsDouble(point)));
        }
        return path.close().data();
    }
}
