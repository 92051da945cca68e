package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.READINGS;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.Map;
import org.jooq.DSLContext;
import org.jooq.Field;
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
        static final Looks NONE = new Looks(0, null, 0);

        Looks with(int more, Instant from) {
            return new Looks(readings + more, first == null || from.isBefore(first) ? from : first, byDevice);
        }

        Looks withDevice(int more) {
            return new Looks(readings, first, byDevice + more);
        }
    }

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
        Map<LocalDate, Looks> days = new HashMap<>();
        tx.select(each.field(day), each.field(whose), DSL.count(), DSL.min(each.field(READINGS.MEASURED_AT)))
                .from(each).groupBy(each.field(day), each.field(whose), each.field(READINGS.BY_LABEL))
                .forEach(row -> days.compute(row.value1(), (when, looks) -> with(looks == null ? Looks.NONE : looks,
                        row.value2(), row.value3(), row.value4())));
        return days;
    }

    /** Under a label that comes so often in a day, a probe reads. */
    private static Looks with(Looks looks, String whose, int count, Instant first) {
        boolean isSomebody = whose.equals(PEOPLE) || whose.equals(LABEL) && count < DeviceDay.MANY;
        return isSomebody ? looks.with(count, first) : looks.withDevice(count);
    }

    private static Instant start(YearMonth month, Tank tank) {
        return month.atDay(1).atStartOfDay(tank.zone()).toInstant();
    }
}
