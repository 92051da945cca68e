package org.tankrounds.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What goes well or wrong in an invented tank, counted back from the day on which the demo is loaded.
 *
 * @param ammoniaOxidisers biomass on the filter when the eggs came, mg COD/L
 * @param nitriteOxidisers the same for the second guild
 * @param feeding how the class fed, as multiples of the need; the last one that has begun holds
 * @param chillerStopped hours ago
 * @param changesStopped days ago that the class last changed water
 * @param silent days ago that it was last heard of
 * @param deathsNewestFirst found at the newest readings, instead of what chance brings
 * @param notesNewestFirst written at the newest readings; "" for none
 * @param slip days ago that somebody wrote a pH of 9.3 down
 */
record Story(
        double ammoniaOxidisers,
        double nitriteOxidisers,
        List<Feeding> feeding,
        OptionalDouble chillerStopped,
        OptionalInt changesStopped,
        OptionalInt silent,
        List<Integer> deathsNewestFirst,
        List<String> notesNewestFirst,
        OptionalInt slip) {

    record Feeding(int sinceDaysAgo, double timesTheNeed) {}

    /** A filter brought along from elsewhere, and nothing to report. */
    static Story ripe() {
        return filter(1.2, 0.5);
    }

    static Story filter(double ammoniaOxidisers, double nitriteOxidisers) {
        return new Story(ammoniaOxidisers, nitriteOxidisers, List.of(), OptionalDouble.empty(), OptionalInt.empty(),
                OptionalInt.empty(), List.of(), List.of(), OptionalInt.empty());
    }

    Story feeding(int sinceDaysAgo, double timesTheNeed) {
        List<Feeding> more = new ArrayList<>(feeding);
        more.add(new Feeding(sinceDaysAgo, timesTheNeed));
        return new Story(ammoniaOxidisers, nitriteOxidisers, List.copyOf(more), chillerStopped, changesStopped,
                silent, deathsNewestFirst, notesNewestFirst, slip);
    }

    Story chillerStoppedHoursAgo(double hours) {
        return new Story(ammoniaOxidisers, nitriteOxidisers, feeding, OptionalDouble.of(hours), changesStopped,
                silent, deathsNewestFirst, notesNewestFirst, slip);
    }

    Story changesStoppedDaysAgo(int days) {
        return new Story(ammoniaOxidisers, nitriteOxidisers, feeding, chillerStopped, OptionalInt.of(days),
                silent, deathsNewestFirst, notesNewestFirst, slip);
    }

    Story silentForDays(int days) {
        return new Story(ammoniaOxidisers, nitriteOxidisers, feeding, chillerStopped, changesStopped,
                OptionalInt.of(days), deathsNewestFirst, notesNewestFirst, slip);
    }

    Story deathsNewestFirst(Integer... deaths) {
        return new Story(ammoniaOxidisers, nitriteOxidisers, feeding, chillerStopped, changesStopped, silent,
                List.of(deaths), notesNewestFirst, slip);
    }

    Story notesNewestFirst(String... notes) {
        return new Story(ammoniaOxidisers, nitriteOxidisers, feeding, chillerStopped, changesStopped, silent,
                deathsNewestFirst, List.of(notes), slip);
    }

    Story slipDaysAgo(int days) {
        return new Story(ammoniaOxidisers, nitriteOxidisers, feeding, chillerStopped, changesStopped, silent,
                deathsNewestFirst, notesNewestFirst, OptionalInt.of(days));
    }

    double timesTheNeed(double daysAgo) {
        double times = 1;
        for (Feeding change : feeding) {
            if (daysAgo <= change.sinceDaysAgo()) {
                times = change.timesTheNeed();
            }
        }
        return times;
    }
}
