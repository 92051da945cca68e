package org.tankrounds.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.Cast.TankOfCast;
import org.tankrounds.testing.TestApp;

/** The count of a tank's fish, as it is written down and as it stands on pages and in the summary. */
final class CountPageIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Counters of fish");
    private final String here = count(cast.tankA());
    private final Browserless coordinator = APP.signedIn(cast.coordinator());
    private final Browserless teacher = APP.signedIn(cast.teacherA());

    @Test
    void everyEgg_isAccountedFor_fromTheDeliveryToTheRelease() {
        die(4);
        write(here, "moved", "fish", "20", "to", cast.tankB().code());
        write(here, "thinned", "fish", "30", "place", "kept by the agency", "approval", "P-7");
        write(here, "released", "fish", "120", "place", "Lower bridge", "approval", "P-8");

        String text = text(coordinator.get(here));
        assertThat(text).contains("Room 12: 26 by count")
                .contains("Eggs received 200").contains("Found dead 4").contains("Moved away 20")
                .contains("Taken out early 30").contains("Released 120").contains("There by count 26")
                .contains("Released: Lower bridge approval P-8 · Cora Weirthimble");
        assertThat(text(coordinator.get(count(cast.tankB())))).contains("Moved here from Alderwhistle School, Room 12");
        assertThat(text(coordinator.get("/season/" + cast.season()))).contains("26 released 120");
        String csv = coordinator.get("/season/" + cast.season() + "/summary.csv").body();
        assertThat(csv.lines().findFirst().orElseThrow()).contains(",moved_in,moved_out,taken_out_early,released,");
        assertThat(csv.lines().filter(line -> line.contains(cast.tankA().code())).findFirst().orElseThrow())
                .contains(",0,20,30,120,");
        assertThat(csv.strip().lines().reduce((first, next) -> next).orElseThrow()).contains(",20,20,30,120,");
    }

    @Test
    void moreThanAreThere_isRefused_withWhatIsKnown_andNothingIsLost() {
        die(4);

        Answer refused = write(here, "released", "fish", "197", "place", "Lower bridge");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains("By count only 196 fish were there at that time.");
        assertThat(refused.body()).contains("value=\"197\"").contains("value=\"Lower bridge\"");
        assertThat(text(coordinator.get(here))).contains("Room 12: 196 by count");

        write(here, "counted", "fish", "198");
        assertThat(write(here, "released", "fish", "197", "place", "Lower bridge").status()).isEqualTo(303);
        assertThat(text(coordinator.get(here))).contains("Room 12: 1 by count").contains("Unexplained −2")
                .contains("2 fish more than the count ever had");
    }

    /** Eggs came on the first of November; nobody counts fish before, and 250 of 200 only by miscounting somewhere. */
    @Test
    void aCountThatCannotBe_isRefused_andOneThatHardlyCan_isAskedAbout() {
        Answer early = write(here, "counted", "fish", "141", "day", "2025-10-05");
        assertThat(early.status()).isEqualTo(422);
        assertThat(text(early)).contains("No eggs or fish had come to this tank by then");
        assertThat(early.body()).contains("value=\"141\"");

        Answer asked = write(here, "counted", "fish", "250");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("250 is more than can be there: of those that came, 200 at most are left.");
        assertThat(text(coordinator.get(here))).contains("Room 12: 200 by count");
        String again = find(asked.body(), "action=\"([^\"]*/count/counted\\?form=[^\"]*)\"").replace("&amp;", "&");
        assertThat(coordinator.post(again, "method", "one_by_one", "day", "2026-01-13", "fish", "250").status())
                .isEqualTo(303);
        assertThat(text(coordinator.get(here))).contains("Room 12: 250 by count").contains("Unexplained −50");

        Answer hatched = write(here, "hatched", "fish", "220");
        assertThat(text(hatched)).as("of those that the count found").contains("220").doesNotContain("By count only");
        String once = find(hatched.body(), "action=\"([^\"]*/count/hatched\\?form=[^\"]*)\"").replace("&amp;", "&");
        assertThat(coordinator.post(once, "method", "one_by_one", "day", "2026-01-13", "fish", "220").status())
                .isEqualTo(303);
    }

    @Test
    void theAnswerAboutOneNumber_isNoneAboutAnother() {
        String yes = action(write(here, "counted", "fish", "250"));
        Answer other = coordinator.post(yes, "method", "one_by_one", "day", "2026-01-13", "fish", "5000");
        assertThat(other.status()).isEqualTo(422);
        assertThat(text(other)).contains("5000 is more than can be there");
        assertThat(text(coordinator.get(here))).contains("Room 12: 200 by count");
        String meant = action(other);
        assertThat(coordinator.post(meant, "method", "one_by_one", "day", "2026-01-13", "fish", "5000").status())
                .isEqualTo(303);
    }

    /** Deaths and hatch together were more than came: one of both is wrong. */
    @Test
    void moreHatchedThanDidNotDie_isAskedAbout_andStandsOnceItIsMeant() {
        die(cast.tankA(), "2025-11-06", 10);
        Answer asked = write(here, "hatched", "fish", "197");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("197 is more than can have hatched").contains("190 at most");
        assertThat(asked.body()).contains("value=\"197\"");
        assertThat(coordinator.post(action(asked), "method", "one_by_one", "day", "2026-01-13", "fish", "198").status())
                .as("another number").isEqualTo(422);
        String yes = action(asked);
        for (int click = 0; click < 2; click++) {
            assertThat(coordinator.post(yes, "method", "one_by_one", "day", "2026-01-13", "fish", "197").status())
                    .isEqualTo(303);
        }
        String csv = coordinator.get("/season/" + cast.season() + "/summary.csv").body();
        assertThat(row(csv, cast.tankA().code(), "egg_stage_survived")).isEqualTo("190");
    }

    /** Of two hundred ten died: a hundred and ninety-five by eye are a hundred and ninety elsewhere. */
    @Test
    void moreMovedThanDidNotDie_isInNoStageWhereItCame() {
        die(cast.tankA(), "2025-11-06", 10);
        write(here, "moved", "fish", "195", "method", "guessed", "to", cast.tankB().code(), "day", "2025-11-07");
        write(here, "counted", "fish", "0");
        write(count(cast.tankB()), "counted", "fish", "195");
        String csv = coordinator.get("/season/" + cast.season() + "/summary.csv").body();
        assertThat(row(csv, cast.tankB().code(), "moved_in")).isEqualTo("195");
        assertThat(row(csv, cast.tankB().code(), "egg_stage_began")).isEqualTo("190");
        assertThat(row(csv, cast.tankB().code(), "egg_stage_survived")).isEqualTo("190");
    }

    @Test
    void hatchThatWasCounted_onceSent_isNotAskedAboutByItsSecondClick() {
        String form = form(here, "hatched");
        for (int click = 0; click < 2; click++) {
            assertThat(coordinator.post(form, "method", "one_by_one", "day", "2026-01-13", "fish", "150").status())
                    .isEqualTo(303);
        }
    }

    /** The cast's eggs came on the fourth of November, at ten. */
    @Test
    void eggsAreCounted_onTheMorningOfTheDayOnWhichTheyCame() {
        assertThat(write(here, "counted", "fish", "197", "day", "2025-11-04", "time", "08:00").status()).isEqualTo(303);
        assertThat(text(coordinator.get(here))).contains("Room 12: 197 by count");
    }

    @Test
    void whatLaterEntriesNeed_cannotBeTakenAwayBeforeThem() {
        write(here, "moved", "fish", "150", "to", cast.tankB().code(), "day", "2026-01-10");
        write(count(cast.tankB()), "released", "fish", "140", "place", "Lower bridge", "day", "2026-01-12");

        Answer refused = write(here, "released", "fish", "60", "place", "Lower bridge", "day", "2026-01-09");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains("Later entries need these fish");

        Answer kept = coordinator.post(undo(here));
        assertThat(kept.status()).isEqualTo(409);
        assertThat(text(kept)).contains("It cannot be taken back").contains("Nothing was changed");

        coordinator.get(count(cast.tankB()));
        coordinator.post(undo(count(cast.tankB())));
        coordinator.get(here);
        assertThat(coordinator.post(undo(here)).location()).endsWith("saved=withdrawn");
        assertThat(text(coordinator.get(here))).contains("Room 12: 200 by count").doesNotContain("Moved to");
    }

    @Test
    void anEstimate_carriesItsSpread_untilAllAreCounted() {
        write(here, "thinned", "fish", "60", "place", "the agency", "method", "weighed");
        assertThat(text(coordinator.get(here))).contains("Room 12: 140 by count, 3 more or less");

        write(here, "counted", "fish", "135");
        assertThat(text(coordinator.get(here))).contains("Room 12: 135 by count")
                .contains("5 fish are unaccounted for").contains("fewer than the count had: 5");
    }

    @Test
    void whatTheyDiedOf_isSaidOfADay_andStandsInTheSummary() {
        die(4);
        String day = find(coordinator.get(here).body(), "href=\"(" + here + "/deaths/2026-01-08)\"");
        teacher.get(day);
        assertThat(teacher.post(day, "cause", "bad luck").status()).isEqualTo(422);
        assertThat(teacher.post(day, "cause", "chlorine").status()).isEqualTo(303);

        assertThat(text(coordinator.get(here))).contains("Found dead chlorine");
        String summary = "/season/" + cast.season() + "/summary";
        assertThat(text(coordinator.get(summary))).contains("What they died of, where somebody said so chlorine : 4");
        assertThat(coordinator.get(summary + ".json").body()).contains("\"deathsByCause\":{\"chlorine\":4}");
        assertThat(coordinator.get(summary + ".csv").body().lines().findFirst().orElseThrow())
                .contains(",dead_of_chlorine,");

        teacher.get(day);
        teacher.post(day, "cause", "");
        assertThat(coordinator.get(summary + ".json").body()).contains("\"deathsByCause\":{}");
        assertThat(coordinator.get(here + "/deaths/2024-01-08").status()).isEqualTo(404);
    }

    @Test
    void aTankWithoutFish_saysWhatToDoNext() {
        assertThat(text(coordinator.get(here))).doesNotContain("No fish is left here");
        write(here, "released", "fish", "200", "place", "Lower bridge");
        assertThat(text(coordinator.get(here))).contains("Room 12: 0 by count")
                .contains("A coordinator retires the tank under Places");
    }

    /** Fewer fish come to less harm, and get less feed. */
    @Test
    void fishThatLeft_areNoMoreInTheForecast() {
        die(4);
        assertThat(text(coordinator.get("/tanks/" + cast.tankA().code()))).contains("196 fish believed alive");
        write(here, "moved", "fish", "150", "to", cast.tankB().code());
        assertThat(text(coordinator.get("/tanks/" + cast.tankA().code()))).contains("46 fish believed alive");
        assertThat(text(coordinator.get("/tanks/" + cast.tankB().code()))).as("no eggs of its own").contains("150 ");
    }

    @Test
    void aFormSentTwice_isWrittenDownOnce() {
        String form = form(here, "released");
        for (int i = 0; i < 2; i++) {
            assertThat(coordinator.post(form, "fish", "10", "method", "one_by_one", "place", "Lower bridge",
                    "day", "2026-01-12").status()).isEqualTo(303);
        }
        assertThat(text(coordinator.get(here))).contains("Room 12: 190 by count");
        Answer other = coordinator.post(form, "fish", "20", "method", "one_by_one", "place", "Lower bridge", "day",
                "2026-01-12");
        assertThat(other.status()).isEqualTo(422);
        assertThat(text(other)).contains("This form was written down before, and says something else now.");
    }

    /** 180 °C-days on 4 November, water of 11 °C: they hatch in the third week. */
    @Test
    void eggsThatAreMoved_areEggsInTheOtherTank_untilTheyHatchThere() {
        assertThat(text(coordinator.get(here + "/moved"))).contains("as the tank was (now: feeding fish)")
                .contains("Eggs bear a move only once they are eyed");
        write(here, "moved", "fish", "50", "to", cast.tankB().code(), "day", "2025-11-08");
        write(here, "moved", "fish", "20", "to", cast.tankB().code(), "day", "2025-11-08", "stage", "egg");
        die(cast.tankB(), "2025-11-10", 6);
        die(cast.tankB(), "2026-01-08", 1);

        assertThat(text(coordinator.get(here))).contains("Moved to Birchthimble School, Room 12 eggs");
        assertThat(text(coordinator.get(count(cast.tankB())))).contains("63 by count").contains("Room 12 eggs");
        assertThat(row(coordinator.get("/season/" + cast.season() + "/summary.csv").body(), cast.tankB().code(),
                "dead_as_eggs"))
                .isEqualTo("6");
        assertThat(text(coordinator.get("/season/" + cast.season()))).contains("feeding since");
    }

    @Test
    void whatSomebodySaw_isWrittenDown_andNothingElseIsTaken() {
        Answer refused = write(here, "moved", "fish", "50", "to", cast.tankB().code(), "stage", "tadpoles");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains("Choose eggs, sac fry or feeding fish");

        String form = form(here, "moved");
        String[] typed = {"fish", "50", "method", "one_by_one", "to", cast.tankB().code(), "stage", "sac_fry", "day",
            "2025-11-08"};
        for (int i = 0; i < 2; i++) {
            assertThat(coordinator.post(form, typed).status()).isEqualTo(303);
        }
        assertThat(text(coordinator.get(count(cast.tankB())))).contains("50 by count").contains("Room 12 sac fry");
        typed[7] = "feeding";
        assertThat(text(coordinator.post(form, typed))).contains("says something else now");
    }

    @Test
    void aSecondReleaseOfOneDay_isAskedAboutOnce_andNothingIsLost() {
        write(here, "released", "fish", "30", "place", "Lower bridge");

        String form = form(here, "released");
        String[] typed = {"fish", "40", "method", "one_by_one", "place", "Upper bridge", "note", "kept", "day",
                "2026-01-13"};
        Answer asked = coordinator.post(form, typed);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("Already written down as released on that day: 30 fish,")
                .contains("by Cora Weirthimble. Are these more fish?");
        assertThat(asked.body()).contains("value=\"40\"").contains("value=\"Upper bridge\"").contains("value=\"kept\"");
        assertThat(coordinator.post(form, typed).status()).as("a double click on the first").isEqualTo(422);
        assertThat(text(coordinator.get(here))).contains("Room 12: 170 by count");

        String yes = action(asked);
        for (int i = 0; i < 2; i++) {
            assertThat(coordinator.post(yes, typed).status()).isEqualTo(303);
        }
        assertThat(coordinator.post(form, typed).status()).as("the form itself, late").isEqualTo(303);
        assertThat(text(coordinator.get(here))).contains("Room 12: 130 by count");
    }

    /** Yes is said to what was named, and to nothing that came after it. */
    @Test
    void whatWasWrittenDownSinceTheQuestion_isAskedAboutToo() {
        write(here, "released", "fish", "30", "place", "Lower bridge");
        Answer asked = write(here, "released", "fish", "40", "place", "Lower bridge");
        String yes = action(asked);
        Answer other = write(here, "released", "fish", "5", "place", "Lower bridge");
        coordinator.post(action(other), "fish", "5", "method", "one_by_one", "place", "Lower bridge", "day",
                "2026-01-13");

        Answer again = coordinator.post(yes, "fish", "40", "method", "one_by_one", "place", "Lower bridge", "day",
                "2026-01-13");
        assertThat(again.status()).isEqualTo(422);
        assertThat(text(again)).contains("day: 30 fish,").contains("; 5 fish,");
        assertThat(write(here, "released", "fish", "9", "place", "Lower bridge", "day", "2026-01-12").status())
                .as("another day").isEqualTo(303);
        assertThat(write(here, "thinned", "fish", "9", "place", "the agency").status()).as("something else")
                .isEqualTo(303);
    }

    /** Eggs cannot be taken away like an entry, so a double click must not bring them twice. */
    @Test
    void eggsSentTwice_areReceivedOnce() {
        String lots = "/season/" + cast.season() + "/tanks/" + cast.tankB().code() + "/lots";
        String form = find(coordinator.get(lots + "/new").body(), "action=\"(" + lots + "\\?form=[^\"]+)\"");
        for (int i = 0; i < 2; i++) {
            assertThat(coordinator.post(form, "eggs", "77", "method", "one_by_one", "received_on", "2025-11-05",
                    "thermal_units_in", "Cel.d").status()).isEqualTo(303);
        }
        assertThat(text(coordinator.get(count(cast.tankB())))).contains("77 by count");
    }

    @Test
    void eggsWrittenDownByMistake_areTakenAway_andStayToBeRead() {
        String there = count(cast.tankB());
        String form = newEggs(cast.tankB());
        String[] eggs = {"eggs", "77", "method", "one_by_one", "received_on", "2025-11-05", "thermal_units_in",
                "Cel.d"};
        coordinator.post(form, eggs);
        String away = takeAway(there);
        assertThat(text(coordinator.get(away))).contains("Take away 77 eggs of 5 Nov 2025");
        Answer bare = coordinator.post(away, "reason", " ");
        assertThat(bare.status()).isEqualTo(422);
        assertThat(text(bare)).contains("Say why these eggs are taken away.");
        assertThat(text(coordinator.get(there))).contains("77 by count");

        coordinator.get(away);
        for (int i = 0; i < 2; i++) {
            assertThat(coordinator.post(away, "reason", "it was the other tank").location())
                    .isEqualTo(there + "?saved=lotWithdrawn");
        }
        assertThat(text(coordinator.get(there))).contains("no eggs yet").contains(
                "77 eggs of 5 Nov: taken away by Cora Weirthimble, 13 January, 9:00. Reason: it was the other tank");
        assertThat(text(coordinator.get("/season/" + cast.season()))).doesNotContain("77 eggs");
        assertThat(coordinator.get(away).location()).isEqualTo(there);
        coordinator.get(newEggs(cast.tankB()).replaceAll("\\?.*", "/new"));
        coordinator.post(form, eggs);
        assertThat(text(coordinator.get(there))).as("the same form, sent again").contains("no eggs yet");
    }

    @Test
    void eggsThatTheCountNeeds_areNotTakenAway_andTheAnswerSaysWhatIsKnown() {
        die(4);
        String away = takeAway(here);
        coordinator.get(away);
        Answer refused = coordinator.post(away, "reason", "written down twice");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains("The count needs these eggs. Written down of this tank are: Found dead 4.")
                .contains("Nothing was changed");
        assertThat(refused.body()).contains("value=\"written down twice\"");

        write(here, "moved", "fish", "20", "to", cast.tankB().code());
        write(here, "counted", "fish", "170");
        coordinator.get(away);
        assertThat(text(coordinator.post(away, "reason", "written down twice")))
                .contains("Found dead 4 · Moved away 20 · Counted again: 170 found");

        coordinator.post(newEggs(cast.tankA()), "eggs", "50", "method", "one_by_one", "received_on", "2025-11-04",
                "received_time", "11:00", "thermal_units", "180", "thermal_units_in", "Cel.d");
        String second = takeAway(here);
        assertThat(second).as("the newest first").isNotEqualTo(away);
        coordinator.get(second);
        assertThat(coordinator.post(second, "reason", "written down twice").status()).as("not needed").isEqualTo(303);
        assertThat(text(coordinator.get(here))).contains("170 by count").contains("Eggs received 200");
    }

    @Test
    void eggs_areTakenAwayByWhoMayWriteThemDown() {
        String away = takeAway(here);
        assertThat(teacher.get(here).body()).doesNotContain("/withdrawn\" aria-label=\"Take away");
        assertThat(teacher.get(away).status()).isEqualTo(404);
        assertThat(coordinator.get(away.replace(cast.tankA().code(), cast.tankB().code())).status())
                .as("of another tank").isEqualTo(404);
        assertThat(coordinator.get(here + "/lots/x/withdrawn").status()).isEqualTo(404);
        assertThat(text(coordinator.get("/season/" + cast.season() + "/tanks/" + cast.tankA().code() + "/lots/1")))
                .contains("Were these eggs never here?");
    }

    @Test
    void eggsThatAreToCome_areNotThereYet() {
        String lots = "/season/" + cast.season() + "/tanks/" + cast.tankB().code() + "/lots";
        String form = find(coordinator.get(lots + "/new").body(), "action=\"(" + lots + "\\?form=[^\"]+)\"");
        coordinator.post(form, "eggs", "77", "method", "one_by_one", "received_on", "2026-02-05", "thermal_units_in",
                "Cel.d");
        assertThat(text(coordinator.get(count(cast.tankB())))).doesNotContain("77 by count");
    }

    @Test
    void moreHatchedThanCame_andMoreOffThanAll_areRefused() {
        write(here, "hatched", "fish", "150");
        assertThat(write(here, "hatched", "fish", "150").status()).isEqualTo(422);
        assertThat(text(write(here, "released", "fish", "50", "place", "Lower bridge", "spread", "90000")))
                .contains("Of 50 no more than 50 can be off");
        assertThat(coordinator.post("/season", "name", "far", "starts_on", "+999999999-12-01", "ends_on",
                "+999999999-12-31").status()).isEqualTo(422);
    }

    @Test
    void eggsAndDaysThatTheCountNeeds_stay() {
        die(4);
        write(here, "released", "fish", "190", "place", "Lower bridge");
        String lot = "/season/" + cast.season() + "/tanks/" + cast.tankA().code() + "/lots/1";
        String shown = find(coordinator.get(lot).body(), "name=\"shown\" value=\"(\\w+)\"");
        Answer fewer = coordinator.post(lot, "eggs", "20", "method", "one_by_one", "received_on", "2025-11-04",
                "received_time", "10:00", "thermal_units", "180", "thermal_units_in", "Cel.d", "shown", shown);
        assertThat(fewer.status()).isEqualTo(422);
        assertThat(text(fewer)).contains("So many fish have left this tank");

        String season = "/season/" + cast.season();
        shown = find(coordinator.get(season + "/edit").body(), "name=\"shown\" value=\"(\\w+)\"");
        Answer shorter = coordinator.post(season, "name", "2025-26", "starts_on", "2025-10-01", "ends_on", "2025-12-31",
                "shown", shown);
        assertThat(text(shorter)).contains("2 counts and days with dead fish would no longer be in the season");
        assertThat(text(coordinator.get(here))).contains("6 by count");
    }

    @Test
    void badInput_isAnsweredInSentences() {
        Answer answer = write(here, "moved", "fish", "many", "to", "", "day", "2030-01-01", "time", "99:99", "spread",
                "-1");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(text(answer)).contains("The number of fish is a whole number from 1")
                .contains("Choose the tank that they went to.")
                .contains("The day can be within the season").contains("How far it may be off is a whole number");
        assertThat(text(write(here, "released", "fish", "3", "day", "2026-01-14")))
                .contains("That day is still to come")
                .contains("Name the site.");
        assertThat(coordinator.get(here + "/eaten").status()).isEqualTo(404);
    }

    @Test
    void aTeacher_countsTheirOwnTank_andNobodyElses() {
        assertThat(teacher.get("/tanks/" + cast.tankA().code() + "/count").location()).isEqualTo(here);
        assertThat(text(teacher.get(here))).contains("Count again").doesNotContain("Move to another tank");
        assertThat(teacher.get(count(cast.tankB())).status()).isEqualTo(404);
        assertThat(APP.signedIn(APP.here().coordinator()).get(here).status()).as("another chapter").isEqualTo(404);
    }

    private Answer write(String count, String kind, String... fields) {
        String[] all = new String[fields.length + 4];
        all[0] = "method";
        all[1] = "one_by_one";
        all[2] = "day";
        all[3] = "2026-01-13";
        System.arraycopy(fields, 0, all, 4, fields.length);
        return coordinator.post(form(count, kind), all);
    }

    private String newEggs(TankOfCast tank) {
        String lots = "/season/" + cast.season() + "/tanks/" + tank.code() + "/lots";
        return find(coordinator.get(lots + "/new").body(), "action=\"(" + lots + "\\?form=[^\"]+)\"");
    }

    private String takeAway(String count) {
        return find(coordinator.get(count).body(), "href=\"(" + count + "/lots/\\d+/withdrawn)\"");
    }

    /** Where a form that was asked about goes when it is sent once more. */
    private static String action(Answer asked) {
        return find(asked.body(), "action=\"([^\"]+\\?form=[^\"]+)\"").replace("&amp;", "&");
    }

    private String form(String count, String kind) {
        return find(coordinator.get(count + "/" + kind).body(),
                "action=\"(" + count + "/" + kind + "\\?form=[^\"]+)\"");
    }

    private String undo(String count) {
        return find(coordinator.get(count).body(), "action=\"(" + count + "/entries/\\d+/withdrawn)\"");
    }

    private static String find(String body, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(body);
        assertThat(found.find()).as(pattern).isTrue();
        return found.group(1);
    }

    private String count(TankOfCast tank) {
        return "/season/" + cast.season() + "/tanks/" + tank.code() + "/count";
    }

    private void die(int dead) {
        die(cast.tankA(), "2026-01-08", dead);
    }

    private static void die(TankOfCast tank, String day, int dead) {
        Answer answer = APP.bearer(tank.token()).header("Idempotency-Key", "\"" + UUID.randomUUID() + "\"")
                .postJson("/api/v1/tanks/" + tank.code() + "/readings", "{\"measuredAt\": \"" + day + "T13:00:00Z\","
                        + " \"values\": [{\"analyte\": \"deaths\", \"value\": " + dead + ", \"unit\": \"1\"}]}");
        assertThat(answer.status()).as(answer.body()).isEqualTo(201);
    }

    /** What a tank's line of a CSV has in a column. */
    private static String row(String csv, String tank, String column) {
        List<String> names = List.of(csv.lines().findFirst().orElseThrow().split(","));
        String line = csv.lines().filter(one -> one.contains(tank)).findFirst().orElseThrow();
        return line.split(",", -1)[names.indexOf(column)];
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("<[^>]*>", " ").replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }
}
