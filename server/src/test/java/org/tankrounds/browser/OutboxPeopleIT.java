package org.tankrounds.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.READINGS;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.Cookie;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tankrounds.db.schema.tables.records.ReadingsRecord;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.Device;
import org.tankrounds.testing.Visitor;
import org.tankrounds.words.Language;

/** Whose a reading is, who is asked about it, and what becomes of it when people come and go at one device. */
class OutboxPeopleIT extends AtADevice {
    private static final String KEPT_ONE = "Kept on this device (1)";
    private static final Pattern RECEIPT = Pattern.compile("/tanks/\\w+\\?saved=");

    private Page page;

    @BeforeEach
    void openPage() {
        page = device.page();
    }

    @Test
    void aSessionThatEnded_holdsTheReadingUntilTheyAreBack() {
        device.signIn(cast.teacherA()).openForm(cast.tankA());
        device.context().clearCookies();
        device.write("52");
        assertThat(device.line()).hasText(KEPT_ONE + " You are signed out. Sign in to send it");
        assertThat(stored()).isEmpty();

        device.line().getByRole(AriaRole.LINK).click();
        signIn(page, cast.teacherA());
        awaitStoredBy(cast.teacherA());
    }

    @Test
    void anotherTeacher_neitherSeesNorSendsIt() {
        device.signIn(cast.teacherA()).openForm(cast.tankA()).offline(true).write("52");
        device.context().clearCookies();
        device.offline(false).signIn(cast.teacherB());
        page.navigate("/outbox");
        assertThat(page.locator("[data-others]"))
                .hasText("1 thing of other people is sealed here until they sign in.");
        assertThat(page.locator("[data-heading]")).hasText("Nothing waits on this device");
        assertThat(page.locator("main")).not().containsText("52");
        assertThat(stored()).isEmpty();

        device.context().clearCookies();
        device.signIn(cast.teacherA());
        awaitStoredBy(cast.teacherA());
    }

    @Test
    void aWindowThatIsStillOpen_holdsItWhileSomebodyElseIsSignedIn() {
        device.signIn(cast.teacherA()).openForm(cast.tankA());
        Page other = device.context().newPage();
        device.context().clearCookies();
        other.navigate("/sign-in");
        signIn(other, cast.teacherB());
        device.write("52");

        assertThat(device.line()).hasText(KEPT_ONE + " Somebody else is signed in: it is sent when you are.");
        assertThat(stored()).isEmpty();
    }

    @Test
    void signingOut_asksFirst_andLosesNothing(@TempDir Path folder) throws IOException {
        device.signIn(cast.teacherA()).openForm(cast.tankA()).offline(true).write("52");
        signOutButton().click();
        assertThat(page.locator("dialog h2")).hasText("1 thing not sent yet");
        assertThat(page.locator("dialog p")).containsText("Signing out does not lose it.");
        Download file = page.waitForDownload(() -> page.locator("[data-leave-file]").click());
        page.locator("[data-leave-stay]").click();
        assertThat(page.locator("dialog")).isHidden();
        assertThat(device.line()).containsText(KEPT_ONE);

        signOutButton().click();
        page.locator("[data-leave-sealed]").click();
        assertThat(page.locator("[data-still-in]")).containsText("you are still signed in here");
        assertThat(device.line()).containsText(KEPT_ONE);

        device.context().route(url -> url.endsWith("/log"), route -> {
            if (route.request().method().equals("POST")) {
                route.abort();
            } else {
                route.resume();
            }
        });
        device.offline(false);
        signOutButton().click();
        page.locator("[data-leave-sealed]").click();
        assertThat(page).hasURL(app.baseUrl() + "/sign-in");
        assertThat(stored()).isEmpty();

        device.context().unrouteAll();
        device.signIn(cast.teacherA());
        awaitStoredBy(cast.teacherA());
        putBack(file, folder.resolve("readings.json"));
        assertThat(stored()).hasSize(1);
    }

    @Test
    void inSpanish_theOutboxWritesDaysAsTheOtherPagesDo() {
        device.signIn(cast.teacherA()).openForm(cast.tankA()).offline(true).write("52");
        device.context().addCookies(List.of(new Cookie("tkr-language", "es").setUrl(app.baseUrl())));
        device.context().route("**/api/ping", route -> route.abort());
        device.offline(false);
        page.navigate("/outbox");

        LocalDate day = LocalDate.parse((String) page.evaluate("new Date().toLocaleDateString('sv')"));
        String today = DateTimeFormatter.ofPattern("EEE d MMM", Language.SPANISH.locale()).format(day);
        assertThat(page.locator("[data-unsent] [data-time]")).containsText(" " + today + ", ");
    }

    /** On another device what was saved as a file is put back; where it was sent already, nothing comes twice. */
    private void putBack(Download download, Path file) throws IOException {
        download.saveAs(file);
        assertThat(Files.readString(file)).contains("\"temperature\"").contains("\"52\"").doesNotContain("form_token");
        try (Device other = Device.at(app.baseUrl()).signIn(cast.teacherA())) {
            other.page().navigate("/outbox");
            other.page().locator("[data-file]").setInputFiles(file);
            assertThat(other.page().locator("[data-file-said]")).hasText("1 thing in that file.");
            assertThat(other.page().locator("[data-sent] li")).hasCount(1);
        }
    }

    @Test
    void signingOut_withNothingWaiting_asksNothing_andForgetsThePages() {
        device.signIn(cast.teacherA()).openForm(cast.tankA());
        signOutButton().click();

        assertThat(page).hasURL(app.baseUrl() + "/sign-in");
        page.waitForCondition(() -> (boolean) page.evaluate(
                "async path => !(await caches.match(path))", Device.form(cast.tankA())));
    }

