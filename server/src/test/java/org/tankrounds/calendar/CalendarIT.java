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
    private final Browserless coordinator = APP.signedIn(cast.coordinator());
    private final Browserless teacher = APP.signedIn(cast.teacherA());

    /** Nobody read the water: the chiller's 11 °C, and Crisp's 28.3 d to hatch, of which 0.56 were behind them. */
    @Test
    void datesAreReckoned_andAskedFor_untilTheClassHasSeenThem() {
        String text = text(teacher.get(here));
        assertThat(text).contains("Half eyed before they came").contains("Half hatched 12 to 23 November")
                .contains("should be past; say when you saw it")
                .contains("near 480 °C-days, and swim-up by Crisp’s formula, which is the later one below 14 °C: at 5 °C after 120"
                        + " days instead of 96.");

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
        assertThat(text(see("first_feeding", "2025-11-17"))).contains("That comes later in their life than what was seen on 18 Nov 2025");
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
        String shown = shown(coordinator.get("/season/" + cast.season() + "/edit"));
        assertThat(coordinator.post("/season/" + cast.season(), "name", "2025-26", "starts_on", "2025-10-01", "ends_on",
                "2026-06-30", "release_on", "2026-05-02", "release_length_mm", "75", "shown", shown).status()).isEqualTo(303);

        String text = text(teacher.get(here));
        assertThat(text).contains("75 mm long").contains("at the pace that your own measurements show")
                .contains("Take ").contains("have room until 2 May").contains("Feed less").contains("Change more water")
                .contains("Fish leave only as the permit says");
        Matcher full = FULL_FROM.matcher(text);
        assertThat(full.find()).isTrue();
        assertThat(text(coordinator.get("/season/" + cast.season() + "/calendar"))).contains("full from ").contains("feeding");

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

    private static String shown(Answer form) {
        Matcher shown = Pattern.compile("name=\"shown\" value=\"(\\w+)\"").matcher(form.body());
        assertThat(shown.find()).isTrue();
        return shown.group(1);
    }

    private void moveAway(int fish) {
        String count = "/season/" + cast.season() + "/tanks/" + cast.tankA().code() + "/count/moved";
        Matcher form = Pattern.compile("action=\"([^\"]*form=[^\"]*)\"").matcher(coordinator.get(count).body());
        assertThat(form.find()).isTrue();
        assertThat(coordinator.post(form.group(1).replace("&amp;", "&"), "fish", Integer.toString(fish), "method", "one_by_one",
                "day", "2026-01-13", "to", cast.tankB().code()).status()).isEqualTo(303);
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
