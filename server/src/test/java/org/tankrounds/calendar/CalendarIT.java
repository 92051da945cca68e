package org.tankrounds.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** Dates, feed and room ahead of a tank; 200 eggs came on 4 November with 180 °C-days, and it is 13 January. */
final class CalendarIT {
    private static final TestApp APP = TestApp.shared();
    private static final Pattern FULL_FROM = Pattern.compile("From (\\d+ \\w+) on");

    private final Cast cast = Cast.add(APP.transactions(), "Those who look ahead");
    private final String here = "/tanks/" + cast.tankA().code() + "/calendar";
    private final String all = "/season/" + cast.season() + "/calendar";
    private final Browserless coordinator = APP.signedIn(cast.coordinator());
    private final Browserless teacher = APP.signedIn(cast.teacherA());

    /** Nobody read the water: the chiller's 11 °C, and Crisp's 28.3 d to hatch, of which 0.56 were behind them. */
    @Test
    void datesAreReckoned_andAskedFor_untilTheClassHasSeenThem() {
        String text = text(teacher.get(here));
        assertThat(text).contains("Half eyed before they came").contains("Half hatched 12 to 23 November")
                .contains("should be past; say when you saw it")
                .contains("near 480 °C-days, and swim-up by Crisp’s formula, which is the later one below 14 °C: at"
                        + " 5 °C after 120 days instead of 96.");

        assertThat(see("first_feeding", "2025-12-08").location()).endsWith("saved=seen");
        assertThat(text(teacher.get(here))).contains("First feeding 8 December seen by the class")
                .doesNotContain("should be past").doesNotContain("two ways of counting");
        assertThat(text(teacher.get("/tanks/" + cast.tankA().code()))).contains("feeding since about 8 December");

        assertThat(see("hatch", "2025-11-18").status()).isEqualTo(303);
        assertThat(text(teacher.get(here))).contains("Half hatched 18 November seen by the class");
        teacher.post(here + "/hatch/withdrawn");
        assertThat(text(teacher.get(here))).contains("Half hatched 12 to 23 November");
    }

    @Test
    void whatCannotHaveBeenSeen_isRefused_inASentence() {
        assertThat(text(see("", ""))).contains("Choose what you saw.").contains("Give the day on which you saw it.");
        assertThat(text(see("hatch", "soon"))).contains("The day");
        assertThat(text(see("hatch", "2026-01-14"))).contains("That day is still to come");
        assertThat(text(see("hatch", "2025-11-03"))).contains("The eggs came on 4 Nov 2025");
        see("hatch", "2025-11-18");
        assertThat(text(see("first_feeding", "2025-11-17")))
                .contains("That comes later in their life than what was seen on 18 Nov 2025");
        assertThat(teacher.post(here + "/flying/withdrawn").status()).isEqualTo(404);
    }

    @Test
    void aDayFarFromItsWindow_isAskedAboutOnce() {
        Answer asked = see("hatch", "2025-12-20");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("By the warmth of the water it would be from 12 Nov 2025 to 23 Nov 2025");
        assertThat(teacher.post(here, "milestone", "hatch", "day", "2025-12-20", "asked_day", "2025-12-20").status())
                .isEqualTo(303);
        assertThat(text(teacher.get(here))).contains("Half hatched 20 December seen by the class")
                .contains("counted from the hatch that you saw");
    }

    @Test
    void whatSomebodySaidBefore_isNotOverwritten() {
        teacher.get(here);
        see("hatch", "2025-11-18");
        assertThat(see("hatch", "2025-11-18").location()).as("pressed twice").endsWith("saved=seen");
        assertThat(see("hatch", "2025-11-20").location()).endsWith("saved=changed");
        assertThat(text(teacher.get(here))).contains("Half hatched 18 November");
    }

    /** 200 fish in 200 L that will weigh 2 g each are all that 2 g/L allow (common practice, no source). */
    @Test
    void tooManyFish_haveAWeekFromWhichThereIsNoRoom_andThreeWaysOut() {
        see("first_feeding", "2025-12-01");
        teacher.get("/tanks/" + cast.tankA().code() + "/fish");
        assertThat(teacher.post("/tanks/" + cast.tankA().code() + "/fish/samples", "fish", "10", "mean_length_mm", "48",
                "total_weight_g", "12", "asked_length", "48", "submission_id", "7d0b2e7c-1111-4222-8333-123456789abc")
                .status()).isEqualTo(303);
        plan("2026-06-30", "2026-05-02", "75");

        String text = text(teacher.get(here));
        assertThat(text).contains("75 mm long").contains("at the pace that your own measurements show")
                .contains("Take ").contains("have room until 2 May").contains("Feed less").contains("Change more water")
                .contains("Fish leave only as the permit says");
        Matcher full = FULL_FROM.matcher(text);
        assertThat(full.find()).isTrue();
        assertThat(text(coordinator.get(all))).contains("full from ").contains("feeding");

        moveAway(120);
        assertThat(text(teacher.get(here))).as("fewer fish").doesNotContain("From " + full.group(1) + " on 200 fish");
    }

    @Test
    void aTankWithoutEggs_saysSo() {
        String other = "/tanks/" + cast.tankB().code() + "/calendar";
        assertThat(text(coordinator.get(other))).contains("no eggs yet").contains("Add them on the page of the season");
        assertThat(coordinator.post(other, "milestone", "hatch", "day", "2025-11-18").status()).isEqualTo(404);
        assertThat(teacher.get(other).status()).isEqualTo(404);
    }

