package org.tankrounds.season;

import java.time.Instant;
import java.util.Optional;
import org.tankrounds.fish.Stage;

/**
 * One line that somebody wrote down about the number of fish in a tank.
 *
 * @param entryId 0 of one that is not stored yet
 * @param toTankId the tank that moved fish went to
 * @param spread fish more or less that the count may be off, 95 %
 * @param place where fish that left went: a site, another keeper
 * @param approval number of the permit or approval by which they left
 * @param by who wrote it down; empty where unknown
 * @param movedAs how far moved ones had come; empty of all else, and of moves of which nobody said so
 */
public record CountEntry(int entryId, CountKind kind, Instant at, int tankId, Optional<Integer> toTankId, int fish,
        CountMethod method, int spread, Optional<String> place, Optional<String> approval, Optional<String> note,
        Optional<String> by, Optional<MovedAs> movedAs) {

    public CountEntry(int entryId, CountKind kind, Instant at, int tankId, Optional<Integer> toTankId, int fish,
            CountMethod method, int spread, Optional<String> place, Optional<String> approval, Optional<String> note,
            Optional<String> by) {
        this(entryId, kind, at, tankId, toTankId, fish, method, spread, place, approval, note, by, Optional.empty());
    }

    CountEntry as(MovedAs moved) {
        return new CountEntry(entryId, kind, at, tankId, toTankId, fish, method, spread, place, approval, note, by,
                Optional.of(moved));
    }

    /** Of what was moved, as somebody said or as the count found. */
    public Optional<Stage> stage() {
        return movedAs.map(MovedAs::stage);
    }

    /** In which it was written down; what is about to be comes last. */
    int order() {
        return entryId == 0 ? Integer.MAX_VALUE : entryId;
    }

    /**
     * Whether the same was written; when it was is the form's, and may be the moment of sending.
     *
     * @param other as a form says it: where it leaves the stage open, the count has found one since
     */
    boolean saysAs(CountEntry other) {
        return kind == other.kind && fish == other.fish && toTankId.equals(other.toTankId) && method == other.method
                && spread == other.spread && place.equals(other.place) && approval.equals(other.approval)
                && note.equals(other.note) && (other.movedAs.isEmpty() || stage().equals(other.stage()));
    }

    boolean comesTo(int ofTankId) {
        return toTankId.filter(to -> to == ofTankId).isPresent();
    }
}
