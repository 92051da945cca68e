package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.READINGS;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.db.schema.tables.records.ReadingsRecord;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** Words that look as if they told of a person: asked about once, and never in the way of a reading. */
class PersonalAsksIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Notes about people");
    private final String tank = "/tanks/" + cast.tankA().code();
    private Browserless teacher;

    @BeforeEach
    void signIn() {
        teacher = APP.signedIn(cast.teacherA());
        teacher.get(tank + "/log");
    }

    @Test
    void theForm_asksOnce_andKeepsWhatTheWriterKeeps() {
        Map<String, String> typed = form("temperature", "52", "by", "Maria Lopez", "note", "ring 605-555-0147");
        Answer asked = teacher.postForm(tank + "/log", typed);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.body())
                .contains("The class or period holds what looks like a person’s name, “Maria Lopez”")
                .contains("The note holds what looks like a phone number, “605-555-0147”")
                .contains("Keep it as it is").contains("value=\"52\"");
        assertThat(readings()).isEmpty();

        typed.put("by", "period 3");
        typed.put("sure_note", "yes 605-555-0147");
        assertThat(teacher.postForm(tank + "/log", typed).status()).isEqualTo(303);
        assertThat(readings().get(0).getNote()).isEqualTo("ring 605-555-0147");
        assertThat(readings().get(0).getFlags()).isEmpty();
    }

    @Test
    void anAnswerAboutOneName_goesAlong_andIsNoneAboutAnother() {
        Map<String, String> typed = form("note", "by Maria, cloudy", "temperature", "54", "temperature_unit", "Cel");
        typed.put("sure_note", "yes by Maria");
        assertThat(teacher.postForm(tank + "/log", typed).body()).contains("You typed 54 °C")
                .doesNotContain("holds what looks like").contains("name=\"sure_note\" value=\"yes by Maria\"");

        typed.put("note", "by Ida, cloudy");
        assertThat(teacher.postForm(tank + "/log", typed).body()).contains("a person’s name, “by Ida”");
        assertThat(readings()).isEmpty();
    }

    @Test
    void aCorrection_asksOnce_butNotAboutWhatStoodThereBefore() {
        assertThat(teacher.postForm(tank + "/log", form("temperature", "52")).status()).isEqualTo(303);
        String reading = tank + "/readings/" + readings().get(0).getCode();
        Map<String, String> typed = form("temperature", "53", "measured_at", "2026-01-13 09:00",
                "reason", "told by Ida", "note", "as Maria Lopez saw it", "version", "1");
        assertThat(teacher.postForm(reading, typed).body())
                .contains("The note holds what looks like a person’s name, “Maria Lopez”")
                .contains("The reason holds what looks like a person’s name, “by Ida”");
        assertThat(readings()).hasSize(1);

        typed.put("sure_note", "yes Maria Lopez");
        typed.put("sure_reason", "yes by Ida");
        assertThat(teacher.postForm(reading, typed).status()).isEqualTo(303);
        assertThat(teacher.get(reading).body()).as("the form comes with the answer")
                .contains("name=\"sure_note\" value=\"yes Maria Lopez\"");
    }

    @Test
    void throughTheApi_nothingIsAsked() {
        Answer stored = APP.bearer(cast.tankA().token()).header("Idempotency-Key", "named")
                .postJson("/api/v1" + tank + "/readings", """
                {"measuredAt": "2026-01-12T14:05:00-05:00", "by": "Maria Lopez", "values": [],
                 "note": "ring 605-555-0147"}""");

        assertThat(stored.status()).isEqualTo(201);
        assertThat(readings().get(0).getByLabel()).isEqualTo("Maria Lopez");
    }

    private Map<String, String> form(String... fields) {
        Map<String, String> form = new TreeMap<>();
        form.put("form_token", teacher.formToken());
        form.put("submission_id", UUID.randomUUID().toString());
        for (int i = 0; i < fields.length; i += 2) {
            form.put(fields[i], fields[i + 1]);
        }
        return form;
    }

    private List<ReadingsRecord> readings() {
        return APP.transactions().inChapter(cast.chapterId(),
                tx -> tx.selectFrom(READINGS).orderBy(READINGS.VERSION).fetch());
    }
}
