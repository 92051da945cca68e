package org.tankrounds.words;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/**
 * Keys of messages that templates, code and scripts name. One that ends with a dot stands for every key that begins so;
 * that is how code names a key whose end it has from somewhere else.
 */
final class UsedKeys {
    private static final Pattern IN_EXPRESSION = Pattern.compile("#\\{([A-Za-z][\\w.]*)");
    private static final Pattern QUOTED = Pattern.compile("[\"']([a-z]+\\.[\\w.]*)[\"']");
    private static final Pattern SCRIPT_WITH_WORDS =
            Pattern.compile(
                    "asset\\('([\\w-]+\\.js)'\\)\\}\"\\s+th:attr=\"data-words=\\$\\{words\\.below\\('([\\w.]+)'\\)");
    private static final Pattern SAID_BY_SCRIPT = Pattern.compile("\\bsay\\(\"(\\w+)\"");

    private final Set<String> areas;
    /** Where each stands, by key. */
    private final Map<String, String> keys = new TreeMap<>();
    /** Prefix of the messages that a script gets, by script. */
    private final Map<String, String> prefixes = new TreeMap<>();

    private UsedKeys(Set<String> areas) {
        this.areas = areas;
    }

    static UsedKeys find(Set<String> areas) {
        UsedKeys used = new UsedKeys(areas);
        Sources.templates().forEach(used::template);
        Sources.java().forEach(used::java);
        return used;
    }

    Map<String, String> keys() {
        return keys;
    }

    Set<String> prefixesOfScripts() {
        return new TreeSet<>(prefixes.values());
    }

    /** What scripts say by name, without the prefix. */
    Set<String> saidByScripts() {
        Set<String> said = new TreeSet<>();
        Sources.scripts().forEach(script -> each(SAID_BY_SCRIPT, Sources.read(script), said::add));
        return said;
    }

    private void template(Path file) {
        String text = Sources.read(file);
        each(IN_EXPRESSION, text, key -> keys.put(key, Sources.name(file)));
        each(QUOTED, text, key -> add(key, file));
        SCRIPT_WITH_WORDS.matcher(text).results().forEach(found -> prefixes.put(found.group(1), found.group(2)));
    }

    private void java(Path file) {
        each(QUOTED, Sources.read(file), key -> add(key, file));
    }

    private void add(String key, Path file) {
        boolean isFile = key.matches(".*\\.(js|css|svg|png|html|json|pdf|csv|yaml)");
        if (areas.contains(key.substring(0, key.indexOf('.'))) && !isFile) {
            keys.put(key, Sources.name(file));
        }
    }

    private static void each(Pattern pattern, String text, Consumer<String> found) {
        pattern.matcher(text).results().forEach(result -> found.accept(result.group(1)));
    }
}
