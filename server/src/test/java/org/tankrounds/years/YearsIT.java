package org.tankrounds.years;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** Seasons beside each other; the chapter's own has 200 eggs. */
final class YearsIT {
    private static final TestApp APP = TestApp.shared();
    private static final String SHEET = "school\troom\teggs\tdead eggs\tdead fish\treleased\n"
            + "Thistle School\tRoom 4\t200\t20\t80\t100\nHarebell School\tLab\t200\t30\t70\t90";

    private final Cast cast = Cast.add(APP.transactions(), "Those who look back");
    private final Browserless coordinator = APP.signedIn(cast.coordinator());

    @Test
    void aPastSeason_isLookedAt_keptOnce_comparedAndTakenBack() {
        Answer looked = put("2024-25", SHEET, "");
        assertThat(looked.status()).isEqualTo(200);
        assertThat(text(looked)).contains("2 tanks: is this right?").contains("Together 400 200 0 190 0 10");
        assertThat(text(coordinator.get("/years"))).doesNotContain("2024-25");

        String submission = UUID.randomUUID().toString();
        for (int i = 0; i < 2; i++) {
            assertThat(put("2024-25", SHEET, looked(looked), "submission_id", submission).location())
                    .isEqualTo("/years?saved=added");
        }
        String text = text(coordinator.get("/years"));
        assertThat(text).contains("Eggs received 400 200").contains("Released 190 0").contains("Unexplained 10 0")
                .contains("2024-25 was put in from a sheet");
        // Wilson 1927 of 190 of 400, computed once elsewhere: 0.4266 to 0.5239.
        assertThat(text).contains("48 % (43 to 52)").contains("2025-26 is not over, so it is not compared yet");
        Answer other = put("2023-24", SHEET.replace("100", "60"), "");
        put("2023-24", SHEET.replace("100", "60"), looked(other), "ended_on", "2024-06-30");
        assertThat(text(coordinator.get("/years")))
                .contains("More survived in 2024-25 than in 2023-24: 48 % instead of 38 %, more than chance makes")
                .contains("Survival: 48 % in 2024-25; 100 % so far in 2025-26");

        assertThat(text(put("2024-25", SHEET, looked(looked), "submission_id", UUID.randomUUID().toString())))
                .contains("A season of that name is here already");

        coordinator.post(undoOf("2023-24", coordinator.get("/years")));
        assertThat(text(coordinator.get("/years"))).doesNotContain("2023-24").contains("2024-25");
    }

    /** More seasons than fit beside each other. */
    @Test
    void seasonsThatTheTableLeavesOut_areHadBackAndTakenAwayAsTheOthers() {
        Browserless keeper = APP.signedIn(Cast.add(APP.transactions(), "Those who keep all").coordinator());
        for (int year = 2017; year < 2024; year++) {
            String[] fields = {"name", "Season " + year, "ended_on", year + "-06-30", "sheet",
                    "school,eggs\nThistle School," + year};
            keeper.get("/years/import");
            String looked = looked(keeper.post("/years/import", fields));
            String[] kept = Arrays.copyOf(fields, fields.length + 2);
            kept[fields.length] = "looked";
            kept[fields.length + 1] = looked;
            keeper.post("/years/import", kept);
        }
        Answer page = keeper.get("/years");
        assertThat(text(page)).contains("2 older seasons are not shown.")
                .contains("Season 2017 was put in from a sheet.")
                .containsOnlyOnce("Season 2023 was put in from a sheet.");
        String undo = undoOf("Season 2017", page);
        assertThat(keeper.get(undo.replace("/withdrawn", ".csv")).body()).contains("Thistle School,2017");
        keeper.post(undo);
        assertThat(text(keeper.get("/years"))).contains("One older season is not shown.").doesNotContain("Season 2017");
        assertThat(text(keeper.get("/years"))).contains("Season 2018 was put in from a sheet.");
    }

