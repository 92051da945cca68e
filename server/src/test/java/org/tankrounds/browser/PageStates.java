package org.tankrounds.browser;

import static org.tankrounds.browser.Guest.BEGINNER;
import static org.tankrounds.browser.Guest.CLASS;
import static org.tankrounds.browser.Guest.COORDINATOR;
import static org.tankrounds.browser.Guest.FIRST;
import static org.tankrounds.browser.Guest.MENTOR;
import static org.tankrounds.browser.Guest.NEWCOMER;
import static org.tankrounds.browser.Guest.NEW_TEACHER;
import static org.tankrounds.browser.Guest.NOBODY;
import static org.tankrounds.browser.Guest.TEACHER;
import static org.tankrounds.browser.PageState.choose;
import static org.tankrounds.browser.PageState.chooseFile;
import static org.tankrounds.browser.PageState.emptyEveryBox;
import static org.tankrounds.browser.PageState.fill;
import static org.tankrounds.browser.PageState.keepNothing;
import static org.tankrounds.browser.PageState.loseTheSession;
import static org.tankrounds.browser.PageState.meanwhile;
import static org.tankrounds.browser.PageState.open;
import static org.tankrounds.browser.PageState.press;
import static org.tankrounds.browser.PageState.see;
import static org.tankrounds.browser.PageState.select;
import static org.tankrounds.browser.PageState.send;
import static org.tankrounds.browser.PageState.set;
import static org.tankrounds.browser.PageState.signOut;
import static org.tankrounds.browser.PageState.waiting;

import java.util.List;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Every state that a page can be in. A new page, or a new way for one to look, is one more line here. */
final class PageStates {
    private static final String ONE_AND_THE_SAME = "0b0f3f0e-6d1c-4c1e-9a55-5f2d1c7f4b11";

    private static final String CLEAR = IntStream.range(0, 12)
            .mapToObj(i -> "2026-01-12 15:%02d,11.2\n".formatted(5 * i))
            .collect(Collectors.joining("", "time utc,water temp c\n", "2026-01-12 16:00,85.0\n"));
    private static final String UNCLEAR =
            "time;water temp\n02/01/2026 10:00;11,2\n02/01/2026 10:05;ERR\n02/01/2026 10:10;11,3\n";

    private PageStates() {}

    /** A logger's file that says all of itself. */
    static String clearFile() {
        return CLEAR;
    }

    static List<PageState> all() {
        return Stream.of(signingIn(), cards(), rounds(), readings(), paper(), files(), classes(),
                        people(), places(), season(), eggDay(), release(), beginnings())
                .flatMap(List::stream).toList();
    }

    private static List<PageState> signingIn() {
        return List.of(
                see(FIRST, "/set-up/{setUp}"),
                sentEmpty(FIRST, "/set-up/{setUp}"),
                see(NOBODY, "/"),
                see(NOBODY, "/sign-in"),
                sentEmpty(NOBODY, "/sign-in"),
                see(NOBODY, "/sign-in").after("a wrong password",
                        fill("E-mail address", "somebody@hollinthrup.example"),
                        fill("Password", "is not this one"), send()).answered(422),
                see(NOBODY, "/sign-in").after("many wrong passwords",
                        fill("E-mail address", Guests.SLOWED_DOWN),
                        fill("Password", "is not this one"), send()).answered(429),
                see(NOBODY, "/help"),
                see(NOBODY, "/invitations/{link}"),
                sentEmpty(NOBODY, "/invitations/{link}"),
                see(NOBODY, "/invitations/opens-nothing").answered(404),
                see(NOBODY, "/set-up/opens-nothing").answered(404),
                see(NOBODY, "/nowhere").answered(404),
                see(TEACHER, "/account"),
                sentEmpty(TEACHER, "/account"),
                see(TEACHER, "/tanks/{tank}/log").after("the session ended",
                        fill("Temperature", "52"), keepNothing(), loseTheSession(), send()).answered(403),
                see(TEACHER, "/tanks/{tank}/log").after("the session ended and a new one began",
                        fill("Temperature", "52"), keepNothing(), loseTheSession(), send(),
                        fill("E-mail address", "{teacherEmail}"),
                        fill("Password", "{teacherPassword}"), send()));
    }

