package org.tankrounds.pages;

import java.util.List;

/**
 * A day on which a logger or a probe read a tank often.
 *
 * @param title the day
 * @param place school and room
 * @param sum how much it read, from what to what
 * @param columns what it read
 * @param readings each of them, oldest first
 */
public record DeviceDayPage(
        String title, String place, String tankTo, String sum, List<String> columns, List<HourRow> hours,
        List<TankPage.LogRow> readings) implements Page {

    /** @param cells mean, least and most in words; those of the last columns may be missing */
    public record HourRow(String hour, List<String> cells) {}
}
