package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;

/** What depends on the time, on an own clock; and what is printed where the service knows its address. */
class ClassCardLimitsIT {
    private static TestApp app;

    @BeforeAll
    static void start() {
        app = TestApp.start(TestClock.atStart(), Map.of("TANKROUNDS_BASE_URL", "https://tanks.example.org/"));
    }

    @AfterAll
    static void stop() {
        app.close();
    }

    @Test
    void guessing_isSlowedDown_evenWithTheRightCodeInTheEnd_butNeverForGood() {
        Cast cast = Cast.add(app.transactions(), "Guessed at");
        String code = app.newCard(cast, cast.tankA());
        for (int i = 0; i < 4; i++) {
            assertThat(app.browser().comeIn(like(code, i)).status()).isEqualTo(422);
        }

        Answer answer = app.browser().comeIn(code);

        assertThat(answer.status()).isEqualTo(429);
        assertThat(answer.header("retry-after")).contains("1");
        assertThat(answer.body()).contains("Several codes like this one were wrong. Wait 1 second");
        String other = app.newCard(cast, cast.tankB());
        if (!other.startsWith(code.substring(0, 3))) {
            assertThat(app.browser().comeIn(other).status()).as("another card").isEqualTo(303);
        }
        app.clock().advance(Duration.ofSeconds(1));
        assertThat(app.browser().comeIn(code).status()).isEqualTo(303);
    }

    @Test
    void aSlip_thatCanBeNoCode_costsNothing() {
        Cast cast = Cast.add(app.transactions(), "Slips");
        String code = app.newCard(cast, cast.tankA());
        for (int i = 0; i < 6; i++) {
            Answer slip = app.browser().comeIn(code.substring(0, 9));
            assertThat(slip.status()).isEqualTo(422);
            assertThat(slip.body()).contains("nine letters and digits").contains("value=\"" + code.substring(0, 9));
        }

        assertThat(app.browser().comeIn(code).status()).isEqualTo(303);
    }

    @Test
    void aClass_isInForTwoHoursWithoutARequest_andItsUseIsNoted() {
        Cast cast = Cast.add(app.transactions(), "In and out");
        Browserless room = app.browser();
        room.comeIn(app.newCard(cast, cast.tankA()));
        app.clock().advance(Duration.ofMinutes(119));
        assertThat(room.get("/tanks/" + cast.tankA().code()).status()).isEqualTo(200);

        app.clock().advance(Duration.ofHours(2));

        assertThat(room.get("/tanks/" + cast.tankA().code()).location()).startsWith("/sign-in?next=");
        assertThat(app.signedIn(cast.teacherA()).get("/tanks/" + cast.tankA().code() + "/card").body())
                .contains("Last used").doesNotContain("never");
    }

    @Test
    void whatAClassTyped_survivesASessionThatEndedMeanwhile() {
        Cast cast = Cast.add(app.transactions(), "Kept");
        String code = app.newCard(cast, cast.tankA());
        String log = "/tanks/" + cast.tankA().code() + "/log";
        Browserless room = app.browser();
        room.comeIn(code);
        room.get(log);
        app.clock().advance(Duration.ofHours(3));

        Answer asked = room.post(log, "temperature", "52", "note", "the \"filter\" hums");
        assertThat(asked.status()).isEqualTo(403);
        assertThat(asked.body()).contains("What you typed is kept").contains("Or come in with the class card");
        Answer wrong = room.postForm("/card", hidden(asked.body(), room.formToken(), "CK7"));
        assertThat(wrong.body()).contains("nine letters and digits").contains("What you typed before is kept");
        Answer again = room.postForm("/card", hidden(wrong.body(), room.formToken(), code));

        assertThat(again.status()).isEqualTo(200);
        assertThat(again.body()).contains("action=\"" + log + "\"").contains("Send it now");
        Answer sent = room.postForm(log, hidden(again.body(), room.formToken(), code));
        assertThat(room.get(sent.location()).body()).contains("the &quot;filter&quot; hums");
    }

    @Test
    void thePrint_hasTheAddressThatPeopleKnow() {
        Cast cast = Cast.add(app.transactions(), "Addressed");
        Browserless teacher = app.signedIn(cast.teacherA());
        teacher.get("/tanks/" + cast.tankA().code() + "/card");

        assertThat(teacher.post("/tanks/" + cast.tankA().code() + "/card").body())
                .contains("<b>tanks.example.org/card</b>").doesNotContain("this machine only");
    }

    /** Another code with the same first group. */
    private static String like(String code, int number) {
        String ending = "CDFH".substring(number, number + 1);
        return code.substring(0, 10) + (code.endsWith(ending) ? "X" : ending);
    }

    private static Map<String, String> hidden(String body, String formToken, String code) {
        Map<String, String> form = new LinkedHashMap<>();
        Matcher field = Pattern.compile("<input type=\"hidden\" name=\"([^\"]*)\" value=\"([^\"]*)\"").matcher(body);
        while (field.find()) {
            form.put(field.group(1), field.group(2).replace("&quot;", "\""));
        }
        form.put("form_token", formToken);
        form.put("code", code);
        return form;
    }
}
