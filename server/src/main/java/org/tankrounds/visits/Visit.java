package org.tankrounds.visits;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Somebody of the chapter stood before a tank.
 *
 * @param visitId 0 of one that is not stored yet
 * @param deeds what was done, at least one
 * @param by who was there; empty of one that is not stored yet
 */
public record Visit(int visitId, Instant at, List<Deed> deeds, Optional<String> note, String by) {}
