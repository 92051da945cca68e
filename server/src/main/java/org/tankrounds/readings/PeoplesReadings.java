package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.READINGS;

import java.util.List;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.impl.DSL;
import org.tankrounds.water.Analyte;

/** Which readings somebody took who stood before the tank, as far as they tell. */
final class PeoplesReadings {
    /** What devices read; anything else somebody read off a card, counted or gave. */
    private static final List<Analyte> BY_SENSOR = List.of(Analyte.TEMPERATURE, Analyte.PH, Analyte.DISSOLVED_OXYGEN);

    private PeoplesReadings() {}

    /** Put in on a page; or by a script, with a note or with what no device reads. */
    static Condition certainly() {
        return READINGS.CHANNEL.in(Reading.CHANNEL_PAGE, Reading.CHANNEL_CARD)
                .or(byScript().and(READINGS.NOTE.isNotNull().or(holdsWhatNoDeviceReads())));
    }

    /** By a script, with somebody's label alone, which probes have too. */
    static Condition perhaps() {
        return byScript().and(READINGS.NOTE.isNull()).and(READINGS.BY_LABEL.isNotNull())
                .and(DSL.not(holdsWhatNoDeviceReads()));
    }

    private static Condition byScript() {
        return READINGS.CHANNEL.in(Reading.CHANNEL_API, Reading.CHANNEL_BATCH);
    }

    private static Condition holdsWhatNoDeviceReads() {
        String others = BY_SENSOR.stream().map(analyte -> "@ != \"" + analyte.code() + "\"")
                .collect(Collectors.joining(" && ", "$[*].analyte ? (", ")"));
        return DSL.condition("jsonb_path_exists({0}, {1}::jsonpath)", READINGS.ENTERED, DSL.inline(others));
    }
}
