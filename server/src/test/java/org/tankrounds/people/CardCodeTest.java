package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CardCodeTest {
    private static final PasswordHashes HASHES = new PasswordHashes();

    @Test
    void aNewCode_hasNoCharacterThatIsTakenForAnother_andIsNoOther() {
        Set<String> codes = new HashSet<>();
        for (int i = 0; i < 500; i++) {
            codes.add(CardCode.next().shown());
        }

        assertThat(codes).hasSize(500).allMatch(code -> code.matches("[A-Z3-9]{3}-[A-Z3-9]{3}-[A-Z3-9]{3}"));
        assertThat(codes).as("vowels spell words; 0 O Q, 1 I L, 2 Z, 5 S, 8 B, 6 G, U V look alike")
                .noneMatch(code -> code.matches(".*[AEIOU012GLQSVZ58B].*"));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "CK7-PM4-RXW", "ck7pm4rxw", " ck7 pm4 rxw ", "CK7–PM4–RXW", "c.k.7.p.m.4.r.x.w", "Ck7_pm4/rxw"
    })
    void aCode_isTheSame_howeverItIsTyped(String typed) {
        assertThat(CardCode.of(typed).orElseThrow().shown()).isEqualTo("CK7-PM4-RXW");
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "", "CK7-PM4", "CK7-PM4-RXWW", "CK7-PM4-RX0", "ключ-карта", "CK7-PM4-RX😀", "\u0000\u0000\u0000"
    })
    void whatCanBeNoCode_isNone(String typed) {
        assertThat(CardCode.of(typed)).isEmpty();
    }

    @Test
    void wrongCodes_areCountedByTheFirstGroup_whichAloneOpensNothing() {
        CardCode one = CardCode.of("CK7-PM4-RXW").orElseThrow();
        CardCode other = CardCode.of("CK7-PM4-RXY").orElseThrow();

        assertThat(one.account()).isEqualTo(other.account());
        assertThat(one.hash(HASHES)).isEqualTo(one.hash(HASHES)).isNotEqualTo(other.hash(HASHES)).hasSize(32);
        assertThat(CardCode.of("CK6-PM4-RXW").orElseThrow().account()).isNotEqualTo(one.account());
    }
}
