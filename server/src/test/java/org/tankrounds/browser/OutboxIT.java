package org.tankrounds.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.db.schema.Tables.READINGS;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tankrounds.db.schema.tables.records.ReadingsRecord;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Device;

/** Whatever the Wi-Fi, the browser and the clock do: every reading is stored, and stored once. */
class OutboxIT extends AtADevice {
    private static final String KEPT = "Kept on this device (%d)";
    private static final String PORTAL = "<!DOCTYPE html><title>School Wi-Fi</title>Press here to go on.";
    private static final String NEVER_ARRIVES = """
            const send = self.fetch;
            self.fetch = (to, how) => how && how.method === "POST" ? new Promise(() => {}) : send(to, how);
            """;
    private static final String ANSWER_IS_LOST = """
            const send = self.fetch;
            const lost = () => new Response("", { status: 500, headers: { "Tankrounds-Build": "x" } });
            self.fetch = (to, how) => how && how.method === "POST" ? send(to, how).then(lost) : send(to, how);
            """;
    private static final int A_DAYS_READINGS = 20;
    private static final int KILLS = 20;

    @Test
    void offlineForADay_everyReadingIsStoredOnce_atItsOwnTime() {
        Instant now = Instant.now();
        device.signIn(cast.teacherA()).openForm(cast.tankA()).offline(true).page().reload();
        for (int i = 0; i < A_DAYS_READINGS; i++) {
            device.clock(now.minus(Duration.ofHours(A_DAYS_READINGS - i))).write(Integer.toString(40 + i));
            assertThat(device.line()).containsText(KEPT.formatted(i + 1));
        }
        device.clock(now).page().reload();
        device.offline(false);

        awaitStored(A_DAYS_READINGS);
        assertThat(device.line()).containsText(Pattern.compile("^Sent \\d{1,2}:\\d\\d$"));
        List<ReadingsRecord> stored = stored();
        assertThat(temperatures(stored)).containsExactlyElementsOf(
                IntStream.range(40, 40 + A_DAYS_READINGS).mapToObj(Integer::toString).toList());
        for (int i = 0; i < A_DAYS_READINGS; i++) {
            assertThat(stored.get(i).getMeasuredAt()).isCloseTo(
                    now.minus(Duration.ofHours(A_DAYS_READINGS - i)), within(2, ChronoUnit.MINUTES));
            assertThat(stored.get(i).getFlags()).isEmpty();
        }
    }

    /** In every other round the service gets the readings, and only its answers are lost. */
    @Test
    void killedBetweenKeptAndSent_losesNothingAndStoresNothingTwice(@TempDir Path profile) {
        Browserless session = app.signedIn(cast.teacherA());
        for (int i = 0; i < KILLS; i++) {
            Device killed = withSession(profile, session);
            killed.context().addInitScript(i % 2 == 0 ? NEVER_ARRIVES : ANSWER_IS_LOST);
            killed.page().navigate(Device.form(cast.tankA()));
            Device.press(killed.page(), Integer.toString(40 + i));
            assertThat(killed.line()).containsText("Kept on this device");
            killed.kill();
        }
        try (Device last = withSession(profile, session)) {
            last.page().navigate("/outbox");
            assertThat(last.page().locator("[data-heading]")).hasText("Nothing waits on this device");
            assertThat(last.page().locator("[data-save]")).isHidden();
            assertThat(last.page().locator("[data-sent] li")).hasCount(KILLS);
        }
        assertThat(temperatures(stored())).containsExactlyInAnyOrderElementsOf(
                IntStream.range(40, 40 + KILLS).mapToObj(Integer::toString).toList());
    }

    @Test
    void twoWindows_sendEachReadingOnce() {
        List<String> posted = new ArrayList<>();
        device.context().onRequest(request -> {
            if (request.method().equals("POST") && request.url().endsWith("/log")) {
                posted.add(request.postData().replaceAll(".*submission_id=([^&]+).*", "$1"));
            }
        });
        device.signIn(cast.teacherA()).openForm(cast.tankA());
        Page other = device.context().newPage();
        other.navigate(Device.form(cast.tankA()));
        device.offline(true);
        for (int i = 0; i < 3; i++) {
            device.write(Integer.toString(40 + i));
            Device.press(other, Integer.toString(50 + i));
            assertThat(device.line()).containsText(KEPT.formatted(2 * i + 2));
            other.waitForFunction("() => !document.querySelector('[data-busy]')");
        }
        posted.clear();
        device.offline(false);

        awaitStored(6);
        assertThat(device.line()).containsText("Sent");
        assertThat(posted).doesNotHaveDuplicates().hasSize(6);
    }

    @Test
    void lookedAllWell_offline_isKeptAndStoredOnce_withNoneDead() {
        device.signIn(cast.teacherA()).openForm(cast.tankA()).offline(true);
        device.page().getByText("Looked, all well").click();
        assertThat(device.line()).containsText(KEPT.formatted(1));
        assertThat(device.page().getByLabel("Fish found dead")).hasValue("");
        device.page().reload();
        assertThat(device.line()).containsText(KEPT.formatted(1));
        device.page().navigate("/outbox");
        assertThat(device.page().locator("[data-unsent]")).containsText("Fish found dead 0");

        device.offline(false);
        awaitStored(1);
        assertThat(newest().getEntered().data()).containsPattern("\"deaths\"").containsPattern("\"value\": ?0");
        assertThat(newest().getFlags()).isEmpty();
        assertThat(newest().getNote()).isNull();
    }

