package org.tankrounds.readings;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/**
 * What was sent, as far as it could be read; not judged yet.
 *
 * @param measuredAt empty where it was missing or unreadable, which is already among the faults
 * @param timeFlags what is to be said about the time because of the clock that it comes from
 * @param by empty where none was given
 * @param note empty where none was given
 */
record GivenReading(
        Optional<Instant> measuredAt, List<String> timeFlags, Optional<String> by, Optional<String> note,
        List<GivenValue> values) {

    GivenReading(Optional<Instant> measuredAt, Optional<String> by, Optional<String> note, List<GivenValue> values) {
        this(measuredAt, List.of(), by, note, values);
    }

    /**
     * @param at JSON pointer, or the form's field
     * @param as empty where the writer left it out
     * @param byCard where no step is given, the kit's card says it; a meter's number has none
     */
    record GivenValue(
            String at, Analyte analyte, BigDecimal value, String unit, Optional<String> as,
            Optional<BigDecimal> step, boolean below, boolean byCard) {}

    GivenReading at(Instant time) {
        return new GivenReading(Optional.of(time), by, note, values);
    }

    GivenReading taken(DeviceClock.Taken taken) {
        return new GivenReading(Optional.of(taken.at()), taken.flags(), by, note, values);
    }

    /** What a form does not show of a value stays as it was, as long as the value itself does. */
    GivenReading carryingOver(Reading before) {
        return new GivenReading(measuredAt, by, note, values.stream().map(value -> carriedOver(value, before))
                .toList());
    }

    private static GivenValue carriedOver(GivenValue value, Reading before) {
        return before.values().stream()
                .filter(old -> old.analyte() == value.analyte() && old.value().compareTo(value.value()) == 0)
                .filter(old -> old.form().equals(new UnitForm(value.unit(), value.as().orElse(""))))
                .findFirst()
                .map(old -> new GivenValue(value.at(), value.analyte(), old.value(), value.unit(), value.as(),
                        old.step(), old.below(), value.byCard()))
                .orElse(value);
    }
}
