package org.tankrounds.visits;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** Who stood before a tank, and what was done; it is 13 January, 9:00. */
final class VisitsIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Those who come by");
    private final String here = "/tanks/" + cast.tankA().code() + "/visits";
    private final Browserless coordinator = APP.signedIn(cast.coordinator());
    private final Browserless teacher = APP.signedIn(cast.teacherA());

    @Test
    void aVisit_isWrittenDownOnce_andTakenBack() {
        assertThat(text(coordinator.get(here))).contains("Room 12: no visit yet");
        String submission = UUID.randomUUID().toString();
        for (int i = 0; i < 2; i++) {
            assertThat(coordinator.post(here, "submission_id", submission, "deeds", "cooled", "day", "2026-01-12",
                    "time", "15:30", "note", "Chiller hums <again>").location()).endsWith("saved=written");
        }
        String text = text(teacher.get(here));
        assertThat(text).contains("last visited yesterday 15:30")
                .contains("12 Jan 2026, 15:30 Cora Weirthimble saw to the chiller Chiller hums &lt;again&gt;")
                .doesNotContain("Write a visit down");
        assertThat(text.split("saw to the chiller", -1)).hasSize(2);

        coordinator.get(here);
        coordinator.post(undo());
        assertThat(text(coordinator.get(here))).contains("no visit yet").doesNotContain("Chiller hums");
    }

    @Test
    void badInput_isAnsweredInSentences_andNothingIsLost() {
        coordinator.get(here);
        Answer refused = coordinator.post(here, "deeds", "danced", "day", "2026-01-14", "time", "noon",
                "note", "Kept words");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains("Tick at least one thing").contains("That day is still to come")
                .contains("The time is “noon”");
        assertThat(refused.body()).contains("value=\"Kept words\"");
        coordinator.get(here);
        Answer later = coordinator.post(here, "deeds", "cooled", "day", "2026-01-13", "time", "09:30");
        assertThat(text(later)).contains("That time is still to come");
        assertThat(text(coordinator.get(here))).contains("no visit yet");
    }

    @Test
    void teachers_read_andOtherChaptersSeeNothing() {
        teacher.get(here);
        assertThat(teacher.post(here, "deeds", "cooled", "day", "2026-01-12").status()).isEqualTo(404);
        assertThat(APP.signedIn(APP.here().coordinator()).get(here).status()).isEqualTo(404);
    }

    private String undo() {
        Matcher found = Pattern.compile("action=\"(" + here + "/\\d+/withdrawn)\"")
                .matcher(coordinator.get(here).body());
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }
}
