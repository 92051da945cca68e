package org.tankrounds.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every message is there in every language, is used, and takes the same things in. */
class MessagesTest {
    private static final Pattern PLACE = Pattern.compile("\\{[^}]*}");
    private static final Pattern ADDRESS = Pattern.compile("]\\(([^)]*)\\)");
    private static final Map<String, String> ENGLISH = Bundles.read(Language.ENGLISH);
    private static final Set<String> AREAS =
            ENGLISH.keySet().stream().map(key -> key.substring(0, key.indexOf('.'))).collect(Collectors.toSet());
    private static final UsedKeys USED = UsedKeys.find(AREAS);

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyKeyThatIsUsed_hasAMessage(Language language) {
        Set<String> known = Bundles.read(language).keySet();

        assertThat(USED.keys()).allSatisfy((key, file) ->
                assertThat(known).as("%s, used by %s", key, file).anyMatch(one -> serves(one, key)));
    }

    @Test
    void everyMessage_isUsed() {
        assertThat(ENGLISH.keySet()).allSatisfy(key ->
                assertThat(USED.keys().keySet()).as(key).anyMatch(used -> serves(key, used)));
    }

    /** Else the whole area would count as used. */
    @Test
    void aKeyWhoseEndIsKnownLater_saysMoreThanItsArea() {
        assertThat(USED.keys()).allSatisfy((key, file) ->
                assertThat(key).as(file).doesNotMatch("[a-z]+\\."));
    }

    @Test
    void scripts_sayWhatTheyWereGiven_andAllOfIt() {
        Set<String> given = new TreeSet<>();
        USED.prefixesOfScripts().forEach(prefix -> ENGLISH.keySet().stream().filter(key -> key.startsWith(prefix))
                .forEach(key -> given.add(withoutForm(key.substring(prefix.length())))));
        String scripts = Sources.scripts().stream().map(Sources::read).collect(Collectors.joining());

        assertThat(given).containsAll(USED.saidByScripts());
        assertThat(given).allSatisfy(key -> assertThat(scripts).contains("\"" + key + "\""));
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyLanguage_hasTheSameMessages_withTheSameThingsPutIn(Language language) {
        Map<String, String> messages = Bundles.read(language);

        assertThat(messages.keySet()).isEqualTo(ENGLISH.keySet());
        assertThat(messages).allSatisfy((key, message) -> {
            assertThat(found(PLACE, message)).as(key).isEqualTo(found(PLACE, ENGLISH.get(key)));
            assertThat(found(ADDRESS, message)).as(key).isEqualTo(found(ADDRESS, ENGLISH.get(key)));
            assertThat(message).as(key).isNotBlank();
        });
    }

    @Test
    void formsForOneAndMore_goTogether() {
        assertThat(ENGLISH.keySet()).filteredOn(key -> key.endsWith(".one"))
                .allSatisfy(key -> assertThat(ENGLISH).containsKey(withoutForm(key) + ".other"));
        assertThat(ENGLISH.keySet()).filteredOn(key -> key.endsWith(".other"))
                .allSatisfy(key -> assertThat(ENGLISH).containsKey(withoutForm(key) + ".one"));
    }

    /** A message serves a key, its forms for one and more, and a key that only names how it begins. */
    private static boolean serves(String message, String used) {
        return used.endsWith(".") ? message.startsWith(used)
                : message.equals(used) || withoutForm(message).equals(used);
    }

    private static String withoutForm(String key) {
        return key.replaceFirst("\\.(one|other)$", "");
    }

    private static Set<String> found(Pattern pattern, String message) {
        return pattern.matcher(message).results().map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
