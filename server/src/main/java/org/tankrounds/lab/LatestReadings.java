package org.tankrounds.lab;

import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Limits;
import org.tankrounds.fish.Stage;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.Analyte;

/** The plain reference: how far the newest readings are over their limits, with no thought given to anything else. */
final class LatestReadings {

    private static final double USUAL_PH = 7.4;
    private static final double USUAL_C = 11;
    private static final double FEEDING_FROM_DAYS = 30;

    private LatestReadings() {
    }

    /** The largest share of a limit among the newest readings; 0 without any. */
    static double score(TankSeason tank, Instant asOf) {
        Map<Analyte, Double> newest = new EnumMap<>(Analyte.class);
        for (Observation reading : tank.observations()) {
            if (!reading.at().isAfter(asOf)) {
                newest.put(reading.analyte(), reading.value());
            }
        }
        boolean feeds = asOf.isAfter(LabSeason.at(tank.arrivedAt()).plusSeconds((long) (FEEDING_FROM_DAYS * 86_400)));
        Stage stage = feeds ? Stage.FEEDING : Stage.SAC_FRY;
        Limits limits = Limits.DEFAULT;
        double temperature = newest.getOrDefault(Analyte.TEMPERATURE, USUAL_C);
        double ph = newest.getOrDefault(Analyte.PH, USUAL_PH);
        double unIonised = Ammonia.unIonisedMgPerL(
                newest.getOrDefault(Analyte.TOTAL_AMMONIA, 0.0), ph, temperature);
        double chloride = tank.facts().chlorideMgPerL().orElse(Limits.CHLORIDE_WHERE_UNKNOWN_MG_PER_L);
        double u = Math.max(limits.ofTemperature(stage, temperature), limits.ofUnIonisedAmmonia(unIonised));
        u = Math.max(u, limits.ofNitrite(newest.getOrDefault(Analyte.NITRITE, 0.0), chloride));
        u = Math.max(u, limits.ofPh(ph));
        return Math.max(u, limits.ofOxygen(stage, newest.getOrDefault(Analyte.DISSOLVED_OXYGEN, 12.0)));
    }
}
