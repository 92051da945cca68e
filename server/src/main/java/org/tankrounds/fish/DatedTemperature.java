package org.tankrounds.fish;

import java.time.Instant;

/** The water's temperature at one time, °C. */
public record DatedTemperature(Instant at, double temperatureC) {
}
