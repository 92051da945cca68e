package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.LOTS;
import static org.tankrounds.db.schema.Tables.TANKS;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.web.Formats;

/** A coordinator looks back at Friday 9 January; it is Tuesday 13 January, 9:00 in New York. */
class PastMorningIT {
    private static final TestApp APP = TestApp.shared();
    private static final String FRIDAY = "/rounds?asOf=2026-01-09";
    private static final String MONDAY = "/rounds?asOf=2026-01-12";

    private final Cast cast = Cast.add(APP.transactions(), "Looking back");
    private final Browserless coordinator = APP.signedIn(cast.coordinator());

    @BeforeEach
    void aWeekOfSteadyWater() {
        for (int day = 2; day < 9; day++) {
            post("2026-01-0" + day + "T19:00:00Z", temperature(11), number("nitrite", 0.03, "mg/L", "N"));
        }
    }

    @Test
    void whatWasReadLater_standsBesideTheRow_andDoesNotChangeIt() {
        List<String> said = said(coordinator.get(FRIDAY));

        post("2026-01-10T16:00:00Z", temperature(19.5), count("deaths", 3), number("water_change", 20, "%", null));

        Answer answer = coordinator.get(FRIDAY);
        assertThat(said(answer)).isEqualTo(said).hasSize(1);
        assertThat(text(answer)).contains("Fri 9 Jan, 8:00: ")
                .contains("Temperature 19.5 °C, Sat 10 Jan, 11:00: beyond its limit of 18.")
                .contains("3 found dead. Water changed: 20 % Sat. Read once.")
                .contains("There was no tank to go to; "
                        + "of 1, 1 went beyond a limit within three days by later readings.");
    }

    @Test
    void readingsOfThreeDays_countAndNoLaterOnes() {
        post("2026-01-12T13:00:01Z", temperature(21));
        assertThat(text(coordinator.get(FRIDAY))).contains("Nothing was read in the 72 hours after.");
        assertThat(text(coordinator.get(MONDAY))).contains("beyond its limit of 18").contains("so far");
    }

    @Test
    void silence_isSaidPlainly() {
        assertThat(text(coordinator.get(MONDAY))).contains("Nothing has been read since.")
                .contains("The water of 1 has not been read.");
        assertThat(text(coordinator.get("/rounds?asOf=2026-01-09T14:00:00-05:00")))
                .contains("Nothing was read in the 72 hours after.");
    }

    @Test
    void readingSentInLate_counts_andACorrectionCountsAsCorrected() {
        String code = post("2026-01-09T12:00:00Z", temperature(17.5));
        assertThat(text(coordinator.get(FRIDAY))).contains("Temperature 17.5 °C");

        correct(code, "11.5");

        assertThat(text(coordinator.get(FRIDAY))).doesNotContain("17.5");
    }

    @Test
    void odds_areThoseThatScriptsAreTold() throws IOException {
        post("2026-01-09T12:30:00Z", temperature(17.2));
        double chance = new ObjectMapper().readTree(APP.bearer(cast.chapterToken())
                .get("/api/v1/rounds?asOf=2026-01-09T13:00:00Z&limit=1").body()).at("/rounds/0/chance").asDouble();
        assertThat(text(coordinator.get(FRIDAY))).contains(new Formats(ZoneOffset.UTC, Instant.EPOCH).chance(chance));
    }

    @Test
    void theFuture_isRefusedWithASentence_andWhatWasTypedStays() {
        Answer answer = coordinator.get("/rounds?asOf=2026-01-14");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("That morning has yet to come: choose one up to 13 January 2026.")
                .contains("<title>Error: ").contains("value=\"2026-01-14\"");
        assertThat(coordinator.get("/rounds?asOf=soon").status()).isEqualTo(422);
        assertThat(coordinator.get("/rounds?asOf=").body()).contains("Choose a day from the year 2000 on");
    }

    @Test
    void beforeTheSeason_thereAreNoRounds_andASentenceSaysWhy() {
        Answer answer = coordinator.get("/rounds?asOf=2025-09-30");
        assertThat(answer.status()).isEqualTo(200);
        assertThat(text(answer)).contains("no rounds")
                .contains("That was before the season: the first one here began on 1 October 2025.");
        assertThat(said(answer)).isEmpty();
        assertThat(text(coordinator.get("/rounds?asOf=2025-10-02")))
                .contains("No tank had eggs or a reading by that morning.");
    }

