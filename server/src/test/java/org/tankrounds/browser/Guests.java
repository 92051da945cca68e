package org.tankrounds.browser;

import com.microsoft.playwright.options.Cookie;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.tankrounds.App;
import org.tankrounds.demo.DemoAccess.PersonAccess;
import org.tankrounds.migrations.EmbeddedPostgres;
import org.tankrounds.people.Chapter;
import org.tankrounds.people.ChapterRepository;
import org.tankrounds.people.PasswordHashes;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.people.PersonRepository.Details;
import org.tankrounds.places.KitRepository;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.DemoService;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;
import org.tankrounds.testing.TestDatabase;
import org.tankrounds.testing.Visitor;
import org.tankrounds.web.Role;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Language;

/** Everybody who looks at pages, signed in once, and what there is for them to look at. */
final class Guests implements AutoCloseable {
    /** Somebody at whose account has been guessed. */
    static final String SLOWED_DOWN = "slowed.down@hollinthrup.example";
    /** A code like which many wrong ones were typed. */
    static final String SLOWED_DOWN_CARD = "CCC-333-CCC";
    private static final int GUESSES = 5;

    private final DemoService demo = DemoService.shared();
    private final Language language;
    private final Chapter empty = demo.transactions().outside(Guests::addEmptyChapter);
    private final Cast beginners = Cast.add(demo.transactions(), "Beginners' chapter");
    private final EmbeddedPostgres emptyDatabase;
    private final App emptyApp;
    private final String emptyUrl;
    private final Map<String, String> values = new HashMap<>();
    private final Map<Guest, List<Cookie>> cookies = new EnumMap<>(Guest.class);
    private final Visitor visitor = Visitor.of(demo.baseUrl());

    Guests(Path folder) {
        this(folder, Language.ENGLISH);
    }

    /** @param language that their browsers remember */
    Guests(Path folder, Language language) {
        this.language = language;
        Scanner.bringAlong(visitor.page());
        emptyDatabase = TestDatabase.startEmpty(folder);
        emptyApp = TestApp.bare(emptyDatabase.logins(), TestClock.atStart());
        emptyUrl = "http://127.0.0.1:" + emptyApp.start();
        values.put("setUp", emptyApp.setUpPath().orElseThrow().replace("/set-up/", ""));
        nameThingsOfTheDemo();
        nameThingsOfTheBeginners();
        for (int i = 0; i < GUESSES; i++) {
            browser().signIn(SLOWED_DOWN, "is not this one");
            browser().comeIn(SLOWED_DOWN_CARD);
        }
    }

    /** The one browser window, in that guest's hands; what was done in it before is forgotten. */
    Visitor visit(Guest guest) {
        List<Cookie> own = guest.signsIn() ? cookies.computeIfAbsent(guest, this::signIn) : List.of();
        Cookie spoken = new Cookie(Speech.COOKIE, language.tag()).setUrl(demo.baseUrl());
        return visitor.become(Stream.concat(own.stream(), Stream.of(spoken)).toList());
    }

    String address(PageState state) {
        return (state.guest() == Guest.FIRST ? emptyUrl : demo.baseUrl()) + names().fillIn(state.route());
    }

    Names names() {
        return new Names(values, language);
    }

    @Override
    public void close() {
        visitor.close();
        emptyApp.close();
        emptyDatabase.close();
    }

    private List<Cookie> signIn(Guest guest) {
        if (guest == Guest.CLASS) {
            return comeIn();
        }
        PersonAccess person = switch (guest) {
            case COORDINATOR, MENTOR, TEACHER -> DemoService.person(demo.first(), guest.name().toLowerCase());
            case BEGINNER -> new PersonAccess(beginners.coordinator().email(), Cast.PASSWORD, "");
            case NEWCOMER -> new PersonAccess(newcomer(empty), Cast.PASSWORD, "");
            case NEW_TEACHER -> new PersonAccess(newTeacher(empty), Cast.PASSWORD, "");
            default -> throw new IllegalArgumentException(guest + " does not sign in");
        };
        return visitor.become(List.of()).signIn(person.email(), person.password()).cookies();
    }

    private List<Cookie> comeIn() {
        visitor.become(List.of()).page().navigate("/card/" + values.get("classCard"));
        visitor.press("Open our tank");
        return visitor.cookies();
    }

    private static Chapter addEmptyChapter(DSLContext tx) {
        Chapter chapter = new ChapterRepository().add(tx, "Empty chapter", ZoneId.of("America/New_York"));
        new KitRepository().addGeneric(tx, chapter.chapterId(), "Generic card");
        Optional<String> hash = Optional.of(new PasswordHashes().hash(Cast.PASSWORD));
        PersonRepository people = new PersonRepository();
        people.add(tx, chapter.chapterId(), new Details(newcomer(chapter), "Cora Weirthimble", Role.COORDINATOR),
                hash);
        people.add(tx, chapter.chapterId(), new Details(newTeacher(chapter), "Ada Fernwhistle", Role.TEACHER), hash);
        return chapter;
    }

    private static String newcomer(Chapter chapter) {
        return "coordinator@" + chapter.code() + ".example";
    }

    private static String newTeacher(Chapter chapter) {
        return "teacher@" + chapter.code() + ".example";
    }

