package org.tankrounds.lab;

import java.util.SplittableRandom;
import org.tankrounds.belief.Draws;

/** Chance by seed: the same seed gives the same luck on every machine. */
final class Luck {

    private SplittableRandom random;
    private boolean isByPurpose;
    private long ofHour;

    Luck(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Luck of its own for one purpose, which no other purpose disturbs. */
    static Luck of(long seed, String purpose) {
        return new Luck(seed * 1_000_003 + purpose.hashCode());
    }

    /** From here on the same in this hour for each purpose, whatever came before or is drawn besides. */
    void beginAnew(long seed, int hour) {
        isByPurpose = true;
        ofHour = seed * 1_000_003 + hour;
        random = new SplittableRandom(ofHour);
    }

    /** For one purpose within the hour; what simply comes next where no hour was begun anew. */
    Luck about(String purpose) {
        if (isByPurpose) {
            random = new SplittableRandom(ofHour * 1_000_003 + purpose.hashCode());
        }
        return this;
    }

    /** Between 0 and 1, both excluded. */
    double uniform() {
        return (random.nextInt(1 << 24) + 0.5) / (1 << 24);
    }

    double between(double low, double high) {
        return low + (high - low) * uniform();
    }

    int between(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    boolean happens(double chance) {
        return uniform() < chance;
    }

    /** A standard normal deviate. */
    double normal() {
        return Draws.normalQuantile(uniform());
    }

    /** How many of so many, each with a chance. */
    int count(int of, double chance) {
        int count = 0;
        for (int i = 0; i < of; i++) {
            count += happens(chance) ? 1 : 0;
        }
        return count;
    }
}
