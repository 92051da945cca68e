package org.tankrounds.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.READINGS;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Cast;

/** Forms that no outbox keeps: what was typed into them outlives a Wi-Fi that is gone, and a session that changed. */
class TypedFormsIT extends AtADevice {
    private static final String OFFLINE =
            "No connection: nothing was sent, and everything is still here. Press the button again in a moment.";

    @Test
    void aLookAtTheFish_withoutWiFi_staysOnThePage_andIsSentLater() {
        Locator gasping = open("/fish").locator("[name=breathing][value=gasping]");
        gasping.check();
        device.offline(true);
        press("Keep what we saw");
        assertThat(status("Keep what we saw")).hasText(OFFLINE);
        assertThat(gasping).isChecked();

        device.offline(false);
        press("Keep what we saw");
        assertThat(device.page().locator(".caution[role=alert]")).isVisible();
    }

    @Test
    void aBreak_withoutWiFi_staysOnThePage_andIsSentLater() {
        Page page = open("/breaks");
        page.locator("[name=name]").fill("Long weekend");
        page.locator("[name=first_day]").fill("2027-01-16");
        page.locator("[name=last_day]").fill("2027-01-18");
        device.offline(true);
        press("Add this break");
        assertThat(status("Add this break")).hasText(OFFLINE);
        assertThat(page.locator("[name=name]")).hasValue("Long weekend");

        device.offline(false);
        press("Add this break");
        page.getByText("Keep the plan").waitFor();
        device.offline(true);
        press("Keep the plan");
        assertThat(status("Keep the plan")).hasText(OFFLINE);
    }

    @Test
    void aMonth_whoseTypistIsSignedOutInAnotherWindow_goesOutInTheirName() {
        Page page = open("/month");
        page.locator("#d01_temperature").fill("52");
        Page other = device.context().newPage();
        other.navigate("/tanks");
        other.locator("[data-sign-out] button").click();
        other.waitForURL("**/sign-in");
        signIn(other, cast.mentor());

        press("Keep these readings");
        assertThat(page.locator("main")).containsText("in the name of " + cast.mentor().name());
        assertThat(stored()).isZero();
        press("Sign in as somebody else first");
        assertThat(page.locator("main")).containsText("What you typed is kept");
        signIn(page, cast.teacherA());
        assertThat(page.locator("main")).containsText("in the name of " + cast.teacherA().name());
        press("Send it now");
        assertThat(page.locator(".done")).containsText("1 reading is stored.");
        assertThat(stored()).isEqualTo(cast.teacherA().personId());
    }

    private Page open(String path) {
        device.signIn(cast.teacherA()).page().navigate("/tanks/" + cast.tankA().code() + path);
        return device.page();
    }

    private void press(String button) {
        device.page().locator("main button:has-text('" + button + "')").click();
    }

    private Locator status(String button) {
        return device.page().locator("form:has(button:has-text('" + button + "')) [role=status]");
    }

    private static void signIn(Page where, Cast.Member member) {
        where.getByLabel("E-mail address").fill(member.email());
        where.getByLabel("Password").fill(Cast.PASSWORD);
        where.locator("main .button--main").click();
        where.locator("[data-sign-out]").first().waitFor();
    }

    /** Whose the only reading is; 0 where there is none. */
    private int stored() {
        return app.transactions().inChapter(cast.chapterId(), tx -> tx.select(READINGS.PERSON_ID).from(READINGS)
                .fetchOptional(READINGS.PERSON_ID)).orElse(0);
    }
}
