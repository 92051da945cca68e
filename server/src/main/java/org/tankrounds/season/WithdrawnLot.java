package org.tankrounds.season;

import java.time.Instant;

/** A lot that was taken away as a mistake: it counts nowhere, and stays to be read. */
record WithdrawnLot(Lot lot, String by, Instant at, String because) {}
