package org.tankrounds.summary;

import java.util.List;
import java.util.stream.Stream;
import org.tankrounds.words.Words;

/** How the figures were made, in sentences; they stand below every printed summary. */
final class SummaryNotes {
    private SummaryNotes() {}

    static List<String> in(Words words) {
        return Stream.of("summary.note.eggs", "summary.note.deaths", "summary.note.survival", "summary.note.stages",
                "summary.note.stagesChance", "summary.note.days", "summary.note.spells",
                "summary.note.limits", "summary.note.lowest", "summary.note.doubtful",
                "summary.note.releases",
                "summary.note.looks", "summary.note.actions", "summary.note.streams")
                .map(key -> words.say(key)).toList();
    }
}
