package org.tankrounds.walls;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.PEOPLE;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tankrounds.App.Route;
import org.tankrounds.description.Description;
import org.tankrounds.description.Description.Operation;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;
import org.tankrounds.walls.Expectations.Visitor;

/** Every route that the service has, asked for the things of one chapter by everybody there is. */
class RouteMatrixIT {
    private static final TestApp APP = TestApp.shared();
    private static final Pattern PARAMETER = Pattern.compile("\\{(\\w+)}");
    private static final Pattern ASSET = Pattern.compile("/assets/[^\"]+");

    private static final Map<Visitor, Browserless> VISITORS = new EnumMap<>(Visitor.class);
    private static MarkedChapter here;
    private static MarkedChapter elsewhere;

    @BeforeAll
    static void comeIn() {
        here = MarkedChapter.add(APP, "Marlstone");
        elsewhere = MarkedChapter.add(APP, "Quillwater");
        people(here, Visitor.TEACHER, Visitor.MENTOR, Visitor.COORDINATOR);
        people(elsewhere, Visitor.TEACHER_ELSEWHERE, Visitor.MENTOR_ELSEWHERE, Visitor.COORDINATOR_ELSEWHERE);
        VISITORS.put(Visitor.OTHER_TEACHER, APP.signedIn(here.cast().teacherB()));
        VISITORS.put(Visitor.NOBODY, APP.browser());
        VISITORS.put(Visitor.DISABLED, APP.signedIn(here.disabled()));
        APP.transactions().inChapter(here.cast().chapterId(), tx -> tx.update(PEOPLE)
                .set(PEOPLE.DISABLED_AT, TestClock.START)
                .where(PEOPLE.PERSON_ID.eq(here.disabled().personId())).execute());
        token(Visitor.TANK_TOKEN, here.cast().tankA().token());
        token(Visitor.OTHER_TANKS_TOKEN, here.cast().tankB().token());
        token(Visitor.TANK_TOKEN_ELSEWHERE, elsewhere.cast().tankA().token());
        token(Visitor.CHAPTER_TOKEN, here.cast().chapterToken());
        token(Visitor.CHAPTER_TOKEN_ELSEWHERE, elsewhere.cast().chapterToken());
        token(Visitor.REVOKED_TOKEN, here.revokedToken());
        // The second card of a tank ends the first.
        card(Visitor.REVOKED_CARD, APP.newCard(here.cast(), here.cast().tankA()));
        card(Visitor.CARD, APP.newCard(here.cast(), here.cast().tankA()));
        card(Visitor.OTHER_TANKS_CARD, APP.newCard(here.cast(), here.cast().tankB()));
        card(Visitor.CARD_ELSEWHERE, APP.newCard(elsewhere.cast(), elsewhere.cast().tankA()));
        // Every form sends back the token of its sender's own page.
        VISITORS.values().forEach(visitor -> visitor.get("/account"));
        VISITORS.values().forEach(visitor -> visitor.get("/sign-in"));
    }

    /** Signing out comes last: it ends what the others need. */
    static Stream<Route> routes() {
        return APP.routes().stream().sorted(Comparator.comparing(route -> route.path().equals("/sign-out")));
    }

    @Test
    void theTable_holdsEveryRoute_andNoneThatIsGone() {
        assertThat(Expectations.known()).containsExactlyInAnyOrderElementsOf(
                APP.routes().stream().map(route -> route.method() + " " + route.path()).toList());
    }

    @ParameterizedTest
    @MethodSource("routes")
    void everybody_getsWhatIsTheirs_andNothingElse(Route route) {
        Map<Visitor, String> expected = Expectations.of(route.method(), route.path()).orElseThrow();
        SoftAssertions all = new SoftAssertions();
        // Those who may come last: what they do cannot help those who may not.
        Stream.of(Visitor.values())
                .sorted(Comparator.comparing(visitor -> expected.get(visitor).equals("own")))
                .forEach(visitor -> all.check(() -> {
                    Answer answer = ask(VISITORS.get(visitor), route);
                    String asked = visitor + " " + route.method() + " " + route.path();
                    assertThat(outcome(answer, route)).as("%s: %s", asked, start(answer.body()))
                            .isEqualTo(expected.get(visitor).equals("own") ? "yes" : expected.get(visitor));
                    Guarded.check(asked, answer);
                    assertThat(marksIn(answer, hiddenFrom(visitor), address(route))).as("read by %s", asked)
                            .isEmpty();
                    assertThat(asDescribed(route, answer)).as(asked).isEmpty();
                }));
        all.assertAll();
    }

