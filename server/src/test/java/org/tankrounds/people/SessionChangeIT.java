package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.READINGS;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.db.schema.tables.records.ReadingsRecord;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** A form is filled in, and in another window of the same browser the session changes before it is sent. */
final class SessionChangeIT {
    private static final String SITE = "Sec-Fetch-Site";
    private static final Pattern HIDDEN =
            Pattern.compile("<input type=\"hidden\" name=\"([^\"]*)\" value=\"([^\"]*)\"");
    private static final String TYPED = "the \"filter\" hums";

    private final TestApp app = TestApp.shared();
    private final Cast cast = Cast.add(app.transactions(), "Two windows");
    private final String month = "/tanks/" + cast.tankA().code() + "/month";
    private final Browserless browser = app.signedIn(cast.teacherA()).header(SITE, "same-origin");

    @Test
    void theSamePersonAgain_isGivenBackWhatTheyTyped_andSendsIt() {
        Map<String, String> form = filledIn();
        comeIn(cast.teacherA());

        Answer given = browser.postForm(month, form);
        assertThat(given.status()).isEqualTo(403);
        assertThat(given.body()).contains("What you typed is still here", "action=\"" + month + "\"", "Send it now",
                "in the name of " + cast.teacherA().name());
        assertThat(stored()).isEmpty();

        assertThat(sendAgain(given).status()).isEqualTo(303);
        assertThat(stored()).hasSize(1);
        assertThat(stored().get(0).getNote()).isEqualTo(TYPED);
    }

    @Test
    void somebodyElse_isTold_inWhoseNameItWouldGo() {
        Map<String, String> form = filledIn();
        comeIn(cast.mentor());

        Answer given = browser.postForm(month, form);
        assertThat(given.body()).contains("in the name of " + cast.mentor().name());
        assertThat(stored()).isEmpty();

        sendAgain(given);
        assertThat(stored().get(0).getPersonId()).isEqualTo(cast.mentor().personId());
    }

    @Test
    void whoeverTypedIt_comesInInTheirPlace_andSendsItInTheirOwnName() {
        Map<String, String> form = filledIn();
        comeIn(cast.mentor());
        Answer given = browser.postForm(month, form);

        Answer asked = browser.postForm("/sign-out", hidden(given));
        assertThat(asked.body()).contains("What you typed is kept");
        assertThat(browser.cookies()).doesNotContainKey("tkr");
        Answer again = browser.postForm("/sign-in", signIn(asked, cast.teacherA()));
        assertThat(again.body()).contains("in the name of " + cast.teacherA().name());

        sendAgain(again);
        assertThat(stored().get(0).getPersonId()).isEqualTo(cast.teacherA().personId());
        assertThat(stored().get(0).getNote()).isEqualTo(TYPED);
    }

    /** "Send it now" would end at a page that is not there, and what was typed with it. */
    @Test
    void whoeverMayNotSendIt_isNotOffered_butSomebodyElseComesIn() {
        Map<String, String> form = filledIn();
        browser.comeIn(app.newCard(cast, cast.tankA()));
        assertNotOffered(browser.postForm(month, form));
        comeIn(cast.teacherB());
        Answer notTheirTank = browser.postForm(month, form);
        assertNotOffered(notTheirTank);

        Answer asked = browser.postForm("/sign-out", hidden(notTheirTank));
        sendAgain(browser.postForm("/sign-in", signIn(asked, cast.teacherA())));
        assertThat(stored().get(0).getNote()).isEqualTo(TYPED);
    }

    private static void assertNotOffered(Answer given) {
        assertThat(given.body()).contains("What you typed is still here", "cannot send it", "Sign in as somebody else")
                .doesNotContain("Send it now");
    }

    @Test
    void aCardTypedBeforeSomebodySignedIn_isNotOfferedToThem() {
        browser.get("/card");
        Map<String, String> form = Map.of("form_token", browser.formToken(), "code", app.newCard(cast, cast.tankA()));
        comeIn(cast.teacherA());
        assertThat(browser.postForm("/card", form).body()).doesNotContain("Send it now");
    }

    @Test
    void signedOut_itIsKeptThroughSigningIn() {
        Map<String, String> form = filledIn();
        browser.get("/account");
        browser.post("/sign-out");

        Answer asked = browser.postForm(month, form);
        assertThat(asked.status()).isEqualTo(403);
        assertThat(asked.body()).contains("What you typed is kept");
        // The sign-in page was left for hours, or opened twice at once.
        browser.cookies().clear();
        sendAgain(browser.postForm("/sign-in", signIn(asked, cast.teacherA())));
        assertThat(stored().get(0).getNote()).isEqualTo(TYPED);
    }

    @Test
    void signedInElsewhereMeanwhile_theSignInPageGivesBackWhatItCarried() {
        Map<String, String> form = filledIn();
        browser.get("/account");
        browser.post("/sign-out");
        Answer asked = browser.postForm(month, form);
        comeIn(cast.teacherA());

        Answer given = browser.postForm("/sign-in", signIn(asked, cast.teacherA()));
        assertThat(given.body()).contains("Send it now").doesNotContain(Cast.PASSWORD);
        sendAgain(given);
        assertThat(stored().get(0).getNote()).isEqualTo(TYPED);
    }

