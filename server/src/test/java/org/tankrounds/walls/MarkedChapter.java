package org.tankrounds.walls;

import static org.tankrounds.db.schema.Tables.CLASSROOMS;
import static org.tankrounds.db.schema.Tables.KITS;
import static org.tankrounds.db.schema.Tables.LOTS;
import static org.tankrounds.db.schema.Tables.PAST_ROWS;
import static org.tankrounds.db.schema.Tables.PAST_SEASONS;
import static org.tankrounds.db.schema.Tables.PEOPLE;
import static org.tankrounds.db.schema.Tables.SCHOOLS;
import static org.tankrounds.db.schema.Tables.SEASONS;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.tankrounds.behaviour.LookRepository;
import org.tankrounds.behaviour.Seen;
import org.tankrounds.breaks.BreakRepository;
import org.tankrounds.breaks.SchoolBreak;
import org.tankrounds.people.PasswordHashes;
import org.tankrounds.people.Person;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.people.PersonRepository.Details;
import org.tankrounds.people.TokenRepository;
import org.tankrounds.release.Approval;
import org.tankrounds.release.ApprovalRepository;
import org.tankrounds.release.Duty;
import org.tankrounds.release.Load;
import org.tankrounds.release.PlanRepository;
import org.tankrounds.release.ReleasePlan;
import org.tankrounds.release.Site;
import org.tankrounds.release.SiteRepository;
import org.tankrounds.release.Species;
import org.tankrounds.release.StreamCheck;
import org.tankrounds.release.StreamCheckRepository;
import org.tankrounds.season.FishSample;
import org.tankrounds.season.FishSampleRepository;
import org.tankrounds.stream.StreamGroup;
import org.tankrounds.tasks.TaskRepository;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Role;
import org.tankrounds.web.Secrets;

/**
 * A chapter with one of everything, in which every name carries the same word and every code is known:
 * wherever one of them turns up, something of this chapter does.
 *
 * @param things by the name that an address gives them
 */
