package org.tankrounds.readings;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.tankrounds.water.Analyte;

/**
 * What a logger or a probe read in one day, in sum: it reads too often to be listed.
 *
 * @param day on the school's clock
 * @param last when it read for the last time that day
 * @param fromFile whether all of it came with files
 * @param hours by analyte, the hours in which it was read
 */
public record DeviceDay(
        LocalDate day, int readings, Instant last, boolean fromFile, Map<Analyte, List<Hour>> hours) {

    /** From so many a day on they are told in sum. */
    public static final int MANY = 6;

    /**
     * Canonical units.
     *
     * @param hour 0 to 23 on the school's clock; the one that comes twice in autumn is one
     */
    public record Hour(int hour, int count, double least, double mean, double most) {}

    public int count(Analyte analyte) {
        return hours.get(analyte).stream().mapToInt(Hour::count).sum();
    }

    public double least(Analyte analyte) {
        return hours.get(analyte).stream().mapToDouble(Hour::least).min().orElseThrow();
    }

    public double most(Analyte analyte) {
        return hours.get(analyte).stream().mapToDouble(Hour::most).max().orElseThrow();
    }
}