    private static List<PageState> cards() {
        String card = "/tanks/{newTank}/card";
        String log = "/tanks/{cardTank}/log";
        return List.of(
                see(NOBODY, "/card"),
                sentEmpty(NOBODY, "/card"),
                see(NOBODY, "/card/{classCard}"),
                see(TEACHER, "/card/{classCard}"),
                see(NOBODY, "/card").after("a wrong code", fill("Code on the card", "RRR-444-RRR"), send())
                        .answered(422),
                see(NOBODY, "/card").after("many wrong codes",
                        fill("Code on the card", Guests.SLOWED_DOWN_CARD), send()).answered(429),
                see(CLASS, log),
                see(CLASS, log).after("a sound reading", fill("Temperature", "52"), send()),
                see(CLASS, "/tanks/{cardTank}"),
                see(CLASS, "/account").answered(404),
                see(CLASS, log).after("the session ended and the class came in again",
                        fill("Temperature", "52"), keepNothing(), loseTheSession(), send(),
                        fill("Code on the card", "{classCard}"), press("Come in")),
                see(COORDINATOR, "/tanks/{cardTank}/card"),
                see(BEGINNER, card),
                see(BEGINNER, card).after("somebody else's new one", press("Make a card"), open(card),
                        meanwhile(press("Make a new card")), press("Make a new card")).answered(409),
                see(BEGINNER, card).after("making another", press("Make a new card")),
                see(BEGINNER, card).after("revoking it", press("Revoke the card")));
    }

    private static List<PageState> rounds() {
        return List.of(
                see(COORDINATOR, "/rounds"),
                see(COORDINATOR, "/rounds?for=car"),
                see(COORDINATOR, "/rounds?asOf=2026-01-08"),
                see(COORDINATOR, "/rounds?asOf=2026-01-12"),
                see(COORDINATOR, "/rounds?asOf=2025-03-03"),
                see(COORDINATOR, "/rounds?asOf=2026-01-12").after("asking for a morning to come",
                        fill("Another morning", "2026-01-20"), press("Show")).answered(422),
                see(COORDINATOR, "/rounds").after("turning back twice", press("Past mornings"), press("‹")),
                see(MENTOR, "/rounds?asOf=2026-01-12"),
                see(COORDINATOR, "/help"),
                see(MENTOR, "/rounds"),
                see(TEACHER, "/tanks"),
                see(COORDINATOR, "/tanks/{tank}"),
                see(TEACHER, "/tanks/{tank}"),
                see(MENTOR, "/tanks/{calmTank}"),
                see(MENTOR, "/tanks/{calmTank}").after("asking for the numbers",
                        press("The same in numbers")),
                see(MENTOR, "/tanks/{calmTank}").after("exploring", press("Explore"),
                        (page, names) -> page.locator(".explore__chart canvas").first().waitFor()),
                see(TEACHER, "/tanks/{calmTank}").answered(404));
    }