    private void nameThingsOfTheDemo() {
        PersonAccess teacher = DemoService.person(demo.first(), "teacher");
        PersonAccess coordinator = DemoService.person(demo.first(), "coordinator");
        values.put("teacherEmail", teacher.email());
        values.put("teacherPassword", teacher.password());
        Browserless classroom = browser();
        classroom.signIn(teacher.email(), teacher.password());
        name("tank", classroom, "/tanks", "/tanks/(\\w+)\"");
        name("reading", classroom, "/tanks/" + values.get("tank"), "/readings/([\\w-]+)\"");
        Browserless office = browser();
        office.signIn(coordinator.email(), coordinator.password());
        List<String> order = Pattern.compile("id=\"tank-(\\w+)\"").matcher(office.get("/rounds").body())
                .results().map(found -> found.group(1)).toList();
        values.put("calmTank", order.get(order.size() - 1));
        name("school", office, "/places", "/places/schools/(\\w+)/room\\?");
        name("room", office, "/places", "/room\\?room=([^\"]+)\"");
        name("kit", office, "/places/kits", "kit\\?kit=([^\"]+)\"");
        name("person", office, "/people", "/people/(?!new)(\\w+)\"");
        values.put("cardTank", demo.first().tanks().get(0).code());
        values.put("classCard", demo.first().tanks().get(0).classCard());
        name("site", office, "/release", "/release/sites/(\\d+)\"");
        name("plan", office, "/release", "/release/plans/(\\d+)\"");
        name("approval", office, "/release/sites/" + values.get("site"), "/approvals/(\\d+)\"");
        name("check", office, "/release/sites/" + values.get("site"), "/checks/(\\d+)\"");
        values.put("lot", "1");
        values.put("kind", "moved");
        values.put("season", demo.first().seasons().get(0).code());
        name("eggs", office, "/season/" + values.get("season") + "/tanks/" + values.get("tank") + "/count",
                "/count/lots/(\\d+)/withdrawn\"");
        values.put("figure", "dead");
        values.put("version", freeze(office, values.get("season")));
        String version = "/season/" + values.get("season") + "/summary/versions/" + values.get("version");
        office.get(version);
        values.put("handedOver", find(office.post(version + "/links", "reader", "State office", "days", "30"),
                "/handed-over/([\\w-]+)"));
    }

    private void nameThingsOfTheBeginners() {
        values.put("newTank", beginners.tankA().code());
        values.put("otherTank", beginners.tankB().code());
        values.put("newSeason", beginners.season());
        values.put("newPerson", beginners.teacherB().code());
        values.put("newPersonName", beginners.teacherB().name());
        Browserless office = browser();
        office.signIn(beginners.coordinator());
        name("newSchool", office, "/places", "/places/schools/(\\w+)/room\\?");
        office.get("/people/new");
        Browserless.Answer invited = office.post(
                "/people", "name", "Ivy Brookthimble", "email", "ivy@beginners.example", "role", "teacher");
        values.put("link", find(invited, "/invitations/([\\w-]+)"));
        values.put("file", keepFile(office));
        values.put("gone", takeBackAReading(office));
        values.put("run", planEggDay(office));
        values.put("day", "2026-01-12");
    }

    private String freeze(Browserless office, String season) {
        String form = find(office.get("/season/" + season + "/summary/freeze"),
                "action=\"([^\"]*/summary/freeze[^\"]*)\"");
        String version = office.post(form).location();
        return version.substring(version.lastIndexOf('/') + 1);
    }

    private String takeBackAReading(Browserless office) {
        String tank = "/tanks/" + values.get("newTank");
        office.get(tank + "/log");
        String code = office.post(tank + "/log", "temperature", "52", "temperature_unit", "[degF]").location()
                .split("saved=")[1];
        String reading = tank + "/readings/" + code;
        office.get(reading);
        office.post(reading, "act", "take_back", "reason", "the other tank", "version", "1");
        return code;
    }

    /** To both tanks, with a look at the cooler. */
    private String planEggDay(Browserless office) {
        String runs = "/season/" + values.get("newSeason") + "/egg-days";
        office.get(runs + "/new");
        String run = office.post(runs, "day", "2026-01-13", "starts_at", "07:30", "thermal_units_in", "Cel.d",
                "method", "weighed", "eggs", "400").location().replace("/stops", "");
        office.post(run + "/stops", "shown", find(office.get(run + "/stops"), "name=\"shown\" value=\"(\\w+)\""),
                "eggs-" + values.get("newTank"), "200", "eggs-" + values.get("otherTank"), "190",
                "time-" + values.get("otherTank"), "08:45");
        office.post(run + "/checks", "cooler", "8", "cooler_where", "supplier", "cooler_time", "07:40");
        return run.substring(run.lastIndexOf('/') + 1);
    }

    private String keepFile(Browserless office) {
        String files = "/tanks/" + values.get("newTank") + "/files";
        office.get(files);
        String file = office.upload(files, "january.csv", PageStates.clearFile().getBytes(StandardCharsets.UTF_8))
                .location();
        office.post(file, "act", "keep", "shown", find(office.get(file), "name=\"shown\" value=\"(\\w+)\""));
        return file.substring(file.lastIndexOf('/') + 1);
    }

    private void name(String name, Browserless browser, String path, String pattern) {
        values.put(name, find(browser.get(path), pattern));
    }

    private static String find(Browserless.Answer answer, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(answer.body());
        if (!found.find()) {
            throw new IllegalStateException(pattern + " is not on the page: " + answer);
        }
        return found.group(1);
    }

    private Browserless browser() {
        return new Browserless(demo.baseUrl());
    }
}
