package org.tankrounds.summary;

import java.util.List;

/** How the figures were made, in sentences; they stand below every printed summary. */
final class SummaryNotes {
    static final List<String> ALL = List.of(
            "Every egg accounted for: eggs received = dead + alive + unexplained. Alive is a count, received less "
                    + "recorded deaths; nobody has counted the living. Where more deaths were recorded than eggs "
                    + "received, the surplus stands as a negative number unexplained and is never taken away.",
            "Deaths count as egg, sac fry or feeding fish by the day they were recorded, against hatch (from the "
                    + "tank's own temperatures) and first feeding (as the class recorded it, else at 480 °C-days).",
            "Survival is alive by count over eggs received; its interval is Wilson's, 95 %, and tells how far chance "
                    + "alone could move it, not whether a count was right.",
            "A reading-day is a day on the school's calendar with at least one value. It is within the limit when "
                    + "every value of the day is. Shares leave out days that could not be decided.",
            "Limits: temperature 13 °C for eggs and sac fry, 18 °C for feeding fish; un-ionised ammonia 0.0125 mg/L "
                    + "as NH3 (from total ammonia with the nearest pH and temperature of the same day, after Emerson "
                    + "1975); nitrite by chloride, from 0.03 mg/L as N at 1 mg/L chloride to 0.45 at 40, with 5 mg/L "
                    + "chloride where nobody has said.",
            "Not detected is not zero: a card that shows its lowest colour counts as below half its first step. Where "
                    + "that is within the limit the value is; where it is not, the day is undecided. Worst values are "
                    + "taken from detected values only.",
            "Values that stay marked as doubtful are left out of shares and worst values; their number is given. "
                    + "Deaths are counted as recorded, doubted or not.",
            "A classroom aquarium is not a monitored water body: do not enter these figures where results of streams "
                    + "and lakes are collected.");

    private SummaryNotes() {}
}
