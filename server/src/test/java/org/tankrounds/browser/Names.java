package org.tankrounds.browser;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the names in braces stand for, in routes and in what is typed. */
record Names(Map<String, String> values) {
    private static final Pattern NAME = Pattern.compile("\\{(\\w+)}");

    String fillIn(String text) {
        return NAME.matcher(text).replaceAll(found -> Matcher.quoteReplacement(values.get(found.group(1))));
    }
}
