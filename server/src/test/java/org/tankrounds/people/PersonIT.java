package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;

class PersonIT {
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
    void theList_showsTheChaptersPeopleOnly() {
        String body = app.signedIn(app.here().coordinator()).get("/people").body();

        app.here().members().forEach(member -> assertThat(body).contains(member.email()));
        app.elsewhere().members().forEach(member -> assertThat(body).doesNotContain(member.email()));
        assertThat(body).contains("Alderwhistle School, Room 12").contains("can sign in");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/people", "/people/new", "/tokens"})
    void nobodyButCoordinators_findsThem(String path) {
        assertThat(app.browser().get(path).status()).isEqualTo(303);
        for (Cast.Member member : new Cast.Member[] {app.here().mentor(), app.here().teacherB()}) {
            Answer answer = app.signedIn(member).get(path);
            assertThat(answer.status()).isEqualTo(404);
            assertThat(answer.body()).contains("There is nothing here.");
        }
    }

    @Test
    void anotherChaptersPerson_doesNotExist() {
        Browserless coordinator = app.signedIn(app.here().coordinator());
        coordinator.get("/people");
        String page = "/people/" + app.elsewhere().teacherA().code();

        assertThat(coordinator.get(page).status()).isEqualTo(404);
        assertThat(coordinator.post(page, "name", "Taken Over", "email", "x@y.example", "role", "mentor")
                .status())
                .isEqualTo(404);
        assertThat(coordinator.post(page + "/invitation").status()).isEqualTo(404);
        assertThat(coordinator.post(page + "/disabled").status()).isEqualTo(404);
        assertThat(app.browser().signIn(app.elsewhere().teacherA()).status()).isEqualTo(303);
    }

    @Test
    void anotherChaptersTank_cannotBeGivenToATeacher() {
        Browserless coordinator = app.signedIn(app.here().coordinator());
        coordinator.get("/people/new");

        Answer answer =
                coordinator.post("/people", "name", "Nia", "email", "nia@new.example", "role", "teacher",
                "tank", app.elsewhere().tankA().code());

        assertThat(answer.status()).isEqualTo(404);
        assertThat(coordinator.get("/people").body()).as("and nothing was stored")
                .doesNotContain("nia@new.example");
    }

    @Test
    void theSameAddressTwice_isAClearSentence_andTheTypedValuesStay() {
        Browserless coordinator = app.signedIn(app.here().coordinator());
        coordinator.get("/people/new");

        Answer answer = coordinator.post("/people", "name", "Second Mentor",
                "email", app.here().mentor().email().toUpperCase(java.util.Locale.ROOT), "role", "mentor");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("signs in with this address already")
                .contains("value=\"Second Mentor\"");
    }

    @Test
    void wrongInput_saysWhatIsAllowed() {
        Browserless coordinator = app.signedIn(app.here().coordinator());
        coordinator.get("/people/new");

        Answer answer = coordinator.post("/people", "name", "", "email", "nobody", "role", "superuser");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("Give a name.").contains("&quot;nobody&quot; is no e-mail address")
                .contains("Choose teacher, mentor or coordinator.").contains("<title>Error: Add a person");
    }

    @Test
    void disabling_signsOutAtOnce_andEnablingLetsInAgain() {
        Browserless coordinator = app.signedIn(app.here().coordinator());
        Browserless teacher = app.signedIn(app.here().teacherB());
        String page = "/people/" + app.here().teacherB().code();
        coordinator.get(page);

        assertThat(coordinator.post(page + "/disabled").status()).isEqualTo(303);

        assertThat(teacher.get("/account").status()).isEqualTo(303);
        assertThat(app.browser().signIn(app.here().teacherB()).status()).isEqualTo(422);
        assertThat(coordinator.get("/people").body()).contains("switched off");
        coordinator.get(page);
        coordinator.post(page + "/enabled");
        assertThat(app.browser().signIn(app.here().teacherB()).status()).isEqualTo(303);
        assertThat(teacher.get("/account").status()).as("the old session stays over").isEqualTo(303);
    }

    @Test
    void aNewRole_asksToSignInAgain() {
        Cast cast = app.elsewhere();
        Browserless coordinator = app.signedIn(cast.coordinator());
        Browserless mentor = app.signedIn(cast.mentor());
        String page = "/people/" + cast.mentor().code();
        coordinator.get(page);

        coordinator.post(page, details(cast.mentor(), "coordinator"));

        assertThat(mentor.get("/account").status()).isEqualTo(303);
        assertThat(app.signedIn(cast.mentor()).get("/people").status()).isEqualTo(200);
        coordinator.get(page);
        coordinator.post(page, details(cast.mentor(), "mentor"));
    }

    @Test
    void theLastCoordinator_canNeitherGoNorBecomeSomethingElse() {
        Cast.Member only = app.here().coordinator();
        Browserless coordinator = app.signedIn(only);
        String page = "/people/" + only.code();
        coordinator.get(page);

        Answer disabled = coordinator.post(page + "/disabled");
        Answer demoted = coordinator.post(page, details(only, "teacher"));

        assertThat(disabled.status()).isEqualTo(422);
        assertThat(disabled.body()).contains("only coordinator");
        assertThat(demoted.status()).isEqualTo(422);
        assertThat(demoted.body()).contains("only coordinator")
                .contains("Make somebody else a coordinator first.");
        assertThat(coordinator.get("/people").status()).isEqualTo(200);
    }

    @Test
    void aTeachersTanks_areThoseThatAreTicked() {
        Cast.Member teacher = app.here().teacherA();
        Browserless coordinator = app.signedIn(app.here().coordinator());
        String page = "/people/" + teacher.code();
        assertThat(coordinator.get(page).body())
                .containsPattern("value=\"" + app.here().tankA().code() + "\" checked");

        Map<String, String> form = new LinkedHashMap<>();
        form.put("form_token", coordinator.formToken());
        form.putAll(Map.of("name", teacher.name(), "email", teacher.email(), "role", "teacher",
                "tank", app.here().tankB().code()));
        coordinator.postForm(page, form);

        String body = coordinator.get(page).body();
        assertThat(body).containsPattern("value=\"" + app.here().tankB().code() + "\" checked");
        assertThat(body).doesNotContainPattern("value=\"" + app.here().tankA().code() + "\" checked");
    }

    @Test
    void changingOnesPassword_signsOutTheOtherBrowsers() {
        Cast.Member mentor = app.here().mentor();
        Browserless here = app.signedIn(mentor);
        Browserless there = app.signedIn(mentor);
        String fresh = "nine loud copper kettles";
        here.get("/account");

        Answer wrong = here.post("/account/password",
                "current_password", "not the right one", "password", fresh, "password_again", fresh);
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.body()).contains("This is not your current password.");
        assertThat(there.get("/account").status()).isEqualTo(200);

        Answer answer = here.post("/account/password",
                "current_password", Cast.PASSWORD, "password", fresh, "password_again", fresh);

        assertThat(answer.status()).isEqualTo(303);
        assertThat(here.get("/account").status()).isEqualTo(200);
        assertThat(there.get("/account").status()).isEqualTo(303);
        assertThat(app.browser().signIn(mentor.email(), fresh).status()).isEqualTo(303);
    }