record MarkedChapter(Cast cast, String word, Map<String, String> things, Cast.Member disabled,
        String revokedToken) {
    private static final ObjectMapper JSON = new ObjectMapper();

    static MarkedChapter add(TestApp app, String word) {
        Cast cast = Cast.add(app.transactions(), word + " Chapter");
        MarkedChapter chapter = app.transactions().inChapter(cast.chapterId(), tx -> furnish(tx, cast, word));
        chapter.things.put("reading", post(app, cast, cast.tankA(), word));
        chapter.things.put("readingB", post(app, cast, cast.tankB(), word));
        chapter.things.put("file", keepFile(app, cast, word));
        chapter.things.put("day", readByProbe(app, cast));
        freeze(app, cast);
        planEggDay(app, chapter);
        return chapter;
    }

    private static void freeze(TestApp app, Cast cast) {
        Browserless coordinator = app.signedIn(cast.coordinator());
        String page = coordinator.get("/season/" + cast.season() + "/summary/freeze").body();
        String form = page.replaceAll("(?s).*action=\"([^\"]*/summary/freeze[^\"]*)\".*", "$1");
        if (coordinator.post(form).status() != 303) {
            throw new IllegalStateException("nothing was frozen");
        }
    }

    /** Whatever nobody outside may read. */
    Set<String> marks() {
        Set<String> marks = new LinkedHashSet<>();
        marks.add(word);
        marks.add(cast.tankA().code());
        marks.add(cast.tankB().code());
        for (String name : Set.of("reading", "readingB", "file", "school", "person", "season")) {
            marks.add(things.get(name));
        }
        cast.members().forEach(member -> marks.add(member.code()));
        cast.members().forEach(member -> marks.add(member.email()));
        return marks;
    }

    /** What tells of one tank and not of the other. */
    Set<String> marksOfTankA() {
        return Set.of(cast.tankA().code(), things.get("reading"), things.get("file"));
    }

    Set<String> marksOfTankB() {
        return Set.of(cast.tankB().code(), things.get("readingB"));
    }

    private static MarkedChapter furnish(DSLContext tx, Cast cast, String word) {
        mark(tx, SCHOOLS, SCHOOLS.NAME, SCHOOLS.CHAPTER_ID, cast, word);
        mark(tx, CLASSROOMS, CLASSROOMS.NAME, CLASSROOMS.CHAPTER_ID, cast, word);
        mark(tx, KITS, KITS.NAME, KITS.CHAPTER_ID, cast, word);
        mark(tx, PEOPLE, PEOPLE.NAME, PEOPLE.CHAPTER_ID, cast, word);
        mark(tx, SEASONS, SEASONS.NAME, SEASONS.CHAPTER_ID, cast, word);
        Cast.Member target = person(tx, cast, word, "target", Role.MENTOR);
        Cast.Member disabled = person(tx, cast, word, "disabled", Role.COORDINATOR);
        TokenRepository tokens = new TokenRepository();
        var spare = tokens.issue(tx, cast.chapterId(), OptionalInt.empty(), word, TestClock.START);
        var revoked = tokens.issue(tx, cast.chapterId(), OptionalInt.empty(), word, TestClock.START);
        tokens.revoke(tx, cast.chapterId(), revoked.tokenId(), TestClock.START);
        Map<String, String> things = new HashMap<>(Map.of(
                "tank", cast.tankA().code(), "season", cast.season(), "lot", "1", "link", "no-such-link",
                "code", "CK7PM4RXW",
                "person", target.code(), "token", Integer.toString(spare.tokenId())));
        things.put("school",
                tx.select(SCHOOLS.CODE).from(SCHOOLS).where(SCHOOLS.CHAPTER_ID.eq(cast.chapterId()))
                .orderBy(SCHOOLS.SCHOOL_ID).limit(1).fetchSingle(SCHOOLS.CODE));
        things.put("room", tx.select(CLASSROOMS.NAME).from(CLASSROOMS)
                .where(CLASSROOMS.CHAPTER_ID.eq(cast.chapterId())).limit(1).fetchSingle(CLASSROOMS.NAME));
        things.put("kit", tx.select(KITS.NAME).from(KITS).where(KITS.CHAPTER_ID.eq(cast.chapterId()))
                .limit(1).fetchSingle(KITS.NAME));
        things.put("act", "skip_feed");
        things.put("kind", "counted");
        things.put("entry", "1");
        things.put("eggs", tx.select(LOTS.LOT_ID).from(LOTS).where(LOTS.CHAPTER_ID.eq(cast.chapterId())).limit(1)
                .fetchSingle(LOTS.LOT_ID).toString());
        things.put("past", past(tx, cast, word));
        things.put("milestone", "hatch");
        things.put("visit", "1");
        things.put("figure", "dead");
        things.put("version", "1");
        things.put("handover", "1");
        things.putAll(classDeeds(tx, cast, word));
        things.putAll(release(tx, cast, word));
        return new MarkedChapter(cast, word, things, disabled, revoked.secret());
    }

    private static String past(DSLContext tx, Cast cast, String word) {
        String code = Secrets.code(6);
        int pastSeasonId = tx.insertInto(PAST_SEASONS)
                .set(PAST_SEASONS.CHAPTER_ID, cast.chapterId()).set(PAST_SEASONS.CODE, code)
                .set(PAST_SEASONS.SUBMISSION_ID, UUID.randomUUID()).set(PAST_SEASONS.NAME, word)
                .set(PAST_SEASONS.ENDED_ON, LocalDate.parse("2025-06-30"))
                .set(PAST_SEASONS.HEADER, new String[] {"school", "eggs"})
                .set(PAST_SEASONS.WRITTEN_BY, cast.coordinator().personId())
                .set(PAST_SEASONS.WRITTEN_AT, TestClock.START)
                .returning(PAST_SEASONS.PAST_SEASON_ID).fetchSingle(PAST_SEASONS.PAST_SEASON_ID);
        tx.insertInto(PAST_ROWS).set(PAST_ROWS.CHAPTER_ID, cast.chapterId())
                .set(PAST_ROWS.PAST_SEASON_ID, pastSeasonId).set(PAST_ROWS.LINE_NO, 2)
                .set(PAST_ROWS.CELLS, new String[] {word, "100"}).execute();
        return code;
    }

    /** What the class of tank A was asked to do, saw and measured. */
    private static Map<String, String> classDeeds(DSLContext tx, Cast cast, String word) {
        Caller coordinator = new Caller(Role.COORDINATOR, cast.chapterId(),
                OptionalInt.of(cast.coordinator().personId()), OptionalInt.empty(), "", "", "",
                cast.chapter().zone(), "");
        int tankId = cast.tankA().tankId();
        int task = new TaskRepository().ask(tx, coordinator, tankId, word, TestClock.START);
        new LookRepository().add(
                tx, coordinator, tankId, UUID.randomUUID(), List.of(Seen.GASPING), TestClock.START);
        new FishSampleRepository().add(tx, coordinator, tankId, UUID.randomUUID(),
                new FishSample(0, TestClock.START, 10, 30, OptionalDouble.empty()));
        int look = new LookRepository().list(tx, cast.chapterId(), tankId, 1).get(0).lookId();
        int sample = new FishSampleRepository().list(tx, cast.chapterId(), tankId, Instant.EPOCH).get(0).sampleId();
        int schoolBreak = new BreakRepository().add(tx, coordinator, tankId, new SchoolBreak(
                0, word, LocalDate.of(2026, 1, 16), LocalDate.of(2026, 1, 17), Map.of(LocalDate.of(2026, 1, 16), word)),
                TestClock.START);
        return Map.of("break", Integer.toString(schoolBreak), "task", Integer.toString(task),
                "look", Integer.toString(look), "sample", Integer.toString(sample));
    }

    /** A site with an approval for spring. */
    private static Map<String, String> release(DSLContext tx, Cast cast, String word) {
        int site = new SiteRepository().add(tx, cast.chapterId(), new Site.Details(
                "Bridge " + word, word + " Brook", Optional.empty(), Optional.empty(), OptionalDouble.empty()));
        int approval = new ApprovalRepository().add(tx, cast.chapterId(), site, new Approval.Details(
                "P-" + word, word, Species.RAINBOW_TROUT, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 6, 1), 400,
                Optional.empty(), Optional.empty()));
        int season = tx.select(SEASONS.SEASON_ID).from(SEASONS).where(SEASONS.CHAPTER_ID.eq(cast.chapterId()))
                .fetchSingle(SEASONS.SEASON_ID);
        int plan = new PlanRepository().add(tx, cast.chapterId(), UUID.randomUUID(), new ReleasePlan(0, season,
                approval,
                new ReleasePlan.Details(Instant.parse("2026-01-14T15:00:00Z"), 1, OptionalDouble.of(11),
                        OptionalDouble.of(8), OptionalDouble.of(20), OptionalDouble.empty(), true, 12, 3,
                        Map.of(Duty.LEAD, "ranger"), Optional.of(word), List.of(new Load(cast.tankA().tankId(), 50,
                                OptionalDouble.of(45), OptionalDouble.empty(), 2, 20))),
                Optional.empty()), cast.coordinator().personId(), TestClock.START);
        int check = new StreamCheckRepository().add(tx, cast.chapterId(), UUID.randomUUID(), new StreamCheck(0, site,
                TestClock.START, OptionalDouble.of(8), OptionalDouble.empty(), OptionalDouble.of(10),
                Map.of(StreamGroup.GOLDEN_STONEFLY, 4), Optional.of(word), Optional.empty()),
                cast.coordinator().personId());
        return Map.of("site", Integer.toString(site), "approval", Integer.toString(approval), "streamCheck",
                Integer.toString(check), "plan", Integer.toString(plan));
    }

    private static void mark(
            DSLContext tx, Table<?> table, Field<String> name, Field<Integer> chapter, Cast cast,
            String word) {
        tx.update(table).set(name, DSL.concat(name, DSL.val(" " + word))).where(chapter.eq(cast.chapterId()))
                .execute();
    }

    private static Cast.Member person(DSLContext tx, Cast cast, String word, String address, Role role) {
        String email = address + "@" + cast.chapter().code() + ".example";
        Person person = new PersonRepository()
                .add(tx, cast.chapterId(), new Details(email, "Pat " + word, role),
                Optional.of(new PasswordHashes().hash(Cast.PASSWORD)));
        return new Cast.Member(person.personId(), person.code(), email, person.name(), role);
    }

    private static String post(TestApp app, Cast cast, Cast.TankOfCast tank, String word) {
        String body = """
                {"measuredAt": "2026-01-12T14:05:00Z", "by": "%s", "note": "A %s pebble.",
                 "values": [{"analyte": "ph", "value": 7.2, "unit": "[pH]"}]}""".formatted(word, word);
        try {
            return JSON.readTree(app.bearer(tank.token()).header("Idempotency-Key", "marked")
                    .postJson("/api/v1/tanks/" + tank.code() + "/readings", body).body()).get("id").asText();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Kept, so that whoever takes it back leaves it there for the others. */
    private static String keepFile(TestApp app, Cast cast, String word) {
        Browserless teacher = app.signedIn(cast.teacherA());
        String files = "/tanks/" + cast.tankA().code() + "/files";
        teacher.get(files);
        byte[] content = "time utc,temp c\n2026-01-12 09:00,11.2\n".getBytes();
        String file = teacher.upload(files, word + ".csv", content).location();
        String shown = teacher.get(file).body().replaceAll("(?s).*name=\"shown\" value=\"([^\"]*)\".*", "$1");
        teacher.post(file, "act", "keep", "shown", shown);
        return file.substring(file.lastIndexOf('/') + 1);
    }

    /** With a receipt of each tank: a day of which a class holds one stays, whoever calls it off. */
    private static void planEggDay(TestApp app, MarkedChapter chapter) {
        Cast cast = chapter.cast();
        Browserless coordinator = app.signedIn(cast.coordinator());
        String runs = "/season/" + cast.season() + "/egg-days";
        coordinator.get(runs + "/new");
        String run = coordinator.post(runs, "day", "2026-01-13", "starts_at", "07:30", "supplier", chapter.word,
                "thermal_units_in", "Cel.d", "method", "weighed").location().replace("/stops", "");
        coordinator.post(run + "/stops",
                "shown", find(coordinator.get(run + "/stops"), "name=\"shown\" value=\"(\\w+)\""),
                "eggs-" + cast.tankA().code(), "100", "eggs-" + cast.tankB().code(), "100");
        coordinator.post(run + "/checks", "cooler", "8", "cooler_where", "road");
        chapter.things.put("run", run.substring(run.lastIndexOf('/') + 1));
        chapter.things.put("check", find(coordinator.get(run), "/checks/(\\d+)/withdrawn"));
        for (Cast.TankOfCast tank : List.of(cast.tankA(), cast.tankB())) {
            String stop = run + "/tanks/" + tank.code();
            coordinator.get(stop);
            coordinator.post(stop + "/receipt", "eggs", "100", "method", "weighed", "received_on", "2026-01-13",
                    "class_label", "period 3", "adult", "teacher");
        }
    }

    private static String find(Browserless.Answer answer, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(answer.body());
        if (!found.find()) {
            throw new IllegalStateException(pattern + " is not on the page: " + answer);
        }
        return found.group(1);
    }

    private static String readByProbe(TestApp app, Cast cast) {
        byte[] pack = "[{\"n\":\"temperature\",\"u\":\"Cel\",\"t\":1768147200,\"v\":11.2}]".getBytes();
        app.bearer(cast.tankA().token())
                .send("POST", "/api/v1/tanks/" + cast.tankA().code() + "/senml", "application/senml+json", pack);
        return "2026-01-11";
    }
}
