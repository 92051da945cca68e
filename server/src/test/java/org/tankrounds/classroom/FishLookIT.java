package org.tankrounds.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** What a class sees of its fish, on its way to the coordinator. */
final class FishLookIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Looks at fish");
    private final String fish = "/tanks/" + cast.tankA().code() + "/fish";
    private final Browserless teacher = APP.signedIn(cast.teacherA());
    private final Browserless coordinator = APP.signedIn(cast.coordinator());

    @Test
    void gaspingFish_areOnTheBoard_untilTheLookIsTakenBack() {
        teacher.get(fish);
        assertThat(look(UUID.randomUUID().toString(), "breathing", "gasping", "swimming", "calm").status())
                .isEqualTo(303);

        assertThat(teacher.get(fish + "?saved=look").body()).contains("Tell an adult now. More air and no feed");
        assertThat(coordinator.get("/rounds").body())
                .contains("The class saw fish gasping at the surface, today 9:00.");
        assertThat(coordinator.get("/tanks/" + cast.tankA().code()).body())
                .contains("The class saw fish gasping at the surface, today 9:00.");

        Matcher undo = Pattern.compile(Pattern.quote(fish) + "/looks/\\d+/withdrawn").matcher(teacher.get(fish).body());
        assertThat(undo.find()).isTrue();
        teacher.post(undo.group());
        assertThat(coordinator.get("/rounds").body()).doesNotContain("The class saw");
    }

    @Test
    void gaspingFish_stayEverywhere_untilSomebodyLooksAtTheirBreathAgain() {
        String tank = "/tanks/" + cast.tankA().code();
        teacher.get(fish);
        look(UUID.randomUUID().toString(), "breathing", "gasping");
        look(UUID.randomUUID().toString(), "colour", "usual");

        assertThat(coordinator.get("/rounds").body()).contains("The class saw fish gasping at the surface");
        assertThat(coordinator.get(tank).body()).contains("The class saw fish gasping at the surface");
        assertThat(teacher.get(tank + "/class").body()).contains("coloured as ever").contains("gasping at the surface");
        assertThat(teacher.get(fish + "?saved=look").body()).contains("Tell an adult now. More air and no feed");

        look(UUID.randomUUID().toString(), "breathing", "even");
        assertThat(coordinator.get("/rounds").body()).doesNotContain("gasping");
        assertThat(teacher.get(tank + "/class").body()).doesNotContain("gasping");
    }

    @Test
    void oneSmallOddity_isKept_andNotCriedOut() {
        teacher.get(fish);
        look(UUID.randomUUID().toString(), "colour", "dark");

        assertThat(teacher.get(fish + "?saved=look").body()).contains("darker than usual")
                .contains("Look again before you go home.");
        assertThat(coordinator.get("/rounds").body()).doesNotContain("The class saw");
    }

    @Test
    void whatWasSeenAndMeasured_isTakenAlongAsAFile_withoutWhatWasTakenBack() {
        teacher.get(fish);
        look(UUID.randomUUID().toString(), "breathing", "fast", "colour", "usual");
        teacher.post(fish + "/samples", "submission_id", UUID.randomUUID().toString(), "fish", "10",
                "mean_length_mm", "45.5", "total_weight_g", "10");
        String page = teacher.get(fish).body();
        assertThat(page).contains("href=\"" + fish + ".csv\"");
        assertThat(teacher.get("/tanks/" + cast.tankA().code() + "/class").status()).isEqualTo(200);

        Answer file = teacher.get(fish + ".csv");

        assertThat(file.header("content-disposition").orElse("")).contains("fish-" + cast.tankA().code() + ".csv");
        assertThat(file.body()).isEqualTo("\ufefftank,at,swimming,gathering,breathing,colour,appetite,shadow,fish,"
                + "mean_length_mm,total_weight_g\r\n"
                + cast.tankA().code() + ",2026-01-13T14:00:00Z,,,fast,usual,,,,,\r\n"
                + cast.tankA().code() + ",2026-01-13T14:00:00Z,,,,,,,10,45.5,10.0\r\n");
        Matcher undo = Pattern.compile(Pattern.quote(fish) + "/looks/\\d+/withdrawn").matcher(page);
        assertThat(undo.find()).isTrue();
        teacher.post(undo.group());
        assertThat(teacher.get(fish + ".csv").body()).doesNotContain("fast");
    }

    /** By hand: 100 · 0.85 / 4.3³ = 1.07; 453.59 / 0.85 = 534. Ten of 43 mm that weigh 6 g have 0.75, 11 g 1.38. */
    @Test
    void weighedFish_areToldTheirCondition_atOnceAndInTheList() {
        Browserless feeding = hasFedSince("2025-12-08");
        String usual = "10 fish, 43 mm on average, 0.85 g each (534 to the pound): condition 1.07, as usual for trout";
        assertThat(text(measure(feeding, "8.5"))).contains("Kept. Today’s feed is worked out from it. " + usual + ".");
        assertThat(text(feeding.get(fish))).contains(usual + " ").contains("trout mostly have 1.0 to 1.16")
                .doesNotContain("Kept.");
        assertThat(text(measure(feeding, "6"))).contains("condition 0.75, thin for trout. Look at the feed");
        assertThat(text(measure(feeding, "11"))).contains("condition 1.38, round for trout. Look at the feed");
        assertThat(text(measure(feeding, "9.5"))).contains("condition 1.19, near what is usual for trout.");
    }

    @Test
    void fishThatNobodyWeighed_areToldNone() {
        Browserless feeding = hasFedSince("2025-12-08");
        assertThat(text(measure(feeding, ""))).contains("10 fish, 43 mm on average.").doesNotContain("ondition");
    }

    /** Their yolk weighs too: what is usual of trout that feed says nothing of them. */
    @Test
    void sacFry_areToldNone() {
        Browserless early = hasFedSince("2026-01-13");
        assertThat(text(measure(early, "8.5"))).contains("10 fish, 43 mm on average, 0.85 g each.")
                .doesNotContain("ondition");
    }

    private Browserless hasFedSince(String day) {
        String calendar = "/tanks/" + cast.tankA().code() + "/calendar";
        teacher.get(calendar);
        assertThat(teacher.post(calendar, "milestone", "first_feeding", "day", day, "asked_day", day).status())
                .isEqualTo(303);
        return teacher;
    }

    private Answer measure(Browserless who, String totalG) {
        who.get(fish);
        Answer kept = who.post(fish + "/samples", "submission_id", UUID.randomUUID().toString(), "fish", "10",
                "mean_length_mm", "43", "total_weight_g", totalG, "asked_length", "43");
        assertThat(kept.location()).as(kept.body()).endsWith("saved=sample");
        return who.get(kept.location());
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("<[^>]*>", " ").replace("&#39;", "'").replaceAll("\\s+", " ");
    }

    @Test
    void sameFormSentTwice_isOneLook() {
        String submission = UUID.randomUUID().toString();
        teacher.get(fish);
        look(submission, "swimming", "calm");
        look(submission, "swimming", "calm");

        assertThat(teacher.get(fish).body().split("/withdrawn\"", -1)).hasSize(2);
    }

    @Test
    void nothingChosen_orWordsThatAreNotOnTheList_areRefused() {
        teacher.get(fish);

        Answer answer = look("no-uuid", "swimming", "gasping", "breathing", "");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("Choose at least one thing that you saw.");
    }

    private Answer look(String submission, String... chosen) {
        String[] fields = new String[chosen.length + 2];
        fields[0] = "submission_id";
        fields[1] = submission;
        System.arraycopy(chosen, 0, fields, 2, chosen.length);
        return teacher.post(fish + "/looks", fields);
    }
}
