package org.tankrounds.lab;

import org.tankrounds.tankmodel.TankState;

/** Glass, gravel and stand: they take heat from the water and give it back, and lose none. */
final class Lump {

    /** Heat that they hold, as a share of what the water holds (free choice). */
    static final double SHARE = 0.3;
    /** What an hour leaves of the difference (free choice): a time constant of 5 h. */
    private static final double KEEPS_PER_HOUR = StrictMath.exp(-1 / 5.0);

    private double temperatureC;

    Lump(double temperatureC) {
        this.temperatureC = temperatureC;
    }

    double temperatureC() {
        return temperatureC;
    }

    /** The water after an hour beside them. */
    TankState besides(TankState water) {
        double both = (water.temperatureC() + SHARE * temperatureC) / (1 + SHARE);
        temperatureC = both + (temperatureC - both) * KEEPS_PER_HOUR;
        return water.withTemperatureC(both + (water.temperatureC() - both) * KEEPS_PER_HOUR);
    }
}