    /** What may not be read by a visitor: the other chapter, and the tank of another class. */
    private static Set<String> hiddenFrom(Visitor visitor) {
        Set<String> hidden = new HashSet<>();
        boolean outside = visitor.name().endsWith("ELSEWHERE");
        boolean nobody = Set.of(Visitor.NOBODY, Visitor.DISABLED, Visitor.REVOKED_TOKEN,
                Visitor.REVOKED_CARD).contains(visitor);
        if (outside || nobody) {
            hidden.addAll(here.marks());
        }
        if (!outside) {
            hidden.addAll(elsewhere.marks());
        }
        if (visitor == Visitor.CARD) {
            here.cast().members().forEach(member -> hidden.addAll(Set.of(member.code(), member.email())));
        }
        if (Set.of(Visitor.OTHER_TEACHER, Visitor.OTHER_TANKS_TOKEN, Visitor.OTHER_TANKS_CARD).contains(visitor)) {
            hidden.addAll(here.marksOfTankA());
        }
        if (Set.of(Visitor.TEACHER, Visitor.TANK_TOKEN, Visitor.CARD).contains(visitor)) {
            hidden.addAll(here.marksOfTankB());
        }
        return hidden;
    }

    /** An answer may repeat the address that it was asked for. */
    private static List<String> marksIn(Answer answer, Set<String> hidden, String address) {
        String path = address.contains("?") ? address.substring(0, address.indexOf('?')) : address;
        String text = answer.body().replace(address, "").replace(path, "");
        return hidden.stream().filter(text::contains).toList();
    }

    private static List<String> asDescribed(Route route, Answer answer) {
        return route.path().startsWith("/api/")
                ? Description.get().differences(new Operation(route.method(), route.path()), answer)
                : List.of();
    }

    private static String outcome(Answer answer, Route route) {
        boolean forEverybody = Expectations.of(route.method(), route.path()).orElseThrow()
                .containsValue("yes");
        boolean signIn = answer.status() == 303 && answer.location().startsWith("/sign-in")
                || answer.status() == 403 && answer.body().contains("type=\"password\"");
        if (signIn && !forEverybody) {
            return "ask";
        }
        return switch (answer.status()) {
            case 200, 201, 303, 400, 409, 422 -> "yes";
            case 404 -> "-";
            default -> Integer.toString(answer.status());
        };
    }

    private static Answer ask(Browserless browser, Route route) {
        String address = address(route);
        return switch (route.method()) {
            case "GET" -> browser.get(address);
            case "HEAD" -> browser.head(address);
            default -> route.path().startsWith("/api/") ? script(browser, address) : browser.post(address);
        };
    }

    private static Answer script(Browserless browser, String address) {
        browser.header("Idempotency-Key", UUID.randomUUID().toString());
        String type = address.endsWith(":batch") ? "application/x-ndjson" : "application/json";
        return browser.send("POST", address, type, "{}".getBytes(StandardCharsets.UTF_8));
    }

    private static String address(Route route) {
        if (route.path().startsWith("/assets/")) {
            Matcher asset = ASSET.matcher(APP.browser().get("/sign-in").body());
            assertThat(asset.find()).isTrue();
            return asset.group();
        }
        String path = PARAMETER.matcher(route.path()).replaceAll(name -> here.things().get(name.group(1)));
        return path + query(route.path());
    }

    private static String query(String path) {
        for (String name : List.of("kit", "room")) {
            if (path.endsWith("/" + name)) {
                return "?" + name + "=" + URLEncoder.encode(here.things().get(name), StandardCharsets.UTF_8);
            }
        }
        return "";
    }

    private static void people(MarkedChapter chapter, Visitor teacher, Visitor mentor, Visitor coordinator) {
        Cast cast = chapter.cast();
        VISITORS.put(teacher, APP.signedIn(cast.teacherA()));
        VISITORS.put(mentor, APP.signedIn(cast.mentor()));
        VISITORS.put(coordinator, APP.signedIn(cast.coordinator()));
    }

    private static void card(Visitor visitor, String code) {
        Browserless browser = APP.browser();
        assertThat(browser.comeIn(code).status()).isEqualTo(303);
        VISITORS.put(visitor, browser);
    }

    private static void token(Visitor visitor, String token) {
        VISITORS.put(visitor, APP.bearer(token));
    }

    private static String start(String body) {
        return body.substring(0, Math.min(200, body.length()));
    }
}
