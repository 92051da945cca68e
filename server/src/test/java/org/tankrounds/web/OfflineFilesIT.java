package org.tankrounds.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;

/** What a browser fetches so that the form works without Wi-Fi. */
class OfflineFilesIT {
    private static final Pattern ASSET = Pattern.compile("/assets/[0-9a-f]+/[\\w.-]+");
    private static final int MOST_SCRIPT_BYTES = 30_000;

    private final TestApp app = TestApp.shared();

    @Test
    void theWorker_isAskedForAnewEachTime_andNamesWhatThereIs() {
        Answer worker = app.browser().get("/sw.js");

        assertThat(worker.header("content-type").orElseThrow()).startsWith("text/javascript");
        assertThat(worker.header("cache-control")).contains("no-cache");
        assertThat(worker.body()).contains("const BUILD = \"" + worker.header("tankrounds-build").orElseThrow() + "\"");
        List<String> assets = assets(worker.body());
        assertThat(assets).hasSizeGreaterThan(4);
        for (String asset : assets) {
            assertThat(app.browser().get(asset).status()).as(asset).isEqualTo(200);
        }
        assertThat(app.browser().get("/assets/000000000000/outbox.js").status()).isEqualTo(404);
    }

    @Test
    void theManifest_hasIconsThatAreThere() throws JsonProcessingException {
        Answer manifest = app.browser().get("/app.webmanifest");

        assertThat(manifest.header("content-type").orElseThrow()).startsWith("application/manifest+json");
        assertThat(app.browser().get("/sign-in").body()).contains("<link rel=\"manifest\" href=\"/app.webmanifest\">");
        JsonNode icons = new ObjectMapper().readTree(manifest.body()).get("icons");
        assertThat(icons).extracting(icon -> icon.get("sizes").asText()).contains("192x192", "512x512");
        for (JsonNode icon : icons) {
            Answer picture = app.browser().get(icon.get("src").asText());
            assertThat(picture.header("content-type").orElseThrow()).startsWith(icon.get("type").asText());
        }
    }

    @Test
    void theScriptsOfTheForm_areFew() {
        Browserless teacher = app.signedIn(app.here().teacherA());
        String page = teacher.get("/tanks/" + app.here().tankA().code() + "/log").body();

        int bytes = assets(page).stream().filter(asset -> asset.endsWith(".js"))
                .mapToInt(asset -> app.browser().get(asset).body().length()).sum();
        assertThat(bytes).isBetween(1, MOST_SCRIPT_BYTES);
    }

    @Test
    void switchedOff_theWorkerForgetsWhatWasKept() {
        try (TestApp without = TestApp.start(TestClock.atStart(), Map.of("TANKROUNDS_OFFLINE", "off"))) {
            assertThat(without.browser().get("/sw.js").body()).contains("unregister()").doesNotContain("indexedDB");
        }
    }

    @Test
    void signingOut_clearsTheBrowsersCache_butNothingThatWaitsThere() {
        Browserless teacher = app.signedIn(app.here().teacherA());
        teacher.get("/account");

        assertThat(teacher.post("/sign-out").header("clear-site-data")).contains("\"cache\"");
    }

    private static List<String> assets(String text) {
        return ASSET.matcher(text).results().map(MatchResult::group).distinct().toList();
    }
}
