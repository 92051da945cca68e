package org.tankrounds.breaks;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.tankrounds.behaviour.LookRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.LookDays;

/** Holds breaks against the looks that came. */
public final class BreakWatches {
    private final BreakRepository breaks;
    private final LookDays readings;
    private final LookRepository fish;

    public BreakWatches(BreakRepository breaks, LookDays readings, LookRepository fish) {
        this.breaks = breaks;
        this.readings = readings;
        this.fish = fish;
    }

    /** Of each tank, the break that runs or begins soon. */
    public Map<Integer, BreakWatch> next(DSLContext tx, int chapterId, Collection<Tank> tanks, Instant now) {
        Map<Integer, ZoneId> zones = tanks.stream().collect(Collectors.toMap(Tank::tankId, Tank::zone));
        // A school's today is at most a day from that of the universal clock.
        LocalDate about = now.atZone(ZoneOffset.UTC).toLocalDate();
        Map<Integer, SchoolBreak> planned = new HashMap<>(
                breaks.next(tx, chapterId, about.minusDays(1), about.plusDays(BreakWatch.AHEAD_DAYS + 1)));
        planned.keySet().retainAll(zones.keySet());
        if (planned.isEmpty()) {
            return Map.of();
        }
        Map<Integer, Set<Instant>> seen = looks(tx, chapterId, planned.keySet(), beginningOf(planned.values()), now);
        return planned.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, one -> watch(
                one.getValue(), seen.getOrDefault(one.getKey(), Set.of()), zones.get(one.getKey()), now)));
    }

    /** Of the first of several, wherever they are. */
    private static Instant beginningOf(Collection<SchoolBreak> planned) {
        LocalDate first = planned.stream().map(SchoolBreak::firstDay).min(LocalDate::compareTo).orElseThrow();
        return first.minusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant();
    }

    /** Of one tank, all that are not over. */
    public List<BreakWatch> list(DSLContext tx, int chapterId, Tank tank, Instant now) {
        LocalDate today = now.atZone(tank.zone()).toLocalDate();
        List<SchoolBreak> planned = breaks.list(tx, chapterId, tank.tankId(), today);
        if (planned.isEmpty()) {
            return List.of();
        }
        Instant from = planned.get(0).firstDay().atStartOfDay(tank.zone()).toInstant();
        Set<Instant> seen = from.isAfter(now) ? Set.of() : looks(tx, chapterId, List.of(tank.tankId()), from, now)
                .getOrDefault(tank.tankId(), Set.of());
        return planned.stream().map(one -> watch(one, seen, tank.zone(), now)).toList();
    }

    /** Whoever read the tank looked at it, and so did whoever said how the fish are. */
    private Map<Integer, Set<Instant>> looks(
            DSLContext tx, int chapterId, Collection<Integer> tankIds, Instant from, Instant until) {
        Map<Integer, Set<Instant>> all = new HashMap<>(readings.list(tx, chapterId, tankIds, from, until));
        fish.moments(tx, chapterId, tankIds, from, until).forEach((tankId, moments) ->
                all.merge(tankId, moments, (one, other) -> Stream.concat(one.stream(), other.stream())
                        .collect(Collectors.toUnmodifiableSet())));
        return all;
    }

    private static BreakWatch watch(SchoolBreak planned, Set<Instant> seen, ZoneId zone, Instant now) {
        return new BreakWatch(planned, seen.stream().map(moment -> moment.atZone(zone).toLocalDate())
                .collect(Collectors.toUnmodifiableSet()), now.atZone(zone).toLocalDate());
    }
}