    @Test
    void tokens_areShownOnce_andRevokedForGood() {
        Browserless coordinator = app.signedIn(app.here().coordinator());
        coordinator.get("/tokens");

        Answer issued =
                coordinator.post("/tokens", "label", "probe by the window", "opens",
                        app.here().tankA().code());

        assertThat(issued.body()).containsPattern("tkr_[\\w-]{43}");
        String list = coordinator.get("/tokens").body();
        assertThat(list).contains("probe by the window").doesNotContainPattern("tkr_[\\w-]{43}");
        assertThat(list).doesNotContain(app.elsewhere().tankA().code());
        String id = list.replaceAll("(?s).*probe by the window.*?/tokens/(\\d+)/revoked.*", "$1");
        assertThat(coordinator.post("/tokens/" + id + "/revoked").status()).isEqualTo(303);
        assertThat(coordinator.get("/tokens").body()).doesNotContain("/tokens/" + id + "/revoked");
        assertThat(app.signedIn(app.elsewhere().coordinator()).get("/tokens").body())
                .doesNotContain("by the window");
        assertThat(coordinator.post("/tokens/999999999/revoked").status()).isEqualTo(404);
        assertThat(coordinator.post("/tokens/x/revoked").status()).isEqualTo(404);
    }

    @Test
    void aToken_needsAPurposeAndSomethingToOpen() {
        Browserless coordinator = app.signedIn(app.here().coordinator());
        coordinator.get("/tokens");

        Answer answer = coordinator.post("/tokens", "label", "", "opens", "");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("Say what the token is for")
                .contains("Choose a tank, or the whole chapter.");
        assertThat(coordinator.post("/tokens", "label", "x", "opens", app.elsewhere().tankA().code())
                .status())
                .isEqualTo(404);
    }

    private static String[] details(Cast.Member member, String role) {
        return new String[] {"name", member.name(), "email", member.email(), "role", role};
    }
}
