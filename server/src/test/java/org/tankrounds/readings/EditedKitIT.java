package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.db.schema.Tables.KITS;
import static org.tankrounds.db.schema.Tables.KIT_SCALES;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tankrounds.db.schema.tables.records.MeasurementsRecord;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** A kit is edited between the showing of a form and its coming back; its numbers mean what stood beside them. */
final class EditedKitIT {
    private static final TestApp APP = TestApp.shared();
    private static final Pattern HIDDEN = Pattern.compile("type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"");
    /** mg NO2 to mg N, from atomic masses N 14.0067, O 15.9994. */
    private static final float NO2_AS_N = 0.304457f;

    private final Cast cast = Cast.add(APP.transactions(), "Edited kits");
    private final String tank = "/tanks/" + cast.tankA().code();
    private final Browserless teacher = APP.signedIn(cast.teacherA());

    @Test
    void aFormShownBefore_countsAsItWasShown() {
        Map<String, String> form = shown(tank + "/log");
        nitriteAsN();

        form.put("nitrite", "0.3");
        assertThat(teacher.postForm(tank + "/log", form).status()).isEqualTo(303);

        // The generic card goes from 0.1 over 0.3 to 0.6: what it can tell apart is half of 0.2.
        assertThat(nitrite()).extracting(MeasurementsRecord::getValue, MeasurementsRecord::getHalfStep)
                .satisfies(row -> assertThat((float) row.get(0)).isCloseTo(0.3f * NO2_AS_N, within(1e-6f)))
                .satisfies(row -> assertThat((float) row.get(1)).isCloseTo(0.1f * NO2_AS_N, within(1e-6f)));
    }

    @Test
    void aRenamedKit_countsAsItWasShown_andTheTankKeepsIt() {
        Map<String, String> form = shown(tank + "/log");
        APP.transactions().inChapter(cast.chapterId(), tx -> tx.update(KITS).set(KITS.NAME, "Card B").execute());
        nitriteAsN();

        form.put("nitrite_typed", "0.12");
        assertThat(teacher.postForm(tank + "/log", form).status()).isEqualTo(303);

        assertThat(nitrite().getValue()).isCloseTo(0.12f * NO2_AS_N, within(1e-6f));
        assertThat(teacher.get(tank + "/log").body()).contains("name=\"kit\" value=\"Card B\"");
    }

    @Test
    void aFormThatIsAskedAboutAgain_keepsItsCards() {
        Map<String, String> form = shown(tank + "/log");
        nitriteAsN();
        form.put("nitrite", "0.3");
        form.put("temperature", "fifty");

        Answer asked = teacher.postForm(tank + "/log", form);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.body()).contains("mg/L as NO₂").contains("nitrite:mg/L as NO2:0 0.1 0.3");
        assertThat(teacher.get(tank + "/log").body()).doesNotContain("mg/L as NO₂");

        String cards = form.get(ShownCards.FIELD).replace(" ", "%20").replace("[", "%5B").replace("]", "%5D");
        assertThat(teacher.get(tank + "/log?shown_cards=" + cards).body()).as("opened to be put right")
                .contains("mg/L as NO₂");
    }

    @Test
    void aMonthBegunBefore_countsAsItWasShown() {
        Map<String, String> form = shown(tank + "/month?month=2026-01");
        nitriteAsN();

        form.putAll(Map.of("d05_nitrite", "0.3", "temperature_unit", "[degF]", "usual_time", "10:00"));
        assertThat(teacher.postForm(tank + "/month", form).status()).isEqualTo(303);

        assertThat(nitrite().getValue()).isCloseTo(0.3f * NO2_AS_N, within(1e-6f));
    }

    @Test
    void aFormFromBeforeCardsWereCarried_countsByTheNameOfItsKit() {
        Map<String, String> form = shown(tank + "/log");
        form.keySet().removeAll(List.of(ShownCards.FIELD));
        form.putAll(Map.of("form_version", "2", "nitrite", "0.3"));
        assertThat(teacher.postForm(tank + "/log", form).status()).isEqualTo(303);
        assertThat(nitrite().getValue()).isCloseTo(0.3f * NO2_AS_N, within(1e-6f));
    }

    @Test
    void aFormFromBeforeCardsWereCarried_whoseKitIsNotKnown_isAskedAboutOnce() {
        Map<String, String> form = shown(tank + "/log");
        form.keySet().removeAll(List.of(ShownCards.FIELD));
        form.putAll(Map.of("form_version", "2", "kit", "Card of old", "nitrite", "0.3"));

        Answer asked = teacher.postForm(tank + "/log", form);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.body()).contains("no kit here is called “Card of old” any more");

        form.putAll(hidden(asked.body()));
        assertThat(teacher.postForm(tank + "/log", form).status()).isEqualTo(303);
        assertThat(nitrite().getValue()).isCloseTo(0.3f * NO2_AS_N, within(1e-6f));
    }

    @Test
    void cardsThatCannotBeRead_storeNothing() {
        Map<String, String> form = shown(tank + "/log");
        form.putAll(Map.of(ShownCards.FIELD, "nitrite:mg/L as gold:0 1", "nitrite", "0.3"));

        assertThat(teacher.postForm(tank + "/log", form).body()).contains("of a version that is not known here");
    }

    private Map<String, String> shown(String page) {
        return new TreeMap<>(hidden(teacher.get(page).body()));
    }

    private static Map<String, String> hidden(String page) {
        Map<String, String> fields = new TreeMap<>();
        HIDDEN.matcher(page).results()
                .forEach(field -> fields.put(field.group(1), field.group(2)));
        return fields;
    }

    private void nitriteAsN() {
        APP.transactions().inChapter(cast.chapterId(), tx -> tx.update(KIT_SCALES)
                .set(KIT_SCALES.COUNTS_AS, "N").where(KIT_SCALES.ANALYTE.eq("nitrite")).execute());
    }

    private MeasurementsRecord nitrite() {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.selectFrom(MEASUREMENTS)
                .where(MEASUREMENTS.ANALYTE.eq("nitrite")).fetchSingle());
    }
}