    @ParameterizedTest
    @CsvSource({
        // Sec-Fetch-Site, Origin
        "cross-site, ", "same-site, ", "none, ", "cross-site, here", ", other", ", null", ", "})
    void whatMayComeFromElsewhere_isNeverShownAgain(String site, String origin) {
        Map<String, String> form = filledIn();
        comeIn(cast.teacherA());
        browser.header(SITE, site).header("Origin", "here".equals(origin) ? app.baseUrl()
                : "other".equals(origin) ? "https://elsewhere.example" : origin);

        Answer refused = browser.postForm(month, form);
        assertThat(refused.status()).isEqualTo(403);
        assertThat(refused.body()).contains("was not sent from a page of this service").doesNotContain("hums");
        browser.cookies().clear();
        assertThat(browser.postForm(month, form).body()).as("nor where nobody is signed in").doesNotContain("hums");
    }

    @Test
    void aBrowserThatSaysItsOriginOnly_isBelieved() {
        Map<String, String> form = filledIn();
        comeIn(cast.teacherA());
        browser.header(SITE, null).header("Origin", app.baseUrl());

        assertThat(browser.postForm(month, form).body()).contains("Send it now");
    }

    @Test
    void aFormWithoutAnyToken_isNoneOfOurs() {
        Map<String, String> form = filledIn();
        form.remove("form_token");

        assertThat(browser.postForm(month, form).body()).doesNotContain("hums");
    }

    @Test
    void theOutboxOfADevice_getsNoPage() {
        Map<String, String> form = filledIn();
        comeIn(cast.teacherA());
        browser.header("Tankrounds-Account", cast.teacherA().code());

        Answer refused = browser.postForm("/tanks/" + cast.tankA().code() + "/log", form);
        assertThat(refused.status()).isEqualTo(403);
        assertThat(refused.body()).doesNotContain("hums");
    }

    @Test
    void passwords_areNeverShownAgain() {
        browser.get("/account");
        String token = browser.formToken();
        comeIn(cast.teacherA());

        assertThat(browser.postForm("/account/password", Map.of("form_token", token, "password", "a new one")).body())
                .contains("This page is older than your session").doesNotContain("a new one");
    }

    @Test
    void aFormWithoutAnythingTyped_saysWhyItWasNotTaken() {
        browser.get("/account");
        String token = browser.formToken();
        comeIn(cast.teacherA());

        Answer refused = browser.postForm("/sign-out", Map.of("form_token", token));
        assertThat(refused.status()).isEqualTo(403);
        assertThat(refused.body()).contains("This page is older than your session").contains("open the page again");
    }

    @Test
    void whoCameInAndCannotSendIt_leavesItForWhoCan() {
        Map<String, String> form = filledIn();
        browser.get("/account");
        browser.post("/sign-out");
        Answer asked = browser.postForm(month, form);
        browser.comeIn(app.newCard(cast, cast.tankA()));
        browser.get("/tanks/" + cast.tankA().code() + "/log");
        form.put("form_token", browser.formToken());

        Answer given = browser.postForm(month, form);
        assertThat(asked.status()).isEqualTo(403);
        assertThat(given.status()).isEqualTo(403);
        assertThat(given.body()).contains("hums").doesNotContain("Send it now");
    }

    @Test
    void whatStandsInTheAddress_goesAlong() {
        Browserless coordinator = app.signedIn(cast.coordinator()).header(SITE, "same-origin");
        coordinator.get("/places/kits/kit?kit=Generic+card");
        String token = coordinator.formToken();
        coordinator.signIn(cast.coordinator());

        assertThat(coordinator.postForm("/places/kits/kit?kit=Generic+card", Map.of("form_token", token, "name", "B"))
                .body()).contains("action=\"/places/kits/kit?kit=Generic+card\"");
    }

    private Map<String, String> filledIn() {
        Map<String, String> form = hidden(browser.get(month + "?month=2026-01"));
        form.putAll(Map.of("usual_time", "10:00", "temperature_unit", "[degF]", "d05_temperature", "52",
                "d05_note", TYPED));
        return form;
    }

    /** In another window of the same browser. */
    private void comeIn(Cast.Member member) {
        browser.cookies().clear();
        browser.signIn(member);
    }

    private Answer sendAgain(Answer given) {
        return browser.postForm(month, hidden(given));
    }

    private static Map<String, String> signIn(Answer page, Cast.Member member) {
        Map<String, String> form = hidden(page);
        form.putAll(Map.of("email", member.email(), "password", Cast.PASSWORD));
        return form;
    }

    private static Map<String, String> hidden(Answer page) {
        Map<String, String> form = new LinkedHashMap<>();
        Matcher field = HIDDEN.matcher(page.body());
        while (field.find()) {
            form.put(field.group(1), field.group(2).replace("&quot;", "\""));
        }
        return form;
    }

    private List<ReadingsRecord> stored() {
        return app.transactions().inChapter(cast.chapterId(), tx -> tx.selectFrom(READINGS).fetch());
    }
}
