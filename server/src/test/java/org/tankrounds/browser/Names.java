package org.tankrounds.browser;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.tankrounds.words.Language;
import org.tankrounds.words.Translation;

/**
 * What the names in braces stand for, in routes and in what is typed, and what boxes and buttons are called.
 *
 * @param language of the pages; steps name everything in English
 */
record Names(Map<String, String> values, Language language) {
    private static final Pattern NAME = Pattern.compile("\\{(\\w+)}");

    String fillIn(String text) {
        return NAME.matcher(text).replaceAll(found -> Matcher.quoteReplacement(values.get(found.group(1))));
    }

    /** Somewhere in a label or on a button. */
    Pattern part(String english) {
        List<String> said = Translation.ofBeginning(fillIn(english), language);
        return Pattern.compile(oneOf(said), Pattern.CASE_INSENSITIVE);
    }

    Pattern whole(String english) {
        return Pattern.compile("^\\s*(?:" + oneOf(Translation.of(english, language)) + ")\\s*$");
    }

    /** As the browser's own expressions have it, which know no quoted parts; anything may have been put in. */
    private static String oneOf(List<String> messages) {
        return messages.stream()
                .map(message -> message.replaceAll("[\\\\.*+?^$()|\\[\\]/]", "\\\\$0").replaceAll("\\{\\d}", ".*"))
                .collect(Collectors.joining("|"));
    }
}
