package org.tankrounds.summary;

import java.time.Instant;
import java.util.List;
import java.util.OptionalInt;

/**
 * What a file says about its own making.
 *
 * @param at when it was made, or frozen
 * @param software version of the software
 * @param version number of the frozen version; empty of the rows as they are now
 * @param changes what is otherwise than in the version before
 */
record Stamp(Instant at, String software, OptionalInt version, List<Change> changes) {
    Stamp telling(List<Change> told) {
        return new Stamp(at, software, version, told);
    }

    static Stamp now(Instant at, String software) {
        return new Stamp(at, software, OptionalInt.empty(), List.of());
    }
}
