package org.tankrounds.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** Looks at a stream: the sheet, what was found, and what that says and does not. */
final class StreamChecksIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Turners of stones");
    private final Browserless coordinator = APP.signedIn(cast.coordinator());
    private final Browserless teacher = APP.signedIn(cast.teacherB());
    private final String site = addSite();

    /** The worked sample of science.md: 365 of 100 animals, FBI 3.65; and a few that are in no index. */
    @Test
    void theSheet_becomesIndicesThatSayWhatTheyDoNotSay() {
        Answer kept = look("temperature", "8.4", "ph", "7.2", "oxygen", "11.1", "found_flat_mayfly", "20",
                "found_crawling_mayfly", "15", "found_golden_stonefly", "8", "found_net_caddis", "30",
                "found_riffle_beetle",
                "10", "found_midge", "12", "found_black_fly", "5", "found_worm", "3", "found_mayfly_unsure", "4",
                "note", "a thin green film");
        assertThat(kept.location()).startsWith(site + "/checks/");
        assertThat(text(teacher.get(kept.location()))).contains("Lower bridge: excellent by its families")
                .contains("13 Jan 2026, 9:00 · Ben Mossthimble").contains("8.4 °C")
                .contains("11.1 mg/L 98 % of what it can hold")
                .contains("Cool and airy enough for a release by common practice").contains("The permit decides.")
                .contains("Family biotic index 3.65, excellent Of 100 animals.")
                .doesNotContain("Fewer than 100 make it rough")
                .contains("too foul in clean streams and too clean in foul ones")
                .contains("The same with worms, snails, clams and leeches 3.78")
                .contains("Families of mayflies, stoneflies and caddisflies 4")
                .contains("Kinds found 14, fair 3 sensitive, 1 somewhat sensitive, 3 tolerant")
                .contains("Kinds, weighed by how many there are 23.1, fair")
                .contains("Counted, but not in the index: another mayfly 4, worm 3.").contains("107 animals")
                .contains("a thin green film");
        assertThat(text(coordinator.get(site)))
                .contains("8.4 °C · 11.1 mg/L oxygen · family index 3.65, excellent · 107 animals");
    }

    @Test
    void fewAnimals_makeARoughIndex_andNoneMakesNone() {
        String few = look("found_golden_stonefly", "4", "oxygen", "6", "temperature", "19").location();
        assertThat(text(teacher.get(few))).contains("1.00, excellent Of 4 animals.")
                .contains("Fewer than 100 make it rough.").contains("Too warm and with too little oxygen");
        String unknown = look("found_unknown", "7").location();
        assertThat(text(teacher.get(unknown))).contains("Stream check at Lower bridge")
                .contains("No animal of a family that the index knows.")
                .contains("Counted, but not in the index: not sure at all 7.");
        String water = look("temperature", "8").location();
        assertThat(text(teacher.get(water))).contains("Temperature and oxygen together would say")
                .doesNotContain("What the animals say");
    }

    @Test
    void aFormSentTwice_isOneLook() {
        String submission = UUID.randomUUID().toString();
        Answer first = look("temperature", "8", "submission_id", submission);
        assertThat(look("temperature", "8", "submission_id", submission).location()).isEqualTo(first.location());
        assertThat(text(look("temperature", "9", "submission_id", submission)))
                .contains("This form was kept before, and says something else now.");
        assertThat(coordinator.get(site).body().split("/checks/\\d+")).hasSize(2);
    }

    @Test
    void badInput_isAnsweredInSentences_andKept() {
        Answer answer = look("temperature", "99", "ph", "15", "oxygen", "30", "found_scud", "some", "day", "2026-01-14",
                "note", "kept");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(text(answer)).contains("can be from 0 to 35 °C").contains("pH is from 0 to 14.")
                .contains("Oxygen can be from 0 to 25 mg/L.").contains("Give a whole number up to 10,000, or nothing.")
                .contains("That is still to come");
        assertThat(answer.body()).contains("value=\"kept\"").contains("value=\"some\"");
        assertThat(text(look())).contains("Nothing is written down yet: read something, or count some animals.");
        assertThat(look("temperature_scale", "[degF]", "temperature", "47.12").status()).as("Fahrenheit")
                .isEqualTo(303);
    }

    @Test
    void theSheet_hasASketchAndALineForEveryAnimal_andItsCautions() {
        Answer sheet = teacher.get(site + "/checks/new");
        assertThat(sheet.body().split("<svg class=\"stream__sketch\"")).hasSize(35);
        assertThat(text(sheet)).contains("Collecting may need a permit of its own")
                .contains("nobody is in the water alone")
                .contains("water penny A flat disk stuck to a stone").contains("not sure at all");
    }

    @Test
    void aCoordinator_takesOneBack() {
        String look = look("temperature", "8").location();
        assertThat(teacher.get(look).body()).doesNotContain("/withdrawn");
        coordinator.get(look);
        assertThat(coordinator.post(look + "/withdrawn").location()).isEqualTo(site);
        assertThat(coordinator.get(look).status()).isEqualTo(404);
        assertThat(APP.signedIn(APP.here().coordinator()).get(site + "/checks/new").status()).as("another chapter")
                .isEqualTo(404);
    }

    private Answer look(String... fields) {
        teacher.get(site + "/checks/new");
        return teacher.post(site + "/checks/new", fields);
    }

    private String addSite() {
        coordinator.get("/release/sites/new");
        return coordinator.post("/release/sites", "name", "Lower bridge", "water", "Quill Brook", "elevation", "285")
                .location();
    }

    private static String text(Answer answer) {
        return text(answer.body());
    }

    private static String text(String body) {
        return body.replaceAll("<[^>]*>", " ").replace('\u00a0', ' ').replace("&#39;", "'").replace("&quot;", "\"")
                .replaceAll("\\s+", " ");
    }
}