    private static List<PageState> readings() {
        String log = "/tanks/{tank}/log";
        String reading = "/tanks/{tank}/readings/{reading}";
        return List.of(
                see(TEACHER, log),
                see(MENTOR, log),
                sentEmpty(TEACHER, log),
                see(TEACHER, log).after("opening the rest", press("Meter, oxygen, another time or kit")),
                see(TEACHER, log).after("impossible values",
                        fill("Temperature", "fifty"), fill("Fish found dead", "2.5"),
                        fill("Water changed", "120"), send()).answered(422),
                see(TEACHER, log).after("an unlikely value",
                        fill("Temperature", "45"), choose("Scale", "°C"), send()).answered(422),
                see(TEACHER, log).after("a note about somebody",
                        fill("Note", "as Maria Lopez saw it"), send()).answered(422),
                see(TEACHER, log).after("a second reading from one form",
                        meanwhile(set("submission_id", ONE_AND_THE_SAME), keepNothing(),
                                fill("Temperature", "51"), send()),
                        set("submission_id", ONE_AND_THE_SAME), keepNothing(), fill("Temperature", "52"), send())
                        .answered(409),
                see(TEACHER, log).after("a sound reading",
                        fill("Temperature", "52"), choose("pH", "7.5"), send()),
                see(TEACHER, "/outbox"),
                see(TEACHER, "/outbox").after("readings that wait, need fixing and were sent", waiting()),
                see(TEACHER, log).after("readings that wait", waiting(), open(log)),
                see(TEACHER, log).after("opening one that needs fixing", waiting(), open("/outbox"),
                        press("Open and fix")),
                see(TEACHER, "/outbox").after("signing out with readings that wait", waiting(), signOut()),
                see(TEACHER, reading),
                see(COORDINATOR, reading),
                sentEmpty(TEACHER, reading),
                see(TEACHER, reading).after("a correction", fill("Note", "the filter hums"),
                        fill("Why", "the note was missing"), send()),
                see(BEGINNER, "/tanks/{newTank}/readings/{gone}"),
                see(TEACHER, reading).after("taking it back without a reason", press("Take this reading back"))
                        .answered(422),
                see(TEACHER, reading).after("taking it back for a reason with a name",
                        fill("Why", "as Maria Lopez saw it"), press("Take this reading back")).answered(422),
                see(TEACHER, reading).after("somebody else's correction", fill("Note", "and bubbles"),
                        fill("Why", "seen later"),
                        meanwhile(fill("Note", "the filter is still"), fill("Why", "it has stopped"), send()),
                        send()).answered(409));
    }

    private static List<PageState> classes() {
        String ours = "/tanks/{cardTank}/class";
        String fish = "/tanks/{cardTank}/fish";
        String breaks = "/tanks/{cardTank}/breaks";
        return List.of(
                see(CLASS, ours),
                see(TEACHER, "/tanks/{tank}/class"),
                see(MENTOR, "/tanks/{calmTank}/class"),
                see(BEGINNER, "/tanks/{newTank}/class"),
                see(COORDINATOR, ours).after("asking nothing", press("Ask the class")).answered(422),
                see(COORDINATOR, ours).after("asking the class", fill("Ask the class", "Read the pH twice"),
                        press("Ask the class")),
                see(CLASS, ours).after("ticking what was asked", press("Done")),
                see(TEACHER, breaks),
                see(CLASS, breaks),
                see(MENTOR, "/tanks/{calmTank}/breaks"),
                see(BEGINNER, "/tanks/{newTank}/breaks"),
                see(BEGINNER, "/tanks/{newTank}/breaks").after("adding nothing", press("Add this break")).answered(422),
                see(BEGINNER, "/tanks/{newTank}/breaks").after("adding a break",
                        fill("What the school calls it", "Long weekend"),
                        fill("First day without lessons", "2026-01-16"), fill("Last day without lessons", "2026-01-19"),
                        press("Add this break"), fill("On all days left empty", "555-867-5309"), press("Keep the plan"))
                        .answered(422),
                see(BEGINNER, "/tanks/{newTank}/breaks").after("a name in the plan",
                        fill("What the school calls it", "Day off"), fill("First day without lessons", "2026-01-28"),
                        fill("Last day without lessons", "2026-01-28"), press("Add this break"),
                        fill("On all days left empty", "Maria Lopez"), press("Keep the plan"))
                        .answered(422),
                see(BEGINNER, "/tanks/{newTank}/breaks").after("the session changed in another window",
                        fill("What the school calls it", "Long weekend"), set("form_token", "of-before"),
                        press("Add this break")).answered(403),
                see(CLASS, fish),
                see(BEGINNER, "/tanks/{newTank}/fish"),
                see(CLASS, fish)
                        .after("seeing something grave", choose("They breathe", "gasping at the surface"), send()),
                see(CLASS, fish).after("seeing nothing", send()).answered(422),
                see(CLASS, fish).after("a measurement that cannot be", fill("How many fish", "10"),
                        fill("Mean length", "4.5"), press("Keep the measurement")).answered(422),
                see(CLASS, fish).after("a measurement", fill("How many fish", "10"), fill("Mean length", "45"),
                        press("Keep the measurement")));
    }

