package org.tankrounds.belief;

/**
 * Level and slope of a series with their uncertainty, moved by a Kalman filter for irregular times.
 *
 * <p>The level is the distance from what tanks in general show; it forgets with {@code tauLevel}. The slope
 * fades with {@code tauSlope}. Per step of dt days: {@code d' = φ d + g b}, {@code b' = ψ b}, {@code φ =
 * e^(−dt/τL)}, {@code ψ = e^(−dt/τb)}, {@code g = (φ − ψ) / (1/τb − 1/τL)}: what the slope added is forgotten
 * too. Source of the filter: Durbin and Koopman 2012, Time Series Analysis by State Space Methods, chapters 2
 * and 4. Without slope and forgetting it is their local level model.
 *
 * @param level distance from the population, on the model's scale
 * @param slope per day
 * @param levelVar variance of the level
 * @param cov covariance of level and slope
 * @param slopeVar variance of the slope
 */
public record LocalTrend(double level, double slope, double levelVar, double cov, double slopeVar) {

    /** How a series moves when nobody looks, per {@link TrendModel}. */
    public LocalTrend after(double days, TrendModel model) {
        double forget = StrictMath.exp(-days / model.levelDays());
        double fade = StrictMath.exp(-days / model.slopeDays());
        double carry = (forget - fade) / (1 / model.slopeDays() - 1 / model.levelDays());
        double newLevelVar = forget * forget * levelVar + 2 * forget * carry * cov
                + carry * carry * slopeVar + model.levelNoise(days, forget);
        double newCov = fade * (forget * cov + carry * slopeVar);
        double newSlopeVar = fade * fade * slopeVar
                + model.slopeSd() * model.slopeSd() * (1 - fade * fade);
        return new LocalTrend(forget * level + carry * slope, fade * slope, newLevelVar, newCov,
                newSlopeVar);
    }

    /** What is held after seeing a value with a variance. */
    public LocalTrend seeing(double value, double variance) {
        double spread = levelVar + variance;
        double gainLevel = levelVar / spread;
        double gainSlope = cov / spread;
        double miss = value - level;
        return new LocalTrend(level + gainLevel * miss, slope + gainSlope * miss,
                levelVar * (1 - gainLevel), cov * (1 - gainLevel), slopeVar - gainSlope * cov);
    }

    /** The same, moved to another level by something done to the tank. */
    public LocalTrend movedTo(double newLevel) {
        return new LocalTrend(newLevel, slope, levelVar, cov, slopeVar);
    }

    /** The same with a level about which more is open. */
    public LocalTrend loosened(double addedLevelVar, double addedSlopeVar) {
        return new LocalTrend(
                level, slope, levelVar + addedLevelVar, cov, slopeVar + addedSlopeVar);
    }

    /** How many standard deviations a value lies from what is expected. */
    public double surprise(double value, double variance) {
        return (value - level) / Math.sqrt(levelVar + variance);
    }
}
