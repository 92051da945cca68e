package org.tankrounds.places;

import java.util.List;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/**
 * One card of a kit.
 *
 * @param form unit and what the numbers count
 * @param steps the card's numbers, ascending; the first means "below half the second"
 */
public record KitScale(Analyte analyte, UnitForm form, List<Double> steps) {

    /**
     * What the card can tell apart at a value: the distance to the nearest neighbouring colour, in the card's unit.
     */
    public double stepAt(double value) {
        int nearest = 0;
        for (int i = 1; i < steps.size(); i++) {
            if (Math.abs(steps.get(i) - value) < Math.abs(steps.get(nearest) - value)) {
                nearest = i;
            }
        }
        double below = nearest == 0 ? Double.POSITIVE_INFINITY : steps.get(nearest) - steps.get(nearest - 1);
        double above = nearest == steps.size() - 1
                ? Double.POSITIVE_INFINITY : steps.get(nearest + 1) - steps.get(nearest);
        return Math.min(below, above);
    }

    /** Whether a value is the card's lowest step, which only says that nothing was seen. */
    public boolean isLowest(double value) {
        return value <= steps.get(0);
    }
}
