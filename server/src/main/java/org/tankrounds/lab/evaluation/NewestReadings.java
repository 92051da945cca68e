package org.tankrounds.lab.evaluation;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Limits;
import org.tankrounds.lab.TankSeason;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.Analyte;

/**
 * What a person sees who looks at the newest reading of each kind and thinks no further. Each as a share of
 * its limit, and what was never read as it usually is.
 */
record NewestReadings(
        TankSeason tank, Instant asOf, Map<Analyte, Double> values, double silentHours, double dead) {

    private static final double USUAL_PH = 7.4;
    private static final double USUAL_C = 11;
    private static final double USUAL_OXYGEN_MG_PER_L = 12;
    private static final double USUAL_THERMAL_UNITS_C = 250;
    private static final double NEVER_READ_HOURS = 10_000;
    private static final Duration LATELY = Duration.ofDays(3);
    private static final Limits LIMITS = Limits.DEFAULT;

    static NewestReadings of(TankSeason tank, Instant asOf) {
        Map<Analyte, Double> newest = new EnumMap<>(Analyte.class);
        double silent = NEVER_READ_HOURS;
        double dead = 0;
        for (Observation reading : upTo(tank.observations(), asOf)) {
            newest.put(reading.analyte(), reading.value());
            silent = Duration.between(reading.at(), asOf).toMinutes() / 60.0;
            boolean late = reading.at().isAfter(asOf.minus(LATELY));
            dead += reading.analyte() == Analyte.DEATHS && late ? reading.value() : 0;
        }
        return new NewestReadings(tank, asOf, newest, silent, dead);
    }

    private static List<Observation> upTo(List<Observation> observations, Instant asOf) {
        return observations.stream().filter(reading -> !reading.at().isAfter(asOf)).toList();
    }

    /** By the calendar, as a teacher reckons it. */
    Stage stage() {
        TankFacts facts = tank.facts();
        double days = facts.eggsReceivedAt()
                .map(at -> Duration.between(at, asOf).toHours() / 24.0).orElse(0.0);
        double units = facts.thermalUnitsC().orElse(USUAL_THERMAL_UNITS_C) + USUAL_C * days;
        return units >= Development.FIRST_FEEDING_C_DAYS ? Stage.FEEDING : Stage.SAC_FRY;
    }

    double temperatureU() {
        return LIMITS.ofTemperature(stage(), temperatureC());
    }

    double unIonisedU() {
        return LIMITS.ofUnIonisedAmmonia(
                Ammonia.unIonisedMgPerL(newest(Analyte.TOTAL_AMMONIA, 0), ph(), temperatureC()));
    }

    double nitriteU() {
        double chloride = tank.facts().chlorideMgPerL().orElse(Limits.CHLORIDE_WHERE_UNKNOWN_MG_PER_L);
        return LIMITS.ofNitrite(newest(Analyte.NITRITE, 0), chloride);
    }

    double oxygenU() {
        return LIMITS.ofOxygen(stage(), newest(Analyte.DISSOLVED_OXYGEN, USUAL_OXYGEN_MG_PER_L));
    }

    double phU() {
        return LIMITS.ofPh(ph());
    }

    private double temperatureC() {
        return newest(Analyte.TEMPERATURE, USUAL_C);
    }

    private double ph() {
        return newest(Analyte.PH, USUAL_PH);
    }

    private double newest(Analyte analyte, double usual) {
        return values.getOrDefault(analyte, usual);
    }
}
