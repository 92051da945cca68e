package org.tankrounds.readings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tankrounds.pages.AskBack;
import org.tankrounds.readings.PersonalText.Find;

/** Asks back, once, about words that look as if they told of a person. Nothing is refused for them. */
final class PersonalAsks {
    /** Fields of text, and how a question calls them. */
    private static final Map<String, String> FIELDS = fields();

    private PersonalAsks() {}

    static List<AskBack> of(LogForm form) {
        return FIELDS.keySet().stream()
                .filter(field -> !PersonalText.in(form.text(field)).isEmpty() && !answered(form, field))
                .map(field -> ask(field, PersonalText.in(form.text(field))))
                .toList();
    }

    /** Fields of which the writer said that they stay, as long as they hold what was asked about. */
    static List<String> answered(LogForm form) {
        return FIELDS.keySet().stream().filter(field -> answered(form, field)).toList();
    }

    /** What stands there already was asked about when it was written. */
    static LogForm settled(LogForm form) {
        LogForm settled = form;
        for (String field : FIELDS.keySet()) {
            List<Find> finds = PersonalText.in(form.text(field));
            settled = finds.isEmpty() ? settled : settled.with(LogForm.SURE + field, answer(finds));
        }
        return settled;
    }

    private static boolean answered(LogForm form, String field) {
        List<Find> finds = PersonalText.in(form.text(field));
        return !finds.isEmpty() && form.text(LogForm.SURE + field).equals(answer(finds));
    }

    private static String answer(List<Find> finds) {
        return LogForm.answerYes(finds.stream().map(Find::text).collect(Collectors.joining(", ")));
    }

    private static AskBack ask(String field, List<Find> finds) {
        String name = LogForm.SURE + field;
        String found = finds.stream().map(find -> find.sort() + ", “" + find.text() + "”")
                .collect(Collectors.joining("; "));
        return new AskBack(name, FIELDS.get(field) + " holds what looks like " + found + ". Others read it, and it is"
                + " kept for years: better leave out who it was.",
                List.of(new AskBack.Choice(name + "-yes", answer(finds), "Keep it as it is")));
    }

    private static Map<String, String> fields() {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put(LogForm.BY, "The class or period");
        fields.put(LogForm.NOTE, "The note");
        fields.put(ReadingPageMaker.REASON, "The reason");
        return fields;
    }
}