    /** What the service itself gives out comes back cell for cell, in another chapter. */
    @Test
    void theSummarysOwnFile_comesBackWithoutLoss() {
        String csv = coordinator.get("/season/" + cast.season() + "/summary.csv").body();
        Cast other = Cast.add(APP.transactions(), "Those who read it");
        Browserless reader = APP.signedIn(other.coordinator());
        reader.get("/years/import");
        Answer looked = reader.post("/years/import", "name", "From elsewhere", "ended_on", "2025-06-30", "sheet", csv);
        reader.post("/years/import", "name", "From elsewhere", "ended_on", "2025-06-30", "sheet", csv,
                "looked", looked(looked));
        Matcher file = Pattern.compile("href=\"(/years/\\w+\\.csv)\"").matcher(reader.get("/years").body());
        assertThat(file.find()).isTrue();
        assertThat(reader.get(file.group(1)).body()).isEqualTo(csv);
        assertThat(text(reader.get("/years"))).contains("Eggs received 200 200");
        assertThat(coordinator.get(file.group(1)).status()).as("another chapter's").isEqualTo(404);
    }

    @Test
    void badSheets_areAnsweredByLine_andNothingIsLost() {
        Answer refused = put("", "school,eggs\nThistle School,many", "");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains("Say which season it was.").contains("Line 2: eggs is “many”")
                .contains("Thistle School,many");
        assertThat(text(put("2024-25", "", ""))).contains("Paste the counts.");
        assertThat(APP.signedIn(cast.teacherA()).get("/years").status()).isEqualTo(404);
    }

    /** A first heading that is empty stands before a tab. */
    @Test
    void aSheetWithoutItsFirstHeading_keepsItsColumns() {
        assertThat(text(put("2022-23", "\ttank\teggs\treleased\n1\t12\t200\t150", ""))).contains("12 200 0 0 150 0 50");
    }

    @Test
    void whatASpreadsheetTakesForAFormula_isGivenBackAsText() {
        String sheet = "school,eggs,note\nThistle School,100,\"=HYPERLINK(\"\"http://x\"\")\"";
        put("2021-22", sheet, looked(put("2021-22", sheet, "")));
        Matcher file = Pattern.compile("href=\"(/years/\\w+\\.csv)\"").matcher(coordinator.get("/years").body());
        assertThat(file.find()).isTrue();
        assertThat(coordinator.get(file.group(1)).body()).contains("'=HYPERLINK").doesNotContain(",\"=");
    }

    @Test
    void anotherSheetThanWasLookedAt_isLookedAtFirst() {
        Answer looked = put("2023-24", SHEET, "");
        Answer changed = put("2023-24", SHEET.replace("100", "99"), looked(looked));
        assertThat(changed.status()).isEqualTo(200);
        assertThat(text(changed)).contains("Together 400 200 0 189 0 11");
    }

    private static String undoOf(String season, Answer page) {
        Matcher undo = Pattern.compile("action=\"(/years/\\w+/withdrawn)\"(?:(?!</form>)[\\s\\S])*aria-label=\"[^\"]*"
                + Pattern.quote(season)).matcher(page.body());
        assertThat(undo.find()).as(season).isTrue();
        return undo.group(1);
    }

    private Answer put(String name, String sheet, String looked, String... more) {
        coordinator.get("/years/import");
        boolean isDated = more.length > 0 && more[0].equals("ended_on");
        String[] fields = {"name", name, "sheet", sheet, "looked", looked,
                isDated ? "unused" : "ended_on", "2025-06-30"};
        String[] all = new String[fields.length + more.length];
        System.arraycopy(fields, 0, all, 0, fields.length);
        System.arraycopy(more, 0, all, fields.length, more.length);
        return coordinator.post("/years/import", all);
    }

    private static String looked(Answer answer) {
        Matcher found = Pattern.compile("name=\"looked\" value=\"(\\w+)\"").matcher(answer.body());
        return found.find() ? found.group(1) : "";
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }
}
