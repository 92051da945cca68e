package org.tankrounds.season;

import java.time.Instant;
import java.util.Optional;

/**
 * One line that somebody wrote down about the number of fish in a tank.
 *
 * @param entryId 0 of one that is not stored yet
 * @param toTankId the tank that moved fish went to
 * @param spread fish more or less that the count may be off, 95 %
 * @param place where fish that left went: a site, another keeper
 * @param approval number of the permit or approval by which they left
 * @param by who wrote it down; empty where unknown
 */
public record CountEntry(int entryId, CountKind kind, Instant at, int tankId, Optional<Integer> toTankId, int fish,
        CountMethod method, int spread, Optional<String> place, Optional<String> approval, Optional<String> note,
        Optional<String> by) {

    /** In which it was written down; what is about to be comes last. */
    int order() {
        return entryId == 0 ? Integer.MAX_VALUE : entryId;
    }

    /** Whether the same was written; when it was is the form's, and may be the moment of sending. */
    boolean saysAs(CountEntry other) {
        return kind == other.kind && fish == other.fish && toTankId.equals(other.toTankId) && method == other.method
                && spread == other.spread && place.equals(other.place) && approval.equals(other.approval)
                && note.equals(other.note);
    }

    boolean comesTo(int ofTankId) {
        return toTankId.filter(to -> to == ofTankId).isPresent();
    }
}
