package org.tankrounds.forecast;

/**
 * What experience judges a tank by, one number each; unknown is NaN. u is the level as a share of its limit. A sign
 * with a direction can only make things look worse, or only better, as it grows: no accident of training may say that
 * water which is held, read or foreseen to be worse is safer. What was highest, or came before, has none: a
 * filter that had much to do may be the riper for it.
 */
public enum Sign {
    /** Chance by the look ahead alone, deaths weighed in. */
    LOOK_AHEAD_CHANCE(1),
    /** Share of its paths that are beyond a limit now. */
    BEYOND_NOW_CHANCE(1),
    /** Natural logarithm of 1 + its hours beyond each limit, each by how far, per fish. */
    TEMPERATURE_EXCESS(1), AMMONIA_EXCESS(1), NITRITE_EXCESS(1), OXYGEN_EXCESS(1), PH_EXCESS(1),
    /** Share of its paths that pass each limit. */
    TEMPERATURE_CHANCE(1), AMMONIA_CHANCE(1), NITRITE_CHANCE(1), OXYGEN_CHANCE(1), PH_CHANCE(1),

    /** What is held of the water now. */
    CHILLER_STANDS_CHANCE(1), TEMPERATURE_U(1), AMMONIA_MG_PER_L(1), UN_IONISED_U(1), NITRITE_U(1),
    OXYGEN_SHARE(-1),
    /** How far the pH lies below 7: too sour. Too high shows in the un-ionised ammonia. */
    ACIDITY(1),
    /** Its movement, per day on the model's scale. */
    AMMONIA_SLOPE(1), NITRITE_SLOPE(1),
    /**
     * As high as it may well be: a standard deviation above what is held. The standard deviation itself is widest about
     * a reading of next to nothing, and would make that the more risk.
     */
    AMMONIA_HIGH_MG_PER_L(1), NITRITE_HIGH_U(1),
    /** How much is open about it, standard deviation. */
    PH_SD(0),

    /** The newest readings that can be, as they were read; ages in days. */
    TEMPERATURE_READ_U(1), AMMONIA_READ_MG_PER_L(1), UN_IONISED_READ_U(1), NITRITE_READ_U(1), ACIDITY_READ(1),
    TEMPERATURE_AGE(0), AMMONIA_AGE(0), PH_AGE(0),
    AMMONIA_READ_BEFORE_MG_PER_L(0), NITRITE_READ_BEFORE_U(0),
    NITRATE_READ_MG_PER_L(0), NITRATE_AGE(0), ALKALINITY_READ_MG_PER_L(0), ALKALINITY_AGE(0), OXYGEN_READ_MG_PER_L(-1),
    /** Mean of the readings of ten days. */
    TEMPERATURE_MEAN_U(1), AMMONIA_MEAN_MG_PER_L(1), UN_IONISED_MEAN_U(1), NITRITE_MEAN_U(1), ACIDITY_MEAN(1),
    /** Median of the season. */
    TEMPERATURE_MEDIAN_U(1), AMMONIA_MEDIAN_MG_PER_L(1), UN_IONISED_MEDIAN_U(1), NITRITE_MEDIAN_U(1), ACIDITY_MEDIAN(1),
    /** Highest reading of the season but one, so that one slip of the pen does not stick. */
    TEMPERATURE_HIGHEST_U(0), AMMONIA_HIGHEST_MG_PER_L(0), NITRITE_HIGHEST_U(0), ACIDITY_HIGHEST(0),
    /** What the card can tell apart, half of it. */
    AMMONIA_HALF_STEP_MG_PER_L(0), NITRITE_HALF_STEP_U(0),

    NITRITE_LIMIT_MG_PER_L(0), SOURCE_ALKALINITY_MG_PER_L(0), VOLUME_L(0), FISH_PER_100_L(0), DAYS_FEEDING(0),
    /** 1 Monday to 7 Sunday, at the school. */
    WEEKDAY(0),
    /** Days since anything was heard; days of the last fourteen with a reading. */
    SILENT_DAYS(0), DAYS_READ(0),
    /** Days since the newest water change; how many in four weeks, and what share of the volume in all. */
    CHANGE_AGE(0), CHANGES(0), CHANGED_SHARE(0),
    /** Feed of seven days, g per 100 L. */
    FEED_G_PER_100_L(0),
    /** Found dead within so many days, per hundred alive. */
    DEAD_OF_3_DAYS(1), DEAD_OF_14_DAYS(1);

    private final int direction;

    Sign(int direction) {
        this.direction = direction;
    }

    /** 1: more is never better; −1: more is never worse; 0: either. */
    public int direction() {
        return direction;
    }
}
