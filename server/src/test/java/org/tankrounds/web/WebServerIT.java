package org.tankrounds.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.Javalin;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.config.ConfigReader;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.TestClock;

/** What every answer has in common, on routes of this test's own. */
class WebServerIT {
    private static final Assets ASSETS = new Assets();
    private static Javalin server;
    private static Javalin overTls;

    @BeforeAll
    static void start() {
        server = create(Map.of()).start();
        overTls = create(Map.of("TANKROUNDS_BASE_URL", "https://tanks.example")).start();
    }

    @AfterAll
    static void stop() {
        server.stop();
        overTls.stop();
    }

    @ParameterizedTest
    @CsvSource({
        "/fine, 200", "/moved, 303", "/unchanged, 304", "/nothing-of-the-kind, 404", "/broken, 500",
                "/refused, 422",
        "/api/v1/fine, 200", "/api/v1/nothing, 404", "/api/v1/broken, 500", "asset, 200"
    })
    void everyAnswer_tellsTheBrowserWhatItMayNotDo(String path, int status) {
        Answer answer = get(server, path.equals("asset") ? ASSETS.path("tankrounds.css") : path);

        assertThat(answer.status()).isEqualTo(status);
        assertThat(answer.header("content-security-policy")).hasValueSatisfying(policy -> assertThat(policy)
                .contains("default-src 'none'", "script-src 'self'", "style-src 'self'", "form-action 'self'",
                        "base-uri 'none'", "frame-ancestors 'none'")
                .doesNotContain("unsafe"));
        assertThat(answer.header("x-content-type-options")).contains("nosniff");
        assertThat(answer.header("referrer-policy")).contains("same-origin");
        assertThat(answer.header("cross-origin-opener-policy")).contains("same-origin");
        assertThat(answer.header("permissions-policy")).isPresent();
        assertThat(answer.header("cache-control")).isPresent();
        assertThat(answer.header("server")).isEmpty();
        assertThat(answer.header("strict-transport-security")).as("not on plain http").isEmpty();
    }

    @Test
    void overTls_browsersAreToldToStayThere() {
        assertThat(get(overTls, "/fine").header("strict-transport-security")).isPresent();
    }

    @Test
    void pagesAreNotKept_andAssetsAreKeptForEver() {
        assertThat(get(server, "/fine").header("cache-control")).contains("private, no-store");
        assertThat(get(server, ASSETS.path("tankrounds.css")).header("cache-control"))
                .contains("public, max-age=31536000, immutable");
        assertThat(get(server, "/assets/000000000000/tankrounds.css").status()).isEqualTo(404);
    }

    @Test
    void aFailure_givesAReference_andNothingElse() {
        Answer page = get(server, "/broken");
        Answer api = get(server, "/api/v1/broken");

        assertThat(page.body()).contains("Something went wrong on our side.")
                .containsPattern("Reference \\w{8}")
                .doesNotContain("a secret cause").doesNotContain("Exception");
        assertThat(api.header("content-type").orElseThrow()).startsWith("application/problem+json");
        assertThat(api.body()).doesNotContain("a secret cause").doesNotContain("Exception");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/%2e%2e/fine", "/a/%2e%2e/fine", "/fine;x=1", "/fi%2fne", "/%00", "/fine%5c"})
    void ambiguousAddresses_areRefused(String path) {
        assertThat(get(server, path).status()).isIn(400, 404);
    }

    private static Answer get(Javalin server, String path) {
        return new Browserless("http://127.0.0.1:" + server.port()).get(path);
    }

    private static Javalin create(Map<String, String> environment) {
        ObjectMapper json = new ObjectMapper();
        Errors errors = new Errors(new Pages(ASSETS, TestClock.atStart()), json);
        return WebServer.create(ConfigReader.read(environment).withPort(0), json, ASSETS, errors, ctx -> {},
                (ctx, ms) -> {}, javalin -> {
                    javalin.routes.get("/fine", ctx -> ctx.html("<p>fine</p>"), Role.ANYBODY);
                    javalin.routes.get("/moved", ctx -> ctx.status(303).header("Location", "/fine"),
                            Role.ANYBODY);
                    javalin.routes.get("/unchanged", ctx -> ctx.status(304), Role.ANYBODY);
                    javalin.routes.get("/refused", ctx -> {
                        throw RefusedException.of(422, "Not like this.");
                    }, Role.ANYBODY);
                    javalin.routes.get("/broken", ctx -> {
                        throw new IllegalStateException("a secret cause");
                    }, Role.ANYBODY);
                    javalin.routes.get("/api/v1/fine", ctx -> ctx.result("fine"), Role.ANYBODY);
                    javalin.routes.get("/api/v1/broken", ctx -> {
                        throw new IllegalStateException("a secret cause");
                    }, Role.ANYBODY);
                });
    }
}
