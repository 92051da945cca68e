package org.tankrounds.places;

import java.util.OptionalDouble;

/** From typed values to nullable single-precision columns. */
final class Columns {
    private Columns() {}

    static Float single(OptionalDouble value) {
        return value.isPresent() ? (float) value.getAsDouble() : null;
    }
}
