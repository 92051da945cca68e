package org.tankrounds.testing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.water.Analyte;

/** A tank as a class reads it, every other day for five weeks the same, to change one thing at a time. */
public record Water(double temperatureC, double totalAmmoniaMgPerL, double nitriteMgPerL, double ph,
        double oxygenMgPerL) {
    public static final Instant AS_OF = Instant.parse("2027-03-10T19:00:00Z");
    /** Nothing is near a limit. */
    public static final Water FINE = new Water(11, 0.25, 0.02, 7.3, 10);
    private static final int EVERY_DAYS = 2;
    private static final int READINGS = 18;

    public Water withTemperatureC(double other) {
        return new Water(other, totalAmmoniaMgPerL, nitriteMgPerL, ph, oxygenMgPerL);
    }

    public Water withTotalAmmoniaMgPerL(double other) {
        return new Water(temperatureC, other, nitriteMgPerL, ph, oxygenMgPerL);
    }

    public Water withNitriteMgPerL(double other) {
        return new Water(temperatureC, totalAmmoniaMgPerL, other, ph, oxygenMgPerL);
    }

    public Water withPh(double other) {
        return new Water(temperatureC, totalAmmoniaMgPerL, nitriteMgPerL, other, oxygenMgPerL);
    }

    public Water withOxygenMgPerL(double other) {
        return new Water(temperatureC, totalAmmoniaMgPerL, nitriteMgPerL, ph, other);
    }

    /** Read for the last time so many days before {@link #AS_OF}. */
    public List<Observation> lastRead(double daysAgo) {
        List<Observation> readings = new ArrayList<>();
        for (int i = 0; i < READINGS; i++) {
            double days = daysAgo + i * EVERY_DAYS;
            readings.add(read(days, Analyte.TEMPERATURE, temperatureC, 0.25));
            readings.add(read(days, Analyte.TOTAL_AMMONIA, totalAmmoniaMgPerL, 0.125));
            readings.add(read(days, Analyte.NITRITE, nitriteMgPerL, 0.05));
            readings.add(read(days, Analyte.PH, ph, 0.1));
            readings.add(read(days, Analyte.DISSOLVED_OXYGEN, oxygenMgPerL, 0.25));
        }
        return readings;
    }

    public static Observation read(double daysAgo, Analyte analyte, double value, double halfStep) {
        return Observation.of(AS_OF.minusSeconds(Math.round(daysAgo * 86_400)), analyte, value, halfStep);
    }

    public static List<Observation> with(List<Observation> readings, Observation... more) {
        List<Observation> all = new ArrayList<>(readings);
        all.addAll(List.of(more));
        return all;
    }

    /**
     * A hundred fish that have fed for four months, so that what tanks in general do hardly changes any more.
     */
    public static TankFacts.Builder feedingFish() {
        return TankFacts.of("feeding").volumeL(190).eggs(100)
                .eggsReceivedAt(AS_OF.minus(Duration.ofDays(145)))
                .thermalUnitsC(250).sourceAlkalinityMgPerL(80).chlorideMgPerL(12);
    }

    /** A hundred eggs that came yesterday, three weeks from first feeding. */
    public static TankFacts.Builder eggs() {
        return feedingFish().eggsReceivedAt(AS_OF.minus(Duration.ofDays(1)));
    }

    public static LookAhead lookAhead(TankFacts.Builder facts, List<Observation> readings) {
        return new Forecaster().lookAhead(facts.build(), readings, AS_OF);
    }

    public static Forecast forecast(TankFacts.Builder facts, List<Observation> readings) {
        return new Forecaster().forecast(facts.build(), readings, AS_OF);
    }
}