    private static List<PageState> paper() {
        String month = "/tanks/{tank}/month";
        // Those of a run before are in already.
        String warmth = "%.2f".formatted(ThreadLocalRandom.current().nextDouble(50, 55));
        return List.of(
                see(CLASS, "/tanks/{cardTank}/sheet"),
                see(TEACHER, "/tanks/{tank}/sheet?month=2026-02"),
                see(TEACHER, "/tanks/{tank}/sheet?month=february").answered(400),
                see(CLASS, "/tanks/{cardTank}/what-to-do"),
                see(BEGINNER, "/tanks/{newTank}/what-to-do"),
                see(TEACHER, month),
                see(TEACHER, month + "?month=2026-02"),
                sentEmpty(TEACHER, month),
                see(TEACHER, month).after("impossible and unlikely values", set("d01_temperature", "fifty"),
                        set("d02_deaths", "2.5"), set("d03_temperature", "80"), send())
                        .answered(422),
                see(TEACHER, month).after("an unlikely value", set("d01_temperature", "80"), send())
                        .answered(422),
                see(TEACHER, month).after("sound rows", set("d01_temperature", warmth), send()),
                see(TEACHER, month).after("rows that are in already", meanwhile(set("d02_temperature", warmth), send()),
                        set("d02_temperature", warmth), send())
                        .answered(422));
    }

    private static List<PageState> files() {
        String files = "/tanks/{tank}/files";
        String kept = "/tanks/{newTank}/files/{file}";
        return List.of(
                see(TEACHER, files),
                see(TEACHER, files).after("choosing nothing", send()).answered(422),
                see(TEACHER, files).after("choosing a workbook",
                        chooseFile("january.csv", "PK\u0003\u0004"), send()).answered(422),
                see(TEACHER, files).after("a file that leaves questions",
                        chooseFile("january.csv", UNCLEAR), send()),
                see(TEACHER, files).after("a file whose questions are answered",
                        chooseFile("january.csv", UNCLEAR), send(), select("Order of day and month", "dmy"),
                        select("Clock of the logger", "school"), select("Unit of temperature", "Cel"),
                        press("Look again")),
                see(TEACHER, files).after("keeping what was not looked at",
                        chooseFile("january.csv", CLEAR), send(), select("Unit of temperature", "Cel"),
                        press("Keep these")).answered(409),
                see(BEGINNER, kept),
                see(BEGINNER, "/tanks/{newTank}/files"),
                see(BEGINNER, "/tanks/{newTank}/files").after("a file that contradicts what is kept",
                        chooseFile("again.csv", CLEAR.replace("11.2", "11.9")), send()),
                see(BEGINNER, "/tanks/{newTank}"),
                see(BEGINNER, "/tanks/{newTank}/days/{day}"),
                see(BEGINNER, "/tanks/{newTank}/days/{day}").after("asking for each", press("Each reading")),
                see(BEGINNER, "/tanks/{newTank}/days/2025-01-12").answered(404),
                see(BEGINNER, kept).after("taking it back", press("Take this file back")));
    }

