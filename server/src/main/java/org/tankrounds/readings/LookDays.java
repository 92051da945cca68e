package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.READINGS;

import java.time.Instant;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record2;
import org.jooq.Select;
import org.jooq.impl.DSL;

/** When somebody stood before a tank and read it: readings of people, no device's. */
public final class LookDays {

    /** @return moments by tank; a tank that nobody looked at is missing */
    public Map<Integer, Set<Instant>> list(
            DSLContext tx, int chapterId, Collection<Integer> tankIds, Instant from, Instant until) {
        Condition wanted = READINGS.CHAPTER_ID.eq(chapterId).and(READINGS.TANK_ID.in(tankIds))
                .and(READINGS.SUPERSEDED_AT.isNull()).and(READINGS.MEASURED_AT.between(from, until));
        return tx.select(READINGS.TANK_ID, READINGS.MEASURED_AT)
                .from(READINGS)
                .where(wanted).and(PeoplesReadings.certainly())
                .unionAll(seldom(tx, wanted))
                .fetch().stream()
                .collect(Collectors.groupingBy(row -> row.value1(),
                        Collectors.mapping(row -> row.value2(), Collectors.toSet())));
    }

    /** Under a label that comes so often in a day, a probe reads. */
    private static Select<Record2<Integer, Instant>> seldom(DSLContext tx, Condition wanted) {
        return tx.select(READINGS.TANK_ID, DSL.min(READINGS.MEASURED_AT))
                .from(READINGS)
                .where(wanted).and(PeoplesReadings.perhaps())
                .groupBy(READINGS.TANK_ID, READINGS.BY_LABEL, DSL.field("measured_at::date"))
                .having(DSL.count().lt(DeviceDay.MANY));
    }
}
