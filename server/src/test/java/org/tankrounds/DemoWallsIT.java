package org.tankrounds;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.db.Pools;
import org.tankrounds.db.Transactions;
import org.tankrounds.demo.DemoAccess;
import org.tankrounds.demo.DemoAccess.ChapterAccess;
import org.tankrounds.demo.DemoAccess.PersonAccess;
import org.tankrounds.demo.DemoAccess.TankAccess;
import org.tankrounds.migrations.EmbeddedPostgres;
import org.tankrounds.migrations.Login;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Crawler;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;
import org.tankrounds.testing.TestDatabase;

/** The demo's two chapters: everybody follows every link there is, and comes across nothing of the others. */
class DemoWallsIT {
    /** Whatever a chapter's things are called by. */
    private static final String NAMES = """
            SELECT code FROM chapters UNION SELECT name FROM chapters UNION SELECT code FROM people
            UNION SELECT name FROM people UNION SELECT email FROM people UNION SELECT code FROM schools
            UNION SELECT name FROM schools UNION SELECT code FROM tanks UNION SELECT code FROM seasons
            UNION SELECT code FROM readings""";

    @TempDir
    private static Path folder;

    private static EmbeddedPostgres postgres;
    private static App app;
    private static DemoAccess access;
    /** By chapter. */
    private static List<Set<String>> names;
    /** By chapter and person: what each address answered. */
    private static final List<Map<PersonAccess, Map<String, Answer>>> CRAWLED = new ArrayList<>();

    @BeforeAll
    static void everybodyFollowsEveryLink() {
        postgres = TestDatabase.startEmpty(folder);
        app = TestApp.bare(postgres.logins(), TestClock.atStart());
        access = app.demoLoader().load(Optional.empty(), ZoneId.of("America/New_York"))
                .at("http://127.0.0.1:" + app.start());
        names = names(postgres.logins().application());
        access.chapters().forEach(chapter -> CRAWLED.add(chapter.people().stream().collect(
                Collectors.toMap(person -> person, person -> Crawler.crawl(signedIn(person), "/")))));
    }

    @AfterAll
    static void stop() {
        app.close();
        postgres.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void everyLink_leadsSomewhere(int chapter) {
        CRAWLED.get(chapter).forEach((person, pages) -> {
            assertThat(pages).as("found by %s", person.email()).hasSizeGreaterThan(10);
            pages.forEach((address, answer) ->
                    assertThat(answer.status()).as("%s for %s", address, person.email())
                    .isIn(200, 303));
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void noPage_showsAnythingOfTheOtherChapter(int chapter) {
        assertThat(names.get(1 - chapter)).hasSizeGreaterThan(100);
        CRAWLED.get(chapter).forEach((person, pages) -> pages.forEach((address, answer) -> assertThat(
                othersNames(chapter, answer)).as("%s for %s", address, person.email()).isEmpty()));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void noAnswerToAScript_showsAnythingOfTheOtherChapter(int chapter) {
        ChapterAccess own = access.chapters().get(chapter);
        ChapterAccess other = access.chapters().get(1 - chapter);
        for (String token : tokens(own)) {
            addresses(own).forEach((address, ofTheChapterItself) -> {
                Answer answer = browser().bearer(token).get(address);
                assertThat(answer.status()).as(address).isIn(200, 403, 404);
                assertThat(othersNames(chapter, answer)).as(address).isEmpty();
            });
            addresses(other).forEach((address, ofTheChapterItself) -> {
                Answer answer = browser().bearer(token).get(address);
                int refusal = ofTheChapterItself && !token.equals(own.chapterToken()) ? 403 : 404;
                assertThat(answer.status()).as(address).isEqualTo(refusal);
                assertThat(answer.body().replace(address, "")).as(address).doesNotContain(other.name());
            });
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void everyAddressOfTheOtherChapter_doesNotExist(int chapter) {
        Set<String> others = pages(1 - chapter);
        others.removeAll(pages(chapter));
        assertThat(others).hasSizeGreaterThan(30);
        Map<String, PersonAccess> oneOfEachRole = access.chapters().get(chapter).people().stream()
                .collect(Collectors.toMap(PersonAccess::role, person -> person, (one, more) -> one));
        oneOfEachRole.values().forEach(person -> {
            Browserless browser = signedIn(person);
            others.forEach(address -> assertThat(browser.get(address).status())
                    .as("%s for %s", address, person.email()).isEqualTo(404));
        });
    }

    @Test
    void teachers_reachTheirOwnTanksOnly() {
        for (int chapter = 0; chapter < 2; chapter++) {
            CRAWLED.get(chapter).forEach((person, pages) -> {
                if (person.role().equals("teacher")) {
                    assertThat(tanksThatAnswer(person)).isEqualTo(tanksIn(pages.keySet())).isNotEmpty();
                }
            });
        }
    }

    private static Set<String> tanksThatAnswer(PersonAccess person) {
        Browserless browser = signedIn(person);
        return allTanks().stream().filter(code -> browser.get("/tanks/" + code).status() != 404)
                .collect(Collectors.toSet());
    }

    private static Set<String> tanksIn(Set<String> addresses) {
        return allTanks().stream().filter(code -> addresses.contains("/tanks/" + code))
                .collect(Collectors.toSet());
    }

    private static List<String> allTanks() {
        return access.chapters().stream().flatMap(chapter -> chapter.tanks().stream()).map(TankAccess::code)
                .toList();
    }

    /** Every address that somebody of a chapter came across. */
    private static Set<String> pages(int chapter) {
        return CRAWLED.get(chapter).values().stream().flatMap(pages -> pages.keySet().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> othersNames(int chapter, Answer answer) {
        Set<String> words = new HashSet<>(List.of(answer.body().split("\\W+")));
        return names.get(1 - chapter).stream()
                .filter(name -> isCode(name) ? words.contains(name) : answer.body().contains(name)).toList();
    }

    /** There are thousands of codes, and they stand by themselves. */
    private static boolean isCode(String name) {
        return name.chars().allMatch(Character::isLetterOrDigit);
    }

    private static List<String> tokens(ChapterAccess chapter) {
        List<String> tokens = new ArrayList<>(chapter.tanks().stream().map(TankAccess::token).toList());
        tokens.add(chapter.chapterToken());
        return tokens;
    }

    /** What a chapter's things answer to scripts, and whether that is a matter of the whole chapter. */
    private static Map<String, Boolean> addresses(ChapterAccess chapter) {
        Map<String, Boolean> addresses = new LinkedHashMap<>();
        chapter.tanks()
                .forEach(tank ->
                        addresses.put("/api/v1/tanks/" + tank.code() + "/readings?limit=500", false));
        for (DemoAccess.SeasonAccess season : chapter.seasons()) {
            for (String format : List.of("", ".json", ".csv", ".xlsx", ".pdf")) {
                addresses.put("/api/v1/seasons/" + season.code() + "/summary" + format, true);
            }
        }
        return addresses;
    }

    private static List<Set<String>> names(Login login) {
        try (HikariDataSource pool = Pools.open(login, "tests")) {
            Transactions transactions = new Transactions(pool);
            return transactions.chapterIds().stream().map(chapterId -> transactions.inChapter(chapterId,
                    tx -> Set.copyOf(tx.fetch(NAMES).getValues(0, String.class)))).toList();
        }
    }

    private static Browserless signedIn(PersonAccess person) {
        Browserless browser = browser();
        assertThat(browser.signIn(person.email(), person.password()).status()).isEqualTo(303);
        return browser;
    }

    private static Browserless browser() {
        return new Browserless(access.baseUrl());
    }
}
