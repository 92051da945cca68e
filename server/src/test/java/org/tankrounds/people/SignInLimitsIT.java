package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;

/** What depends on the time, on an own clock. */
class SignInLimitsIT {
    private static final String WRONG = "not the right password";

    private static TestApp app;

    @BeforeAll
    static void start() {
        app = TestApp.start(TestClock.atStart());
    }

    @AfterAll
    static void stop() {
        app.close();
    }

    @Test
    void guessing_isSlowedDown_evenWithTheRightPasswordInTheEnd_butNeverForGood() {
        String email = app.here().mentor().email();
        for (int i = 0; i < 4; i++) {
            assertThat(app.browser().signIn(email, WRONG).status()).isEqualTo(422);
        }

        Answer answer = app.browser().signIn(email, Cast.PASSWORD);

        assertThat(answer.status()).isEqualTo(429);
        assertThat(answer.header("retry-after")).contains("1");
        assertThat(answer.body()).contains("Wait 1 second, then try again.");

        app.clock().advance(Duration.ofSeconds(1));
        assertThat(app.browser().signIn(email, WRONG).status()).isEqualTo(422);
        assertThat(app.browser().signIn(email, Cast.PASSWORD).header("retry-after")).contains("2");

        app.clock().advance(Duration.ofSeconds(2));
        assertThat(app.browser().signIn(email, Cast.PASSWORD).status()).isEqualTo(303);
        assertThat(app.browser().signIn(email, WRONG).status()).as("forgotten after a success")
                .isEqualTo(422);
    }

    @Test
    void oneAccountsFailures_doNotSlowDownAnother() {
        for (int i = 0; i < 6; i++) {
            app.browser().signIn(app.here().teacherB().email(), WRONG);
        }

        assertThat(app.browser().signIn(app.here().teacherB()).status()).isEqualTo(429);
        assertThat(app.browser().signIn(app.here().teacherA()).status()).isEqualTo(303);
    }

    @Test
    void anUnknownAccount_isSlowedDownAsAKnownOne() {
        String unknown = "nobody@" + app.here().chapter().code() + ".example";
        for (int i = 0; i < 4; i++) {
            assertThat(app.browser().signIn(unknown, WRONG).status()).isEqualTo(422);
        }

        assertThat(app.browser().signIn(unknown, WRONG).status()).isEqualTo(429);
    }

    @Test
    void aTeachersSession_endsAfterHalfAnHourWithoutARequest() {
        Browserless teacher = app.signedIn(app.here().teacherA());
        for (int i = 0; i < 3; i++) {
            app.clock().advance(Duration.ofMinutes(29));
            assertThat(teacher.get("/account").status()).isEqualTo(200);
        }

        app.clock().advance(Duration.ofMinutes(30));

        assertThat(teacher.get("/account").location()).isEqualTo("/sign-in?next=%2Faccount");
    }

    @Test
    void aVolunteersSession_lastsAWorkingDay_andAWeekAtMost() {
        Browserless coordinator = app.signedIn(app.elsewhere().coordinator());
        for (int i = 0; i < 15; i++) {
            app.clock().advance(Duration.ofHours(11));
            assertThat(coordinator.get("/account").status()).isEqualTo(200);
        }

        app.clock().advance(Duration.ofHours(3));

        assertThat(coordinator.get("/account").status()).isEqualTo(303);
    }

    @Test
    void whatWasTyped_survivesASessionThatEndedMeanwhile() {
        Browserless coordinator = app.signedIn(app.here().coordinator());
        coordinator.get("/people/new");
        app.clock().advance(Duration.ofHours(12));
        coordinator.header("Referer", app.baseUrl() + "/people/new");

        Answer asked = coordinator.post("/people", "name", "Ida \"Long\" Typed", "email", "ida@new.example",
                "role", "mentor");
        assertThat(asked.status()).isEqualTo(403);
        assertThat(asked.body()).contains("What you typed is kept");
        Answer wrong = coordinator.postForm("/sign-in", signIn(coordinator, asked, WRONG));
        assertThat(wrong.status()).isEqualTo(422);
        Answer again = coordinator.postForm("/sign-in", signIn(coordinator, wrong, Cast.PASSWORD));

        assertThat(again.status()).isEqualTo(200);
        assertThat(again.body()).contains("action=\"/people\"").contains("Send it now")
                .contains("href=\"/people/new\"");
        assertThat(coordinator.get("/people").body()).as("nothing is stored before they say so")
                .doesNotContain("ida@");
        coordinator.postForm("/people", hidden(again.body(), coordinator.formToken()));
        assertThat(coordinator.get("/people").body()).contains("Ida &quot;Long&quot; Typed")
                .contains("ida@new.example");
    }

    @Test
    void aPasswordThatWasTyped_isNotKept() {
        Browserless mentor = app.signedIn(app.elsewhere().mentor());
        mentor.get("/account");
        app.clock().advance(Duration.ofHours(12));

        Answer asked =
                mentor.post("/account/password", "current_password", Cast.PASSWORD, "password", "x",
                        "password_again", "x");

        assertThat(asked.status()).isEqualTo(303);
    }

    private static Map<String, String> signIn(Browserless browser, Answer page, String password) {
        Map<String, String> form = hidden(page.body(), browser.formToken());
        form.put("email", app.here().coordinator().email());
        form.put("password", password);
        return form;
    }

    private static Map<String, String> hidden(String body, String formToken) {
        Map<String, String> form = new LinkedHashMap<>();
        Matcher field = Pattern.compile("<input type=\"hidden\" name=\"([^\"]*)\" value=\"([^\"]*)\"")
                .matcher(body);
        while (field.find()) {
            form.put(field.group(1), field.group(2).replace("&quot;", "\"").replace("&#64;", "@"));
        }
        form.put("form_token", formToken);
        return form;
    }

    @Test
    void anOldHash_isRenewedAtTheNextSignIn() {
        int chapterId = app.elsewhere().chapterId();
        int personId = app.elsewhere().teacherA().personId();
        String cheap = OldHash.of(Cast.PASSWORD);
        PersonRepository people = new PersonRepository();
        app.transactions().inChapter(chapterId, tx -> {
            people.setPassword(tx, chapterId, personId, cheap);
            return null;
        });

        assertThat(app.browser().signIn(app.elsewhere().teacherA()).status()).isEqualTo(303);

        Optional<String> renewed =
                app.transactions().inChapter(chapterId, tx -> people.passwordHash(tx, chapterId, personId));
        assertThat(renewed.orElseThrow()).startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
        assertThat(app.browser().signIn(app.elsewhere().teacherA()).status()).isEqualTo(303);
    }
}
