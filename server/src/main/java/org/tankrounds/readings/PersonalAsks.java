package org.tankrounds.readings;

import java.util.List;
import java.util.stream.Collectors;
import org.tankrounds.pages.AskBack;
import org.tankrounds.readings.PersonalText.Find;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** Asks back, once, about words that look as if they told of a person. Nothing is refused for them. */
final class PersonalAsks {
    /** Fields of text. */
    private static final List<String> FIELDS = List.of(LogForm.BY, LogForm.NOTE, ReadingPageMaker.REASON);

    private PersonalAsks() {}

    static List<AskBack> of(LogForm form, Speech speech) {
        return of(FIELDS, form, speech);
    }

    /** Of some of its fields, where the others are not kept. */
    static List<AskBack> of(List<String> fields, LogForm form, Speech speech) {
        return fields.stream()
                .filter(field -> !PersonalText.in(form.text(field)).isEmpty() && !answered(form, field))
                .map(field -> ask(field, PersonalText.in(form.text(field)), speech))
                .toList();
    }

    /** Fields of which the writer said that they stay, as long as they hold what was asked about. */
    static List<String> answered(LogForm form) {
        return FIELDS.stream().filter(field -> answered(form, field)).toList();
    }

    /** What stands there already was asked about when it was written. */
    static LogForm settled(LogForm form) {
        LogForm settled = form;
        for (String field : FIELDS) {
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

    private static AskBack ask(String field, List<Find> finds, Speech speech) {
        String name = LogForm.SURE + field;
        String found = finds.stream().map(find -> speech.say(found(find))).collect(Collectors.joining("; "));
        return new AskBack(name, speech.say("log.personal.in." + field, found),
                List.of(new AskBack.Choice(name + "-yes", answer(finds), speech.say("log.personal.keep"))));
    }

    private static Saying found(Find find) {
        return Saying.of(switch (find.sort()) {
            case EMAIL -> "log.personal.email";
            case PHONE -> "log.personal.phone";
            case NAME -> "log.personal.name";
        }, find.text());
    }
}
