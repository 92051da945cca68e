package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.KITS;
import static org.tankrounds.db.schema.Tables.TANKS;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jooq.Record2;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.KitScale;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/**
 * A tank's kit and the scale of its thermometer follow what a class chose, and nothing that was merely left as it was.
 */
final class HabitsIT {
    private static final TestApp APP = TestApp.shared();
    private static final Pattern HIDDEN = Pattern.compile("type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"");

    private final Cast cast = Cast.add(APP.transactions(), "Habits");
    private final String path = "/tanks/" + cast.tankA().code() + "/log";
    private final Browserless teacher = APP.signedIn(cast.teacherA());
    private String usualKit;

    @BeforeEach
    void addAKit() {
        usualKit = kit();
        APP.transactions().inChapter(cast.chapterId(), tx -> new KitRepository().add(tx, cast.chapterId(), "Strips",
                List.of(new KitScale(Analyte.NITRITE, new UnitForm("mg/L", "N"), List.of(0.0, 0.15, 0.3)))));
    }

    @Test
    void ofAFormLeftOpen_undoNoChangeOfTheTank() {
        Map<String, String> form = shown();
        change("Strips", "Cel");

        form.putAll(Map.of("temperature", "52", "temperature_unit", "[degF]"));
        assertThat(teacher.postForm(path, form).status()).isEqualTo(303);

        assertThat(kit()).isEqualTo("Strips");
        assertThat(unit()).isEqualTo("Cel");
    }

    @Test
    void ofAFormFromBeforeItSaidWhatItShowed_undoNoChangeOfTheTank() {
        Map<String, String> form = shown();
        form.keySet().removeIf(name -> name.startsWith("opened_"));
        change("Strips", "Cel");

        form.putAll(Map.of("temperature", "52", "temperature_unit", "[degF]", "form_version", "3"));
        assertThat(teacher.postForm(path, form).status()).isEqualTo(303);

        assertThat(kit()).isEqualTo("Strips");
        assertThat(unit()).isEqualTo("Cel");
    }

    @Test
    void chosenOnTheForm_areRemembered_alsoWhereItWasAskedAboutMeanwhile() {
        Map<String, String> form = shown();
        form.putAll(Map.of("temperature", "warm", "temperature_unit", "Cel", "act", "kit", "other_kit", "Strips"));
        form.putAll(hidden(teacher.postForm(path, form)));
        form.remove("act");
        Answer asked = teacher.postForm(path, form);
        assertThat(asked.status()).isEqualTo(422);
        form.putAll(hidden(asked));
        form.put("temperature", "11");
        assertThat(teacher.postForm(path, form).status()).isEqualTo(303);

        assertThat(kit()).isEqualTo("Strips");
        assertThat(unit()).isEqualTo("Cel");
    }

    @Test
    void chosenBeforeTheTankWasChanged_undoNoChangeOfTheTank() {
        Map<String, String> form = shown();
        form.putAll(Map.of("temperature", "11", "temperature_unit", "Cel", "act", "kit", "other_kit", "Strips"));
        form.putAll(hidden(teacher.postForm(path, form)));
        form.remove("act");
        APP.transactions().inChapter(cast.chapterId(), tx -> new KitRepository().add(tx, cast.chapterId(), "Drops",
                List.of(new KitScale(Analyte.NITRITE, new UnitForm("mg/L", "N"), List.of(0.0, 0.2, 0.4)))));
        change("Drops", "[degF]");
        assertThat(teacher.postForm(path, form).status()).isEqualTo(303);

        assertThat(kit()).isEqualTo("Drops");
        assertThat(unit()).as("nobody changed the thermometer meanwhile").isEqualTo("Cel");
    }

    @Test
    void ofAReadingSentTwice_areRememberedOnce() {
        Map<String, String> form = shown();
        form.putAll(Map.of("temperature", "11", "temperature_unit", "Cel", "kit", "Strips"));
        assertThat(teacher.postForm(path, form).status()).isEqualTo(303);
        change(usualKit, "[degF]");
        assertThat(teacher.postForm(path, form).status()).isEqualTo(303);

        assertThat(kit()).isEqualTo(usualKit);
        assertThat(unit()).isEqualTo("[degF]");
    }

    private Map<String, String> shown() {
        return new TreeMap<>(hidden(teacher.get(path)));
    }

    private static Map<String, String> hidden(Answer page) {
        Map<String, String> fields = new TreeMap<>();
        HIDDEN.matcher(page.body()).results().forEach(field -> fields.put(field.group(1), field.group(2)));
        return fields;
    }

    /** As a coordinator does on the page of the tank's place. */
    private void change(String kit, String thermometerUnit) {
        APP.transactions().inChapter(cast.chapterId(), tx -> tx.update(TANKS)
                .set(TANKS.KIT_ID, tx.select(KITS.KIT_ID).from(KITS)
                        .where(KITS.CHAPTER_ID.eq(cast.chapterId())).and(KITS.NAME.eq(kit)).fetchSingle(KITS.KIT_ID))
                .set(TANKS.THERMOMETER_UNIT, thermometerUnit)
                .where(TANKS.TANK_ID.eq(cast.tankA().tankId())).execute());
    }

    private String kit() {
        return tank().value1();
    }

    private String unit() {
        return tank().value2();
    }

    private Record2<String, String> tank() {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.select(KITS.NAME, TANKS.THERMOMETER_UNIT)
                .from(TANKS).join(KITS).on(KITS.CHAPTER_ID.eq(TANKS.CHAPTER_ID).and(KITS.KIT_ID.eq(TANKS.KIT_ID)))
                .where(TANKS.TANK_ID.eq(cast.tankA().tankId())).fetchSingle());
    }
}