    private static List<PageState> people() {
        return List.of(
                see(COORDINATOR, "/people"),
                see(COORDINATOR, "/people/new"),
                sentEmpty(COORDINATOR, "/people/new"),
                see(COORDINATOR, "/people/new").after("the form was not ours",
                        set("form_token", "x"), send()).answered(403),
                see(COORDINATOR, "/people/{person}"),
                sentEmpty(COORDINATOR, "/people/{person}"),
                see(BEGINNER, "/people/{newPerson}").after("switched off",
                        press("Switch off"), press("{newPersonName}")),
                see(BEGINNER, "/people/{newPerson}").after("asking for a link", press("Let them in again"),
                        press("{newPersonName}"), press("Make a link")),
                see(COORDINATOR, "/tokens"),
                sentEmpty(COORDINATOR, "/tokens"),
                see(BEGINNER, "/tokens").after("issuing one", fill("What it is for", "probe of room 12"),
                        select("What it opens", "chapter"), send()),
                see(BEGINNER, "/tokens").after("revoking one", press("revoke")),
                see(TEACHER, "/people").answered(404));
    }

    private static List<PageState> places() {
        String school = "/places/schools/{school}";
        return List.of(
                see(COORDINATOR, "/places"),
                see(COORDINATOR, "/places/schools/new"),
                sentEmpty(COORDINATOR, "/places/schools/new"),
                see(COORDINATOR, school),
                sentEmpty(COORDINATOR, school),
                see(BEGINNER, "/places/schools/{newSchool}").after("somebody else's change",
                        meanwhile(fill("School", "Teasel Whistle School"), send()),
                        fill("School", "Whistle School"), send()).answered(409),
                see(COORDINATOR, school + "/rooms/new"),
                sentEmpty(COORDINATOR, school + "/rooms/new"),
                see(COORDINATOR, school + "/room?room={room}"),
                sentEmpty(COORDINATOR, school + "/room?room={room}"),
                see(COORDINATOR, school + "/tanks/new"),
                sentEmpty(COORDINATOR, school + "/tanks/new"),
                see(COORDINATOR, "/places/tanks/{tank}"),
                sentEmpty(COORDINATOR, "/places/tanks/{tank}"),
                see(BEGINNER, "/places/tanks/{otherTank}").after("retiring it", press("Retire this tank")),
                see(BEGINNER, "/places/tanks/{otherTank}"),
                see(COORDINATOR, "/places/kits"),
                see(COORDINATOR, "/places/kits/new"),
                sentEmpty(COORDINATOR, "/places/kits/new"),
                see(COORDINATOR, "/places/kits/kit?kit={kit}"),
                sentEmpty(COORDINATOR, "/places/kits/kit?kit={kit}"));
    }

