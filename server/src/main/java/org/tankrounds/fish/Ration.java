package org.tankrounds.fish;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much dry feed a tank's fish get in a day.
 *
 * <p>A classroom's filter cannot take what fish would grow fastest on, so they get {@value #RELEASE_TANK_PERCENT} % of
 * their weight (a release tank is fed 1 to 3 %: common practice, no source), or what {@link FeedingTable} says where
 * that is less. What more they are given only rots.
 *
 * @param gramsPerDay of dry feed for all of them, g
 * @param percentOfWeight the same as a share of what they weigh, %
 * @param growthPercent what they would grow fastest on, %
 */
public record Ration(double gramsPerDay, double percentOfWeight, double growthPercent) {

    /** Of the fish's weight a day, %. */
    public static final double RELEASE_TANK_PERCENT = 2;

    /**
     * Empty where {@link FeedingTable} ends, and for no fish.
     *
     * @param weightG of one fish, g
     */
    public static Optional<Ration> of(int fish, double weightG, double lengthMm, double temperatureC) {
        OptionalDouble growth = FeedingTable.percentPerDay(temperatureC, lengthMm);
        if (growth.isEmpty() || fish <= 0) {
            return Optional.empty();
        }
        double percent = Math.min(RELEASE_TANK_PERCENT, growth.getAsDouble());
        return Optional.of(new Ration(fish * weightG * percent / 100, percent, growth.getAsDouble()));
    }

    /** g a day that they would grow fastest on; a filter has to be ripe for it. */
    public double growthGramsPerDay() {
        return gramsPerDay * growthPercent / percentOfWeight;
    }
}
