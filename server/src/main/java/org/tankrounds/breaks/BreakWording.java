package org.tankrounds.breaks;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.tankrounds.web.Formats;

/** What there is to say of a break, in sentences. */
public final class BreakWording {
    private static final int NAMED_DAYS = 3;

    private final Formats formats;

    public BreakWording(Formats formats) {
        this.formats = formats;
    }

    /** Who did not come or is to come, and which days nobody has taken; empty where nobody needs to know anything. */
    public String line(BreakWatch watch) {
        if (!watch.isTold()) {
            return "";
        }
        List<LocalDate> open = watch.open();
        return open.isEmpty() ? first(watch) : say("breaks.line.both", first(watch), say("breaks.open", days(open)));
    }

    /** The answer on the page of a tank's breaks. */
    String heading(List<BreakWatch> watches) {
        if (watches.isEmpty()) {
            return say("breaks.heading.none");
        }
        BreakWatch watch = watches.get(0);
        String name = watch.schoolBreak().name();
        if (watch.missed().isPresent()) {
            return say("breaks.heading.missed", name, day(watch.missed().get()));
        }
        int open = watch.open().size();
        return open == 0 ? say("breaks.heading.full", name) : say("breaks.heading.open", open, name);
    }

    /** "19 December to 3 January, 16 days" */
    String span(SchoolBreak planned) {
        return say("breaks.span", day(planned.firstDay()), day(planned.lastDay()),
                say("breaks.days", planned.days().size()));
    }

    String day(LocalDate day) {
        return formats.weekdayAndDate(day);
    }

    private String first(BreakWatch watch) {
        SchoolBreak planned = watch.schoolBreak();
        if (watch.missed().isPresent()) {
            LocalDate missed = watch.missed().get();
            return say("breaks.line.missed", planned.name(), day(missed), planned.looker(missed).orElse(""));
        }
        if (!watch.isOn()) {
            return say("breaks.line.begins", planned.name(), day(planned.firstDay()));
        }
        return watch.awaitedToday()
                .map(looker -> say("breaks.line.today", planned.name(), day(planned.lastDay()), looker))
                .orElseGet(() -> say("breaks.line.on", planned.name(), day(planned.lastDay())));
    }

    private String days(List<LocalDate> days) {
        String named = days.stream().limit(NAMED_DAYS).map(this::day).collect(Collectors.joining(", "));
        int more = days.size() - NAMED_DAYS;
        return more > 0 ? say("breaks.andMore", named, say("breaks.days", more)) : named;
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
