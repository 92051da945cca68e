package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tankrounds.App;
import org.tankrounds.migrations.EmbeddedPostgres;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;
import org.tankrounds.testing.TestDatabase;

/** The very first start: one story, since it happens once in a database. */
class SetUpIT {
    private static final String PASSWORD = "nine loud copper kettles";
    private static final TestClock CLOCK = TestClock.atStart();

    @TempDir
    static Path folder;

    private static EmbeddedPostgres postgres;
    private static App app;
    private static String baseUrl;

    @BeforeAll
    static void start() {
        postgres = TestDatabase.startEmpty(folder);
        app = TestApp.bare(postgres.logins(), CLOCK);
        baseUrl = "http://127.0.0.1:" + app.start();
    }

    @AfterAll
    static void stop() {
        app.close();
        postgres.close();
    }

    @Test
    void theFirstChapter_isMadeOnce_byWhoeverHasTheLink() {
        String old = app.setUpPath().orElseThrow();
        CLOCK.advance(Duration.ofHours(24));
        String other = app.setUpPath().orElseThrow();
        String link = app.setUpPath().orElseThrow();
        Browserless browser = new Browserless(baseUrl);
        assertThat(browser.get(old).status()).as("older than a day").isEqualTo(404);
        assertThat(browser.get("/set-up/" + "x".repeat(43)).status()).isEqualTo(404);
        for (int i = 0; i < 3; i++) {
            assertThat(browser.get(link).status()).as("looking uses nothing up").isEqualTo(200);
        }

        Answer wrong =
                browser.post(link, "chapter", "Clearthimble", "time_zone", "Nowhere/Land", "name", "Cora",
                "email", "cora", "password", "short", "password_again", "short");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.body()).contains("There is no time zone &quot;Nowhere/Land&quot;")
                .contains("is no e-mail address")
                .contains("at least 15 are needed").contains("value=\"Clearthimble\"");

        Answer made = set(browser.header("Accept-Language", "es"), link);
        browser.header("Accept-Language", "en");
        assertThat(made.status()).isEqualTo(303);
        assertThat(browser.get("/").location()).isEqualTo("/rounds");
        assertThat(browser.get("/places/kits").body()).as("a kit to begin with, named in the language of that moment")
                .contains("Tarjeta genérica");
        assertThat(browser.get("/people").body()).contains("Cora Weirthimble")
                .contains("cora@clearthimble.example");

        assertThat(app.setUpPath()).as("no further link").isEmpty();
        for (String spent : new String[] {link, other}) {
            assertThat(new Browserless(baseUrl).get(spent).status()).isEqualTo(404);
            assertThat(set(browser, spent).status()).isEqualTo(404);
        }
        assertThat(new Browserless(baseUrl).signIn("cora@clearthimble.example", PASSWORD).status())
                .isEqualTo(303);
    }

    private static Answer set(Browserless browser, String link) {
        return browser.post(link, "chapter", "Clearthimble", "time_zone", "America/New_York", "name",
                "Cora Weirthimble",
                "email", "Cora@Clearthimble.example", "password", PASSWORD, "password_again", PASSWORD);
    }
}
