package org.tankrounds.summary;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How many outlived a stage of their life, of one tank or of several together.
 *
 * @param began there by count when the stage began, or came while it lasted
 * @param survived of those, the ones alive by count at its end and those that left alive before; never more than began
 *         and did not die
 * @param counted how many tanks had their hatch counted, which then stands for the eggs that outlived their stage
 * @param tanks whose stage is over, or has begun where it is the last
 * @param spreadSquared of those that survived, by how far the counts may be off, 95 %, squared: counts of several tanks
 *         are off by chance of their own
 */
record StageSurvival(int began, int survived, int counted, int tanks, double spreadSquared) {
    static final StageSurvival NONE = new StageSurvival(0, 0, 0, 0, 0);

    StageSurvival {
        if (survived < 0 || survived > began) {
            throw new IllegalArgumentException(survived + " of " + began + " cannot outlive a stage");
        }
    }

    StageSurvival plus(StageSurvival other) {
        return new StageSurvival(began + other.began, survived + other.survived, counted + other.counted,
                tanks + other.tanks, spreadSquared + other.spreadSquared);
    }

    OptionalDouble share() {
        return began == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) survived / began);
    }

    Optional<Wilson> interval() {
        return began == 0 ? Optional.empty() : Optional.of(Wilson.of(survived, began));
    }

    Optional<ClopperPearson> exactInterval() {
        return began == 0 ? Optional.empty() : Optional.of(ClopperPearson.of(survived, began));
    }

    /** Fish more or less that may have survived, by how far the counts may be off, 95 %. */
    int spread() {
        return (int) Math.ceil(Math.sqrt(spreadSquared));
    }

    /** Whether the counts may be off by more than chance alone could move the share. */
    boolean isOffByMoreThanChance() {
        return interval().filter(chance -> spread() > (chance.high() - chance.low()) / 2 * began).isPresent();
    }
}
