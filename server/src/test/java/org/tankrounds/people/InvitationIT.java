package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;

class InvitationIT {
    private static final Pattern LINK = Pattern.compile("http://[^/]+(/invitations/[\\w-]{43})");
    private static final String PASSWORD = "nine loud copper kettles";

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
    void lookingAtALink_usesNothingUp_choosingAPasswordDoes() {
        String link = invite("ivy@new.example");
        for (int i = 0; i < 5; i++) {
            Browserless scanner = app.browser();
            scanner.head(link);
            assertThat(scanner.get(link).status()).isEqualTo(200);
            assertThat(scanner.post(link).status()).as("a scanner that submits what it finds").isEqualTo(422);
        }

        Browserless person = app.browser();
        person.get(link);
        Answer answer = person.post(link, "password", PASSWORD, "password_again", PASSWORD);

        assertThat(answer.status()).isEqualTo(303);
        assertThat(person.get("/account").body()).contains("ivy@new.example");
        assertThat(app.browser().signIn("ivy@new.example", PASSWORD).status()).isEqualTo(303);
        assertThat(app.browser().get(link).status()).isEqualTo(404);
        assertThat(app.browser().get(link).body()).contains("opens nothing any more");
    }

    @Test
    void aWeakPassword_isRefusedWithASentence_andTheLinkStays() {
        String link = invite("jon@new.example");
        Browserless person = app.browser();
        person.get(link);

        Answer weak = person.post(link, "password", "too short", "password_again", "too short");
        assertThat(weak.status()).isEqualTo(422);
        assertThat(weak.body()).contains("at least 15 are needed").doesNotContain("too short");

        Answer different = person.post(link, "password", PASSWORD, "password_again", PASSWORD + "x");
        assertThat(different.body()).contains("The two are not the same.");

        assertThat(person.post(link, "password", PASSWORD, "password_again", PASSWORD).status())
                .isEqualTo(303);
    }

    @Test
    void aLink_opensNothingWhenItIsOld() {
        String link = invite("kim@new.example");

        app.clock().advance(Invitations.VALID);

        assertThat(app.browser().get(link).status()).isEqualTo(404);
    }

    @Test
    void aNewLink_replacesTheOneBefore_andTheForgottenPassword() {
        Browserless coordinator = app.signedIn(app.here().coordinator());
        Browserless teacher = app.signedIn(app.here().teacherA());
        String page = "/people/" + app.here().teacherA().code();
        coordinator.get(page);
        String first = link(coordinator.post(page + "/invitation"));
        coordinator.get(page);
        String second = link(coordinator.post(page + "/invitation"));

        assertThat(app.browser().get(first).status()).isEqualTo(404);
        Browserless person = app.browser();
        person.get(second);
        person.post(second, "password", PASSWORD, "password_again", PASSWORD);

        assertThat(teacher.get("/account").status()).as("the old session is over").isEqualTo(303);
        assertThat(app.browser().signIn(app.here().teacherA()).status()).as("the old password too")
                .isEqualTo(422);
        assertThat(app.browser().signIn(app.here().teacherA().email(), PASSWORD).status()).isEqualTo(303);
    }

    @Test
    void aNewPassword_opensTheDoorThatGuessingHadSlowedDown() {
        String link = invite("lee@new.example");
        for (int i = 0; i < 8; i++) {
            app.browser().signIn("lee@new.example", "not the right password");
        }
        Browserless person = app.browser();
        person.get(link);
        person.post(link, "password", PASSWORD, "password_again", PASSWORD);

        assertThat(app.browser().signIn("lee@new.example", PASSWORD).status()).isEqualTo(303);
    }

    @Test
    void anInventedLink_opensNothing() {
        assertThat(app.browser().get("/invitations/" + "x".repeat(43)).status()).isEqualTo(404);
        assertThat(app.browser().get("/invitations/%00").status()).isIn(400, 404);
    }

    private static String invite(String email) {
        Browserless coordinator = app.signedIn(app.here().coordinator());
        coordinator.get("/people/new");
        return link(coordinator.post("/people", "name", "New Person", "email", email, "role", "teacher"));
    }

    private static String link(Answer answer) {
        assertThat(answer.status()).isEqualTo(200);
        Matcher link = LINK.matcher(answer.body());
        assertThat(link.find()).isTrue();
        return link.group(1);
    }
}
