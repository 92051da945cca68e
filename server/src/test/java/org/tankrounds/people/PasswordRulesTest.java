package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.words.Words;

class PasswordRulesTest {
    private static final List<String> ABOUT =
            List.of("Ada Fernwhistle", "ada@alderwhistle.example", "Clearthimble Chapter");

    @ParameterizedTest
    @ValueSource(strings = {
        "seven wet gravel buckets",
        "purple-lantern-unfold-9",
        "jklö yxcv mnb éàü",
        "kqzvbwxjgfhmtrplndsc",
        "  spaces  around count  ",
    })
    void longAndUnexpected_isTaken(String password) {
        assertThat(PasswordRules.refusal(password, ABOUT)).isEmpty();
    }

    @Test
    void sixtyFourEmoji_areTaken() {
        StringBuilder emoji = new StringBuilder();
        for (int i = 0; i < 64; i++) {
            emoji.appendCodePoint(0x1F400 + i);
        }

        assertThat(PasswordRules.refusal(emoji.toString(), ABOUT)).isEmpty();
    }

    @Test
    void charactersAreCounted_notBytesOrUnits() {
        String fourteen = "🐟🦆🐢🦌🐻🦊🐺🦝🐗🐴🐌🐛🦋🐝";

        assertThat(PasswordRules.refusal(fourteen, ABOUT)).hasValueSatisfying(why ->
                assertThat(Words.english().say(why)).contains("14 characters").contains("at least 15"));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "passwordpassword",
        "Password12345678",
        "qwertyuiopasdfghjkl",
        "aaaaaaaaaaaaaaaaaaaa",
        "abababababababababab",
        "trouttrouttrouttrout",
        "Clearthimble Chapter 2026",
        "AdaFernwhistleAlderwhistle1!",
        "correct horse battery staple",
        "rainbow trout tank school",
    })
    void whatOthersTryFirst_isRefused(String password) {
        assertThat(PasswordRules.refusal(password, ABOUT)).hasValueSatisfying(why ->
                assertThat(Words.english().say(why)).contains("Others would try this one early"));
    }

    @Test
    void endlessOnes_areRefused() {
        assertThat(PasswordRules.refusal("abcdefghijk ".repeat(100), ABOUT)).hasValueSatisfying(why ->
                assertThat(Words.english().say(why)).contains("at most 300"));
    }
}
