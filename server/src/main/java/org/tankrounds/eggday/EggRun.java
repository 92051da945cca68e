package org.tankrounds.eggday;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tankrounds.season.CountMethod;

/** A day on which eggs are fetched from a supplier and driven to schools in one go. */
record EggRun(int runId, int seasonId, Details details) {

    /**
     * @param startsAt when the eggs are fetched, on the chapter's clock
     * @param permit number of the permit by which they may be moved
     * @param thermalUnitsC degree-Celsius days since fertilisation on the day; empty where nobody told
     * @param eggs how many were collected; empty until they are
     * @param spread eggs more or less that the count of those may be off, 95 %
     * @param leftOver eggs that went back, or were disposed of as told; empty until somebody counted
     */
    record Details(
            LocalDate day, LocalTime startsAt, Optional<String> supplier, Optional<String> certificate,
            Optional<String> permit, OptionalDouble thermalUnitsC, OptionalInt eggs, CountMethod method, int spread,
            OptionalInt leftOver, Optional<String> note) {}

    static String addressOf(String season) {
        return "/season/" + season + "/egg-days";
    }

    String address(String season) {
        return addressOf(season) + "/" + runId;
    }
}