    @Test
    void afterASessionThatEnded_theNextPersonGetsNoPageOfTheOneBefore() {
        device.signIn(cast.teacherA()).openForm(cast.tankA());
        device.context().clearCookies();
        device.signIn(cast.mentor());
        page.waitForCondition(() -> keptFor("/outbox").equals(cast.mentor().code()));
        device.offline(true);
        page.navigate(Device.form(cast.tankA()));
        assertThat(page).hasURL(app.baseUrl() + "/outbox");

        device.offline(false).openForm(cast.tankA());
        device.offline(true).page().reload();
        assertThat(page.locator("body")).hasAttribute("data-account", cast.mentor().code());
        device.write("54");
        assertThat(device.line()).containsText(KEPT_ONE);
        device.offline(false);
        awaitStoredBy(cast.mentor());
    }

    @Test
    void whoComesInPastTheWorker_getsNoPageOfTheOneBefore() {
        device.signIn(cast.teacherA()).openForm(cast.tankA());
        Browserless mentor = app.signedIn(cast.mentor());
        device.context().clearCookies();
        mentor.cookies().forEach((name, value) -> device.context().addCookies(
                List.of(new Cookie(name, value).setUrl(app.baseUrl()))));
        page.navigate("/rounds");

        page.waitForCondition(() -> keptFor("/outbox").equals(cast.mentor().code()));
        assertThat(keptFor(Device.form(cast.tankA()))).isEmpty();
    }

    @Test
    void openedWithoutWiFi_theAppLeadsToTheForm() {
        device.signIn(cast.teacherA()).openForm(cast.tankA());
        page.waitForCondition(() -> (boolean) page.evaluate("async () => Boolean(await caches.match('/outbox'))"));
        device.offline(true);
        page.navigate("/");
        page.getByText(cast.tankA().school()).click();
        device.write("52");
        assertThat(device.line()).containsText(KEPT_ONE);

        device.offline(false);
        awaitStoredBy(cast.teacherA());
    }

    @Test
    void whatIsImpossible_needsFixing_andIsStoredOnceWhenFixed() {
        device.signIn(cast.teacherA()).openForm(cast.tankA()).offline(true).write("fifty");
        device.offline(false);
        page.navigate("/outbox");
        assertThat(device.line()).hasText("Needs fixing");
        assertThat(page.locator("[data-unsent]"))
                .containsText(Pattern.compile("Temperature fifty °F[\\s\\S]*cannot be read"));

        page.getByText("Open and fix").click();
        assertThat(page.getByRole(AriaRole.ALERT)).containsText("cannot be read");
        assertThat(page.getByLabel("Temperature")).hasValue("fifty");
        device.write("50");
        assertThat(page).hasURL(RECEIPT);
        assertThat(stored()).hasSize(1);
        page.navigate("/outbox");
        assertThat(page.locator("[data-heading]")).hasText("Nothing waits on this device");
    }

    @Test
    void whatIsUnlikely_isAskedAboutByThePage_andTheAnswerCounts() {
        device.signIn(cast.teacherA()).openForm(cast.tankA());
        page.getByLabel("°C").check();
        device.write("54");
        assertThat(page.locator(".asks")).containsText("You typed 54 °C");
        assertThat(stored()).isEmpty();

        page.getByLabel("No, it was 54 °F").check();
        page.getByText("Answer and keep this reading").click();
        assertThat(page).hasURL(RECEIPT);
        assertThat(stored()).hasSize(1);
        assertThat(stored().get(0).getFlags()).isEmpty();
        page.navigate("/outbox");
        assertThat(page.locator("[data-heading]")).hasText("Nothing waits on this device");
    }

    @Test
    void withoutScripts_theFormDoesAllOfItOnline() {
        try (Visitor classroom = Visitor.withoutScripts(app.baseUrl())) {
            classroom.signIn(cast.teacherA().email(), Cast.PASSWORD);
            classroom.page().navigate(Device.form(cast.tankA()));
            classroom.page().getByLabel("Temperature").fill("52");
            classroom.press("Keep this reading");

            assertThat(classroom.page()).hasURL(RECEIPT);
            classroom.page().navigate("/outbox");
            assertThat(classroom.page().content()).contains("everything is sent at once");
        }
        assertThat(stored()).hasSize(1);
    }

    /** The account whose page would open without Wi-Fi; empty where none would. */
    private String keptFor(String path) {
        return (String) page.evaluate("""
                async path => {
                  const kept = await caches.match(path);
                  return kept ? kept.headers.get("Tankrounds-Account") : "";
                }""", path);
    }

    private static void signIn(Page where, Cast.Member member) {
        where.getByLabel("E-mail address").fill(member.email());
        where.getByLabel("Password").fill(Cast.PASSWORD);
        where.getByText("Sign in").last().click();
        where.locator("[data-sign-out]").waitFor();
    }

    private Locator signOutButton() {
        return page.locator("[data-sign-out] button");
    }

    private void awaitStoredBy(Cast.Member member) {
        page.waitForCondition(() -> !stored().isEmpty());
        assertThat(stored()).hasSize(1);
        assertThat(stored().get(0).getPersonId()).isEqualTo(member.personId());
    }

    private List<ReadingsRecord> stored() {
        return app.transactions().inChapter(cast.chapterId(), tx -> tx.selectFrom(READINGS).fetch());
    }
}