    private static List<PageState> season() {
        String lots = "/season/{season}/tanks/{tank}/lots";
        String count = "/season/{season}/tanks/{tank}/count";
        String rows = "/season/{season}/summary/rows";
        return List.of(
                see(COORDINATOR, "/season"),
                see(COORDINATOR, "/season/new"),
                sentEmpty(COORDINATOR, "/season/new"),
                see(COORDINATOR, "/season/{season}"),
                see(COORDINATOR, "/season/{season}/edit"),
                sentEmpty(COORDINATOR, "/season/{season}/edit"),
                see(COORDINATOR, lots + "/new"),
                sentEmpty(COORDINATOR, lots + "/new"),
                see(COORDINATOR, lots + "/{lot}"),
                sentEmpty(COORDINATOR, lots + "/{lot}"),
                see(TEACHER, "/tanks/{tank}/visits"),
                see(BEGINNER, "/tanks/{newTank}/visits"),
                see(BEGINNER, "/tanks/{newTank}/visits").after("a visit without a deed", press("Keep this visit"))
                        .answered(422),
                see(BEGINNER, "/tanks/{newTank}/visits")
                        .after("a visit", choose("What was done", "looked at the fish"), press("Keep this visit")),
                see(COORDINATOR, "/years"),
                see(COORDINATOR, "/years/import"),
                sentEmpty(COORDINATOR, "/years/import"),
                see(COORDINATOR, "/season/{season}/calendar"),
                see(COORDINATOR, "/tanks/{tank}/calendar"),
                see(CLASS, "/tanks/{cardTank}/calendar"),
                sentEmpty(CLASS, "/tanks/{cardTank}/calendar"),
                see(BEGINNER, "/tanks/{newTank}/calendar"),
                see(TEACHER, "/tanks/{tank}/count"),
                see(COORDINATOR, count),
                see(COORDINATOR, count + "/{kind}"),
                sentEmpty(COORDINATOR, count + "/released"),
                see(COORDINATOR, count + "/lots/{eggs}/withdrawn"),
                sentEmpty(COORDINATOR, count + "/lots/{eggs}/withdrawn"),
                see(BEGINNER, "/season/{newSeason}/tanks/{newTank}/count/deaths/{day}"),
                see(BEGINNER, "/season/{newSeason}/tanks/{newTank}/count").after("counting again and releasing",
                        press("Count again"), fill("Fish found", "0"), send(), press("Write a release down"),
                        fill("Fish released", "0"), send()).answered(422),
                see(COORDINATOR, "/season/{season}/summary"),
                see(COORDINATOR, rows + "/{figure}"),
                see(COORDINATOR, rows + "/temperature?tank={tank}"),
                see(COORDINATOR, rows + "/nothing").answered(404),
                see(COORDINATOR, "/season/{season}/summary/freeze"),
                see(BEGINNER, "/season/{newSeason}/summary/freeze"),
                see(COORDINATOR, "/season/{season}/summary/versions/{version}"),
                sentEmpty(COORDINATOR, "/season/{season}/summary/versions/{version}"),
                see(COORDINATOR, "/season/{season}/summary/versions/{version}").after("making a link",
                        fill("Whom it is for", "State office"), send()),
                see(NOBODY, "/handed-over/{handedOver}"),
                see(NOBODY, "/handed-over/opens-nothing").answered(404),
                see(BEGINNER, "/season/{newSeason}/summary/freeze").after("freezing", send()));
    }

    private static List<PageState> eggDay() {
        String runs = "/season/{newSeason}/egg-days";
        String run = runs + "/{run}";
        String stop = run + "/tanks/{newTank}";
        return List.of(
                see(COORDINATOR, "/season/{season}/egg-days/new"),
                sentEmpty(COORDINATOR, "/season/{season}/egg-days/new"),
                see(BEGINNER, runs),
                see(BEGINNER, run),
                see(BEGINNER, run).after("no temperature", press("Write the temperature down")).answered(422),
                see(BEGINNER, run).after("eggs that are too warm", fill("Beside the eggs", "14.5"),
                        press("Write the temperature down")),
                see(BEGINNER, run + "/edit"),
                sentEmpty(BEGINNER, run + "/edit"),
                see(BEGINNER, run + "/edit").after("somebody else's change",
                        meanwhile(fill("Supplier", "Coldspring farm"), send()), fill("Supplier", "Coldspring"), send())
                        .answered(409),
                see(BEGINNER, run + "/stops"),
                see(BEGINNER, run + "/stops").after("no number of eggs", fill("Eggs for", "many"),
                        press("Keep these stops")).answered(422),
                see(BEGINNER, run + "/sheet"),
                see(BEGINNER, stop),
                see(BEGINNER, stop).after("no temperature", press("Make the timetable")).answered(422),
                see(BEGINNER, stop).after("a tank too warm for eggs", fill("Water that the eggs came in", "8"),
                        fill("Water of the tank", "14"), press("Make the timetable")),
                see(BEGINNER, stop).after("temperatures", fill("Water that the eggs came in", "8"),
                        fill("Water of the tank", "11"), press("Make the timetable")),
                see(BEGINNER, stop).after("an empty receipt", press("Write this receipt")).answered(422),
                see(BEGINNER, stop).after("a receipt with a name", fill("Signed by the class", "Maria Lopez"),
                        select("Adult who was there", "teacher"), press("Write this receipt")).answered(422),
                see(BEGINNER, run + "/tanks/{otherTank}").after("a receipt, and taking it back",
                        select("Adult who was there", "mentor"), press("Write this receipt"),
                        press("Take this receipt back")),
                see(BEGINNER, run + "/tanks/{otherTank}").after("a receipt",
                        select("Adult who was there", "mentor"), press("Write this receipt")),
                see(BEGINNER, run + "/tanks/{otherTank}")
                        .after("taking a receipt back", press("Take this receipt back")));
    }