    @Test
    void withoutBackgroundSync_itIsSentAllTheSame() {
        device.context().addInitScript("delete self.SyncManager; delete ServiceWorkerRegistration.prototype.sync;");
        device.signIn(cast.teacherA()).openForm(cast.tankA()).offline(true).write("52");
        assertThat(device.line()).containsText(KEPT.formatted(1));

        device.offline(false);
        awaitStored(1);
    }

    @Test
    void aWrongClock_movesNoReading() {
        Map<Duration, String> flags = Map.of(Duration.ofDays(2), "clock_skewed,time_doubtful",
                Duration.ofDays(-2), "clock_skewed,time_doubtful", Duration.ofHours(3), "clock_skewed");
        device.signIn(cast.teacherA());
        flags.forEach((ahead, expected) -> {
            device.clock(Instant.now().plus(ahead)).openForm(cast.tankA());
            device.page().evaluate("() => tankroundsOutbox.ping()");
            device.write("52");

            assertThat(device.page()).hasURL(Pattern.compile("saved="));
            ReadingsRecord reading = newest();
            assertThat(reading.getMeasuredAt()).isCloseTo(Instant.now(), within(2, ChronoUnit.MINUTES));
            assertThat(String.join(",", reading.getFlags())).isEqualTo(expected);
        });
        assertThat(stored()).hasSize(flags.size());
    }

    /** As of a laptop whose battery ran flat, once the school's network has told it the time. */
    @Test
    void aClockThatWasPutRightBeforeSending_isDoubted() {
        device.signIn(cast.teacherA()).clock(Instant.now().minus(Duration.ofDays(2)));
        device.openForm(cast.tankA());
        device.page().evaluate("() => tankroundsOutbox.ping()");
        device.offline(true).write("52");
        device.clock(Instant.now()).offline(false);

        awaitStored(1);
        assertThat(newest().getFlags()).contains("clock_skewed", "time_doubtful");
    }

    @Test
    void anAnswerThatIsNoReceipt_leavesItKept() {
        device.signIn(cast.teacherA()).openForm(cast.tankA());
        List<Integer> ours = List.of(403, 409, 429, 500, 503);
        List<Integer> ofOthers = List.of(200, 302, 502);
        AtomicInteger status = new AtomicInteger();
        device.context().route("**/log", route -> answer(route, status.get(), ours.contains(status.get()) ? "x" : ""));
        for (int next : Stream.concat(ours.stream(), ofOthers.stream()).toList()) {
            status.set(next);
            int kept = kept();
            device.write(Integer.toString(40 + kept));
            assertThat(device.line()).containsText(KEPT.formatted(kept + 1));
        }
        assertThat(stored()).isEmpty();

        device.context().unrouteAll();
        device.page().navigate("/outbox");
        awaitStored(ours.size() + ofOthers.size());
    }

    @Test
    void aPortalThatAnswersForUs_isNotTakenForTheService() {
        device.signIn(cast.teacherA()).openForm(cast.tankA());
        device.context().route("**/api/ping", route -> answer(route, 200, ""));
        device.write("52");
        assertThat(device.line()).hasText(KEPT.formatted(1) + " Not sent yet: stay signed in until this clears.");

        device.context().unrouteAll();
        device.page().evaluate("() => window.dispatchEvent(new Event('online'))");
        awaitStored(1);
    }

    @Test
    void tooLarge_needsFixing() {
        device.signIn(cast.teacherA()).openForm(cast.tankA());
        device.context().route("**/log", route -> answer(route, 413, "x"));
        Device.press(device.page(), "52");
        assertThat(device.page()).hasTitle("School Wi-Fi");

        device.page().navigate("/outbox");
        assertThat(device.line()).hasText("Needs fixing");
        assertThat(device.page().locator("[data-unsent] [data-sentences]"))
                .hasText("This is too long to be taken. Shorten the note.");
    }

    private Device withSession(Path profile, Browserless session) {
        Device opened = Device.at(app.baseUrl(), profile);
        session.cookies().forEach((name, value) -> opened.context().addCookies(List.of(
                new com.microsoft.playwright.options.Cookie(name, value).setUrl(app.baseUrl()))));
        return opened;
    }

    private int kept() {
        return (int) device.page().evaluate("async () => (await tankroundsOutbox.all()).length");
    }

    private static void answer(Route route, int status, String build) {
        if (route.request().method().equals("GET") && route.request().isNavigationRequest()) {
            route.resume();
            return;
        }
        Map<String, String> headers = build.isEmpty() ? Map.of() : Map.of("Tankrounds-Build", build);
        route.fulfill(new Route.FulfillOptions().setStatus(status).setContentType("text/html").setBody(PORTAL)
                .setHeaders(headers));
    }

    private void awaitStored(int count) {
        device.page().waitForCondition(() -> stored().size() >= count);
        assertThat(stored()).hasSize(count);
    }

    /** Whenever it was measured. */
    private ReadingsRecord newest() {
        return stored().stream().max(Comparator.comparing(ReadingsRecord::getReadingId)).orElseThrow();
    }

    private List<ReadingsRecord> stored() {
        return app.transactions().inChapter(cast.chapterId(),
                tx -> tx.selectFrom(READINGS).orderBy(READINGS.MEASURED_AT).fetch());
    }

    private static List<String> temperatures(List<ReadingsRecord> readings) {
        return readings.stream().map(reading -> reading.getEntered().data()
                .replaceAll(".*\"value\": ?([0-9.]+).*", "$1")).toList();
    }
}
