package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

class LocalPathTest {
    @ParameterizedTest
    @ValueSource(strings = {"/rounds", "/tanks/k7m2q9/log", "/tanks/k7m2q9?from=2026-01-01&to=2026-02-01"})
    void aPageOfOurs_isKept(String path) {
        assertThat(LocalPath.orStart(path)).isEqualTo(path);
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {
        "", "rounds", "//elsewhere.example", "/\\elsewhere.example", "https://elsewhere.example/",
                "/rounds\r\nX: y",
        "/a b", "javascript:alert(1)", "/sign-out", "/sign-in?next=/sign-in", "/api/v1/rounds", "/\u00e9"
    })
    void anythingElse_leadsToTheStart(String path) {
        assertThat(LocalPath.orStart(path)).isEqualTo("/");
    }

    @Test
    void theSignInPage_remembersWhereToGoOn() {
        assertThat(LocalPath.signIn("/tanks/k7m2q9/log?kit=2"))
                .isEqualTo("/sign-in?next=%2Ftanks%2Fk7m2q9%2Flog%3Fkit%3D2");
        assertThat(LocalPath.signIn("/")).isEqualTo("/sign-in");
    }
}
