package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** Signing out stands for every form: whether it went through shows in the session. */
class FormGuardIT {
    private final TestApp app = TestApp.shared();

    @ParameterizedTest
    @CsvSource({
        // Sec-Fetch-Site, Origin, token, taken
        "same-origin, ,        right, true",
        "none,        ,        right, true",
        "same-site,   ,        right, false",
        "cross-site,  ,        right, false",
        "cross-site,  here,    right, false",
        "same-origin, here,    wrong, false",
        "none,        ,        wrong, false",
        "cross-site,  ,        wrong, false",
        ",            here,    right, true",
        ",            other,   right, false",
        ",            null,    right, false",
        ",            here,    wrong, false",
        ",            ,        right, true",
        ",            ,        wrong, false",
        ",            ,        empty, false",
        "same-origin, ,        none,  false",
        "same-origin, ,        other person's, false",
    })
    void aForm_isTakenOnlyFromOurOwnPagesAndWithItsToken(String site, String origin, String token,
            boolean taken) {
        Browserless browser = app.signedIn(app.here().mentor());
        browser.get("/account");
        String right = browser.formToken();
        browser.header("Sec-Fetch-Site", site).header("Origin", origin(origin));

        Answer answer = browser.postForm("/sign-out", form(token, right));

        assertThat(answer.status()).isEqualTo(taken ? 303 : 403);
        browser.header("Sec-Fetch-Site", null).header("Origin", null);
        assertThat(browser.get("/account").status()).isEqualTo(taken ? 303 : 200);
        if (!taken) {
            assertThat(answer.body()).containsAnyOf(
                    "was not sent from a page of this service", "This page is older than your session")
                    .contains("Nothing was stored");
        }
    }

    /** Two pages opened at the same moment, or one by the worker: the later one's token is the browser's. */
    @ParameterizedTest
    @CsvSource({"same-origin, 303", "same-site, 403", "cross-site, 403", ", 403"})
    void signingIn_withAnOlderPagesToken_isTakenWhereTheBrowserSaysItIsOurs(String site, int status) {
        Browserless browser = app.browser();
        browser.get("/sign-in");
        String older = browser.formToken();
        browser.cookies().clear();
        browser.get("/sign-in");
        browser.header("Sec-Fetch-Site", site).header("Origin", null);

        Answer answer = browser.postForm("/sign-in", Map.of("form_token", older,
                "email", app.here().mentor().email(), "password", Cast.PASSWORD));

        assertThat(answer.status()).isEqualTo(status);
    }

    @Test
    void signingIn_needsTheTokenOfTheBrowserThatWasShownTheForm() {
        Browserless victim = app.browser();
        Browserless attacker = app.browser();
        attacker.get("/sign-in");
        victim.get("/sign-in");

        Answer answer = victim.postForm("/sign-in", Map.of("form_token", attacker.formToken(),
                "email", app.here().mentor().email(), "password", Cast.PASSWORD));

        assertThat(answer.status()).isEqualTo(403);
        assertThat(victim.cookies()).doesNotContainKey("tkr");
    }

    @Test
    void aFormInAnotherEncoding_isNotRead() {
        Browserless browser = app.signedIn(app.here().mentor());
        browser.get("/account");
        String multipart = "--x\r\nContent-Disposition: form-data; name=\"form_token\"\r\n\r\n"
                + browser.formToken() + "\r\n--x--\r\n";

        assertThat(browser.postJson("/sign-out", "{}").status()).isEqualTo(415);
        assertThat(browser.send("POST", "/sign-out", "multipart/form-data; boundary=x",
                multipart.getBytes(StandardCharsets.UTF_8)).status()).isEqualTo(415);
        assertThat(browser.get("/account").status()).isEqualTo(200);
    }

    @Test
    void anEndlessForm_isRefused() {
        Browserless browser = app.signedIn(app.here().mentor());
        browser.get("/account");

        Answer answer = browser.post("/sign-out", "something", "x".repeat(1_100_000));

        assertThat(answer.status()).isEqualTo(413);
    }

    private String origin(String word) {
        if (word == null) {
            return null;
        }
        return switch (word) {
            case "here" -> app.baseUrl();
            case "other" -> "https://elsewhere.example";
            default -> "null";
        };
    }

    private Map<String, String> form(String token, String right) {
        return switch (token) {
            case "right" -> Map.of("form_token", right);
            case "wrong" -> Map.of("form_token", (right.startsWith("x") ? "y" : "x") + right.substring(1));
            case "empty" -> Map.of("form_token", "");
            case "none" -> Map.of("something", "else");
            default -> {
                Browserless other = app.signedIn(app.here().coordinator());
                other.get("/account");
                yield Map.of("form_token", other.formToken());
            }
        };
    }
}
