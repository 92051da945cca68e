package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.TestApp;

class SignInIT {
    private final TestApp app = TestApp.shared();

    @Test
    void signIn_withTheRightPassword_leadsToTheRounds() {
        Browserless browser = app.browser();

        Answer answer = browser.signIn(app.here().coordinator());

        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo("/");
        assertThat(browser.get("/").location()).isEqualTo("/rounds");
        assertThat(browser.cookies()).containsOnlyKeys("tkr");
    }

    @Test
    void signIn_withAWrongPassword_keepsTheAddressAndSaysSo() {
        Answer answer = app.browser().signIn(app.here().mentor().email(), "not the right password");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains(app.here().mentor().email()).contains("do not go together");
    }
}
