package org.tankrounds.release;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.stream.StreamGroup;
import org.tankrounds.stream.StreamSample;
import org.tankrounds.water.OxygenSaturation;

/**
 * One look at a stream.
 *
 * @param checkId 0 of one that is not stored yet
 * @param counts of the groups that were found
 * @param by who wrote it down; empty where not stored yet
 */
public record StreamCheck(int checkId, int siteId, Instant at, OptionalDouble temperatureC, OptionalDouble ph,
        OptionalDouble oxygenMgPerL, Map<StreamGroup, Integer> counts, Optional<String> note, Optional<String> by) {

    public StreamSample sample() {
        return new StreamSample(counts);
    }

    /** % of what water of that temperature holds at the site; empty where one was not read. */
    public OptionalDouble saturationPercent(Site site) {
        return temperatureC.isEmpty() || oxygenMgPerL.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(100 * oxygenMgPerL.getAsDouble() / OxygenSaturation.mgPerL(
                        temperatureC.getAsDouble(), site.details().elevationM().orElse(0)));
    }

    /** Whether the same was written; when it was is the form's, and may be the moment of sending. */
    boolean saysAs(StreamCheck other) {
        return temperatureC.equals(other.temperatureC) && ph.equals(other.ph) && oxygenMgPerL.equals(other.oxygenMgPerL)
                && counts.equals(other.counts) && note.equals(other.note);
    }

    public String address() {
        return "/release/sites/" + siteId + "/checks/" + checkId;
    }
}
