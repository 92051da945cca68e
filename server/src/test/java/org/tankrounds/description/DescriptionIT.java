package org.tankrounds.description;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tankrounds.App;
import org.tankrounds.description.Description.Operation;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.web.Role;

/** The description against the service: the same routes, and every example answered as it says. */
class DescriptionIT {
    private static final List<String> PARTS_OF_PAGES = List.of("/assets/{hash}/{file}", "/sw.js", "/app.webmanifest");
    private static final Description DESCRIPTION = Description.get();
    private static final TestApp APP = TestApp.shared();
    private static final Cast CAST = Cast.add(APP.transactions(), "Described Chapter");
    private static final ObjectMapper JSON = new ObjectMapper();

    /** @param name that the request's example shares with the answer's */
    private record Example(Operation operation, String name, String type, String body) {
        @Override
        public String toString() {
            return operation.method() + " " + operation.path() + ": " + name;
        }
    }

    static Stream<Example> requests() {
        return DESCRIPTION.operations().stream().flatMap(operation -> DESCRIPTION
                .onlyMedia(DESCRIPTION.operation(operation).path("requestBody")).stream()
                .flatMap(media -> media.getValue().path("examples").properties().stream().map(example -> new Example(
                        operation, example.getKey(), media.getKey(), text(example.getValue().get("value"))))));
    }

    static Stream<Operation> questions() {
        return DESCRIPTION.operations().stream().filter(operation -> !operation.method().equals("POST"));
    }

    @Test
    void everyRouteForScriptsAndOperators_isDescribed_andNoOther() {
        List<Operation> routes = APP.routes().stream().filter(route -> !isPage(route))
                .map(route -> new Operation(route.method(), route.path())).toList();

        assertThat(DESCRIPTION.operations()).containsExactlyInAnyOrderElementsOf(routes);
    }

    @ParameterizedTest
    @MethodSource("requests")
    void everyExampleOfARequest_isAnsweredAsTheExampleOfTheSameName(Example example) throws Exception {
        for (String token : tokens(example.operation())) {
            Answer answer = send(example, token, UUID.randomUUID().toString());

            assertThat(Integer.toString(answer.status())).isEqualTo(status(example));
            assertThat(DESCRIPTION.differences(example.operation(), answer)).isEmpty();
            if (answer.status() >= 400) {
                JsonNode shown = answerExample(example, status(example));
                JsonNode given = JSON.readTree(answer.body());
                assertThat(given.get("title")).isEqualTo(shown.get("title"));
                assertThat(given.get("errors")).containsExactlyInAnyOrderElementsOf(shown.get("errors"));
            }
        }
    }

    @Test
    void theSameKeyAgain_isAnsweredAsDescribed() {
        Example visit = example("visit");
        Example note = example("onlyANote");
        String key = UUID.randomUUID().toString();
        List<Answer> answers = List.of(send(visit, CAST.chapterToken(), key), send(visit, CAST.chapterToken(), key),
                send(note, CAST.chapterToken(), key));

        assertThat(answers).extracting(Answer::status).containsExactly(201, 200, 409);
        assertThat(answers).allSatisfy(answer ->
                assertThat(DESCRIPTION.differences(visit.operation(), answer)).isEmpty());
    }

    @ParameterizedTest
    @MethodSource("questions")
    void everyQuestion_isAnsweredAsDescribed(Operation operation) {
        send(example("visit"), CAST.chapterToken(), "described");
        for (String token : tokens(operation)) {
            Browserless browser = APP.bearer(token);
            headers(operation).forEach(browser::header);
            String address = address(operation.path()) + query(operation);
            Answer answer = operation.method().equals("HEAD") ? browser.head(address) : browser.get(address);

            assertThat(answer.status()).as(answer.body()).isEqualTo(200);
            assertThat(DESCRIPTION.differences(operation, answer)).isEmpty();
        }
    }

    @Test
    void roundsThatStand_areNotSentAgain() {
        Operation rounds = new Operation("GET", "/api/v1/rounds");
        String address = rounds.path() + "?asOf=2026-01-12T12:00:00Z";
        Browserless script = APP.bearer(CAST.chapterToken());
        String tag = script.get(address).header("etag").orElseThrow();

        Answer again = script.header("If-None-Match", tag).get(address);

        assertThat(again.status()).isEqualTo(304);
        assertThat(again.body()).isEmpty();
        assertThat(DESCRIPTION.differences(rounds, again)).isEmpty();
    }