    /** 100 eggs with 180 °C-days on 9 January: by Crisp half hatch in 12.5 d; 200 fish feed since 8 December. */
    @Test
    void olderFish_stayInTheReckoning_whenMoreEggsCome() {
        see("first_feeding", "2025-12-08");
        Matcher before = weekOf(text(teacher.get(here)), "13 Jan");
        receive(100, "2026-01-09");

        String text = text(teacher.get(here));
        assertThat(text).contains("These are the dates of the 100 eggs that came on 9 January")
                .contains("Older fish are in the tank too: 200 of the eggs of 4 November, which feed since 8 December.")
                .contains("Half hatched 17 to 28 January").contains("50 mm long (eggs of 4 November)")
                .contains("50 mm long (eggs of 9 January)").contains("300 fish ");
        assertThat(weekOf(text, "13 Jan").group(1)).as("feed of the older, from today").isEqualTo(before.group(1));
        assertThat(text).containsPattern(
                "10 Mar 11.0 °C 4 Nov \\d\\d [\\d.]+ [\\d.]+ crumble no. \\d \\d+ \\w+ 9 Jan \\d+ ");
        assertThat(text(coordinator.get(all))).contains("hatch, 17 to 28 January; older fish feed");
        assertThat(teacher.get(here).body()).contains("rowspan=\"2\"");

        teacher.get("/account");
        teacher.post("/account/speech", "language", "es", "temperature_unit", "Cel");
        assertThat(text(teacher.get(here))).contains("También hay peces mayores")
                .contains("hasta").contains("nunca más del 2 % de su peso al día");
    }

    /** The same shipment in two boxes, three days apart. */
    @Test
    void eggsOfOneWeek_areOneAge() {
        receive(100, "2025-11-07");
        assertThat(text(teacher.get(here))).doesNotContain("Older fish").contains("7 November");
    }

    /** Leitritz and Lewis 1976: 4.48 % for fry of 1 to 2 inches at 11 °C (51.8 °F); a release tank gets 2 %. */
    @Test
    void ration_saysWhatItRestsOn() {
        see("first_feeding", "2025-12-08");
        assertThat(text(teacher.get(here))).contains("never more than 2 % of their weight a day")
                .contains("common practice, without a source").contains("the table alone would say 4.5 %")
                .contains("Leitritz and Lewis 1976");
    }

    /** 300 mm are more than a year away at a classroom's pace. */
    @Test
    void whatIsMoreThanAYearAway_hasItsYear() {
        plan("2026-06-30", "", "300");
        assertThat(text(teacher.get(here))).containsPattern("300 mm long (from )?\\d+ \\w+ 20\\d\\d");
        assertThat(text(coordinator.get(all))).containsPattern("Alderwhistle School.* \\d+ \\w+ 20\\d\\d");
    }

    private void plan(String end, String release, String lengthMm) {
        String shown = shown(coordinator.get("/season/" + cast.season() + "/edit"));
        assertThat(coordinator.post("/season/" + cast.season(), "name", "2025-26", "starts_on", "2025-10-01", "ends_on",
                end, "release_on", release, "release_length_mm", lengthMm, "shown", shown).status()).isEqualTo(303);
    }

    private void receive(int eggs, String day) {
        String lots = "/season/" + cast.season() + "/tanks/" + cast.tankA().code() + "/lots";
        Matcher form = Pattern.compile("action=\"(" + lots + "\\?form=[^\"]+)\"")
                .matcher(coordinator.get(lots + "/new").body());
        assertThat(form.find()).isTrue();
        assertThat(coordinator.post(form.group(1), "eggs", Integer.toString(eggs), "method", "one_by_one",
                "received_on", day, "received_time", "10:00", "thermal_units", "180", "thermal_units_in", "Cel.d")
                .status()).isEqualTo(303);
    }

    /** Group 1 is the feed. */
    private static Matcher weekOf(String text, String day) {
        Matcher week = Pattern.compile("Fills first.*?" + day + " 11.0 °C (?:\\d+ \\w+ )?\\d+ [\\d.]+ ([\\d.]+) ")
                .matcher(text);
        assertThat(week.find()).as(text).isTrue();
        return week;
    }

    private static String shown(Answer form) {
        Matcher shown = Pattern.compile("name=\"shown\" value=\"(\\w+)\"").matcher(form.body());
        assertThat(shown.find()).isTrue();
        return shown.group(1);
    }

    private void moveAway(int fish) {
        String count = "/season/" + cast.season() + "/tanks/" + cast.tankA().code() + "/count/moved";
        Matcher form = Pattern.compile("action=\"([^\"]*form=[^\"]*)\"").matcher(coordinator.get(count).body());
        assertThat(form.find()).isTrue();
        assertThat(coordinator.post(form.group(1).replace("&amp;", "&"), "fish", Integer.toString(fish),
                "method", "one_by_one", "day", "2026-01-13", "to", cast.tankB().code()).status()).isEqualTo(303);
    }

    private Answer see(String milestone, String day) {
        teacher.get(here);
        return teacher.post(here, "milestone", milestone, "day", day);
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("(?s)<(script|style|svg|select)\\b.*?</\\1>", " ").replaceAll("<[^>]*>", " ")
                .replace("&#39;", "'").replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }
}
