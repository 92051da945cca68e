package org.tankrounds.eggday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.EGG_RECEIPTS;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.Cast.TankOfCast;
import org.tankrounds.testing.TestApp;

/**
 * An egg day on a Tuesday at 9:00: tank A has 200 eggs of before, tank B none.
 */
final class EggDayIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Drivers of eggs");
    private final Browserless coordinator = APP.signedIn(cast.coordinator());
    private final Browserless mentor = APP.signedIn(cast.mentor());
    private final Browserless teacher = APP.signedIn(cast.teacherB());
    private final String season = "/season/" + cast.season();

    @Test
    void theDay_isPlanned_andItsHeadingIsTheAnswer() {
        assertThat(text(coordinator.get(season))).contains("change its name or days · egg day");
        assertThat(coordinator.get(season + "/egg-days").location()).isEqualTo(season + "/egg-days/new");
        String run = plan("2026-01-13", "07:30");
        assertThat(text(coordinator.get(run))).contains("Egg day, 13 January: no tank on the drive yet");

        stops(run, cast.tankB(), "230", "08:30", cast.tankA(), "170", "09:15");
        String text = text(coordinator.get(run));
        assertThat(text).contains("Egg day, 13 January: 400 eggs to 2 schools, first at 8:30")
                .contains("Fetched at 7:30 from Coldspring farm", "Health certificate H-12 · permit P-3 · 220 °C-days")
                .contains("1 8:30 Birchthimble School Room 12 230 not yet",
                        "2 9:15 Alderwhistle School Room 12 170 not yet")
                // Foam box of 0.9 m² and 25 mm: 0.9 ÷ (1/200 + 0.025/0.030 + 1/8) = 0.934 W/K; 12 K for 2.75 h melt
                // 0.302 kg at 8 °C (334,000 + 4186 · 8 J/kg), twice for opened lids; worked by hand.
                .contains("about 0.6 kg of ice in sealed bottles: for 3 hours at 8 °C beside"
                        + " the eggs and 20 °C outside")
                .contains("2 clean buckets and jugs");
        assertThat(coordinator.get(season + "/egg-days").location()).isEqualTo(run);
        assertThat(mentor.get("/rounds").body()).contains("<a href=\"" + run + "\">Egg day, 13 January</a>");
        assertThat(text(mentor.get(run))).contains("400 eggs to 2 schools").doesNotContain("Plan the stops");
    }

    @Test
    void aFormSentTwice_plansOneDay() {
        String form = action(coordinator.get(season + "/egg-days/new"), season + "/egg-days\\?form=[^\"]+");
        String first = coordinator.post(form, day("2026-01-20", "07:30")).location();
        assertThat(coordinator.post(form, day("2026-01-20", "07:30")).location()).isEqualTo(first);
    }

    @Test
    void theOrderOfDriving_isChanged_onceForEachPress() {
        String run = plan("2026-01-13", "07:30");
        stops(run, cast.tankB(), "230", "08:30", cast.tankA(), "170", "09:15");
        coordinator.get(run);
        String later = run + "/stops/" + cast.tankB().code() + "/later";
        coordinator.post(later, "number", "1");
        coordinator.post(later, "number", "1");

        assertThat(text(coordinator.get(run))).contains("1 9:15 Alderwhistle School", "2 8:30 Birchthimble School")
                .contains("Birchthimble School, Room 12 is expected at 8:30, before what comes ahead of it at 9:15");
        coordinator.post(run + "/stops/" + cast.tankB().code() + "/earlier", "number", "2");
        assertThat(text(coordinator.get(run))).contains("1 8:30 Birchthimble School")
                .doesNotContain("before what comes ahead");
    }

    @Test
    void theCooler_isLookedAtOnTheWay_andWarmEggsAreSpokenOf() {
        String run = driven();
        check(mentor, run, "8", "supplier", "07:40");
        assertThat(text(coordinator.get(run))).contains("7:40 8.0 °C at the supplier Max Rifflequill")
                .doesNotContain("too warm");
        check(mentor, run, "13.5", "road", "08:10");
        assertThat(text(coordinator.get(run)))
                .contains("13.5 °C beside the eggs at 8:10 is too warm: they are kept at 3 °C to 13 °C. Sealed ice");
        check(mentor, run, "1,5", "road", "08:20");
        assertThat(text(coordinator.get(run))).contains("1.5 °C beside the eggs at 8:20 is too cold");
        check(mentor, run, "4.5", "road", "08:30");
        assertThat(text(coordinator.get(run))).contains("4.5 °C beside the eggs at 8:30: near the edge");

        mentor.get(run);
        List<String> undo = all(mentor.get(run), "action=\"(" + run + "/checks/\\d+/withdrawn)\"");
        mentor.post(undo.get(3));
        mentor.post(undo.get(2));
        mentor.post(undo.get(1));
        assertThat(text(coordinator.get(run))).contains("8.0 °C").doesNotContain("13.5 °C", "1.5 °C", "4.5 °C");

        Answer refused = check(mentor, run, "46", "road", "08:30");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains("The temperature can be from −5 to 40 °C; is it the other scale?");
    }

    /**
     * Eggs: at most 1 °C in 15 minutes, 5 °C in all (common practice, no source);
     * 1/4, 1/3, 1/2 by the formula of a change.
     */
    @Test
    void atTheTank_aTimetableSaysWhenTheEggsGoOver() {
        String stop = driven() + "/tanks/" + cast.tankB().code();
        temper(teacher, stop, "7", "11", "", "08:40", "quick");
        assertThat(text(teacher.get(stop)))
                .contains("The eggs go over at 9:40, after 60 minutes: never more than 1 °C at a time.")
                .contains("8:55 8.0 °C replace 1/4 of it", "9:10 9.0 °C replace 1/3 of it",
                        "9:25 10.0 °C replace 1/2 of it", "9:40 11.0 °C wait, then the eggs go over")
                .contains("pH is not read yet");
        assertThat(text(mentor.get(driven())))
                .contains("tempering until 9:40 7.0 °C, 11.0 °C", "8:40 7.0 °C Birchthimble School, Room 12");

        temper(teacher, stop, "7", "11", "8.4", "08:40", "quick");
        assertThat(text(teacher.get(stop))).contains("The tank’s pH is 8.4: take the slower pace");
        temper(teacher, stop, "7", "11", "8.4", "08:40", "slow");
        assertThat(text(teacher.get(stop))).contains("The eggs go over at 10:40, after 120 minutes")
                .doesNotContain("pH is not read yet", "take the slower pace");
    }

    @Test
    void whoReadsFahrenheit_typesAndReadsIt() {
        teacher.get("/account");
        teacher.post("/account/speech", "language", "en", "temperature_unit", "[degF]");
        String stop = driven() + "/tanks/" + cast.tankB().code();
        // 44.6 °F are 7 °C, 51.8 °F are 11 °C.
        temper(teacher, stop, "44.6", "51.8", "", "08:40", "quick");
        assertThat(text(teacher.get(stop))).contains("never more than 1.8 °F at a time",
                "8:55 46.4 °F replace 1/4 of it", "9:40 51.8 °F wait, then the eggs go over");
        assertThat(text(mentor.get(stop))).contains("8:55 8.0 °C replace 1/4 of it");
        teacher.post(action(teacher.get(stop), stop + "/receipt\\?form=[^\"]+"), receipt("225", ""));
        String reading = find(teacher.get(stop).body(), "href=\"(/tanks/\\w+/readings/[\\w-]+)\"");
        assertThat(teacher.get(reading).body()).contains("51.8");
    }

    @Test
    void eggsThatMustNotGoOver_areHeldBack_inOneSentence() {
        String stop = driven() + "/tanks/" + cast.tankB().code();
        temper(mentor, stop, "4", "11", "", "", "quick");
        assertThat(text(mentor.get(stop))).contains("Do not put the eggs in yet: 4.0 °C and 11.0 °C are 7 °C apart,"
                + " and eggs are tempered across 5 °C at the most.").doesNotContain("The eggs go over");
        temper(mentor, stop, "12", "14.5", "9.4", "", "quick");
        assertThat(text(mentor.get(stop)))
                .contains("Do not put the eggs in: the tank is at 14.5 °C, and eggs are kept at 3 °C to 13 °C")
                .contains("Do not put the eggs in: the tank’s pH is 9.4");
        temper(mentor, stop, "12", "25.5", "", "", "quick");
        assertThat(text(mentor.get(stop))).contains("in which trout die, tempered or not");
        assertThat(text(mentor.get(driven()))).contains("eggs wait: look there 12.0 °C, 25.5 °C");
    }

    @Test
    void aReceipt_beginsTheCountOfATank_onceHoweverOftenItIsSent() {
        String run = driven();
        String stop = run + "/tanks/" + cast.tankB().code();
        temper(teacher, stop, "7", "11", "7.2", "07:40", "quick");
        String form = action(teacher.get(stop), stop + "/receipt\\?form=[^\"]+");
        String other = action(mentor.get(stop), stop + "/receipt\\?form=[^\"]+");
        for (int i = 0; i < 2; i++) {
            assertThat(teacher.post(form, receipt("225", "3")).location()).endsWith("saved=received");
        }
        Answer second = mentor.post(other, receipt("225", "3"));
        assertThat(second.status()).isEqualTo(409);
        assertThat(text(second)).contains("There is a receipt of this stop already: 225 eggs on 13 January, 8:45,"
                + " written by Ben Mossthimble. Nothing was added. You had typed: eggs 225, dead on arrival 3.");
        Answer changed = teacher.post(form, receipt("240", "3"));
        assertThat(changed.status()).as("sent again with another number").isEqualTo(409);

        assertThat(text(teacher.get(stop))).contains("Room 12: 222 eggs in the tank since 8:45")
                .contains("225 eggs handed over, counted by weight, 13 January, 8:45")
                .contains("Dead on arrival and picked out: 3")
                .contains("Signed by: Room 12, period 3. Adult: teacher.");
        assertThat(text(teacher.get(season + "/tanks/" + cast.tankB().code() + "/count")))
                .contains("Room 12: 222 by count, 12 more or less", "Eggs received 225", "Found dead 3");
        int lot = APP.transactions().inChapter(cast.chapterId(), tx -> tx.select(DSL.max(EGG_RECEIPTS.LOT_ID))
                .from(EGG_RECEIPTS).where(EGG_RECEIPTS.CHAPTER_ID.eq(cast.chapterId())).fetchSingle().value1());
        Answer count = coordinator.get(season + "/tanks/" + cast.tankB().code() + "/count");
        assertThat(text(count)).contains("by a receipt of the egg day, where it is taken back");
        assertThat(count.body()).doesNotContain("/count/lots/");
        assertThat(coordinator.get(season + "/tanks/" + cast.tankB().code() + "/count/lots/" + lot + "/withdrawn")
                .status()).isEqualTo(409);
        assertThat(text(coordinator.get(season)))
                .contains("225 eggs on 13 Jan", "220 °C-days", "Coldspring farm, certificate H-12");
        String reading = find(teacher.get(stop).body(), "href=\"(/tanks/\\w+/readings/[\\w-]+)\"");
        assertThat(teacher.get(reading).body()).contains("value=\"11.0\"", "Room 12, period 3").contains("7.2");
        assertThat(text(coordinator.get(run)))
                .contains("1 of 2 stops done, next Alderwhistle School", "225 at 8:45, dead on arrival: 3");
    }

    @Test
    void twoPhonesAtOnce_writeOneReceipt() {
        String stop = driven() + "/tanks/" + cast.tankB().code();
        String pattern = stop + "/receipt\\?form=[^\"]+";
        String first = action(teacher.get(stop), pattern);
        String second = action(mentor.get(stop), pattern);
        CompletableFuture<Answer> one = CompletableFuture.supplyAsync(() -> teacher.post(first, receipt("225", "3")));
        CompletableFuture<Answer> other = CompletableFuture.supplyAsync(() -> mentor.post(second, receipt("224", "2")));
        assertThat(List.of(one.join().status(), other.join().status())).containsExactlyInAnyOrder(303, 409);
        assertThat(text(coordinator.get(season + "/tanks/" + cast.tankB().code() + "/count")))
                .containsPattern("Eggs received 22[45] Found dead [23] There by count 222");
    }

    @Test
    void everyEggOfTheDay_isAccountedFor_andNothingIsForced() {
        String run = driven();
        receive(run, cast.tankB(), "225", "3");
        assertThat(text(coordinator.get(run))).contains("How many eggs were collected is not written down yet.");
        edit(run, "eggs", "410", "method", "weighed");
        assertThat(text(coordinator.get(run)))
                .contains("Collected 410 ±21 In tanks 222 Dead on arrival 3 Still in the cooler 185");
        receive(run, cast.tankA(), "170", "0");
        edit(run, "eggs", "410", "method", "weighed", "left_over", "10");
        assertThat(text(coordinator.get(run))).contains("Egg day, 13 January: 392 eggs in 2 tanks")
                .contains("Left over 10 Unexplained 5").contains("5 eggs are unaccounted for");
        edit(run, "eggs", "390", "method", "weighed", "left_over", "10");
        assertThat(text(coordinator.get(run))).contains("Unexplained −15").contains("15 eggs more were handed over");
    }

    @Test
    void aReceipt_isTakenBack_withItsEggsAndItsReading() {
        String run = driven();
        String stop = run + "/tanks/" + cast.tankB().code();
        receive(run, cast.tankB(), "225", "3");
        String reading = find(mentor.get(stop).body(), "href=\"(/tanks/\\w+/readings/[\\w-]+)\"");
        assertThat(mentor.post(stop + "/receipt/withdrawn").location()).endsWith("saved=takenBack");

        assertThat(text(mentor.get(stop))).contains("Room 12: 230 eggs, expected at 8:30");
        assertThat(text(mentor.get(season + "/tanks/" + cast.tankB().code() + "/count")))
                .contains("Room 12: no eggs yet")
                .doesNotContain("Found dead 3");
        assertThat(text(mentor.get(reading))).contains("the receipt of the eggs was taken back");
        receive(run, cast.tankB(), "228", "1");
        assertThat(text(mentor.get(season + "/tanks/" + cast.tankB().code() + "/count")))
                .contains("Eggs received 228", "Found dead 1");
    }

    @Test
    void aReceipt_whoseEggsWereMovedOn_stays() {
        String run = driven();
        receive(run, cast.tankB(), "225", "");
        String moved = season + "/tanks/" + cast.tankB().code() + "/count/moved";
        String form = action(coordinator.get(moved), moved + "\\?form=[^\"]+");
        assertThat(coordinator.post(form, "fish", "100", "method", "one_by_one", "to", cast.tankA().code(),
                "day", "2026-01-13").status()).isEqualTo(303);
        mentor.get(run + "/tanks/" + cast.tankB().code());
        Answer kept = mentor.post(run + "/tanks/" + cast.tankB().code() + "/receipt/withdrawn");
        assertThat(kept.status()).isEqualTo(409);
        assertThat(text(kept)).contains("It cannot be taken back");
        assertThat(text(mentor.get(run + "/tanks/" + cast.tankB().code()))).contains("225 eggs handed over");
    }

    @Test
    void aPupilsName_isAskedAbout_andNothingTypedIsLost() {
        String stop = driven() + "/tanks/" + cast.tankB().code();
        String form = action(teacher.get(stop), stop + "/receipt\\?form=[^\"]+");
        String[] typed = receipt("225", "3");
        typed[typed.length - 1] = "Maria Lopez, period 3";
        Answer asked = teacher.post(form, typed);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("This looks like a person’s name: Maria Lopez.");
        assertThat(asked.body()).contains("value=\"Maria Lopez, period 3\"", "value=\"225\"");
        assertThat(text(teacher.get(stop))).doesNotContain("handed over, counted");
        String sure = find(asked.body(), "name=\"sure_names\" value=\"([^\"]+)\"");
        List<String> again = new ArrayList<>(List.of(typed));
        again.addAll(List.of("sure_names", sure));
        assertThat(teacher.post(form, again.toArray(String[]::new)).status()).isEqualTo(303);
    }

    @Test
    void badInput_isAnsweredInSentences() {
        String run = driven();
        String stop = run + "/tanks/" + cast.tankB().code();
        Answer answer = teacher.post(action(teacher.get(stop), stop + "/receipt\\?form=[^\"]+"), "eggs", "many",
                "dead", "x", "method", "", "received_on", "2026-01-14", "class_label", "", "adult", "pupil");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(text(answer)).contains("The number of eggs is a whole number from 1", "Choose how it was counted.",
                "That day is still to come", "Write the label of the class", "Choose the adult who was there");
        teacher.get(stop);
        Answer temper = teacher.post(stop + "/tempering", "cooler_at_tank", "cold", "tank", "", "tank_ph", "15",
                "pace", "run", "tempering_from", "late");
        assertThat(temper.status()).isEqualTo(422);
        assertThat(text(temper)).contains("write one number, such as 12.5", "Write down what the tank shows",
                "The pH is a number from 0 to 14", "Choose the pace", "The time is \"late\"".replace("\"", "&quot;"));
        coordinator.get(run + "/stops");
        Answer plan = coordinator.post(run + "/stops", "eggs-" + cast.tankA().code(), "0",
                "time-" + cast.tankB().code(), "08:30");
        assertThat(plan.status()).isEqualTo(422);
        assertThat(text(plan)).contains("The number of eggs is a whole number from 1",
                "Say how many eggs Birchthimble School, Room 12 gets, or take its time out.");
        Answer day = coordinator.post(
                action(coordinator.get(season + "/egg-days/new"), season + "/egg-days\\?form=[^\"]+"),
                day("2031-01-13", ""));
        assertThat(day.status()).isEqualTo(422);
        assertThat(text(day))
                .contains("The day can be within the season", "Give the time at which the eggs are fetched");
    }

    @Test
    void whatSomebodyElseChanged_isNotOverwritten() {
        String run = driven();
        Answer shown = coordinator.get(run + "/stops");
        String before = find(shown.body(), "name=\"shown\" value=\"(\\w+)\"");
        stops(run, cast.tankB(), "240", "08:30", cast.tankA(), "170", "09:15");
        Answer clash = coordinator.post(run + "/stops", "shown", before, "eggs-" + cast.tankB().code(), "250",
                "time-" + cast.tankB().code(), "08:30");
        assertThat(clash.status()).isEqualTo(409);
        assertThat(text(clash)).contains("Eggs for Birchthimble School, Room 12: now 240");
        assertThat(text(coordinator.get(run))).contains("410 eggs to 2 schools");
    }

    @Test
    void aStopWithAReceipt_staysInTheDrive_andSoDoesItsDay() {
        String run = driven();
        receive(run, cast.tankB(), "225", "");
        Answer shown = coordinator.get(run + "/stops");
        Answer refused = coordinator.post(run + "/stops",
                "shown", find(shown.body(), "name=\"shown\" value=\"(\\w+)\""), "eggs-" + cast.tankA().code(), "170");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains("There is a receipt of Birchthimble School, Room 12: take it back first");
        coordinator.get(run + "/edit");
        assertThat(coordinator.post(run + "/called-off").status()).isEqualTo(409);
        assertThat(coordinator.get(run).status()).isEqualTo(200);

        coordinator.get(run + "/tanks/" + cast.tankB().code());
        coordinator.post(run + "/tanks/" + cast.tankB().code() + "/receipt/withdrawn");
        coordinator.get(run + "/edit");
        assertThat(coordinator.post(run + "/called-off").location()).isEqualTo(season);
        assertThat(coordinator.get(run).status()).isEqualTo(404);
    }

    @Test
    void everybody_seesTheirs() {
        String run = driven();
        assertThat(teacher.get(run).status()).isEqualTo(404);
        assertThat(teacher.get("/tanks/" + cast.tankB().code()).body())
                .contains("<a href=\"" + run + "/tanks/" + cast.tankB().code()
                        + "\">Egg day, 13 January: its eggs</a>");
        assertThat(teacher.get(run + "/tanks/" + cast.tankA().code()).status()).as("another class's tank")
                .isEqualTo(404);
        assertThat(text(teacher.get(run + "/tanks/" + cast.tankB().code())))
                .contains("Room 12: 230 eggs, expected at 8:30");
        assertThat(mentor.get(run + "/stops").status()).isEqualTo(404);
        assertThat(APP.signedIn(APP.here().coordinator()).get(run).status()).as("another chapter").isEqualTo(404);
        assertThat(coordinator.get(season + "/egg-days/99999").status()).isEqualTo(404);
        assertThat(coordinator.get(season + "/egg-days/1e9").status()).isEqualTo(404);
    }

    @Test
    void paper_hasTheDrive_andAReceiptForEachClassToSign() throws IOException {
        String run = driven();
        String words = words(mentor.getFile(run + "/sheet.pdf"));
        assertThat(words).contains("Egg day, 13 January 2026", "1 8:30 Birchthimble School, Room 12 230 eggs",
                "Receipt 1: Birchthimble School, Room 12, 230 eggs planned", "Receipt 2: Alderwhistle School, Room 12",
                "a label, no pupil", "at most 1 °C in 15 minutes, better in 30", "more than 5 °C apart",
                "Nothing that the eggs came in goes into the tank");
        assertThat(text(mentor.get(run + "/sheet")))
                .contains("Receipt 1: Birchthimble School, Room 12, 230 eggs planned");
    }

    private String driven() {
        if (planned == null) {
            planned = plan("2026-01-13", "07:30");
            stops(planned, cast.tankB(), "230", "08:30", cast.tankA(), "170", "09:15");
        }
        return planned;
    }

    private String planned;

    private String plan(String day, String time) {
        String form = action(coordinator.get(season + "/egg-days/new"), season + "/egg-days\\?form=[^\"]+");
        Answer answer = coordinator.post(form, day(day, time));
        assertThat(answer.status()).as(answer.body()).isEqualTo(303);
        return answer.location().replace("/stops", "");
    }

    private static String[] day(String day, String time) {
        return new String[] {"day", day, "starts_at", time, "supplier", "Coldspring farm", "certificate", "H-12",
            "permit", "P-3", "thermal_units", "220", "thermal_units_in", "Cel.d", "method", "weighed"};
    }

    private void edit(String run, String... changes) {
        Answer shown = coordinator.get(run + "/edit");
        List<String> all = new ArrayList<>(List.of(day("2026-01-13", "07:30")));
        all.subList(all.size() - 2, all.size()).clear();
        all.addAll(List.of(changes));
        all.addAll(List.of("shown", find(shown.body(), "name=\"shown\" value=\"(\\w+)\"")));
        assertThat(coordinator.post(run, all.toArray(String[]::new)).status()).isEqualTo(303);
    }

    private void stops(String run, TankOfCast first, String eggs, String time, TankOfCast next, String nextEggs,
            String nextTime) {
        Answer shown = coordinator.get(run + "/stops");
        Answer answer = coordinator.post(run + "/stops", "shown", find(shown.body(), "name=\"shown\" value=\"(\\w+)\""),
                "eggs-" + first.code(), eggs, "time-" + first.code(), time, "eggs-" + next.code(), nextEggs,
                "time-" + next.code(), nextTime);
        assertThat(answer.status()).as(answer.body()).isEqualTo(303);
    }

    private static Answer check(Browserless who, String run, String degrees, String where, String time) {
        String form = action(who.get(run), run + "/checks\\?form=[^\"]+");
        who.post(form, "cooler", degrees, "cooler_where", where, "cooler_time", time);
        return who.post(form, "cooler", degrees, "cooler_where", where, "cooler_time", time);
    }

    private static void temper(Browserless who, String stop, String cooler, String tank, String ph, String from,
            String pace) {
        String shown = find(who.get(stop).body(), "(?s)/tempering\".*?name=\"shown\" value=\"(\\w+)\"");
        Answer answer = who.post(stop + "/tempering", "shown", shown, "cooler_at_tank", cooler, "tank", tank,
                "tank_ph", ph, "pace", pace, "tempering_from", from);
        assertThat(answer.status()).as(answer.body()).isEqualTo(303);
    }

    private void receive(String run, TankOfCast tank, String eggs, String dead) {
        String stop = run + "/tanks/" + tank.code();
        Answer answer = mentor.post(action(mentor.get(stop), stop + "/receipt\\?form=[^\"]+"), receipt(eggs, dead));
        assertThat(answer.status()).as(answer.body()).isEqualTo(303);
    }

    private static String[] receipt(String eggs, String dead) {
        return new String[] {"eggs", eggs, "dead", dead, "method", "weighed", "received_on", "2026-01-13",
            "received_time", "08:45", "adult", "teacher", "class_label", "Room 12, period 3"};
    }

    private static String action(Answer answer, String pattern) {
        return find(answer.body(), "action=\"(" + pattern + ")\"");
    }

    private static String find(String body, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(body);
        assertThat(found.find()).as("%s in %s", pattern, body).isTrue();
        return found.group(1);
    }

    private static List<String> all(Answer answer, String pattern) {
        return Pattern.compile(pattern).matcher(answer.body()).results().map(found -> found.group(1)).toList();
    }

    private static String words(byte[] pdf) throws IOException {
        try (PDDocument paper = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(paper).replace('\u00a0', ' ').replaceAll("\\s+", " ");
        }
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("<[^>]*>", " ").replace('\u00a0', ' ').replace("&#39;", "'")
                .replaceAll("\\s+", " ");
    }
}