    @Test
    void mornings_areTurnedLikePages_overTheWeekend() {
        assertThat(coordinator.get("/rounds").body()).contains("href=\"/rounds?asOf=2026-01-12\"");
        assertThat(coordinator.get(MONDAY).body()).contains("href=\"/rounds?asOf=2026-01-09\"")
                .contains("href=\"/rounds?asOf=2026-01-13\"");
        assertThat(coordinator.get("/rounds?asOf=2026-01-13").body()).doesNotContain("asOf=2026-01-14");
    }

    @Test
    void aTankThatWasRetiredSince_wasOnTheRounds() {
        retire(Instant.parse("2026-01-11T12:00:00Z"));
        assertThat(said(coordinator.get(FRIDAY))).hasSize(1);
        assertThat(said(coordinator.get(MONDAY))).isEmpty();
        assertThat(ranking("2026-01-09T13:00:00Z")).contains(cast.tankA().code());
        assertThat(ranking("2026-01-12T13:00:00Z")).contains("\"rounds\"").doesNotContain(cast.tankA().code());
    }

    @Test
    void firstFeedingThatHadYetToCome_wasNotKnown() {
        String before = ranking("2026-01-09T13:00:00Z");
        APP.transactions().inChapter(cast.chapterId(), tx -> tx.update(LOTS)
                .set(LOTS.FIRST_FEEDING_ON, LocalDate.parse("2026-01-12"))
                .where(LOTS.CHAPTER_ID.eq(cast.chapterId())).execute());
        assertThat(ranking("2026-01-09T13:00:00Z")).isEqualTo(before);
    }

    @Test
    void pastMornings_areForThoseWhoHaveTheRounds() {
        assertThat(APP.signedIn(cast.mentor()).get(FRIDAY).status()).isEqualTo(200);
        assertThat(APP.signedIn(cast.teacherA()).get(FRIDAY).status()).isEqualTo(404);
        assertThat(APP.browser().get(FRIDAY).location()).startsWith("/sign-in");
        assertThat(APP.signedIn(APP.elsewhere().coordinator()).get(FRIDAY).body())
                .doesNotContain(cast.tankA().code());
    }

    private String ranking(String asOf) {
        return APP.bearer(cast.chapterToken()).get("/api/v1/rounds?asOf=" + asOf).body();
    }

    private void retire(Instant at) {
        APP.transactions().inChapter(cast.chapterId(), tx -> tx.update(TANKS).set(TANKS.RETIRED_AT, at)
                .where(TANKS.CHAPTER_ID.eq(cast.chapterId()))
                .and(TANKS.TANK_ID.eq(cast.tankA().tankId())).execute());
    }

    /** What the board said of each tank. */
    private static List<String> said(Answer answer) {
        return Pattern.compile("<td role=\"cell\" class=\"rounds__why\">.*?</td>", Pattern.DOTALL)
                .matcher(answer.body()).results().map(MatchResult::group).toList();
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("<[^>]*>", " ").replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }

    private String post(String measuredAt, String... values) {
        Answer answer = APP.bearer(cast.tankA().token())
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .postJson("/api/v1/tanks/" + cast.tankA().code() + "/readings",
                        "{\"measuredAt\": \"" + measuredAt + "\", \"values\": [" + String.join(",", values) + "]}");
        assertThat(answer.status()).as(answer.body()).isEqualTo(201);
        return answer.location().replaceAll(".*/", "");
    }

    private void correct(String code, String celsius) {
        String path = "/tanks/" + cast.tankA().code() + "/readings/" + code;
        coordinator.get(path);
        Answer answer = coordinator.post(path, "temperature", celsius, "measured_at", "2026-01-09 07:00",
                "reason", "misread", "version", "1");
        assertThat(answer.status()).as(answer.body()).isEqualTo(303);
    }

    private static String temperature(double celsius) {
        return number("temperature", celsius, "Cel", null);
    }

    private static String count(String analyte, int count) {
        return number(analyte, count, "1", null);
    }

    private static String number(String analyte, double value, String unit, String as) {
        return "{\"analyte\": \"" + analyte + "\", \"value\": " + value + ", \"unit\": \"" + unit + "\""
                + (as == null ? "" : ", \"as\": \"" + as + "\"") + "}";
    }
}