    @Test
    void aMisspeltQuestion_isRefused_insteadOfAnsweredWithoutIt() {
        Answer answer = APP.bearer(CAST.chapterToken()).get("/api/v1/rounds?asof=2026-01-12T12:00:00Z");

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body()).contains("\"/asof\"").contains("the parameters are asOf, limit");
    }

    @Test
    void theService_handsOutThisVeryDescription() {
        Answer answer = APP.browser().get("/openapi.yaml");

        assertThat(answer.body()).startsWith("openapi: 3.1.0").contains("/api/v1/readings:batch");
        assertThat(answer.header("content-type").orElseThrow()).startsWith("application/yaml");
    }

    /** Pages are for people: what is neither for scripts nor open to an operator's watch. */
    private static boolean isPage(App.Route route) {
        boolean forScripts = route.path().startsWith("/api/");
        boolean forOperators = route.roles().contains(Role.OPEN) && !PARTS_OF_PAGES.contains(route.path());
        return !forScripts && !forOperators;
    }

    /** One for each kind of token that the operation names. */
    private static List<String> tokens(Operation operation) {
        Map<String, String> tokens = Map.of("tankToken", CAST.tankA().token(), "chapterToken", CAST.chapterToken());
        List<String> named = new ArrayList<>();
        DESCRIPTION.operation(operation).path("security").forEach(one -> one.fieldNames().forEachRemaining(
                scheme -> named.add(tokens.getOrDefault(scheme, "none"))));
        return named.isEmpty() ? List.of("none") : named;
    }

    private static Answer send(Example example, String token, String key) {
        return APP.bearer(token).header("Idempotency-Key", key).send("POST", address(example.operation().path()),
                example.type(), example.body().replace("t7k2pd", CAST.tankA().code()).getBytes(StandardCharsets.UTF_8));
    }

    private static String address(String path) {
        return path.replace("{tank}", CAST.tankA().code()).replace("{season}", CAST.season())
                .replace("{reading}", path.contains("{reading}") ? anyReading() : "");
    }

    private static String anyReading() {
        try {
            String list = APP.bearer(CAST.tankA().token())
                    .get("/api/v1/tanks/" + CAST.tankA().code() + "/readings?limit=1").body();
            return JSON.readTree(list).at("/readings/0/id").asText();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String query(Operation operation) {
        String query = examplesIn(operation, "query").entrySet().stream()
                .map(one -> one.getKey() + "=" + URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return query.isEmpty() ? "" : "?" + query;
    }

    private static Map<String, String> headers(Operation operation) {
        return examplesIn(operation, "header");
    }

    private static Map<String, String> examplesIn(Operation operation, String place) {
        Map<String, String> examples = new TreeMap<>();
        DESCRIPTION.parameters(operation).stream()
                .filter(parameter -> parameter.path("in").asText().equals(place) && parameter.has("example"))
                .forEach(parameter -> examples.put(parameter.get("name").asText(), parameter.get("example").asText()));
        return examples;
    }

    private static Example example(String name) {
        return requests().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    }

    private static String status(Example example) {
        List<String> statuses = DESCRIPTION.operation(example.operation()).path("responses").properties().stream()
                .map(Map.Entry::getKey)
                .filter(status -> !answerExample(example, status).isMissingNode()).toList();
        assertThat(statuses).as("answers that have an example of this name").hasSize(1);
        return statuses.get(0);
    }

    private static JsonNode answerExample(Example example, String status) {
        JsonNode responses = DESCRIPTION.operation(example.operation()).path("responses");
        return DESCRIPTION.onlyMedia(DESCRIPTION.resolved(responses.path(status)))
                .map(media -> media.getValue().path("examples").path(example.name()).path("value"))
                .orElse(MissingNode.getInstance());
    }

    private static String text(JsonNode example) {
        return example.isTextual() ? example.textValue() : example.toString();
    }
}
