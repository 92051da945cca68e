package org.tankrounds.words;

import java.util.EnumMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Everything that we say, in one language. A message is a whole sentence, with {0}, {1} and so on where something is
 * put in; an apostrophe is an apostrophe. Where its form depends on a number there are two messages, whose keys end in
 * {@code .one} and {@code .other}, and the first thing put in is the number.
 */
public final class Words {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}(\\.(?![.\\p{Alnum}]))?");
    private static final Pattern STRONG = Pattern.compile("\\*\\*(.+?)\\*\\*");
    private static final Pattern LINK = Pattern.compile("\\[([^]]+)]\\(([^)]+)\\)");
    private static final String ONE = ".one";
    private static final String OTHER = ".other";
    private static final Map<Language, Words> BY_LANGUAGE = read();

    private final Language language;
    private final SortedMap<String, String> messages;

    Words(Language language, Map<String, String> messages) {
        this.language = language;
        this.messages = new TreeMap<>(messages);
    }

    public static Words in(Language language) {
        return BY_LANGUAGE.get(language);
    }

    /** For scripts and machines. */
    public static Words english() {
        return in(Language.ENGLISH);
    }

    public Language language() {
        return language;
    }

    /** @param with text, whole numbers and sayings; a number with decimals has been written out before */
    public String say(String key, Object... with) {
        return filledIn(message(key, with), with, UnaryOperator.identity());
    }

    public String say(Saying saying) {
        return saying.key().isEmpty()
                ? text(saying.with().get(0)) : say(saying.key(), saying.with().toArray());
    }

    /**
     * The same as mark-up, for a sentence with a link or a strong word in it: the message writes them as
     * {@code [link](/address)} and {@code **strong**}. What is put in stays text.
     */
    public String html(String key, Object... with) {
        String marked = escaped(message(key, with));
        marked = STRONG.matcher(marked).replaceAll("<b>$1</b>");
        marked = LINK.matcher(marked).replaceAll("<a href=\"$2\">$1</a>");
        return filledIn(marked, with, Words::escaped);
    }

    /** Templates cannot call {@link #html(String, Object...)} with nothing to put in. */
    public String html(String key) {
        return html(key, new Object[0]);
    }

    /** All messages below a prefix as JSON, by the rest of their keys, for a script that says them. */
    public String below(String prefix) {
        return messages.tailMap(prefix).entrySet().stream()
                .takeWhile(message -> message.getKey().startsWith(prefix))
                .map(message -> quoted(message.getKey().substring(prefix.length())) + ":" + quoted(message.getValue()))
                .collect(Collectors.joining(",", "{", "}"));
    }

    private String message(String key, Object[] with) {
        String plain = messages.get(key);
        if (plain != null) {
            return plain;
        }
        boolean one = with.length > 0 && with[0] instanceof Number number && number.longValue() == 1;
        String counted = messages.get(key + (one ? ONE : OTHER));
        if (counted == null) {
            throw new IllegalArgumentException("no message is called " + key);
        }
        return counted;
    }

    private String filledIn(String message, Object[] with, UnaryOperator<String> written) {
        return PLACE.matcher(message).replaceAll(place -> {
            int number = Integer.parseInt(place.group(1));
            if (number >= with.length) {
                throw new IllegalArgumentException("nothing is given for {" + number + "} of: " + message);
            }
            return Matcher.quoteReplacement(ended(written.apply(text(with[number])), place.group(2)));
        });
    }

    /** What ends in an abbreviation, such as a month, ends a sentence with the same stop. */
    private static String ended(String text, String stop) {
        return stop == null || text.endsWith(stop) ? text : text + stop;
    }

    private String text(Object part) {
        if (part instanceof Saying saying) {
            return say(saying);
        }
        if (part instanceof Double || part instanceof Float) {
            throw new IllegalArgumentException("write the number out before it is put in: " + part);
        }
        return String.valueOf(part);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + "\"";
    }

    private static Map<Language, Words> read() {
        Map<Language, Words> words = new EnumMap<>(Language.class);
        Stream.of(Language.values())
                .forEach(language -> words.put(language, new Words(language, Bundles.read(language))));
        return words;
    }
}
