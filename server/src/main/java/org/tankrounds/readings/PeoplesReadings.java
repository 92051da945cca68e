package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.READINGS;

import java.util.Arrays;
import java.util.Set;
import org.jooq.Condition;
import org.jooq.JSONB;
import org.jooq.impl.DSL;
import org.tankrounds.water.Analyte;

/** Which readings somebody took who stood before the tank, as far as they tell. */
final class PeoplesReadings {
    /** What devices read; anything else somebody read off a card, counted or gave. */
    private static final Set<Analyte> BY_SENSOR = Set.of(Analyte.TEMPERATURE, Analyte.PH, Analyte.DISSOLVED_OXYGEN);

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
        return DSL.or(Arrays.stream(Analyte.values()).filter(analyte -> !BY_SENSOR.contains(analyte))
                .map(analyte -> READINGS.ENTERED.contains(
                        JSONB.valueOf("[{\"analyte\": \"" + analyte.code() + "\"}]"))).toList());
    }
}
