package org.tankrounds.belief;

import java.util.List;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.KnownTemperatures;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;

/** Oxygen readings set right: more mg/L than any tank holds was read in % of saturation. */
public final class OxygenReadings {

    /** Water at freezing point, a third above what it holds in air (the project's choice). */
    private static final double MOST_MG_PER_L = 20;
    private static final UnitForm PERCENT = UnitForm.of("%");

    private final double elevationM;
    private final KnownTemperatures temperatures = new KnownTemperatures();

    private OxygenReadings(List<Observation> observations, double elevationM) {
        this.elevationM = elevationM;
        observations.stream().filter(o -> o.analyte() == Analyte.TEMPERATURE)
                .forEach(o -> temperatures.add(o.at(), o.value(), o.doubtful()));
    }

    /** All observations in the same order, oxygen that was mixed up replaced and marked doubtful. */
    public static List<Observation> setRight(List<Observation> observations, double elevationM) {
        if (observations.stream().noneMatch(OxygenReadings::isInPercent)) {
            return observations;
        }
        OxygenReadings oxygen = new OxygenReadings(observations, elevationM);
        return observations.stream().map(o -> isInPercent(o) ? oxygen.fromPercent(o) : o).toList();
    }

    /** Whatever tanks show, it stays in doubt: by itself it may as well be a slip as another unit. */
    static boolean isInPercent(Observation o) {
        return o.analyte() == Analyte.DISSOLVED_OXYGEN && o.value() > MOST_MG_PER_L;
    }

    private Observation fromPercent(Observation o) {
        double temperatureC = temperatures.at(o.at());
        return new Observation(o.at(), o.analyte(),
                Units.toCanonical(o.analyte(), PERCENT, o.value(), temperatureC, elevationM),
                Units.stepToCanonical(o.analyte(), PERCENT, o.halfStep(), temperatureC, elevationM), o.below(), true);
    }
}
