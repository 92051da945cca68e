package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

class SignInIT {
    private static final String WRONG = "not the right password";

    private final TestApp app = TestApp.shared();

    @Test
    void signIn_withTheRightPassword_leadsToTheFirstPageOfTheRole() {
        assertThat(firstPage(app.here().coordinator())).isEqualTo("/rounds");
        assertThat(firstPage(app.here().mentor())).isEqualTo("/rounds");
        assertThat(firstPage(app.here().teacherA())).isEqualTo("/tanks");
        assertThat(app.browser().get("/").location()).isEqualTo("/sign-in");
    }

    @Test
    void signIn_doesNotMindCapitalsAndSpacesInTheAddress() {
        String email = " " + app.here().mentor().email().toUpperCase(java.util.Locale.ROOT) + " ";

        assertThat(app.browser().signIn(email, Cast.PASSWORD).status()).isEqualTo(303);
    }

    @Test
    void signIn_withAWrongPassword_keepsTheAddressAndSaysSo() {
        Answer answer = app.browser().signIn(app.here().mentor().email(), WRONG);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains(app.here().mentor().email()).contains("do not go together")
                .contains("<title>Error: ").doesNotContain(WRONG);
    }

    @Test
    void anUnknownAddress_isAnsweredJustAsAWrongPassword() {
        String known = app.elsewhere().mentor().email();
        String unknown = "nobody@nowhere.example";

        Answer wrongPassword = app.browser().signIn(known, WRONG);
        Answer unknownAddress = app.browser().signIn(unknown, WRONG);

        assertThat(unknownAddress.status()).isEqualTo(wrongPassword.status());
        assertThat(plain(unknownAddress, unknown)).isEqualTo(plain(wrongPassword, known));
    }

    @Test
    void theSessionCookie_isKeptFromScriptsAndOtherSites() {
        Browserless browser = app.browser();

        Answer answer = browser.signIn(app.here().mentor());

        assertThat(answer.headers().get("set-cookie").get(0))
                .startsWith("tkr=").contains("HttpOnly").contains("SameSite=Lax")
                .containsIgnoringCase("Path=/")
                .doesNotContain("Domain").doesNotContain("Expires");
        assertThat(browser.cookies()).containsOnlyKeys("tkr");
    }

    @Test
    void aPlantedSessionCookie_isNotTakenOver() {
        Browserless browser = app.browser();
        browser.get("/sign-in");
        browser.cookies().put("tkr", "planted-by-somebody-else");

        browser.post("/sign-in", "email", app.here().mentor().email(), "password", Cast.PASSWORD);

        assertThat(browser.cookies().get("tkr")).isNotEqualTo("planted-by-somebody-else").hasSize(43);
        Browserless attacker = app.browser();
        attacker.cookies().put("tkr", "planted-by-somebody-else");
        assertThat(attacker.get("/account").status()).isEqualTo(303);
    }

    @Test
    void signingInAgain_endsTheSessionBefore() {
        Browserless browser = app.signedIn(app.here().mentor());
        Browserless old = app.browser();
        old.cookies().putAll(browser.cookies());
        String token = account(browser).formToken();

        browser.postForm("/sign-in", java.util.Map.of("form_token", token,
                "email", app.here().mentor().email(), "password", Cast.PASSWORD));

        assertThat(browser.get("/account").status()).isEqualTo(200);
        assertThat(old.get("/account").status()).isEqualTo(303);
    }

    @Test
    void signOut_endsTheSessionOnTheServer() {
        Browserless browser = app.signedIn(app.here().mentor());
        Browserless copy = app.browser();
        copy.cookies().putAll(browser.cookies());

        Answer answer = account(browser).post("/sign-out");

        assertThat(answer.location()).isEqualTo("/sign-in");
        assertThat(browser.cookies()).isEmpty();
        assertThat(copy.get("/account").location()).startsWith("/sign-in");
    }

    @Test
    void aPageThatAsksWhoItIs_isShownAfterSigningIn() {
        Browserless browser = app.browser();
        Answer asked = browser.get("/account?from=here");
        assertThat(asked.status()).isEqualTo(303);
        assertThat(asked.location()).isEqualTo("/sign-in?next=%2Faccount%3Ffrom%3Dhere");

        browser.get(asked.location());
        Answer answer =
                browser.post("/sign-in", "email", app.here().mentor().email(), "password", Cast.PASSWORD,
                "next", "/account?from=here");

        assertThat(answer.location()).isEqualTo("/account?from=here");
    }

    @ParameterizedTest
    @ValueSource(strings = {"https://elsewhere.example/", "//elsewhere.example", "/\\elsewhere.example"})
    void goingOn_neverLeadsToAnotherSite(String next) {
        Browserless browser = app.browser();
        browser.get("/sign-in");

        Answer answer = browser.post("/sign-in",
                "email", app.here().mentor().email(), "password", Cast.PASSWORD, "next", next);

        assertThat(answer.location()).isEqualTo("/");
    }

    @Test
    void emptyBoxes_areAskedForWithoutCounting() {
        Answer answer = app.browser().signIn("", "");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("Type your e-mail address and your password.");
    }

    @Test
    void headOfAPage_tellsNothing() {
        assertThat(app.browser().head("/people").status()).isEqualTo(405);
        assertThat(app.signedIn(app.here().coordinator()).head("/people").status()).isEqualTo(405);
        assertThat(app.browser().head("/healthz").status()).as("watches ask with HEAD").isEqualTo(200);
    }

    private String firstPage(Cast.Member member) {
        return app.signedIn(member).get("/").location();
    }

    private static Browserless account(Browserless browser) {
        browser.get("/account");
        return browser;
    }

    private static String plain(Answer answer, String email) {
        return answer.body().replace(email, "").replaceAll("name=\"form_token\" value=\"[^\"]*\"", "");
    }
}
