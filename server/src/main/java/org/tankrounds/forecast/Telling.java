package org.tankrounds.forecast;

import org.tankrounds.water.Analyte;

/**
 * How much one reading taken now would tell.
 *
 * @param analyte what to read
 * @param share of the outcome's variance that the reading would explain, 0 to 1
 */
public record Telling(Analyte analyte, double share) {

    public Telling {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share must be from 0 to 1, was " + share);
        }
    }
}
