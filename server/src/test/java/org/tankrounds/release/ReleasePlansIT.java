package org.tankrounds.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.SCHOOLS;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** Plans of releases: when they can be made, and when they say go. It is Tuesday 13 January 2026, 9:00. */
final class ReleasePlansIT {
    private static final TestApp APP = TestApp.shared();
    private static final List<String> LINES = List.of(
            "paper", "agency", "healthy", "fasted", "clean", "access", "stream", "flow", "weather");

    private final Cast cast = Cast.add(APP.transactions(), "Planners");
    private final String tank = cast.tankA().code();
    private final Browserless coordinator = APP.signedIn(cast.coordinator());
    private final Browserless teacher = APP.signedIn(cast.teacherA());

    @Test
    void aRelease_isPlannedOnlyWhileAnApprovalHoldsThatDay() {
        assertThat(text(coordinator.get("/release"))).doesNotContain("Plan a release");
        assertThat(text(plan("day", "2026-01-13"))).contains("Choose the approval that the release leans on.");

        addApproval("P-8", "2026-01-20", "2026-02-20", 400);
        assertRefused("Approval P-8 holds from 20 Jan 2026 to 20 Feb 2026, and that day is outside.", "day",
                "2026-01-19");
        assertRefused("and that day is outside", "day", "2026-02-21");
        assertRefused("That day is over.", "day", "2026-01-12");
        assertRefused("No season holds that day.", "day", "2026-07-02");
        assertThat(plan("day", "2026-01-20").status()).isEqualTo(303);
        assertThat(plan("day", "2026-02-20", "fish_" + tank, "1").status()).isEqualTo(303);
    }

