package org.tankrounds.forecast;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How much of what experience adds to the look ahead each limit accounts for: by how much the chance would be less,
 * were all signs of that limit those of a tank in which it is fine. Reasons are to name what moved the number, also
 * where hardly a course of the look ahead passes any limit.
 */
final class MovedBy {

    /** A quarter of the limit, and no acidity: nobody would look twice (the project's choice). */
    private static final double FINE_U = 0.25;
    private static final double FINE_AMMONIA_MG_PER_L = 0.1;
    private static final double FINE_OXYGEN_MG_PER_L = 10;

    /** Less is the risk that every tank has. */
    private static final double WORTH_NAMING = 0.1;

    private static final Map<Driver, List<Sign>> SIGNS = signs();

    private final Map<Driver, Double> byLimit;
    private final double sum;
    /** Part of the chance that the limits' signs do not account for, and the look ahead has to, 0 to 1. */
    private final double seen;

    /** @param added what experience adds to the look ahead's chance */
    private MovedBy(Map<Driver, Double> byLimit, double chance, double added) {
        this.byLimit = byLimit;
        double all = 0;
        for (double moved : byLimit.values()) {
            all += moved;
        }
        this.sum = all;
        this.seen = all >= WORTH_NAMING ? 1 - Math.min(added, all) / chance : 1;
    }

    static MovedBy of(Experience experience, double[] signs) {
        double chance = experience.chance(signs);
        Map<Driver, Double> moved = new EnumMap<>(Driver.class);
        SIGNS.forEach((limit, own) -> {
            double[] fine = signs.clone();
            own.forEach(sign -> fine[sign.ordinal()] = fine(sign, signs[sign.ordinal()]));
            moved.put(limit, Math.max(0, chance - experience.chance(fine)));
        });
        return new MovedBy(moved, chance, Math.max(0, chance - signs[Sign.LOOK_AHEAD_CHANCE.ordinal()]));
    }

    /** By how much the chance would be less, were this limit fine. */
    double of(Driver limit) {
        return byLimit.getOrDefault(limit, 0.0);
    }

    /** Whether experience knows more of the chance than the look ahead saw. */
    boolean isMost() {
        return seen < 0.5;
    }

    /** @param ofSeen the limit's share of what the look ahead saw */
    double share(Driver limit, double ofSeen) {
        return seen * ofSeen + (sum > 0 ? (1 - seen) * of(limit) / sum : 0);
    }

    /** What was never read stays so. */
    private static double fine(Sign sign, double value) {
        return switch (sign) {
            case AMMONIA_MG_PER_L, AMMONIA_HIGH_MG_PER_L, AMMONIA_READ_MG_PER_L, AMMONIA_READ_BEFORE_MG_PER_L,
                    AMMONIA_MEAN_MG_PER_L, AMMONIA_MEDIAN_MG_PER_L, AMMONIA_HIGHEST_MG_PER_L ->
                    Math.min(value, FINE_AMMONIA_MG_PER_L);
            case OXYGEN_SHARE -> Math.max(value, 1);
            case OXYGEN_READ_MG_PER_L -> Math.max(value, FINE_OXYGEN_MG_PER_L);
            case TEMPERATURE_U, TEMPERATURE_READ_U, TEMPERATURE_MEAN_U, TEMPERATURE_MEDIAN_U, TEMPERATURE_HIGHEST_U,
                    UN_IONISED_U, UN_IONISED_READ_U, UN_IONISED_MEAN_U, UN_IONISED_MEDIAN_U, NITRITE_U, NITRITE_HIGH_U,
                    NITRITE_READ_U, NITRITE_READ_BEFORE_U, NITRITE_MEAN_U, NITRITE_MEDIAN_U, NITRITE_HIGHEST_U ->
                    Math.min(value, FINE_U);
            default -> Math.min(value, 0);
        };
    }

    private static Map<Driver, List<Sign>> signs() {
        Map<Driver, List<Sign>> signs = new EnumMap<>(Driver.class);
        signs.put(Driver.TEMPERATURE, List.of(Sign.TEMPERATURE_EXCESS, Sign.TEMPERATURE_CHANCE,
                Sign.CHILLER_STANDS_CHANCE, Sign.TEMPERATURE_U, Sign.TEMPERATURE_READ_U, Sign.TEMPERATURE_MEAN_U,
                Sign.TEMPERATURE_MEDIAN_U, Sign.TEMPERATURE_HIGHEST_U));
        signs.put(Driver.UN_IONISED_AMMONIA, List.of(Sign.AMMONIA_EXCESS, Sign.AMMONIA_CHANCE, Sign.AMMONIA_MG_PER_L,
                Sign.UN_IONISED_U, Sign.AMMONIA_SLOPE, Sign.AMMONIA_HIGH_MG_PER_L, Sign.AMMONIA_READ_MG_PER_L,
                Sign.UN_IONISED_READ_U, Sign.AMMONIA_READ_BEFORE_MG_PER_L, Sign.AMMONIA_MEAN_MG_PER_L,
                Sign.UN_IONISED_MEAN_U, Sign.AMMONIA_MEDIAN_MG_PER_L, Sign.UN_IONISED_MEDIAN_U,
                Sign.AMMONIA_HIGHEST_MG_PER_L));
        signs.put(Driver.NITRITE, List.of(Sign.NITRITE_EXCESS, Sign.NITRITE_CHANCE, Sign.NITRITE_U, Sign.NITRITE_SLOPE,
                Sign.NITRITE_HIGH_U, Sign.NITRITE_READ_U, Sign.NITRITE_READ_BEFORE_U, Sign.NITRITE_MEAN_U,
                Sign.NITRITE_MEDIAN_U, Sign.NITRITE_HIGHEST_U));
        signs.put(Driver.PH, List.of(Sign.PH_EXCESS, Sign.PH_CHANCE, Sign.ACIDITY, Sign.ACIDITY_READ, Sign.ACIDITY_MEAN,
                Sign.ACIDITY_MEDIAN, Sign.ACIDITY_HIGHEST));
        signs.put(Driver.DISSOLVED_OXYGEN, List.of(Sign.OXYGEN_EXCESS, Sign.OXYGEN_CHANCE, Sign.OXYGEN_SHARE,
                Sign.OXYGEN_READ_MG_PER_L));
        return signs;
    }
}
