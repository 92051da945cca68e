package org.tankrounds.lab;

import java.util.stream.DoubleStream;
import org.tankrounds.forecast.Driver;

/**
 * What is in a tank's water, each as a share of its limit.
 *
 * @param byLimit by {@link Driver#ordinal}
 */
record LimitShares(double[] byLimit) {

    /** The sum over the limits of how far the water is beyond each. */
    double excess() {
        return DoubleStream.of(excesses()).sum();
    }

    /** How far the water is beyond each limit, by {@link Driver#ordinal}. */
    double[] excesses() {
        return DoubleStream.of(byLimit).map(u -> Math.max(0, u - 1)).toArray();
    }

    /** How near the water is to the nearest limit. */
    double nearest() {
        return DoubleStream.of(byLimit).max().orElseThrow();
    }
}
