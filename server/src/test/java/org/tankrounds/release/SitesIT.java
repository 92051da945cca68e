package org.tankrounds.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** Sites, what an agency allowed there, and the chapter's rules, as coordinators write them down. */
final class SitesIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Keepers of papers");
    private final Browserless coordinator = APP.signedIn(cast.coordinator());
    private final Browserless teacher = APP.signedIn(cast.teacherA());

    @Test
    void aSiteAndItsApproval_areWrittenDown_andEverybodyOfTheChapterSeesThem() {
        assertThat(text(coordinator.get("/release"))).contains("Release: no site yet")
                .contains("This tool is not the permit")
                .contains("A release starts with the agency").contains("Not set yet");
        String site = addSite("Lower bridge");
        assertThat(text(coordinator.get(site))).contains("Quill Brook · Fern County").contains("41.25, -75.5 (WGS 84)")
                .contains("No approval is written down for this site, so no release can be planned here.");
        addApproval(site, "P-8", "first_day", "2026-01-01", "last_day", "2026-05-30");

        assertThat(text(teacher.get("/release"))).contains("Release: 1 approval holds today").contains("Lower bridge")
                .contains("P-8: holds until 30 May 2026").contains("400 of 400 fish free").doesNotContain("Add a site");
        assertThat(text(teacher.get(site))).contains("State fish agency").contains("rainbow trout")
                .doesNotContain("Write an approval");
        assertThat(APP.signedIn(APP.here().coordinator()).get(site).status()).as("another chapter").isEqualTo(404);
    }

    @Test
    void whatWasReleasedUnderItsNumber_isNoMoreLeft() {
        String site = addSite("Lower bridge");
        addApproval(site, "P-8", "first_day", "2026-01-01", "last_day", "2026-05-30");
        String count = "/season/" + cast.season() + "/tanks/" + cast.tankA().code() + "/count";
        coordinator.get(count + "/released");
        coordinator.post(count + "/released", "fish", "120", "method", "one_by_one", "place", "Lower bridge",
                "approval", "p-8", "day", "2026-01-13");
        assertThat(text(coordinator.get(site))).contains("280 of 400 fish free");
    }

    @Test
    void badInput_isAnsweredInSentences_andKept() {
        coordinator.get("/release/sites/new");
        Answer answer = coordinator.post("/release/sites", "name", "", "water", "", "latitude", "91", "longitude", "x",
                "elevation", "9000", "way_there", "kept");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(text(answer)).contains("Give the site a name.").contains("Name the stream, river or lake.")
                .contains("Latitude is from -90 to 90").contains("write one number, such as 12.5")
                .contains("The height can be from");
        assertThat(answer.body()).contains("value=\"kept\"");
        coordinator.get("/release/sites/new");
        assertThat(text(coordinator.post("/release/sites", "name", "a", "water", "b", "latitude", "41.2")))
                .contains("Give both latitude and longitude, or neither.");

        String site = addSite("Lower bridge");
        assertThat(text(coordinator.post("/release/sites", "name", "Lower bridge", "water", "b")))
                .contains("There is a site with this name already");
        Answer paper = coordinator.post(site + "/approvals", "number", "", "agency", "", "species", "shark",
                "most_fish", "0", "first_day", "2026-05-30", "last_day", "2026-05-01", "expires_on", "2026-01-01");
        assertThat(paper.status()).isEqualTo(422);
        assertThat(text(paper)).contains("Give the number on the paper.").contains("Say which agency gave it.")
                .contains("Choose which fish it is for.").contains("from 1 to 100,000")
                .contains("The last day cannot come before the first")
                .contains("The paper cannot end before its first day");
        addApproval(site, "P-8", "first_day", "2026-01-01", "last_day", "2026-05-30");
        assertThat(text(coordinator.post(site + "/approvals", "number", "p-8", "agency", "State fish agency", "species",
                "rainbow_trout", "most_fish", "4", "first_day", "2026-05-01", "last_day", "2026-05-02")))
                .contains("An approval of this number stands at this site already");
    }

    @Test
    void twoWhoChangeOneApproval_seeEachOther() {
        String site = addSite("Lower bridge");
        addApproval(site, "P-8", "first_day", "2026-01-01", "last_day", "2026-05-30");
        String approval = find(coordinator.get(site), "href=\"(" + site + "/approvals/\\d+)\"");
        Answer form = coordinator.get(approval);
        String shown = find(form, "name=\"shown\" value=\"([^\"]+)\"");
        assertThat(change(approval, shown, "300").location()).isEqualTo(site);
        Answer clash = change(approval, shown, "200");
        assertThat(clash.status()).isEqualTo(409);
        assertThat(text(clash)).contains("Changed meanwhile by somebody else").contains("Most fish 200 300");
        assertThat(text(coordinator.get(site))).contains("300 of 300 fish free");
    }

    @Test
    void anApproval_isTakenBack_andStaysToBeSeen() {
        String site = addSite("Lower bridge");
        addApproval(site, "P-8", "first_day", "2026-01-01", "last_day", "2026-05-30");
        String approval = find(coordinator.get(site), "href=\"(" + site + "/approvals/\\d+)\"");
        coordinator.get(approval);
        assertThat(coordinator.post(approval + "/withdrawn").location()).isEqualTo(site);
        assertThat(coordinator.post(approval + "/withdrawn").status()).as("twice").isEqualTo(303);
        assertThat(text(coordinator.get(site))).contains("P-8").contains("taken back");
        assertThat(text(coordinator.get("/release"))).contains("Release: no approval holds today");
        addApproval(site, "P-8", "first_day", "2026-01-01", "last_day", "2026-05-30");
    }

    @Test
    void rules_areTheChaptersOwn() {
        coordinator.get("/release/rules");
        Answer wrong = coordinator.post("/release/rules", "children_per_adult", "0", "deepest_cm", "150");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(text(wrong)).contains("Children for one adult are a whole number from 1 to 30.")
                .contains("from 0 to 60 cm; a child does not go deeper");
        String shown = find(coordinator.get("/release/rules"), "name=\"shown\" value=\"([^\"]+)\"");
        assertThat(coordinator.post("/release/rules", "children_per_adult", "4", "deepest_cm", "20", "other_rules",
                "Life jackets on.", "shown", shown).location()).isEqualTo("/release");
        assertThat(text(teacher.get("/release"))).contains("One adult for every 4 children, two at least.")
                .contains("No child in water deeper than 20 cm.").contains("Life jackets on.");
        assertThat(coordinator.post("/release/rules", "children_per_adult", "6", "deepest_cm", "20", "shown", shown)
                .status()).isEqualTo(409);
    }

    private Answer change(String approval, String shown, String mostFish) {
        return coordinator.post(approval, "number", "P-8", "agency", "State fish agency", "species", "rainbow_trout",
                "most_fish", mostFish, "first_day", "2026-01-01", "last_day", "2026-05-30", "shown", shown);
    }

    private String addSite(String name) {
        coordinator.get("/release/sites/new");
        Answer answer = coordinator.post("/release/sites", "name", name, "water", "Quill Brook", "way_there",
                "Fern County", "latitude", "41.25", "longitude", "-75.5", "elevation", "320");
        assertThat(answer.status()).as(answer.body()).isEqualTo(303);
        return answer.location();
    }

    private void addApproval(String site, String number, String... days) {
        coordinator.get(site + "/approvals/new");
        Answer answer = coordinator.post(site + "/approvals", "number", number, "agency", "State fish agency",
                "species", "rainbow_trout", "most_fish", "400", days[0], days[1], days[2], days[3]);
        assertThat(answer.status()).as(answer.body()).isEqualTo(303);
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
