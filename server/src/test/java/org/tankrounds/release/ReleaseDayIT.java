package org.tankrounds.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.season.SeasonRepository;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;
import org.tankrounds.web.Caller;

/** What is written down at the water: once, by the count's own rules, with a connection or later. */
final class ReleaseDayIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "At the water");
    private final String tank = cast.tankA().code();
    private final Browserless teacher = APP.signedIn(cast.teacherA());
    private String plan;
    private String day;
    private String count;

    @BeforeEach
    void plan() {
        int planId = APP.transactions().inChapter(cast.chapterId(), tx -> {
            int site = new SiteRepository().add(tx, cast.chapterId(), new Site.Details(
                    "Lower bridge", "Quill Brook", Optional.empty(), Optional.empty(), OptionalDouble.empty()));
            int approval = new ApprovalRepository().add(tx, cast.chapterId(), site, new Approval.Details("P-8",
                    "State fish agency", Species.RAINBOW_TROUT, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 5, 31), 400,
                    Optional.empty(), Optional.empty()));
            int season = new SeasonRepository().get(tx, cast.chapterId(), cast.season()).seasonId();
            return new PlanRepository().add(tx, cast.chapterId(), UUID.randomUUID(), new ReleasePlan(0, season, approval,
                    new ReleasePlan.Details(Instant.parse("2026-01-13T15:00:00Z"), 1, OptionalDouble.of(11),
                            OptionalDouble.of(8), OptionalDouble.empty(), OptionalDouble.empty(), true, 12, 3, Map.of(),
                            Optional.empty(), List.of(new Load(cast.tankA().tankId(), 60, OptionalDouble.of(45),
                                    OptionalDouble.empty(), 2, 20))), Optional.empty()),
                    cast.coordinator().personId(), TestClock.START);
        });
        plan = "/release/plans/" + planId;
        day = plan + "/tanks/" + tank;
        count = "/season/" + cast.season() + "/tanks/" + tank + "/count";
    }

    @Test
    void aRelease_goesIntoTheCount_andStandsInThePlan() {
        assertThat(text(teacher.get(day))).contains("Release from Alderwhistle School, Room 12")
                .contains("60 fish planned, approval P-8").contains("The plan does not say go yet.");
        Answer answer = write("fish", "57", "lengths", "44 47 53", "box_temperature", "11", "stream_temperature", "8.2",
                "tempered_minutes", "40", "kept_small", "2", "kept_sick", "1");
        assertThat(answer.location()).isEqualTo(plan + "?saved=released");

        assertThat(text(teacher.get(plan + "?saved=released"))).contains("Written down, and in the tank's count.")
                .contains("Released: 57 fish at Lower bridge")
                .contains("Tue 13 Jan, 9:00: 57 released; 2 too small; 1 ill or hurt, kept back; box 11.0 °C, stream 8.2 °C;"
                        + " over 40 minutes; 3 measured, 48 mm on average (44 to 53)");
        assertThat(text(teacher.get(count))).contains("Room 12: 143 by count").contains("Released: Lower bridge approval P-8");
        assertThat(text(teacher.get("/release"))).as("no more planned").contains("343 of 400 fish left")
                .doesNotContain("in plans");
    }

    @Test
    void moreThanAreThere_isRefused_inTheWordsOfTheCount_andNothingIsLost() {
        Answer refused = write("fish", "201", "lengths", "44", "note", "kept");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains("By count only 200 fish were there at that time.");
        assertThat(refused.body()).contains("value=\"201\"").contains("value=\"kept\"").contains("value=\"44\"");
        assertThat(text(teacher.get(count))).contains("Room 12: 200 by count");
    }

    /** A comma may be a decimal one, or stand between two. */
    @Test
    void lengths_withCommas_areTakenOrAskedAbout_neverGuessed() {
        Answer asked = write("fish", "3", "lengths", "44,47");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("44,47").contains("is no length");
        write("fish", "3", "lengths", "44,5 47, 53;50");
        assertThat(text(teacher.get(plan))).contains("4 measured, 49 mm on average (45 to 53)");
    }

    @Test
    void theSameForm_countsOnce_howeverOftenAndHoweverItComes() {
        String submission = UUID.randomUUID().toString();
        for (int i = 0; i < 2; i++) {
            assertThat(write("fish", "10", "submission_id", submission).status()).isEqualTo(303);
        }
        String plain = UUID.randomUUID().toString().replace("-", "");
        for (int i = 0; i < 2; i++) {
            Answer sent = outbox(account(), "fish", "5", "day", "2026-01-12", "submission_id", plain);
            assertThat(sent.status()).as(sent.body()).isEqualTo(200);
            assertThat(sent.body()).contains("\"receipt\":\"").contains("\"savedTo\":\"" + plan);
        }
        assertThat(text(teacher.get(count))).contains("Room 12: 185 by count");
        assertThat(text(write("fish", "11", "submission_id", submission)))
                .contains("This form was written down before, and says something else now.");
    }

    @Test
    void twoWhoWriteDownTheSameFish_areAskedOnce() {
        assertThat(write("fish", "30").status()).isEqualTo(303);
        Browserless other = APP.signedIn(cast.coordinator());
        other.get(day);
        Answer asked = other.post(day, all("fish", "30", "note", "kept"));
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("Of this tank there are written down for that day already: 30 fish,"
                + " Tue 13 Jan, 9:00, by Ada Fernwhistle. If these are other fish, keep the form once more");
        assertThat(asked.body()).contains("value=\"kept\"");
        assertThat(text(teacher.get(count))).contains("Room 12: 170 by count");

        String named = find(asked, "name=\"asked_entries\" value=\"([\\d,]+)\"");
        assertThat(write("fish", "5", "day", "2026-01-12").status()).as("another day").isEqualTo(303);
        assertThat(other.post(day, all("fish", "30", "asked_entries", named)).status()).isEqualTo(303);
        assertThat(text(teacher.get(count))).contains("Room 12: 135 by count");
        assertThat(text(write("fish", "7", "asked_entries", named))).as("one more since").contains("already: 30 fish")
                .contains("; 30 fish");
    }

    @Test
    void whatStandsInTheCount_isAskedAboutAtTheWater_alsoLater() {
        teacher.get(count + "/released");
        assertThat(teacher.post(count + "/released", "fish", "20", "method", "one_by_one", "place", "Lower bridge",
                "approval", "P-8", "day", "2026-01-13").status()).isEqualTo(303);
        Answer sent = outbox(account(), "fish", "20");
        assertThat(sent.status()).isEqualTo(422);
        assertThat(sent.body()).contains("already: 20 fish").contains("by Ada Fernwhistle");
        assertThat(text(teacher.get(count))).contains("Room 12: 180 by count");
    }

    @Test
    void whatWasWrittenDownAtTheWater_isAskedAboutInTheCount() {
        assertThat(write("fish", "30").status()).isEqualTo(303);
        teacher.get(count + "/released");
        Answer asked = teacher.post(count + "/released", "fish", "30", "method", "one_by_one", "place", "Lower bridge",
                "day", "2026-01-13");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("Already written down as released on that day: 30 fish, Tue 13 Jan, 9:00, by"
                + " Ada Fernwhistle. Are these more fish?");
        assertThat(text(teacher.get(count))).contains("Room 12: 170 by count");
    }

    @Test
    void whatWasKeptOnADevice_isOfWhenItWasWritten_andOfNobodyElse() {
        assertThat(outbox("somebody-else", "fish", "5").status()).isEqualTo(403);
        Answer wrong = outbox(account(), "fish", "none", "lengths", "44 x", "temperature_scale", "[degF]", "box_temperature", "20");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.body()).contains("The number of fish released is a whole number").contains("is no length")
                .contains("such water would be ice or soup");

        Answer sent = outbox(account(), "fish", "5", "temperature_scale", "[degF]", "box_temperature", "50", "stream_temperature",
                "46.4", "kept_at", "2026-01-13T10:30:00Z", "sent_at", "2026-01-13T14:00:00Z", "clock_ahead", "0");
        assertThat(sent.status()).as(sent.body()).isEqualTo(200);
        assertThat(text(teacher.get(plan))).contains("Tue 13 Jan, 5:30: 5 released; box 10.0 °C, stream 8.0 °C");
    }

    @Test
    void whatIsTakenBackInTheCount_isNotReleasedAnyMore() {
        write("fish", "57");
        teacher.get(count);
        teacher.post(find(teacher.get(count), "action=\"(" + count + "/entries/\\d+/withdrawn)\""));
        assertThat(text(teacher.get(plan))).contains("Not yet").doesNotContain("57 released");
        assertThat(text(teacher.get("/release"))).contains("340 of 400 fish left, 60 of these in plans");
    }

    @Test
    void badInput_isAnsweredInSentences() {
        Answer answer = write("fish", "0", "tempered_minutes", "soon", "kept_reason", "3", "day", "2026-01-14", "spread", "-1");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(text(answer)).contains("from 1 to 100,000").contains("Give whole minutes")
                .contains("Say in a few words why they were kept back.").contains("That is still to come")
                .contains("How far it may be off is a whole number");
        assertThat(text(write("fish", "1", "day", "2027-01-14"))).contains("The day can be within the season");
    }

    @Test
    void onlyThoseOfTheTank_writeItDown_andOnlyWhileThePlanStands() {
        assertThat(APP.signedIn(cast.teacherB()).get(day).status()).isEqualTo(404);
        assertThat(APP.signedIn(APP.here().coordinator()).get(day).status()).as("another chapter").isEqualTo(404);
        assertThat(teacher.get(plan + "/tanks/" + cast.tankB().code()).status()).as("not theirs").isEqualTo(404);
        Browserless coordinator = APP.signedIn(cast.coordinator());
        assertThat(coordinator.get(plan + "/tanks/" + cast.tankB().code()).status()).as("not in the plan").isEqualTo(404);
        coordinator.get(plan + "/edit");
        coordinator.post(plan + "/dropped");
        assertThat(text(write("fish", "5"))).contains("This release was called off in the plan.");
    }

    private Answer write(String... fields) {
        teacher.get(day);
        return teacher.post(day, all(fields));
    }

    private Answer outbox(String account, String... fields) {
        teacher.get(day);
        teacher.header(Caller.ACCOUNT_HEADER, account);
        try {
            return teacher.post(day, all(fields));
        } finally {
            teacher.header(Caller.ACCOUNT_HEADER, null);
        }
    }

    private String account() {
        return teacher.get(day).header(Caller.ACCOUNT_HEADER).orElseThrow();
    }

    private static String[] all(String... fields) {
        String[] all = new String[fields.length + 2];
        all[0] = "method";
        all[1] = "one_by_one";
        System.arraycopy(fields, 0, all, 2, fields.length);
        return all;
    }

    private static String find(Answer answer, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(answer.body());
        assertThat(found.find()).as(pattern).isTrue();
        return found.group(1);
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("<[^>]*>", " ").replace('\u00a0', ' ').replace("&#39;", "'")
                .replace("&quot;", "\"").replaceAll("\\s+", " ");
    }
}
