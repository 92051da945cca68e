package org.tankrounds.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Sentences stand in messages, and nowhere else; what is written in English for good is what scripts and operators
 * read.
 */
class SentencesTest {
    private static final Pattern WORDS = Pattern.compile("\\p{L}{2,}[,:;]? \\p{L}+|\\p{L}{2,}: ?$| \\p{L}{3,} ");
    private static final Pattern STRING = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern NO_CODE = Pattern.compile("(?s:/\\*.*?\\*/)|(?m:(?<!:)//.*$)"
            + "|(?:querySelector|querySelectorAll|closest|Error)\\(\"[^\"]*\"|className = \"[^\"]*\"");
    /** Statements for whoever reads a log, a stack trace or a database. */
    private static final Pattern NOT_SHOWN = Pattern.compile(
            "LOG\\.|(?:State|Argument|IO)Exception\\(|description\\(|CONTENT_SECURITY_POLICY|SELECT |INSERT INTO");
    private static final Pattern FOR_MACHINES = Pattern.compile(
            "^\"(?:use strict|<!DOCTYPE|yyyy-MM-dd |\\w+/\\w+; |attachment; |private, |public, |Accept-)");

    @Test
    void templates_holdNoSentences() {
        assertThat(left(Sources.templates(), MarkupText::shown)).isEmpty();
    }

    /**
     * Whatever is put into those is escaped, as the test of Words shows; anything else printed so could carry a script.
     */
    @Test
    void markup_comesFromMessagesOnly() {
        Pattern other = Pattern.compile("th:utext=\"(?!\\$\\{words\\.html\\(')[^\"]*\"");
        assertThat(Sources.templates()).allSatisfy(
                file -> assertThat(Sources.read(file)).doesNotContainPattern(other));
    }

    @Test
    void code_holdsNoSentences() {
        Set<String> left = left(Sources.java(), SentencesTest::inCode);
        left.removeIf(EnglishForGood::covers);
        assertThat(left).isEmpty();
    }

    @Test
    void scripts_holdNoSentences() {
        assertThat(left(Sources.scripts(), SentencesTest::inCode)).isEmpty();
    }

    private static Set<String> left(List<Path> files, Function<String, List<String>> sentences) {
        Map<String, List<String>> left = new TreeMap<>();
        files.forEach(file -> left.put(Sources.name(file), sentences.apply(Sources.read(file))));
        left.values().removeIf(List::isEmpty);
        if (Boolean.getBoolean("sentences")) {
            left.forEach((file, found) -> System.out.println(file + " " + found));
        }
        return new TreeSet<>(left.keySet());
    }

    private static List<String> inCode(String text) {
        List<String> found = new ArrayList<>();
        for (String statement : NO_CODE.matcher(text).replaceAll("").split(";\n|\\{\n")) {
            if (!NOT_SHOWN.matcher(statement).find()) {
                STRING.matcher(statement).results().map(MatchResult::group)
                        .filter(string -> WORDS.matcher(string).find() && !FOR_MACHINES.matcher(string).find())
                        .forEach(found::add);
            }
        }
        return found;
    }
}
