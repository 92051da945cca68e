package org.tankrounds.lab.evaluation;

/** A score that can be told anew as if each unit, a tank or a chapter, had been met so many times. */
interface Resampled {

    int units();

    /** NaN where such a sample has no score. */
    double at(int[] times);

    /** How much more this is than another score of the same units, both of the same sample. */
    default Resampled minus(Resampled other) {
        if (other.units() != units()) {
            throw new IllegalArgumentException("units must be " + units() + ", were " + other.units());
        }
        Resampled one = this;
        return new Resampled() {
            @Override
            public int units() {
                return one.units();
            }

            @Override
            public double at(int[] times) {
                return one.at(times) - other.at(times);
            }
        };
    }
}