    private static List<PageState> release() {
        String site = "/release/sites/{site}";
        String plan = "/release/plans/{plan}";
        return List.of(
                see(COORDINATOR, "/release"),
                see(TEACHER, "/release"),
                see(COORDINATOR, "/release/rules"),
                sentEmpty(COORDINATOR, "/release/rules"),
                see(COORDINATOR, "/release/sites/new"),
                sentEmpty(COORDINATOR, "/release/sites/new"),
                see(COORDINATOR, site),
                see(TEACHER, site),
                see(COORDINATOR, site + "/edit"),
                sentEmpty(COORDINATOR, site + "/edit"),
                see(COORDINATOR, site + "/approvals/new"),
                sentEmpty(COORDINATOR, site + "/approvals/new"),
                see(COORDINATOR, site + "/approvals/{approval}"),
                sentEmpty(COORDINATOR, site + "/approvals/{approval}"),
                see(COORDINATOR, "/release/plans/new"),
                sentEmpty(COORDINATOR, "/release/plans/new"),
                see(COORDINATOR, plan),
                see(MENTOR, plan).after("answering nothing", press("Keep these answers")),
                see(COORDINATOR, plan).after("the flow is not safe", choose("Level and current", "no"),
                        press("Keep these answers")),
                see(COORDINATOR, plan + "/edit"),
                sentEmpty(COORDINATOR, plan + "/edit"),
                see(COORDINATOR, plan + "/tanks/{cardTank}"),
                see(COORDINATOR, plan + "/tanks/{cardTank}").after("more than are there", fill("Fish released", "9999"),
                        keepNothing(), send()).answered(422),
                see(MENTOR, plan + "/tanks/{cardTank}").after("another day than the plan's", fill("Fish released", "1"),
                        keepNothing(), send()).answered(422),
                see(MENTOR, plan + "/tanks/{cardTank}").after("a release", fill("Fish released", "1"),
                        fill("Lengths of some, mm", "34 36"), fill("too small", "1"), keepNothing(), send(), send()),
                see(TEACHER, site + "/checks/new"),
                sentEmpty(TEACHER, site + "/checks/new"),
                see(TEACHER, site + "/checks/{check}"));
    }

    /** Nothing there yet: no school, no tank, no reading, no season. */
    private static List<PageState> beginnings() {
        return List.of(
                see(NEWCOMER, "/rounds"),
                see(NEWCOMER, "/rounds?for=car"),
                see(NEWCOMER, "/rounds?asOf=2026-01-12"),
                see(NEWCOMER, "/places"),
                see(NEWCOMER, "/people/new"),
                see(NEWCOMER, "/tokens"),
                see(NEWCOMER, "/season"),
                see(NEWCOMER, "/release"),
                see(BEGINNER, "/release"),
                see(NEW_TEACHER, "/tanks"),
                see(BEGINNER, "/rounds"),
                see(BEGINNER, "/places"),
                see(BEGINNER, "/season"),
                see(BEGINNER, "/season/{newSeason}/summary"),
                see(BEGINNER, "/tanks/{newTank}"));
    }

    private static PageState sentEmpty(Guest guest, String route) {
        return see(guest, route).after("sending it empty", emptyEveryBox(), send()).answered(422);
    }
}
