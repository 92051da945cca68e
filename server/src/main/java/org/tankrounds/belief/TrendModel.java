package org.tankrounds.belief;

/**
 * How a series of classroom tanks moves, on its own scale. The figures are the project's choice (common
 * practice, no source), tried on simulated seasons.
 *
 * @param scale from values to the scale the filter works on, and back
 * @param populationSd spread of tanks in general
 * @param levelDays after so many days a tank's own level is forgotten to 1/e
 * @param noisePerDay variance that a day adds to the level, up to the population's spread
 * @param slopeSd spread of slopes, per day
 * @param slopeDays after so many days a slope has faded to 1/e
 * @param readerSd what two readers differ by beside the method's step, share of the half step
 * @param usualHalfStep half step taken where a method's is unknown, canonical unit
 * @param rightAfterAll how often a lone reading that nobody expected turns out right: what builds up over days seldom
 *         jumps, but air stones stop within the hour
 */
public record TrendModel(Scale scale, double populationSd, double levelDays, double noisePerDay,
        double slopeSd, double slopeDays, double readerSd, double usualHalfStep,
        double rightAfterAll) {

    /** Total ammonia, mg N/L. */
    public static final TrendModel TOTAL_AMMONIA =
            new TrendModel(Scale.logarithmic(0.05), 0.8, 60, 0.015, 0.08, 12, 0.4, 0.12, 0.15);
    /** Nitrite, mg N/L. */
    public static final TrendModel NITRITE =
            new TrendModel(Scale.logarithmic(0.02), 0.8, 60, 0.015, 0.08, 12, 0.4, 0.04, 0.15);
    /** pH. */
    public static final TrendModel PH =
            new TrendModel(Scale.linear(), 0.4, 30, 0.006, 0.02, 10, 0.4, 0.2, 0.15);
    /** Dissolved oxygen as a share of saturation. */
    public static final TrendModel OXYGEN_SHARE =
            new TrendModel(Scale.linear(), 0.08, 20, 0.0006, 0.008, 8, 0.4, 0.05, 0.5);

    /** The variance that days of silence add to the level: at most the population's. */
    double levelNoise(double days, double forget) {
        return Math.min(noisePerDay * days, populationSd * populationSd * (1 - forget * forget));
    }

    /** The variance of a reading known to lie in an interval, both ends on the scale. */
    double readingVariance(double low, double high) {
        double width = high - low;
        double reader = readerSd * width / 2;
        return width * width / 12 + reader * reader;
    }

    /** A scale on which changes of a series look alike at every level. */
    public record Scale(boolean isLogarithmic, double offset) {

        static Scale linear() {
            return new Scale(false, 0);
        }

        static Scale logarithmic(double offset) {
            return new Scale(true, offset);
        }

        /** From a value; negative ones count as 0 on a logarithmic scale. */
        public double of(double value) {
            return isLogarithmic ? StrictMath.log(Math.max(0, value) + offset) : value;
        }

        /** Back to a value. */
        public double valueOf(double scaled) {
            return isLogarithmic ? Math.max(0, StrictMath.exp(scaled) - offset) : scaled;
        }
    }
}
