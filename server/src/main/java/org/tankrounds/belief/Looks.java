package org.tankrounds.belief;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/** All that was observed of a tank by its moments, to find what comes again at a distance of time. */
final class Looks {

    private final NavigableMap<Instant, List<Observation>> byTime;

    Looks(List<Observation> observations) {
        byTime = observations.stream().collect(groupingBy(Observation::at, TreeMap::new, toList()));
    }

    /** Oldest first. */
    NavigableMap<Instant, List<Observation>> byTime() {
        return byTime;
    }

    List<Observation> at(Instant moment) {
        return byTime.getOrDefault(moment, List.of());
    }

    /** The same of the same so much later. */
    boolean isThere(Observation o, Duration later) {
        return at(o.at().plus(later)).stream()
                .anyMatch(other -> other.analyte() == o.analyte() && other.value() == o.value());
    }
}
