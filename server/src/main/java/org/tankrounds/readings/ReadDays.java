package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.READINGS;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Records;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.tankrounds.places.Tank;

/** The days of a month that have readings, and whose they are. */
final class ReadDays {

    /**
     * @param readings that somebody put in
     * @param first when the first of them was taken; null where there is none
     * @param byDevice how many a probe or a logger read
     */
    record Looks(int readings, Instant first, int byDevice) {
        Looks with(Looks others) {
            boolean earlier = first == null || others.first != null && others.first.isBefore(first);
            return new Looks(readings + others.readings, earlier ? others.first : first, byDevice + others.byDevice);
        }
    }

    /** Readings of one day, of one sort and under one label. */
    private record Counted(LocalDate day, String whose, String label, int count, Instant first) {}

    private static final String PEOPLE = "people";
    private static final String LABEL = "label";

    Map<LocalDate, Looks> find(DSLContext tx, int chapterId, Tank tank, YearMonth month) {
        Field<LocalDate> day = DSL.field(
                "timezone({0}, measured_at)::date", LocalDate.class, DSL.val(tank.zone().getId())).as("day");
        Field<String> whose = DSL.when(PeoplesReadings.certainly(), PEOPLE)
                .when(PeoplesReadings.perhaps(), LABEL).otherwise("").as("whose");
        Table<?> each = tx.select(day, whose, READINGS.BY_LABEL, READINGS.MEASURED_AT).from(READINGS)
                .where(READINGS.CHAPTER_ID.eq(chapterId)).and(READINGS.TANK_ID.eq(tank.tankId()))
                .and(READINGS.SUPERSEDED_AT.isNull())
                .and(READINGS.MEASURED_AT.ge(start(month, tank)))
                .and(READINGS.MEASURED_AT.lt(start(month.plusMonths(1), tank)))
                .asTable("each");
        List<Counted> counted = tx.select(each.field(day), each.field(whose), each.field(READINGS.BY_LABEL),
                        DSL.count(), DSL.min(each.field(READINGS.MEASURED_AT)))
                .from(each).groupBy(each.field(day), each.field(whose), each.field(READINGS.BY_LABEL))
                .fetch(Records.mapping(Counted::new));
        Map<LocalDate, Looks> days = new HashMap<>();
        counted.forEach(one -> days.merge(one.day(), looks(one, counted), Looks::with));
        return days;
    }

    /** A label that comes so often in a day is a probe's, on other days too. */
    private static Looks looks(Counted one, List<Counted> all) {
        boolean isSomebody = one.whose().equals(PEOPLE) || one.whose().equals(LABEL) && all.stream().noneMatch(other ->
                other.whose().equals(LABEL) && other.label().equals(one.label()) && other.count() >= DeviceDay.MANY);
        return isSomebody ? new Looks(one.count(), one.first(), 0) : new Looks(0, null, one.count());
    }

    private static Instant start(YearMonth month, Tank tank) {
        return month.atDay(1).atStartOfDay(tank.zone()).toInstant();
    }
}
