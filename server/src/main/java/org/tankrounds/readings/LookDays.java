package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.READINGS;

import java.time.Instant;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.DSLContext;

/** When somebody stood before a tank: readings that people put in, no device's. */
public final class LookDays {

    /** @return moments by tank; a tank that nobody looked at is missing */
    public Map<Integer, Set<Instant>> list(
            DSLContext tx, int chapterId, Collection<Integer> tankIds, Instant from, Instant until) {
        return tx.select(READINGS.TANK_ID, READINGS.MEASURED_AT)
                .from(READINGS)
                .where(READINGS.CHAPTER_ID.eq(chapterId))
                .and(READINGS.TANK_ID.in(tankIds))
                .and(READINGS.SUPERSEDED_AT.isNull())
                .and(READINGS.CHANNEL.in(Reading.CHANNEL_PAGE, Reading.CHANNEL_CARD))
                .and(READINGS.MEASURED_AT.between(from, until))
                .fetch().stream()
                .collect(Collectors.groupingBy(row -> row.value1(),
                        Collectors.mapping(row -> row.value2(), Collectors.toSet())));
    }
}
