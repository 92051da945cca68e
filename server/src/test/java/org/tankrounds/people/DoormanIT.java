package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.Javalin;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.config.Config;
import org.tankrounds.config.ConfigReader;
import org.tankrounds.places.TankRepository;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestClock;
import org.tankrounds.testing.TestDatabase;
import org.tankrounds.web.Assets;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Errors;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Role;
import org.tankrounds.web.WebServer;

/** The door in front of routes of this test's own, one of each kind. */
class DoormanIT {
    private static final TestClock CLOCK = TestClock.atStart();
    private static Cast cast;
    private static Javalin server;
    private static Sessions sessions;

    @BeforeAll
    static void start() {
        var transactions = TestDatabase.shared().transactions();
        cast = Cast.add(transactions, "Doorman Chapter");
        Config config = ConfigReader.read(Map.of()).withPort(0);
        Assets assets = new Assets();
        Pages pages = new Pages(assets, CLOCK);
        ObjectMapper json = new ObjectMapper();
        sessions = new Sessions(transactions, CLOCK);
        Cookies cookies = new Cookies(false);
        SignIn signIn =
                new SignIn(transactions, new PersonRepository(), new PasswordHashes(), sessions, CLOCK);
        Doorman doorman = new Doorman(sessions, new Bearers(transactions, CLOCK), cookies,
                new FormGuard(Optional.empty(), Set.of()), new SignInHandlers(
                        signIn, sessions, cookies, new FormReach(transactions, new TankRepository()), pages));
        server = WebServer.create(config, json, assets, new Errors(pages, json), doorman, (ctx, ms) -> {},
                javalin -> {
            javalin.routes.get("/api/v1/tank", ctx -> ctx.result(Caller.of(ctx).name()), Role.TOKENS);
            javalin.routes.post("/api/v1/tank", ctx -> ctx.result("stored"), Role.TOKENS);
            javalin.routes.get("/api/v1/chapter", ctx -> ctx.result("all"), Role.CHAPTER_TOKEN);
            javalin.routes.get("/page", ctx -> ctx.result(Caller.of(ctx).name()), Role.SIGNED_IN);
            javalin.routes.get("/nobody", ctx -> ctx.result("never"));
            javalin.routes.get("/api/v1/nobody", ctx -> ctx.result("never"));
        }).start();
    }

    @AfterAll
    static void stop() {
        server.stop();
    }

    @Test
    void aTanksToken_opensItsTank_andNothingOfTheChapter() {
        Browserless probe = script().bearer(cast.tankA().token());

        assertThat(probe.get("/api/v1/tank").body()).isEqualTo("probe of " + cast.tankA().code());
        Answer refused = probe.get("/api/v1/chapter");
        assertThat(refused.status()).isEqualTo(403);
        assertThat(refused.header("www-authenticate")).hasValueSatisfying(
                header -> assertThat(header).contains("error=\"insufficient_scope\""));
        assertThat(refused.header("content-type").orElseThrow()).startsWith("application/problem+json");
    }

    @Test
    void aChaptersToken_opensBoth() {
        Browserless logger = script().bearer(cast.chapterToken());

        assertThat(logger.get("/api/v1/tank").status()).isEqualTo(200);
        assertThat(logger.get("/api/v1/chapter").status()).isEqualTo(200);
        assertThat(logger.postJson("/api/v1/tank", "{}").status()).as("no form token is asked for")
                .isEqualTo(200);
    }

    @Test
    void withoutAToken_theApiSaysWhatIsNeeded() {
        Answer answer = script().get("/api/v1/tank");

        assertThat(answer.status()).isEqualTo(401);
        assertThat(answer.header("www-authenticate")).contains("Bearer realm=\"tankrounds\"");
        assertThat(answer.header("content-type").orElseThrow()).startsWith("application/problem+json");
        assertThat(answer.body()).contains("A bearer token is needed").contains("\"status\":401");
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "Bearer tkr_AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA", "Bearer nonsense", "Bearer", "Bearer  ",
        "Basic Y29yYTpzZWNyZXQ=", "tkr_AAAA", "Bearer tkr_a b", "Bearer \u00e9"
    })
    void aTokenThatIsNone_isRefusedAsOne(String authorization) {
        Answer answer = script().header("Authorization", authorization).get("/api/v1/tank");

        assertThat(answer.status()).isEqualTo(401);
        assertThat(answer.header("www-authenticate")).hasValueSatisfying(
                header -> assertThat(header).contains("error=\"invalid_token\""));
    }

    @Test
    void aRevokedToken_opensNothing() {
        var transactions = TestDatabase.shared().transactions();
        TokenRepository tokens = new TokenRepository();
        TokenRepository.Issued issued = transactions.inChapter(cast.chapterId(), tx -> tokens.issue(
                tx, cast.chapterId(), java.util.OptionalInt.empty(), "short-lived", CLOCK.instant()));
        Browserless logger = script().bearer(issued.secret());
        assertThat(logger.get("/api/v1/chapter").status()).isEqualTo(200);
        assertThat(transactions.inChapter(cast.chapterId(), tx -> tokens.list(tx, cast.chapterId())).get(0)
                .lastUsedAt())
                .contains(CLOCK.instant());

        transactions.inChapter(cast.chapterId(),
                tx -> tokens.revoke(tx, cast.chapterId(), issued.tokenId(), CLOCK.instant()));

        assertThat(logger.get("/api/v1/chapter").status()).isEqualTo(401);
    }

    @Test
    void theApiDoesNotLookAtCookies_andPagesDoNotLookAtTokens() {
        Cast.Member mentor = cast.mentor();
        String session = TestDatabase.shared().transactions().inChapter(cast.chapterId(),
                tx -> sessions.open(tx, cast.chapterId(), mentor.personId(), mentor.role()));
        Browserless browser = script();
        browser.cookies().put("tkr", session);

        assertThat(browser.get("/page").body()).isEqualTo(mentor.name());
        assertThat(browser.get("/api/v1/tank").status()).isEqualTo(401);
        assertThat(script().bearer(cast.chapterToken()).get("/page").status()).isEqualTo(303);
    }

    @Test
    void aRouteWithoutRoles_refusesEverybody() {
        assertThat(script().get("/nobody").status()).isEqualTo(404);
        assertThat(script().bearer(cast.chapterToken()).get("/api/v1/nobody").status()).isEqualTo(404);
    }

    private static Browserless script() {
        return new Browserless("http://127.0.0.1:" + server.port());
    }
}
