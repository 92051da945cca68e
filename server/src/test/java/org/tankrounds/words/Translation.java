package org.tankrounds.words;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** What stands on a page in one language where another says something, for tests that go through both. */
public final class Translation {
    private static final Map<String, String> ENGLISH = Bundles.read(Language.ENGLISH);

    private Translation() {}

    /**
     * Every message that may stand where an English page says this; itself where no message says it, such as a
     * name or a number.
     */
    public static List<String> of(String english, Language language) {
        return of(english, english::equals, language);
    }

    /** The same where the page says this and may go on. */
    public static List<String> ofBeginning(String english, Language language) {
        return of(english, message -> message.startsWith(english), language);
    }

    private static List<String> of(String itself, Predicate<String> english, Language language) {
        Map<String, String> messages = Bundles.read(language);
        List<String> found = ENGLISH.keySet().stream().filter(key -> english.test(ENGLISH.get(key)))
                .map(messages::get).distinct().toList();
        return found.isEmpty() ? List.of(itself) : found;
    }
}
