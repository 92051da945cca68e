package org.tankrounds.readings;

import java.time.Instant;
import java.util.Optional;

/**
 * How often somebody looked at a tank.
 *
 * @param posted readings that hold
 * @param corrected how many of those are a later version of what was first given
 */
public record ReadingTally(int posted, int corrected, Optional<Instant> first, Optional<Instant> last) {
    public static final ReadingTally NONE = new ReadingTally(0, 0, Optional.empty(), Optional.empty());

    public ReadingTally plus(ReadingTally other) {
        return new ReadingTally(
                posted + other.posted,
                corrected + other.corrected,
                first.isPresent() && (other.first.isEmpty() || first.get().isBefore(other.first.get()))
                        ? first : other.first,
                last.isPresent() && (other.last.isEmpty() || last.get().isAfter(other.last.get()))
                        ? last : other.last);
    }
}
