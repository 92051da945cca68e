package org.tankrounds.classroom;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.Growth;
import org.tankrounds.fish.LengthWeight;
import org.tankrounds.rounds.TankToday;
import org.tankrounds.season.FishSample;

/**
 * How large the fish of a tank are today: as measured last and grown since, or as fry of their age most likely are.
 *
 * @param weightG of one fish, g
 * @param lengthMm of one fish, mm
 * @param measuredAt empty where nobody measured them
 */
record FishSize(double weightG, double lengthMm, Optional<Instant> measuredAt) {

    /**
     * Of fish that feed.
     *
     * @param samples the newest first
     */
    static FishSize of(TankToday tank, Development lot, List<FishSample> samples) {
        Optional<FishSample> measured = samples.stream()
                .filter(sample -> !sample.measuredAt().isBefore(lot.firstFeedingAt())).findFirst();
        if (measured.isEmpty()) {
            return grown(Growth.SWIM_UP_G, LengthWeight.USUAL_CONDITION, tank, lot.firstFeedingAt(), Optional.empty());
        }
        FishSample sample = measured.get();
        return grown(sample.meanWeightG(), sample.condition(), tank, sample.measuredAt(),
                Optional.of(sample.measuredAt()));
    }

    private static FishSize grown(
            double startG, double condition, TankToday tank, Instant since, Optional<Instant> measuredAt) {
        double degreeDays = Math.max(0, tank.degreeDaysNow() - tank.degreeDaysAt(since));
        double weightG = Growth.weightG(startG, Growth.CLASSROOM_TGC_PERCENT, degreeDays);
        return new FishSize(weightG, LengthWeight.lengthMm(weightG, condition), measuredAt);
    }
}
