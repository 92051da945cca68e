package org.tankrounds.readings;

import java.time.Instant;

/**
 * The newest reading of a tank.
 *
 * @param by the label it was given; empty where none
 */
public record LastLook(Instant at, String by) {}
