package org.tankrounds.readings;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;
import org.tankrounds.readings.DeviceValues.Said;
import org.tankrounds.readings.GivenReading.GivenValue;

/** Tells what of a device's readings is new, what is stored already, and what contradicts it. */
final class DeviceSorting {

    /**
     * What a device said, at one time.
     *
     * @param exact false where the time is only that of its coming
     */
    record Look(Instant at, List<GivenValue> values, boolean exact) {}

    /** @param stored what is held for the same time */
    record Conflict(Instant at, GivenValue given, EnteredValue stored) {}

    /**
     * @param fresh to be stored
     * @param repeated how many values are there already
     * @param replaced codes of readings whose place is to be taken
     */
    record Sorted(List<GivenReading> fresh, int repeated, List<Conflict> conflicts, Set<String> replaced) {}

    /** A device that tells no time and is not heard sends again within the minute. */
    private static final Duration SENT_AGAIN = Duration.ofSeconds(60);

    private final DeviceValues known;
    private final boolean replacing;
    private final List<GivenReading> fresh = new ArrayList<>();
    private final List<Conflict> conflicts = new ArrayList<>();
    private final Set<String> replaced = new LinkedHashSet<>();
    private int repeated;

    private DeviceSorting(DeviceValues known, boolean replacing) {
        this.known = known;
        this.replacing = replacing;
    }

    /** @param replacing whether what contradicts takes the place of what is stored */
    static Sorted sort(DSLContext tx, int chapterId, int tankId, List<Look> looks, boolean replacing) {
        if (looks.isEmpty()) {
            return new Sorted(List.of(), 0, List.of(), Set.of());
        }
        Instant first = looks.stream().map(Look::at).min(Instant::compareTo).orElseThrow();
        Instant last = looks.stream().map(Look::at).max(Instant::compareTo).orElseThrow();
        DeviceValues known = DeviceValues.find(
                tx, chapterId, tankId, first.minus(SENT_AGAIN), last.plus(SENT_AGAIN));
        DeviceSorting sorting = new DeviceSorting(known, replacing);
        looks.forEach(sorting::look);
        return new Sorted(List.copyOf(sorting.fresh), sorting.repeated, List.copyOf(sorting.conflicts),
                Set.copyOf(sorting.replaced));
    }

    private void look(Look look) {
        List<GivenValue> values = new ArrayList<>();
        List<Conflict> here = new ArrayList<>();
        for (GivenValue value : look.values()) {
            List<Said> said = known.at(look.at(), value);
            if (said.stream().anyMatch(one -> DeviceValues.isSame(one.value(), value))
                    || !look.exact() && known.isNear(look.at(), SENT_AGAIN, value)) {
                repeated++;
            } else {
                said.stream().filter(one -> !one.takenBack()).findFirst().ifPresentOrElse(
                        one -> here.add(new Conflict(look.at(), value, one.value())), () -> values.add(value));
            }
        }
        conflicts.addAll(here);
        List<GivenValue> taken = replacing && !here.isEmpty() ? takingPlace(look) : values;
        if (!taken.isEmpty()) {
            fresh.add(new GivenReading(Optional.of(look.at()), Optional.empty(), Optional.empty(), taken));
        }
    }

    /** The whole look in the place of all that was said at the time; what only the old ones have goes on to hold. */
    private List<GivenValue> takingPlace(Look look) {
        Map<String, GivenValue> all = new LinkedHashMap<>();
        for (Said said : known.allAt(look.at()).stream().filter(one -> !one.takenBack()).toList()) {
            replaced.add(said.code());
            all.put(said.value().analyte().code(), DeviceValues.given(said.value()));
        }
        look.values().forEach(value -> all.put(value.analyte().code(), value));
        return List.copyOf(all.values());
    }
}
