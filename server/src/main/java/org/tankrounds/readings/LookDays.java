package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.READINGS;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Records;
import org.jooq.impl.DSL;

/** When somebody stood before a tank and read it: readings of people, no device's. */
public final class LookDays {
    /** So far back a probe has shown itself by how often it reads. */
    private static final Duration BEFORE = Duration.ofDays(2);

    /** How often a label came in a day of the universal clock, which can be two of a school's; when first and last. */
    private record Labelled(int tankId, String label, Instant first, Instant last, int count) {}

    /** @return moments by tank; a tank that nobody looked at is missing */
    public Map<Integer, Set<Instant>> list(
            DSLContext tx, int chapterId, Collection<Integer> tankIds, Instant from, Instant until) {
        Map<Integer, Set<Instant>> looks = new HashMap<>();
        tx.select(READINGS.TANK_ID, READINGS.MEASURED_AT).from(READINGS)
                .where(of(chapterId, tankIds, from, until)).and(PeoplesReadings.certainly())
                .forEach(row -> add(looks, row.value1(), row.value2()));
        List<Labelled> labelled = labelled(tx, of(chapterId, tankIds, from.minus(BEFORE), until));
        labelled.stream().filter(one -> !isProbe(one, labelled)).forEach(one -> Stream.of(one.first(), one.last())
                .filter(at -> !at.isBefore(from)).forEach(at -> add(looks, one.tankId(), at)));
        return looks;
    }

    private static Condition of(int chapterId, Collection<Integer> tankIds, Instant from, Instant until) {
        return READINGS.CHAPTER_ID.eq(chapterId).and(READINGS.TANK_ID.in(tankIds))
                .and(READINGS.SUPERSEDED_AT.isNull()).and(READINGS.MEASURED_AT.between(from, until));
    }

    private static void add(Map<Integer, Set<Instant>> looks, int tankId, Instant at) {
        looks.computeIfAbsent(tankId, tank -> new HashSet<>()).add(at);
    }

    private static List<Labelled> labelled(DSLContext tx, Condition wanted) {
        return tx.select(READINGS.TANK_ID, READINGS.BY_LABEL, DSL.min(READINGS.MEASURED_AT),
                        DSL.max(READINGS.MEASURED_AT), DSL.count()).from(READINGS)
                .where(wanted).and(PeoplesReadings.perhaps())
                .groupBy(READINGS.TANK_ID, READINGS.BY_LABEL, DSL.field("timezone('UTC', measured_at)::date"))
                .fetch(Records.mapping(Labelled::new));
    }

    /** A label that comes so often in a day is a probe's, on other days too. */
    private static boolean isProbe(Labelled one, List<Labelled> all) {
        return all.stream().anyMatch(other -> other.tankId() == one.tankId() && other.label().equals(one.label())
                && other.count() >= DeviceDay.MANY);
    }
}
