package org.tankrounds;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer.OrderAnnotation;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.tankrounds.demo.DemoAccess;
import org.tankrounds.demo.DemoAccessFile;
import org.tankrounds.demo.StoryMove;
import org.tankrounds.migrations.EmbeddedPostgres;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;
import org.tankrounds.testing.TestDatabase;

/** A demo loaded into a new folder: what a visitor finds, and what a later start leaves and moves. */
@TestMethodOrder(OrderAnnotation.class)
class DemoIT {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private static Path folder;

    private static final TestClock CLOCK = TestClock.atStart();
    private static EmbeddedPostgres postgres;
    private static App app;
    private static DemoAccess access;

    @BeforeAll
    static void load() {
        postgres = TestDatabase.startEmpty(folder);
        app = TestApp.bare(postgres.logins(), CLOCK);
        access = app.demoLoader().load(Optional.empty(), ZONE).at("http://127.0.0.1:" + app.start());
        new DemoAccessFile(folder).write(access);
    }

    @AfterAll
    static void stop() {
        app.close();
        postgres.close();
    }

    @Test
    @Order(1)
    void accessFile_holdsWhatTheContractNames() throws IOException {
        JsonNode file = JSON.readTree(folder.resolve("demo-access.json").toFile());
        assertThat(file.path("baseUrl").asText()).startsWith("http://127.0.0.1:");
        assertThat(file.path("chapters")).hasSize(2);
        assertThat(schools(file.path("chapters").get(0))).hasSize(6);
        assertThat(file.path("chapters").get(0).path("tanks")).hasSize(8);
        assertThat(file.path("chapters").get(1).path("tanks")).hasSize(3);
        for (JsonNode chapter : file.path("chapters")) {
            assertThat(chapter.path("name").asText()).isNotEmpty();
            assertThat(chapter.path("chapterToken").asText()).isNotEmpty();
            assertThat(chapter.path("seasons").get(0).path("code").asText()).isNotEmpty();
            assertThat(chapter.path("people").findValuesAsText("role"))
                    .contains("coordinator", "mentor", "teacher");
            assertThat(chapter.path("people").findValuesAsText("password"))
                    .allSatisfy(password -> assertThat(password).hasSizeGreaterThanOrEqualTo(15));
            assertThat(chapter.path("tanks").findValuesAsText("token")).doesNotHaveDuplicates()
                    .doesNotContain("");
        }
    }

    @Test
    @Order(2)
    void everybodySignsIn() {
        access.chapters().forEach(chapter -> chapter.people().forEach(person ->
                assertThat(browser().signIn(person.email(), person.password()).status()).as(person.email())
                        .isEqualTo(303)));
    }

    @Test
    @Order(3)
    void rounds_rankEveryTankOfTheirOwnChapterOnly() throws IOException {
        for (DemoAccess.ChapterAccess chapter : access.chapters()) {
            JsonNode rounds = get("/api/v1/rounds", chapter.chapterToken()).path("rounds");
            assertThat(rounds.findValuesAsText("tank")).containsExactlyInAnyOrderElementsOf(
                    chapter.tanks().stream().map(DemoAccess.TankAccess::code).toList());
        }
        String stranger = access.chapters().get(1).chapterToken();
        String tank = access.chapters().get(0).tanks().get(0).code();
        assertThat(browser().bearer(stranger).get("/api/v1/tanks/" + tank + "/readings").status())
                .isEqualTo(404);
    }

    @Test
    @Order(4)
    void secondLoad_addsNothing() throws IOException {
        List<String> before = readingIds();
        assertThat(app.demoLoader().load(Optional.of(access), ZONE).chapters()).isEqualTo(access.chapters());
        assertThat(readingIds()).isEqualTo(before);
        assertThat(new StoryMove(postgres.logins().owner()).toToday(CLOCK.instant())).isZero();
    }

    @Test
    @Order(5)
    void laterDay_findsTheStoryMovedOnWithAllThatWasInIt() throws IOException {
        List<String> before = readingIds();
        Instant newest = newestReading();
        CLOCK.advance(Duration.ofHours(75));
        assertThat(new StoryMove(postgres.logins().owner()).toToday(CLOCK.instant())).isEqualTo(3);
        assertThat(new StoryMove(postgres.logins().owner()).toToday(CLOCK.instant())).isZero();
        assertThat(readingIds()).isEqualTo(before);
        assertThat(newestReading()).isEqualTo(newest.plus(Duration.ofDays(3)));
    }

    @Test
    @Order(6)
    void lostFile_bringsNewKeysAndEndsTheOldOnes() throws IOException {
        DemoAccess again = app.demoLoader().load(Optional.empty(), ZONE).at(access.baseUrl());
        String old = access.chapters().get(0).chapterToken();
        assertThat(browser().bearer(old).get("/api/v1/rounds").status()).isEqualTo(401);
        access = again;
        assertThat(get("/api/v1/rounds", access.chapters().get(0).chapterToken()).path("rounds")).hasSize(8);
        DemoAccess.PersonAccess person = access.chapters().get(0).people().get(0);
        assertThat(browser().signIn(person.email(), person.password()).status()).isEqualTo(303);
    }

    private static Set<String> schools(JsonNode chapter) {
        return new TreeSet<>(chapter.path("tanks").findValuesAsText("school"));
    }

    private static List<String> readingIds() throws IOException {
        List<String> ids = new ArrayList<>();
        for (DemoAccess.ChapterAccess chapter : access.chapters()) {
            for (DemoAccess.TankAccess tank : chapter.tanks()) {
                ids.addAll(get("/api/v1/tanks/" + tank.code() + "/readings?limit=500", tank.token())
                        .findValuesAsText("id"));
            }
        }
        assertThat(ids).hasSizeGreaterThan(500);
        return ids;
    }

    private static Instant newestReading() throws IOException {
        DemoAccess.TankAccess probed = access.chapters().get(0).tanks().get(0);
        return Instant.parse(get("/api/v1/tanks/" + probed.code() + "/readings?limit=1", probed.token())
                .path("readings").get(0).path("measuredAt").asText());
    }

    private static JsonNode get(String path, String token) throws IOException {
        Browserless.Answer answer = browser().bearer(token).get(path);
        assertThat(answer.status()).as(path).isEqualTo(200);
        return JSON.readTree(answer.body());
    }

    private static Browserless browser() {
        return new Browserless(access.baseUrl());
    }
}
