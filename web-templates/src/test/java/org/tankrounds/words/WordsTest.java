package org.tankrounds.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.text.DecimalFormatSymbols;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WordsTest {
    private final Words words = new Words(Language.ENGLISH, Map.of(
            "a.plain", "The school's clock",
            "a.placed", "{1} before {0}, {1}",
            "a.counted.one", "{0} fish in {1}",
            "a.counted.other", "{0} fishes in {1}",
            "a.marked", "**{0}** & [go on](/on?to={1})",
            "a.ended", "{0}. {1}...",
            "a.line", "\"so\""));

    @Test
    void anApostrophe_isAnApostrophe() {
        assertThat(words.say("a.plain")).isEqualTo("The school's clock");
    }

    @Test
    void whatIsPutIn_standsWhereTheMessageHasIt_andIsNotReadAsAMessage() {
        assertThat(words.say("a.placed", "$1", "{0}")).isEqualTo("{0} before $1, {0}");
    }

    /** As "The break ends 29 nov." in Spanish, whose short months end in a stop. */
    @Test
    void anAbbreviation_endsASentenceWithItsOwnStop() {
        assertThat(words.say("a.ended", "29 nov.", "x")).isEqualTo("29 nov. x...");
        assertThat(words.say("a.ended", "29 May", "x.")).isEqualTo("29 May. x....");
    }

    @Test
    void oneAndMore_haveFormsOfTheirOwn() {
        assertThat(words.say("a.counted", 1, "it")).isEqualTo("1 fish in it");
        assertThat(words.say("a.counted", 0, "it")).isEqualTo("0 fishes in it");
        assertThat(words.say("a.counted", 21L, "it")).isEqualTo("21 fishes in it");
    }

    @Test
    void sayings_areSaidInTheLanguageOfWhatTheyStandIn() {
        Saying inner = Saying.of("a.counted", 1, Saying.asIs("a tank"));

        assertThat(words.say(Saying.of("a.placed", inner, 2))).isEqualTo("2 before 1 fish in a tank, 2");
    }

    @Test
    void markUp_comesFromTheMessageOnly() {
        assertThat(words.html("a.marked", "**<i>**", "\"x\""))
                .isEqualTo("<b>**&lt;i&gt;**</b> &amp; <a href=\"/on?to=&quot;x&quot;\">go on</a>");
    }

    @Test
    void aScript_getsTheMessagesBelowAPrefix_asJson() {
        assertThat(words.below("a.l")).isEqualTo("{\"ine\":\"\\\"so\\\"\"}");
    }

    @Test
    void aKeyThatIsMissing_andANumberNotWrittenOut_areFoundAtOnce() {
        assertThatThrownBy(() -> words.say("a.other")).hasMessageContaining("a.other");
        assertThatThrownBy(() -> words.say("a.placed", "x")).hasMessageContaining("{1}");
        assertThatThrownBy(() -> words.say("a.placed", 0.5, 1)).hasMessageContaining("0.5");
    }

    /**
     * Numbers are written with a point throughout; a language whose readers expect a comma needs more than messages.
     */
    @ParameterizedTest
    @EnumSource(Language.class)
    void languages_areWrittenWithADecimalPoint(Language language) {
        assertThat(DecimalFormatSymbols.getInstance(language.locale()).getDecimalSeparator()).isEqualTo('.');
    }
}
