package org.tankrounds.readings;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.pages.LogPage.Step;
import org.tankrounds.pages.MonthPage;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.readings.MonthRepeats.Repeat;
import org.tankrounds.water.UnitForm;
import org.tankrounds.web.Formats;
import org.tankrounds.words.Saying;

/** What is asked about rows of a month that are in already. */
final class MonthRepeatsPart {
    private final Formats formats;

    MonthRepeatsPart(Formats formats) {
        this.formats = formats;
    }

    MonthPage.Repeats of(MonthRepeats repeats) {
        return new MonthPage.Repeats(repeats.all().stream().map(this::row).toList(), repeats.days(), List.of(
                choice(MonthRepeats.LEAVE_OUT, !repeats.keep()), choice(MonthRepeats.KEEP, repeats.keep())));
    }

    private Step choice(String answer, boolean chosen) {
        return new Step(MonthRepeats.CHOICE + "-" + answer, answer, say("paper.month.again." + answer), chosen);
    }

    private MonthPage.Repeated row(Repeat repeat) {
        String there = repeat.there().stream()
                .map(reading -> formats.clock(reading.measuredAt()) + ": " + told(reading))
                .collect(Collectors.joining("; "));
        return new MonthPage.Repeated(formats.weekdayAndDay(repeat.day()), there,
                repeat.same() ? say("paper.month.again.same") : told(repeat.typed()));
    }

    private String told(Reading reading) {
        return join(reading.values().stream(), reading.note().stream());
    }

    private String told(GivenReading typed) {
        return join(typed.values().stream().map(MonthRepeatsPart::entered), typed.note().stream());
    }

    private static EnteredValue entered(GivenValue value) {
        return new EnteredValue(value.analyte(), value.value(), new UnitForm(value.unit(), value.as().orElse("")),
                value.step(), value.below());
    }

    private String join(Stream<EnteredValue> values, Stream<String> note) {
        return Stream.concat(values.map(value -> say(Wording.inSentence(value.analyte())) + " "
                + say(Wording.value(value))), note.map(text -> say("paper.month.again.note", text)))
                .collect(Collectors.joining(", "));
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }

    private String say(Saying saying) {
        return formats.speech().say(saying);
    }
}
