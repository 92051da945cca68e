package org.tankrounds.water;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * Temperatures that were read of one tank's water, °C, and which of them oxygen in % of saturation is taken at:
 * one of the same time, else the newest before it that nobody doubts. Of two at one time the warmer counts, whose
 * water holds less oxygen.
 */
public final class KnownTemperatures {
    /**
     * A temperature says nothing of oxygen read longer after it: in two weeks a room or a chiller can have
     * become another. Our own choice, no source. It also spares the database all but a month or two.
     */
    public static final Duration HOLDS = Duration.ofDays(14);

    private final TreeMap<Instant, Double> sure = new TreeMap<>();
    private final Map<Instant, Double> doubtful = new HashMap<>();

    /** @param temperatureC what no water with fish can have is left out */
    public void add(Instant at, double temperatureC, boolean isDoubtful) {
        if (Units.WATER_WITH_FISH_C.holds(temperatureC)) {
            (isDoubtful ? doubtful : sure).merge(at, Digits.kept(temperatureC), Math::max);
        }
    }

    /** The temperature for oxygen that was read at a time, °C; NaN where none is known. */
    public double at(Instant time) {
        Map.Entry<Instant, Double> last = sure.floorEntry(time);
        boolean isBeside = last != null && last.getKey().equals(time);
        if (!isBeside && doubtful.containsKey(time)) {
            return doubtful.get(time);
        }
        return last == null || last.getKey().isBefore(time.minus(HOLDS)) ? Double.NaN : last.getValue();
    }
}
