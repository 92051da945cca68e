package org.tankrounds.forecast;

import java.time.Instant;
import java.util.List;
import org.tankrounds.belief.Observation;

/** One analyte's readings of a season in a few numbers; NaN where there are none. */
final class ReadSeries {

    private static final double RECENT_DAYS = 10;

    private final List<Observation> readings;
    private final double[] sorted;
    private final Instant asOf;

    /** @param readings oldest first */
    ReadSeries(List<Observation> readings, Instant asOf) {
        this.readings = List.copyOf(readings);
        this.sorted = this.readings.stream().mapToDouble(Observation::value).sorted().toArray();
        this.asOf = asOf;
    }

    /** The newest, or with 1 the one before. */
    double newest(int before) {
        int place = readings.size() - 1 - before;
        return place < 0 ? Double.NaN : readings.get(place).value();
    }

    double ageDays() {
        return readings.isEmpty() ? Double.NaN : days(readings.get(readings.size() - 1));
    }

    double halfStep() {
        return readings.isEmpty() ? Double.NaN : readings.get(readings.size() - 1).halfStep();
    }

    double recentMean() {
        double sum = 0;
        int count = 0;
        for (int i = readings.size() - 1; i >= 0 && days(readings.get(i)) < RECENT_DAYS; i--) {
            sum += readings.get(i).value();
            count++;
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    double median() {
        return sorted.length == 0 ? Double.NaN : sorted[sorted.length / 2];
    }

    double highestButOne() {
        return sorted.length < 2 ? Double.NaN : sorted[sorted.length - 2];
    }

    double lowestButOne() {
        return sorted.length < 2 ? Double.NaN : sorted[1];
    }

    /** Sum of the values of so many days. */
    double sumOf(double withinDays) {
        return readings.stream().filter(o -> days(o) < withinDays).mapToDouble(Observation::value).sum();
    }

    long countOf(double withinDays) {
        return readings.stream().filter(o -> days(o) < withinDays).count();
    }

    boolean isEmpty() {
        return readings.isEmpty();
    }

    private double days(Observation reading) {
        return (asOf.getEpochSecond() - reading.at().getEpochSecond()) / 86_400.0;
    }

}
