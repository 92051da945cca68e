package org.tankrounds.season;

import java.util.List;
import java.util.stream.Collectors;
import org.tankrounds.web.Formats;

/** What stands in the count of a tank already, of the kind and day of what is about to be: it may be the same fish. */
public record SameDay(List<CountEntry> entries) {

    /** Goes along with the form, so that yes is said to these and to none that come after the question. */
    public String asked() {
        return entries.stream().map(one -> Integer.toString(one.entryId())).collect(Collectors.joining(","));
    }

    /** @param answered as the form brought it back */
    public boolean isSettledBy(String answered) {
        return entries.isEmpty() || asked().equals(answered);
    }

    /** "30 fish, Tue 13 Jan, 9:00, by Ada Fernwhistle; …" */
    public String wording(Formats formats) {
        return entries.stream().map(one -> formats.speech().say("count.again.entry", one.fish(),
                formats.full(one.at()), one.by().orElse(""))).collect(Collectors.joining("; "));
    }
}
