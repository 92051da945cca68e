package org.tankrounds.release;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.fish.LengthWeight;
import org.tankrounds.transport.ClosedBox;

/**
 * The fish of one tank in a plan, and what they travel in.
 *
 * @param meanLengthMm mm; empty where not known yet
 * @param meanWeightG of one fish, g; empty takes what trout of that length weigh
 * @param boxes how many
 * @param boxL water in each, L
 */
public record Load(int tankId, int fish, OptionalDouble meanLengthMm, OptionalDouble meanWeightG, int boxes,
        double boxL) {

    public double waterL() {
        return boxes * boxL;
    }

    /** g of all of them; empty where nobody measured. */
    public OptionalDouble biomassG() {
        if (meanWeightG.isPresent()) {
            return OptionalDouble.of(fish * meanWeightG.getAsDouble());
        }
        return meanLengthMm.isPresent() ? OptionalDouble.of(
                fish * LengthWeight.weightG(meanLengthMm.getAsDouble(), LengthWeight.USUAL_CONDITION))
                : OptionalDouble.empty();
    }

    /** All boxes as one: fish are shared out evenly. Empty where nobody measured. */
    public Optional<ClosedBox> box() {
        OptionalDouble biomassG = biomassG();
        return biomassG.isPresent() ? Optional.of(new ClosedBox(waterL(), biomassG.getAsDouble()))
                : Optional.empty();
    }
}