    @Test
    void noMoreFish_thanTheApprovalHasLeft_orTheTankHas() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 120);
        assertRefused("Approval P-8 allows 120 fish. Released under it: 0; in other plans: 0; free: 120. This would be"
                + " 130.", "fish_" + tank, "130");
        assertRefused("By count there are only 200. If there are more, count them again first.", "fish_" + tank, "201");

        assertThat(plan("fish_" + tank, "100").status()).isEqualTo(303);
        assertRefused("in other plans: 100; free: 20. This would be 30.", "fish_" + tank, "30");
        assertRefused("By count there are 200, 0 more or less, and other plans take 100 of them.", "fish_" + tank,
                "110");
        assertThat(text(coordinator.get("/release"))).contains("20 of 120 fish free; 100 more are in plans");

        release(20, "2026-01-13");
        assertRefused("Released under it: 20; in other plans: 100; free: 0. This would be 1.", "fish_" + tank, "1");
    }

    /** Released, planned and free are all that it allows, wherever they are told. */
    @Test
    void whatAnApprovalHasFree_isNeitherReleasedNorPlanned() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 120);
        String site = find(coordinator.get("/release"), "href=\"(/release/sites/\\d+)\"");
        release(30, "2026-01-13");
        plan("fish_" + tank, "1");
        for (String page : List.of("/release", site)) {
            assertThat(text(coordinator.get(page))).contains("89 of 120 fish free; 1 more is in plans")
                    .doesNotContain("fish left");
        }
        assertThat(text(coordinator.get("/release/plans/new")))
                .contains("P-8: 1 Jan 2026 to 30 May 2026, 89 fish free");
        plan("fish_" + tank, "49");
        Browserless spanish = APP.signedIn(cast.coordinator()).header("Accept-Language", "es");
        for (String page : List.of("/release", site)) {
            assertThat(text(coordinator.get(page))).contains("40 of 120 fish free; 50 more are in plans");
            assertThat(text(spanish.get(page))).contains("peces libres: 40 de 120; hay 50 más en planes");
        }
        release(60, "2026-01-12");
        for (String page : List.of("/release", site)) {
            assertThat(text(coordinator.get(page)))
                    .contains("90 of 120 fish released, 50 planned: 20 more than it allows");
            assertThat(text(spanish.get(page)))
                    .contains("peces liberados: 90 de 120; en planes: 50; son 20 más de lo que permite");
        }
    }

    @Test
    void one_isOne_inBothLanguages() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        setRules();
        String plan = plan("children", "1", "adults", "1", "fish_" + tank, "1", "boxes_" + tank, "1").location();
        assertThat(text(coordinator.get(plan)))
                .contains("1 child needs 2 adults by the chapter's rule; 1 is planned.")
                .contains("1 child and 1 adult; by the chapter's rule 2 adults are needed.").contains("in 1 box.");
        assertThat(text(coordinator.get("/release"))).contains("1 fish of 1 tank").doesNotContain("1 tanks");
        Browserless spanish = APP.signedIn(cast.coordinator()).header("Accept-Language", "es");
        assertThat(text(spanish.get(plan))).contains("1 niño necesita 2 personas adultas").contains("en 1 caja.")
                .contains("1 niño y 1 persona adulta; según la regla del capítulo hacen falta 2 personas adultas.")
                .contains("1 pez, 45 mm").doesNotContain("1 peces");
        assertThat(text(spanish.get("/release"))).contains("1 pez de 1 tanque ");
        assertThat(text(spanish.get(plan + "/tanks/" + tank))).contains("1 pez en el plan, autorización P-8");
    }

    @Test
    void aPlan_saysGo_onlyOnceEverythingIsKnownAndNothingForbidsIt() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        String plan = plan().location();
        assertThat(text(coordinator.get(plan))).contains("Not yet: 10 things are open for Lower bridge")
                .contains("This tool is not the permit").contains("The chapter's rules for the water are not set.")
                .contains("60 fish, 60 g in all, in 2 boxes.").contains("60 fish, 45 mm, 1 g each")
                .contains("From 11.0 °C to 8.0 °C: 30 minutes at the quickest, 45 if there is time.")
                .contains("No feed from now on, or from Mon 12 Jan, 10:00 at the latest")
                .contains("2 boxes with lids that shut").contains("one frozen bottle, sealed: little ice is needed")
                .contains("1 kg of ice straight from the freezer takes a box of 20 L from 11.0 °C to about 6 °C")
                .contains("Carbon dioxide gathers in a shut box").doesNotContain("apart, and many")
                .doesNotContain("Mix slowly");

        setRules();
        answer(plan, "yes");
        assertThat(text(coordinator.get(plan))).contains("Go, by what is known: Lower bridge")
                .contains("12 children and 3 adults; by the chapter's rule 3 adults are needed. No child in water"
                        + " deeper than 20 cm.").contains("Cora Weirthimble, at 9:00");

        answer(plan, "no");
        assertThat(text(coordinator.get(plan))).contains("No go: Lower bridge").contains("What forbids it")
                .contains("Level and current are safe to stand beside Postpone. The fish can wait in their tanks.")
                .contains("No release: call the agency's fish health contact");
    }

    /** 10 °F, 5.6 °C, are what suppliers temper from (one of them, confirmed). */
    @Test
    void waterFarApart_isNotToBeCutShort() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        assertThat(text(coordinator.get(plan("stream_temperature", "5.5").location())))
                .doesNotContain("apart, and many");
        assertThat(text(coordinator.get(plan("stream_temperature", "5.4", "fish_" + tank, "50").location())))
                .contains("Box and stream are 5.6 °C apart, and many suppliers temper from 5.6 °C on: do not cut it"
                        + " short.");
    }

    /** Above 1 mg/L as N in the box its water is thinned slowly; what was read more than a week ago tells nothing. */
    @Test
    void ammoniaInATankOfThePlan_asksForTheSlowWay() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        String plan = plan().location();
        readAmmonia(3, "2026-01-05T13:00:00Z");
        readAmmonia(1, "2026-01-07T15:00:00Z");
        assertThat(text(coordinator.get(plan))).doesNotContain("Mix slowly").contains("30 minutes at the quickest");
        readAmmonia(1.4, "2026-01-12T15:00:00Z");
        assertThat(text(coordinator.get(plan)))
                .contains("Mix slowly for Alderwhistle School, Room 12: 1.4 mg/L of ammonia as N"
                        + " were read yesterday").contains("From 11.0 °C to 8.0 °C: 45 minutes, the slow way.")
                .doesNotContain("at the quickest");
        assertThat(text(coordinator.get(plan("stream_temperature", "18", "fish_" + tank, "50").location())))
                .contains("Not with these temperatures").doesNotContain("Mix slowly");
        readAmmonia(0.5, "2026-01-13T13:00:00Z");
        assertThat(text(coordinator.get(plan))).doesNotContain("Mix slowly").contains("30 minutes at the quickest");
    }

    @Test
    void whatHasToBeSeenOnTheDay_wasNotSeenBefore() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        setRules();
        String plan = plan("day", "2026-01-15").location();
        answer(plan, "yes");
        assertThat(text(coordinator.get(plan))).contains("Not yet: 3 things are open")
                .contains("Looked at before the day: look again then.");
    }

    @Test
    void oneAnswersALine_andWhatAnotherAnsweredMeanwhile_stays() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        String plan = plan().location();
        Map<String, String> shown = answers(coordinator.get(plan));
        teacher.get(plan);
        teacher.post(plan + "/checks", "flow", "no", "was_flow", "unknown");
        shown.put("paper", "yes");
        post(plan + "/checks", shown);
        assertThat(text(coordinator.get(plan))).contains("No go").contains("Level and current")
                .contains("Ada Fernwhistle, at 9:00").contains("Cora Weirthimble, at 9:00");
    }

    @Test
    void fewAdults_warmWater_tightBoxes_andNoAir_forbidIt() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        setRules();
        String plan = plan("children", "13", "stream_temperature", "18", "fish_" + tank, "200", "length_" + tank, "90",
                "boxes_" + tank, "1", "litres_" + tank, "20", "air_pumps", "no", "road_hours", "3").location();
        assertThat(text(coordinator.get(plan)))
                .contains("13 children need 4 adults by the chapter's rule; 3 are planned.")
                .contains("The stream has 18.0 °C, which is too warm for a release.")
                .contains("Too many fish in the boxes of Alderwhistle School, Room 12: 80 g/L.")
                .contains("Take 9 boxes of 20 L, or go twice.")
                .contains("Without air the oxygen of Alderwhistle School, Room 12 lasts 0.2 h")
                .contains("3 hours are longer than fish travel in boxes like these.")
                .contains("Not with these temperatures");
    }

    @Test
    void anApprovalThatIsTakenBack_stopsItsPlan() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        String plan = plan().location();
        String site = find(coordinator.get("/release"), "href=\"(/release/sites/\\d+)\"");
        String approval = find(coordinator.get(site), "href=\"(" + site + "/approvals/\\d+)\"");
        coordinator.get(approval);
        coordinator.post(approval + "/withdrawn");
        assertThat(text(coordinator.get(plan))).contains("No go")
                .contains("Approval P-8 was taken back: no release leans on it.")
                .contains("or call: State fish agency");
    }

    @Test
    void aFormSentTwice_isOnePlan() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        String form = find(coordinator.get("/release/plans/new"), "action=\"(/release/plans\\?form=[^\"]+)\"");
        Answer first = post(form, fields());
        assertThat(post(form, fields()).location()).isEqualTo(first.location());
        assertThat(text(coordinator.get("/release"))).contains("340 of 400 fish free; 60 more are in plans");
        Map<String, String> other = fields();
        other.put("fish_" + tank, "61");
        Answer answer = post(form, other);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(text(answer)).contains("This form was kept as a plan before, and says something else now.");
    }

    @Test
    void twoWhoChangeOnePlan_seeEachOther() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        String plan = plan().location();
        String shown = find(coordinator.get(plan + "/edit"), "name=\"shown\" value=\"([^\"]+)\"");
        Map<String, String> mine = fields();
        mine.put("shown", shown);
        mine.put("fish_" + tank, "70");
        assertThat(post(plan, mine).location()).isEqualTo(plan);
        Map<String, String> theirs = fields();
        theirs.put("shown", shown);
        theirs.put("fish_" + tank, "80");
        Answer clash = post(plan, theirs);
        assertThat(clash.status()).isEqualTo(409);
        assertThat(text(clash)).contains("Alderwhistle School, Room 12: Fish 80 70");
        assertThat(text(coordinator.get(plan))).contains("70 fish");
    }

    /** What is out was counted when it went; the rest of the plan can still be put right. */
    @Test
    void aPlanThatIsOutInPart_canStillBeChanged() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 120);
        String plan = plan("fish_" + tank, "110").location();
        String day = plan + "/tanks/" + tank;
        coordinator.get(day);
        assertThat(coordinator.post(day, "fish", "105", "method", "one_by_one").status()).isEqualTo(303);
        Map<String, String> changed = fields();
        changed.put("shown", find(coordinator.get(plan + "/edit"), "name=\"shown\" value=\"([^\"]+)\""));
        changed.put("fish_" + tank, "110");
        changed.put("duty_drive", "parent");
        Answer answer = post(plan, changed);
        assertThat(answer.location()).as(text(answer)).isEqualTo(plan);
        assertThat(text(coordinator.get(plan))).contains("parent").contains("Released: 105 fish at Lower bridge");
    }

    @Test
    void aWeightThatNoTroutOfThatLengthHas_isRefused() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        assertRefused("Trout of 50 mm weigh about 1.38 g each.", "length_" + tank, "50", "weight_" + tank, "0.4");
        assertRefused("Trout of 50 mm weigh about 1.38 g each.", "length_" + tank, "50", "weight_" + tank, "2.3");
        assertThat(plan("length_" + tank, "50", "weight_" + tank, "1.2").status()).isEqualTo(303);
    }

    /** At 1609.344 m and 12 °C water holds 8.848 mg/L, not 10.777: 4.1 hours for 60.1 g in 40 L, not 8.4. */
    @Test
    void waterOfASchoolHighUp_holdsLessOxygenInTheBox() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        APP.transactions().inChapter(cast.chapterId(), tx -> tx.update(SCHOOLS).set(SCHOOLS.ELEVATION_M, 1609.344f)
                .where(SCHOOLS.CHAPTER_ID.eq(cast.chapterId())).and(SCHOOLS.NAME.eq(cast.tankA().school())).execute());
        String plan = plan("tank_temperature", "12", "air_pumps", "no", "road_hours", "5").location();
        assertThat(text(coordinator.get(plan)))
                .contains("Without air the oxygen of Alderwhistle School, Room 12 lasts 4.1 h")
                .contains("if the air fails, oxygen lasts 4.1 h");
    }

    @Test
    void aPlanThatIsCalledOff_takesNothingAnyMore_andStaysToBeSeen() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        String plan = plan().location();
        coordinator.get(plan + "/edit");
        assertThat(coordinator.post(plan + "/dropped").location()).isEqualTo("/release");
        assertThat(text(coordinator.get("/release"))).contains("400 of 400 fish free").contains("called off");
        assertThat(text(coordinator.get(plan))).contains("Called off: Lower bridge")
                .doesNotContain("Keep these answers");
    }

    @Test
    void badInput_isAnsweredInSentences_andKept() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        Answer answer = plan("day", "", "road_hours", "90", "children", "many", "tank_temperature", "80",
                "fish_" + tank, "0", "boxes_" + tank, "", "litres_" + tank, "", "length_" + tank, "2",
                "duty_lead", "Maria Lopez", "duty_help", "555-867-5309", "oxygen", "99", "note", "kept");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(text(answer)).contains("Give the day.").contains("The way can take 0 to 24 hours.")
                .contains("Give a whole number from 0 to 1000.").contains("Water of the tanks: from 0 °C to 35 °C.")
                .contains("The number of fish is a whole number from 1 to 100,000.")
                .contains("Give the number of boxes, from 1 to 100.")
                .contains("Give the water in each box").contains("A mean length can be from 10 to 400 mm.")
                .contains("\"Maria Lopez\" looks like a name")
                .contains("\"555-867-5309\" looks like a name or a number")
                .contains("Oxygen can be from 0 to 25 mg/L.");
        assertThat(answer.body()).contains("value=\"kept\"");
        assertThat(text(plan("fish_" + tank, ""))).contains("Give the number of fish of one tank at least.");
    }

    @Test
    void aTeacher_seesThePlansOfTheirTanks_andNobodyElses() {
        addApproval("P-8", "2026-01-01", "2026-05-30", 400);
        String plan = plan().location();
        assertThat(text(teacher.get("/release"))).contains("60 fish");
        assertThat(text(teacher.get(plan))).contains("60 fish").doesNotContain("Change the plan");
        Browserless other = APP.signedIn(cast.teacherB());
        assertThat(text(other.get("/release"))).doesNotContain("60 fish");
        assertThat(other.get(plan).status()).isEqualTo(404);
        assertThat(APP.signedIn(APP.here().coordinator()).get(plan).status()).as("another chapter").isEqualTo(404);
    }

    private void assertRefused(String sentence, String... fields) {
        Answer answer = plan(fields);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(text(answer)).contains(sentence);
    }

    private Answer plan(String... changes) {
        Map<String, String> fields = fields();
        for (int i = 0; i < changes.length; i += 2) {
            fields.put(changes[i], changes[i + 1]);
        }
        return post(find(coordinator.get("/release/plans/new"), "action=\"(/release/plans\\?form=[^\"]+)\""), fields);
    }

    private Map<String, String> fields() {
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher approval = Pattern.compile("<option value=\"(\\d+)\"")
                .matcher(coordinator.get("/release/plans/new").body());
        fields.put("approval", approval.find() ? approval.group(1) : "");
        fields.putAll(Map.of("day", "2026-01-13", "time", "10:00", "road_hours", "1", "air_pumps", "yes",
                "tank_temperature", "11", "stream_temperature", "8", "outside_temperature", "25", "children", "12",
                "adults", "3"));
        fields.putAll(Map.of("duty_lead", "ranger", "duty_count", "mentor", "duty_drive", "mentor", "duty_measure",
                "class teacher", "duty_help", "school nurse"));
        fields.putAll(Map.of("fish_" + tank, "60", "length_" + tank, "45", "boxes_" + tank, "2", "litres_" + tank,
                "20"));
        return fields;
    }

    private void answer(String plan, String word) {
        Map<String, String> shown = answers(coordinator.get(plan));
        LINES.forEach(line -> shown.put(line, word));
        assertThat(post(plan + "/checks", shown).status()).isEqualTo(303);
    }

    /** As the page shows them. */
    private static Map<String, String> answers(Answer page) {
        Map<String, String> shown = new LinkedHashMap<>();
        LINES.forEach(line -> {
            String was = find(page, "name=\"was_" + line + "\" value=\"(\\w+)\"");
            shown.put("was_" + line, was);
            shown.put(line, was);
        });
        return shown;
    }

    private Answer post(String path, Map<String, String> fields) {
        List<String> all = new ArrayList<>();
        fields.forEach((name, value) -> all.addAll(List.of(name, value)));
        return coordinator.post(path, all.toArray(String[]::new));
    }

    private void addApproval(String number, String first, String last, int mostFish) {
        coordinator.get("/release/sites/new");
        String site = coordinator.post("/release/sites", "name", "Lower bridge", "water", "Quill Brook").location();
        assertThat(coordinator.post(site + "/approvals", "number", number, "agency", "State fish agency", "species",
                "rainbow_trout", "most_fish", Integer.toString(mostFish), "first_day", first, "last_day", last)
                .status()).isEqualTo(303);
    }

    private void readAmmonia(double mgNPerL, String at) {
        Answer answer = APP.bearer(cast.tankA().token()).header("Idempotency-Key", "\"" + UUID.randomUUID() + "\"")
                .postJson("/api/v1/tanks/" + tank + "/readings", "{\"measuredAt\": \"" + at
                        + "\", \"values\": [{\"analyte\": \"total_ammonia\", \"value\": " + mgNPerL
                        + ", \"unit\": \"mg/L\", \"as\": \"N\"}]}");
        assertThat(answer.status()).as(answer.body()).isEqualTo(201);
    }

    private void setRules() {
        String shown = find(coordinator.get("/release/rules"), "name=\"shown\" value=\"([^\"]+)\"");
        coordinator.post("/release/rules", "children_per_adult", "4", "deepest_cm", "20", "shown", shown);
    }

    private void release(int fish, String day) {
        String count = "/season/" + cast.season() + "/tanks/" + tank + "/count/released";
        coordinator.get(count);
        assertThat(coordinator.post(count, "fish", Integer.toString(fish), "method", "one_by_one", "place",
                "Lower bridge", "approval", "P-8", "day", day).status()).isEqualTo(303);
    }

    private static String find(Answer answer, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(answer.body());
        assertThat(found.find()).as(pattern).isTrue();
        return found.group(1);
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("<[^>]*>", " ").replace('\u00a0', ' ').replace("&#39;", "'")
                .replace("&quot;", "\"").replaceAll("\\s+", " ");
    }
}
