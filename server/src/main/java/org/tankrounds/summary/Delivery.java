package org.tankrounds.summary;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.season.CountMethod;

/**
 * Eggs that came to a tank together.
 *
 * @param spread eggs more or less that the count may be off, 95 %
 * @param thermalUnitsC degree-Celsius days since fertilisation; empty where nobody told
 * @param certificate number of the health certificate
 */
record Delivery(LocalDate day, String schoolCode, String school, String classroom, String tank, int eggs, int spread,
        CountMethod method, OptionalDouble thermalUnitsC, Optional<String> supplier, Optional<String> certificate) {

    static final Comparator<Delivery> BY_DAY = Comparator.comparing(Delivery::day).thenComparing(Delivery::school)
            .thenComparing(Delivery::classroom).thenComparing(Delivery::tank);
}
