package org.tankrounds.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tankrounds.App;
import org.tankrounds.migrations.EmbeddedPostgres;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;
import org.tankrounds.testing.TestDatabase;

/** What an operator's watch sees, in good days and without a database. */
class WatchIT {
    private static final TestApp APP = TestApp.shared();
    private static final Pattern NAME = Pattern.compile("[a-zA-Z_:][a-zA-Z0-9_:]*");
    private static final Pattern SAMPLE = Pattern.compile("(" + NAME + ")(?:\\{(.*)})? (\\S+)(?: -?\\d+)?");
    private static final Pattern LABEL =
            Pattern.compile("([a-zA-Z_][a-zA-Z0-9_]*)=\"((?:[^\"\\\\\\n]|\\\\[\\\\n\"])*)\",?");
    private static final Set<String> TYPES = Set.of("counter", "gauge", "histogram", "summary", "untyped");

    @TempDir
    private Path folder;

    @Test
    void withoutItsDatabase_theServiceLives_andSaysHonestlyThatItIsNotReady() throws Exception {
        EmbeddedPostgres postgres = TestDatabase.startEmpty(folder);
        try (App app = TestApp.bare(postgres.logins(), TestClock.atStart())) {
            Browserless browser = new Browserless("http://127.0.0.1:" + app.start());
            assertThat(browser.get("/readyz").body()).isEqualTo("ready\n");

            postgres.close();

            Answer ready = browser.get("/readyz");
            assertThat(ready.status()).isEqualTo(503);
            assertThat(ready.body()).startsWith("the database ");
            assertThat(browser.head("/readyz").status()).isEqualTo(503);
            assertThat(browser.get("/healthz").status()).isEqualTo(200);
            assertThat(browser.get("/metrics").status()).isEqualTo(200);
            assertThat(browser.get("/openapi.yaml").status()).isEqualTo(200);
            Answer script = browser.bearer("tkr_something").get("/api/v1/rounds");
            assertThat(script.status()).isEqualTo(503);
            assertThat(script.header("retry-after")).isPresent();
            assertThat(new ObjectMapper().readTree(script.body()).path("status").asInt()).isEqualTo(503);
            browser.cookies().put("tkr", "a-session-that-cannot-be-looked-up");
            Answer page = browser.get("/rounds");
            assertThat(page.status()).isEqualTo(503);
            assertThat(page.header("retry-after")).isPresent();
            assertThat(page.body()).contains("The database does not answer just now.")
                    .doesNotContain("Exception");
        }
    }

    /** By the rules of the Prometheus text exposition format 0.0.4. */
    @Test
    void metrics_areWellFormed() {
        APP.browser().get("/sign-in");
        Answer answer = APP.browser().get("/metrics");
        assertThat(answer.header("content-type")).contains("text/plain; version=0.0.4; charset=utf-8");
        assertThat(answer.body()).endsWith("\n").contains("tankrounds_request_duration_seconds");

        Map<String, String> types = new HashMap<>();
        Set<String> series = new HashSet<>();
        for (String line : answer.body().split("\n")) {
            if (line.startsWith("# TYPE ")) {
                String[] parts = line.split(" ");
                assertThat(TYPES).contains(parts[3]);
                assertThat(types.put(parts[2], parts[3])).as("typed once: %s", line).isNull();
            } else if (!line.startsWith("#")) {
                Matcher sample = SAMPLE.matcher(line);
                assertThat(sample.matches()).as(line).isTrue();
                assertThat(types).as(line).containsKey(family(sample.group(1), types));
                assertThat(series.add(sample.group(1) + sample.group(2))).as("once: %s", line).isTrue();
                assertThat(labels(sample.group(2))).as(line).allMatch(label -> NAME.matcher(label).matches());
                Double.parseDouble(sample.group(3).replace("+Inf", "Infinity"));
            }
        }
        assertThat(series).hasSizeGreaterThan(5);
    }

    @Test
    void metrics_countBucketsUpToTheWhole_andTellNothingOfAnybody() {
        String code = APP.here().tankA().code();
        APP.bearer(APP.here().tankA().token()).get("/api/v1/tanks/" + code + "/readings");
        String text = APP.browser().get("/metrics").body();

        assertThat(text).contains("route=\"/api/v1/tanks/{tank}/readings\"").doesNotContain(code);
        List<Double> buckets = new ArrayList<>();
        text.lines().filter(line -> line.startsWith("tankrounds_request_duration_seconds_bucket{")
                        && line.contains("readings\"") && line.contains("GET") && line.contains("\"200\""))
                .forEach(line -> buckets.add(Double.parseDouble(line.substring(line.lastIndexOf(' ')))));
        assertThat(buckets).isSorted().hasSizeGreaterThan(5);
        assertThat(text).containsPattern("le=\"\\+Inf\"}? ?");
    }

    /** A histogram's samples carry endings that its type line does not. */
    private static String family(String name, Map<String, String> types) {
        for (String ending : List.of("_bucket", "_sum", "_count", "_max")) {
            if (name.endsWith(ending)
                    && types.containsKey(name.substring(0, name.length() - ending.length()))) {
                return name.substring(0, name.length() - ending.length());
            }
        }
        return name;
    }

    private static List<String> labels(String text) {
        List<String> names = new ArrayList<>();
        Matcher label = LABEL.matcher(text == null ? "" : text);
        int end = 0;
        while (label.find() && label.start() == end) {
            names.add(label.group(1));
            end = label.end();
        }
        assertThat(end).as("labels %s", text).isEqualTo(text == null ? 0 : text.length());
        return names;
    }
}
