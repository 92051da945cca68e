package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PasswordHashesTest {
    private final PasswordHashes hashes = new PasswordHashes();

    @Test
    void aHash_saysHowItWasMade_andMatchesItsPasswordOnly() {
        String hash = hashes.hash("seven wet gravel buckets");

        assertThat(hash).startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
        assertThat(hashes.matches("seven wet gravel buckets", hash)).isTrue();
        assertThat(hashes.matches("seven wet gravel bucket", hash)).isFalse();
        assertThat(hashes.outdated(hash)).isFalse();
        assertThat(hashes.hash("seven wet gravel buckets")).as("each has its own salt").isNotEqualTo(hash);
    }

    @Test
    void composedAndDecomposedLetters_areTheSame() {
        assertThat(hashes.matches("caf\u0065\u0301 au lait 12345", hashes.hash("caf\u00e9 au lait 12345")))
                .isTrue();
    }

    @Test
    void olderParameters_areOutdated() {
        String cheap = "$argon2id$v=19$m=8192,t=1,p=1$c29tZXNhbHRzb21lc2E$"
                + "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA";

        assertThat(hashes.outdated(cheap)).isTrue();
        assertThat(hashes.matches("anything at all here", cheap)).isFalse();
    }

    @Test
    void somethingElse_isNoHash() {
        assertThatThrownBy(() -> PhcString.parse("$2b$12$abcdefghijklmnopqrstuv"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
