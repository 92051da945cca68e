package org.tankrounds.eggday;

import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * How warm it was beside the eggs on the way.
 *
 * @param checkId 0 of one that is not stored yet
 * @param by who wrote it down
 */
record CoolerCheck(int checkId, Instant at, double temperatureC, Where where, String by) {

    /** Where it was read. */
    enum Where {
        SUPPLIER, ROAD, SCHOOL;

        /** In forms and the database. */
        String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Optional<Where> ofCode(String code) {
            return Arrays.stream(values()).filter(where -> where.code().equals(code)).findFirst();
        }
    }

    /** How eggs stand a temperature. */
    enum Comfort {
        FINE, NEAR_THE_EDGE, TOO_WARM, TOO_COLD;

        /** Of eggs, lowest losses are at 7 and 10 °C, 3 and 15 °C near the limits (Kwain 1975; confirmed). */
        private static final double LEAST_C = 3;
        private static final double FINE_FROM_C = 5;
        private static final double FINE_TO_C = 12;
        /** As a mean of the warmest hours from spawning to emergence (US EPA 2003; confirmed, second-hand). */
        private static final double MOST_C = 13;

        static Comfort at(double celsius) {
            if (celsius > MOST_C) {
                return TOO_WARM;
            }
            if (celsius < LEAST_C) {
                return TOO_COLD;
            }
            return celsius < FINE_FROM_C || celsius > FINE_TO_C ? NEAR_THE_EDGE : FINE;
        }
    }
}
