package org.tankrounds.season;

import java.time.Instant;
import java.util.OptionalDouble;
import org.tankrounds.fish.LengthWeight;

/**
 * A few fish of a tank that were measured, and weighed together.
 *
 * @param fish how many
 * @param meanLengthMm from the mouth to the fork of the tail, mm
 * @param totalWeightG of all of them, g; empty where they were not weighed
 */
public record FishSample(int sampleId, Instant measuredAt, int fish, double meanLengthMm, OptionalDouble totalWeightG) {

    public FishSample at(Instant moment) {
        return new FishSample(sampleId, moment, fish, meanLengthMm, totalWeightG);
    }

    /** g of one fish: as weighed, else what trout of that length weigh. */
    public double meanWeightG() {
        return totalWeightG.isPresent() ? totalWeightG.getAsDouble() / fish
                : LengthWeight.weightG(meanLengthMm, LengthWeight.USUAL_CONDITION);
    }

    public double condition() {
        return LengthWeight.condition(meanLengthMm, meanWeightG());
    }
}
