package org.tankrounds.readings;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds in a note or a label what looks as if it told of a person. It is a guess: good enough to ask whether that was
 * meant, and never to refuse anything. Rather too little than too much, or nobody reads the question any more.
 */
public final class PersonalText {
    enum Sort { EMAIL, PHONE, NAME }

    record Find(Sort sort, String text) {}

    private static final int UNICODE = Pattern.UNICODE_CHARACTER_CLASS;
    private static final String NAME = "\\p{Lu}\\p{Ll}[\\p{L}'’-]{0,30}";

    private static final Pattern EMAIL = Pattern.compile(
            "[\\p{L}\\p{N}._%+-]{1,64}@[\\p{L}\\p{N}-]{1,63}(?:\\.[\\p{L}\\p{N}-]{1,63}){1,5}", UNICODE);
    /** As North America numbers it, or any with the sign for abroad; a date or a list of readings is neither. */
    private static final Pattern PHONE = Pattern.compile(
            "(?<![\\d.,])(?:1[ .-]?)?(?:\\([2-9]\\d{2}\\) ?|[2-9]\\d{2}[ .-]?)[2-9]\\d{2}[ .-]?\\d{4}(?![\\d.,]?\\d)"
            + "|\\+\\d{1,3}[ .-]?(?:\\(?\\d{1,5}\\)?[ .-]?){2,5}\\d{2,}"
            + "|(?i:\\b(?:call|phone|tel|text|cell|mobile)\\b\\.?:? ?)\\d{3}[ .-]?\\d{4}(?!\\d)");
    private static final Pattern TITLE_AND_NAME = Pattern.compile(
            "\\b(?:Mr|Mrs|Ms|Miss|Mx|Mister|Dr|Sr|Sra|Srta|Señor|Señora)\\b\\.? ?" + NAME, UNICODE);
    private static final Pattern BY_NAME =
            Pattern.compile("\\b(?i:by|por) (" + NAME + ")\\b(?: " + NAME + "\\b)?", UNICODE);
    private static final Pattern TWO_NAMES =
            Pattern.compile("\\b(?=(" + NAME + ") (" + NAME + "|\\p{Lu})(?![\\p{L}'’-]))", UNICODE);

    private static final Pattern CAPITAL = Pattern.compile("\\b" + NAME + "(?![\\p{L}'’-])", UNICODE);
    private static final Pattern GOES_ON_SMALL = Pattern.compile("\\s+\\p{Ll}.*", UNICODE);

    private static final Set<String> NO_NAMES = read();

    private PersonalText() {}

    /** Whether it holds an e-mail address or a phone number. */
    public static boolean tellsHowToReach(String text) {
        return in(text).stream().anyMatch(find -> find.sort() != Sort.NAME);
    }

    /** Names in a note. */
    public static List<String> names(String text) {
        return in(text).stream().filter(find -> find.sort() == Sort.NAME).map(Find::text).toList();
    }

    /**
     * Names in a few words that say who does something. There a word with a capital is likelier somebody's name than in
     * a note, unless it only begins what is said.
     */
    public static List<String> namesOfWho(String text) {
        List<Find> finds = new ArrayList<>(in(text).stream().filter(find -> find.sort() == Sort.NAME).toList());
        add(finds, Sort.NAME, CAPITAL, text, found -> mayBeName(found.group())
                && (found.start() > 0 || !GOES_ON_SMALL.matcher(text.substring(found.end())).matches()));
        return finds.stream().map(Find::text).toList();
    }

    /** Whether all of it is words that are known for no names, so that it tells of a duty and of nobody. */
    public static boolean isDuty(String text) {
        return !tellsHowToReach(text) && Arrays.stream(text.split("[^\\p{L}'’-]+")).filter(word -> word.length() > 1)
                .noneMatch(PersonalText::mayBeName);
    }

    /** In the order in which they are looked for, each once. */
    static List<Find> in(String text) {
        List<Find> finds = new ArrayList<>();
        add(finds, Sort.EMAIL, EMAIL, text, found -> true);
        add(finds, Sort.PHONE, PHONE, text, found -> true);
        add(finds, Sort.NAME, TITLE_AND_NAME, text, found -> true);
        add(finds, Sort.NAME, BY_NAME, text, found -> mayBeName(found.group(1)));
        TWO_NAMES.matcher(text).results()
                .filter(found -> mayBeName(found.group(1)) && mayBeName(found.group(2)))
                .forEach(found -> add(finds, Sort.NAME, found.group(1) + " " + found.group(2)));
        return List.copyOf(finds);
    }

    private static void add(List<Find> finds, Sort sort, Pattern pattern, String text,
            Predicate<MatchResult> wanted) {
        pattern.matcher(text).results().filter(wanted).forEach(found -> add(finds, sort, found.group()));
    }

    /** What is part of a longer find needs no second mention. */
    private static void add(List<Find> finds, Sort sort, String text) {
        if (finds.stream().noneMatch(find -> find.text().contains(text))) {
            finds.add(new Find(sort, text.strip()));
        }
    }

    private static boolean mayBeName(String word) {
        String small = word.toLowerCase(Locale.ROOT);
        return !NO_NAMES.contains(small) && !NO_NAMES.contains(small.replaceFirst("('s|’s|es|s)$", ""));
    }

    private static Set<String> read() {
        try (InputStream in = PersonalText.class.getResourceAsStream("/readings/no-names.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> !line.startsWith("#"))
                    .flatMap(line -> Arrays.stream(line.split(" ")))
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException e) {
            throw new IllegalStateException("cannot read the list of words that are no names", e);
        }
    }
}
