package org.tankrounds;

import static org.tankrounds.web.Role.ANYBODY;
import static org.tankrounds.web.Role.AT_THE_TANK;
import static org.tankrounds.web.Role.CHAPTER_TOKEN;
import static org.tankrounds.web.Role.COORDINATOR;
import static org.tankrounds.web.Role.IN_CHARGE;
import static org.tankrounds.web.Role.OPEN;
import static org.tankrounds.web.Role.ROUNDS;
import static org.tankrounds.web.Role.SIGNED_IN;
import static org.tankrounds.web.Role.TEACHER;
import static org.tankrounds.web.Role.TOKENS;

import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import org.tankrounds.people.AccountHandlers;
import org.tankrounds.people.CardHandlers;
import org.tankrounds.people.CardSignInHandlers;
import org.tankrounds.people.InvitationHandlers;
import org.tankrounds.people.LanguageHandlers;
import org.tankrounds.people.PersonHandlers;
import org.tankrounds.people.SetUpHandlers;
import org.tankrounds.people.SignInHandlers;
import org.tankrounds.people.TokenHandlers;
import org.tankrounds.readings.BatchApi;
import org.tankrounds.readings.CorrectionHandlers;
import org.tankrounds.readings.FileHandlers;
import org.tankrounds.readings.LogHandlers;
import org.tankrounds.readings.MonthHandlers;
import org.tankrounds.readings.ReadingApi;
import org.tankrounds.readings.SenmlApi;
import org.tankrounds.readings.SheetHandlers;
import org.tankrounds.rounds.HelpHandlers;
import org.tankrounds.rounds.RoundsApi;
import org.tankrounds.rounds.RoundsHandlers;
import org.tankrounds.rounds.TankHandlers;
import org.tankrounds.web.HealthHandlers;
import org.tankrounds.web.OfflineHandlers;

/** Every URL of the service, grouped by feature. */
final class Routes {
    record People(SignInHandlers signIn, SetUpHandlers setUp, InvitationHandlers invitations, AccountHandlers account,
            PersonHandlers people, TokenHandlers tokens, CardSignInHandlers cardSignIn, CardHandlers cards,
            LanguageHandlers languages) {}

    record Readings(ReadingApi api, BatchApi batch, SenmlApi senml, LogHandlers log, CorrectionHandlers corrections,
            FileHandlers files, SheetHandlers sheets, MonthHandlers months) {}

    record Rounds(RoundsHandlers pages, RoundsApi api, TankHandlers tanks, HelpHandlers help) {}

    private final HealthHandlers health;
    private final OfflineHandlers offline;
    private final People people;
    private final PlacePages places;
    private final SeasonPages season;
    private final EggDayPages eggDay;
    private final Readings readings;
    private final Rounds rounds;
    private final ClassroomPages classroom;
    private final ReleaseRoutes release;

    Routes(HealthHandlers health, OfflineHandlers offline, People people, PlacePages places, SeasonPages season,
            EggDayPages eggDay, Readings readings, Rounds rounds, ClassroomPages classroom,
            ReleaseRoutes release) {
        this.health = health;
        this.offline = offline;
        this.people = people;
        this.places = places;
        this.season = season;
        this.eggDay = eggDay;
        this.readings = readings;
        this.rounds = rounds;
        this.classroom = classroom;
        this.release = release;
    }

    void add(JavalinConfig javalin) {
        RoutesConfig routes = javalin.routes;
        addHealth(routes);
        addOffline(routes);
        addPeople(routes);
        addPlaces(routes);
        addSeason(routes);
        addEggDay(routes);
        addReadings(routes);
        addRounds(routes);
        addClassroom(routes);
        release.add(routes);
    }

    private void addHealth(RoutesConfig routes) {
        routes.get("/healthz", health::alive, OPEN);
        routes.head("/healthz", health::alive, OPEN);
        routes.get("/readyz", health::ready, OPEN);
        routes.head("/readyz", health::ready, OPEN);
        routes.get("/metrics", health::metrics, OPEN);
        routes.get("/openapi.yaml", health::description, OPEN);
    }

    private void addOffline(RoutesConfig routes) {
        routes.get("/sw.js", offline::worker, OPEN);
        routes.get("/app.webmanifest", offline::manifest, OPEN);
        routes.get("/api/ping", offline::ping, ANYBODY);
    }

    private void addPeople(RoutesConfig routes) {
        routes.get("/", people.signIn()::start, ANYBODY);
        routes.get("/sign-in", people.signIn()::show, ANYBODY);
        routes.post("/sign-in", people.signIn()::create, ANYBODY);
        routes.post("/sign-out", people.signIn()::remove, ANYBODY);
        routes.get("/card", people.cardSignIn()::show, ANYBODY);
        routes.get("/card/{code}", people.cardSignIn()::showFilledIn, ANYBODY);
        routes.post("/card", people.cardSignIn()::create, ANYBODY);
        routes.post("/language", people.languages()::choose, ANYBODY);
        routes.get("/set-up/{link}", people.setUp()::show, ANYBODY);
        routes.post("/set-up/{link}", people.setUp()::make, ANYBODY);
        routes.get("/invitations/{link}", people.invitations()::show, ANYBODY);
        routes.post("/invitations/{link}", people.invitations()::accept, ANYBODY);
        routes.get("/account", people.account()::show, SIGNED_IN);
        routes.post("/account/speech", people.account()::chooseSpeech, SIGNED_IN);
        routes.post("/account/password", people.account()::changePassword, SIGNED_IN);

        routes.get("/people", people.people()::list, COORDINATOR);
        routes.post("/people", people.people()::create, COORDINATOR);
        routes.get("/people/new", people.people()::showNew, COORDINATOR);
        routes.get("/people/{person}", people.people()::showEdit, COORDINATOR);
        routes.post("/people/{person}", people.people()::update, COORDINATOR);
        routes.post("/people/{person}/invitation", people.people()::invite, COORDINATOR);
        routes.post("/people/{person}/disabled", people.people()::disable, COORDINATOR);
        routes.post("/people/{person}/enabled", people.people()::enable, COORDINATOR);
        routes.get("/tokens", people.tokens()::list, COORDINATOR);
        routes.post("/tokens", people.tokens()::issue, COORDINATOR);
        routes.post("/tokens/{token}/revoked", people.tokens()::revoke, COORDINATOR);
        routes.get("/tanks/{tank}/card", people.cards()::show, IN_CHARGE);
        routes.post("/tanks/{tank}/card", people.cards()::make, IN_CHARGE);
        routes.post("/tanks/{tank}/card/paper", people.cards()::paper, IN_CHARGE);
        routes.post("/tanks/{tank}/card/revoked", people.cards()::revoke, IN_CHARGE);
    }

    private void addPlaces(RoutesConfig routes) {
        routes.get("/places", places.overview()::show, COORDINATOR);
        routes.get("/places/schools/new", places.schools()::showNew, COORDINATOR);
        routes.post("/places/schools", places.schools()::create, COORDINATOR);
        routes.get("/places/schools/{school}", places.schools()::showEdit, COORDINATOR);
        routes.post("/places/schools/{school}", places.schools()::update, COORDINATOR);
        routes.get("/places/schools/{school}/rooms/new", places.rooms()::showNew, COORDINATOR);
        routes.post("/places/schools/{school}/rooms", places.rooms()::create, COORDINATOR);
        routes.get("/places/schools/{school}/room", places.rooms()::showEdit, COORDINATOR);
        routes.post("/places/schools/{school}/room", places.rooms()::update, COORDINATOR);
        routes.get("/places/schools/{school}/tanks/new", places.tanks()::showNew, COORDINATOR);
        routes.post("/places/schools/{school}/tanks", places.tanks()::create, COORDINATOR);
        routes.get("/places/tanks/{tank}", places.tanks()::showEdit, COORDINATOR);
        routes.post("/places/tanks/{tank}", places.tanks()::update, COORDINATOR);
        routes.post("/places/tanks/{tank}/retirement", places.tanks()::retire, COORDINATOR);
        routes.post("/places/tanks/{tank}/return", places.tanks()::putBack, COORDINATOR);
        routes.get("/places/kits", places.kits()::show, COORDINATOR);
        routes.get("/places/kits/new", places.kits()::showNew, COORDINATOR);
        routes.post("/places/kits", places.kits()::create, COORDINATOR);
        routes.get("/places/kits/kit", places.kits()::showEdit, COORDINATOR);
        routes.post("/places/kits/kit", places.kits()::update, COORDINATOR);
    }

    private void addSeason(RoutesConfig routes) {
        routes.get("/season", season.seasons()::showCurrent, COORDINATOR);
        routes.get("/season/new", season.seasons()::showNew, COORDINATOR);
        routes.post("/season", season.seasons()::create, COORDINATOR);
        routes.get("/season/{season}", season.seasons()::show, COORDINATOR);
        routes.get("/season/{season}/edit", season.seasons()::showEdit, COORDINATOR);
        routes.post("/season/{season}", season.seasons()::update, COORDINATOR);
        routes.get("/season/{season}/tanks/{tank}/lots/new", season.lots()::showNew, COORDINATOR);
        routes.post("/season/{season}/tanks/{tank}/lots", season.lots()::create, COORDINATOR);
        routes.get("/season/{season}/tanks/{tank}/lots/{lot}", season.lots()::showEdit, COORDINATOR);
        routes.post("/season/{season}/tanks/{tank}/lots/{lot}", season.lots()::update, COORDINATOR);
        routes.get("/years", season.years()::show, COORDINATOR);
        routes.get("/years/import", season.years()::showNew, COORDINATOR);
        routes.post("/years/import", season.years()::create, COORDINATOR);
        routes.get("/years/{past}.csv", season.years()::download, COORDINATOR);
        routes.post("/years/{past}/withdrawn", season.years()::withdraw, COORDINATOR);
        routes.get("/season/{season}/calendar", season.calendar()::showSeason, ROUNDS);
        routes.get("/tanks/{tank}/calendar", season.calendar()::show, AT_THE_TANK);
        routes.post("/tanks/{tank}/calendar", season.calendar()::see, AT_THE_TANK);
        routes.post("/tanks/{tank}/calendar/{milestone}/withdrawn", season.calendar()::withdraw, AT_THE_TANK);
        routes.get("/tanks/{tank}/count", season.counts()::showCurrent, SIGNED_IN);
        routes.get("/season/{season}/tanks/{tank}/count", season.counts()::show, SIGNED_IN);
        routes.get("/season/{season}/tanks/{tank}/count/{kind}", season.counts()::showNew, SIGNED_IN);
        routes.post("/season/{season}/tanks/{tank}/count/{kind}", season.counts()::create, SIGNED_IN);
        routes.get("/season/{season}/tanks/{tank}/count/deaths/{day}", season.deaths()::show, SIGNED_IN);
        routes.post("/season/{season}/tanks/{tank}/count/deaths/{day}", season.deaths()::update, SIGNED_IN);
        routes.post("/season/{season}/tanks/{tank}/count/entries/{entry}/withdrawn",
                season.counts()::withdraw, SIGNED_IN);
        String typedLot = "/season/{season}/tanks/{tank}/count/lots/{eggs}/withdrawn";
        routes.get(typedLot, season.lotWithdrawals()::show, COORDINATOR);
        routes.post(typedLot, season.lotWithdrawals()::withdraw, COORDINATOR);

        routes.get("/season/{season}/summary", season.summary()::showPage, COORDINATOR);
        routes.get("/season/{season}/summary/rows/{figure}", season.summaryRows()::show, COORDINATOR);
        routes.get("/season/{season}/summary/freeze", season.freeze()::showForm, COORDINATOR);
        routes.post("/season/{season}/summary/freeze", season.freeze()::freeze, COORDINATOR);
        routes.get("/season/{season}/summary/versions/{version}", season.freeze()::showVersion, COORDINATOR);
        routes.post("/season/{season}/summary/versions/{version}/links", season.freeze()::makeLink, COORDINATOR);
        routes.post("/season/{season}/summary/versions/{version}/links/{handover}/withdrawn",
                season.freeze()::withdrawLink, COORDINATOR);
        routes.get("/handed-over/{link}", season.readers()::show, ANYBODY);
        routes.get("/handed-over/{link}/{file}", season.readers()::download, ANYBODY);
        routes.get("/season/{season}/summary.csv", season.summary()::showCsv, COORDINATOR);
        routes.get("/season/{season}/summary.xlsx", season.summary()::showXlsx, COORDINATOR);
        routes.get("/season/{season}/summary.pdf", season.summary()::showPdf, COORDINATOR);
        routes.get("/season/{season}/summary.zip", season.summary()::showZip, COORDINATOR);
        routes.get("/season/{season}/summary.json", season.summary()::showJson, COORDINATOR);

        routes.get("/api/v1/seasons/{season}/summary", season.summary()::show, CHAPTER_TOKEN);
        routes.get("/api/v1/seasons/{season}/summary.csv", season.summary()::showCsv, CHAPTER_TOKEN);
        routes.get("/api/v1/seasons/{season}/summary.xlsx", season.summary()::showXlsx, CHAPTER_TOKEN);
        routes.get("/api/v1/seasons/{season}/summary.pdf", season.summary()::showPdf, CHAPTER_TOKEN);
        routes.get("/api/v1/seasons/{season}/summary.zip", season.summary()::showZip, CHAPTER_TOKEN);
        routes.get("/api/v1/seasons/{season}/summary.json", season.summary()::showJson, CHAPTER_TOKEN);
    }

    private void addEggDay(RoutesConfig routes) {
        String runs = "/season/{season}/egg-days";
        String run = runs + "/{run}";
        String stop = run + "/tanks/{tank}";
        routes.get(runs, eggDay.runs()::showCurrent, ROUNDS);
        routes.get(runs + "/new", eggDay.plans()::showNew, COORDINATOR);
        routes.post(runs, eggDay.plans()::create, COORDINATOR);
        routes.get(run, eggDay.runs()::show, ROUNDS);
        routes.get(run + "/edit", eggDay.plans()::showEdit, COORDINATOR);
        routes.post(run, eggDay.plans()::update, COORDINATOR);
        routes.post(run + "/called-off", eggDay.plans()::callOff, COORDINATOR);
        routes.get(run + "/stops", eggDay.plans()::showStops, COORDINATOR);
        routes.post(run + "/stops", eggDay.plans()::planStops, COORDINATOR);
        routes.post(run + "/stops/{tank}/earlier", eggDay.plans()::earlier, COORDINATOR);
        routes.post(run + "/stops/{tank}/later", eggDay.plans()::later, COORDINATOR);
        routes.post(run + "/checks", eggDay.runs()::check, ROUNDS);
        routes.post(run + "/checks/{check}/withdrawn", eggDay.runs()::withdrawCheck, ROUNDS);
        routes.get(run + "/sheet", eggDay.runs()::showSheet, ROUNDS);
        routes.get(run + "/sheet.pdf", eggDay.runs()::showPdf, ROUNDS);
        routes.get(stop, eggDay.stops()::show, SIGNED_IN);
        routes.post(stop + "/tempering", eggDay.stops()::temper, SIGNED_IN);
        routes.post(stop + "/receipt", eggDay.stops()::receive, SIGNED_IN);
        routes.post(stop + "/receipt/withdrawn", eggDay.stops()::withdraw, ROUNDS);
    }

    private void addReadings(RoutesConfig routes) {
        routes.get("/tanks/{tank}/log", readings.log()::show, AT_THE_TANK);
        routes.post("/tanks/{tank}/log", readings.log()::create, AT_THE_TANK);
        routes.get("/tanks/{tank}/readings.csv", readings.log()::download, AT_THE_TANK);
        routes.get("/tanks/{tank}/sheet", readings.sheets()::show, AT_THE_TANK);
        routes.get("/tanks/{tank}/sheet.pdf", readings.sheets()::showPdf, AT_THE_TANK);
        routes.get("/tanks/{tank}/month", readings.months()::show, SIGNED_IN);
        routes.post("/tanks/{tank}/month", readings.months()::create, SIGNED_IN);
        routes.get("/outbox", readings.log()::showOutbox, AT_THE_TANK);
        routes.get("/tanks/{tank}/readings/{reading}", readings.corrections()::show, SIGNED_IN);
        routes.post("/tanks/{tank}/readings/{reading}", readings.corrections()::update, SIGNED_IN);
        routes.get(FileHandlers.UPLOAD, readings.files()::list, IN_CHARGE);
        routes.post(FileHandlers.UPLOAD, readings.files()::create, IN_CHARGE);
        routes.get("/tanks/{tank}/files/{file}", readings.files()::show, IN_CHARGE);
        routes.post("/tanks/{tank}/files/{file}", readings.files()::update, IN_CHARGE);
        routes.post("/tanks/{tank}/files/{file}/taken-back", readings.files()::takeBack, IN_CHARGE);
        routes.post("/api/v1/tanks/{tank}/readings", readings.api()::create, TOKENS);
        routes.get("/api/v1/tanks/{tank}/readings", readings.api()::list, TOKENS);
        routes.get("/api/v1/tanks/{tank}/readings/{reading}", readings.api()::show, TOKENS);
        routes.post("/api/v1/tanks/{tank}/senml", readings.senml()::create, TOKENS);
        routes.post("/api/v1/readings:batch", readings.batch()::create, CHAPTER_TOKEN);
    }

    private void addRounds(RoutesConfig routes) {
        routes.get("/rounds", rounds.pages()::show, ROUNDS);
        routes.get("/tanks", rounds.tanks()::list, TEACHER);
        routes.get("/tanks/{tank}", rounds.tanks()::show, AT_THE_TANK);
        routes.get("/tanks/{tank}/series.json", rounds.tanks()::series, AT_THE_TANK);
        routes.get("/tanks/{tank}/days/{day}", rounds.tanks()::day, AT_THE_TANK);
        routes.get("/help", rounds.help()::show, ANYBODY);
        routes.get("/api/v1/rounds", rounds.api()::show, CHAPTER_TOKEN);
    }

    private void addClassroom(RoutesConfig routes) {
        routes.get("/tanks/{tank}/class", classroom.classes()::show, AT_THE_TANK);
        routes.post("/tanks/{tank}/tasks", classroom.classes()::ask, ROUNDS);
        routes.post("/tanks/{tank}/tasks/{task}/done", classroom.classes()::finish, AT_THE_TANK);
        routes.post("/tanks/{tank}/tasks/{task}/undone", classroom.classes()::undo, AT_THE_TANK);
        routes.post("/tanks/{tank}/tasks/{task}/dropped", classroom.classes()::drop, ROUNDS);
        routes.post("/tanks/{tank}/advice/{act}/done", classroom.classes()::tick, AT_THE_TANK);
        routes.get("/tanks/{tank}/what-to-do", classroom.whatToDo()::show, AT_THE_TANK);
        routes.get("/tanks/{tank}/what-to-do.pdf", classroom.whatToDo()::showPdf, AT_THE_TANK);
        routes.get("/tanks/{tank}/visits", classroom.visits()::show, SIGNED_IN);
        routes.post("/tanks/{tank}/visits", classroom.visits()::create, ROUNDS);
        routes.post("/tanks/{tank}/visits/{visit}/withdrawn", classroom.visits()::withdraw, ROUNDS);
        routes.get("/tanks/{tank}/breaks", classroom.breaks()::show, AT_THE_TANK);
        routes.get("/tanks/{tank}/breaks.ics", classroom.breaks()::calendar, AT_THE_TANK);
        routes.post("/tanks/{tank}/breaks", classroom.breaks()::create, SIGNED_IN);
        routes.post("/tanks/{tank}/breaks/{break}", classroom.breaks()::plan, SIGNED_IN);
        routes.post("/tanks/{tank}/breaks/{break}/dropped", classroom.breaks()::drop, SIGNED_IN);
        routes.get("/tanks/{tank}/fish", classroom.fish()::show, AT_THE_TANK);
        routes.get("/tanks/{tank}/fish.csv", classroom.fish()::download, AT_THE_TANK);
        routes.post("/tanks/{tank}/fish/looks", classroom.fish()::look, AT_THE_TANK);
        routes.post("/tanks/{tank}/fish/looks/{look}/withdrawn", classroom.fish()::withdrawLook, AT_THE_TANK);
        routes.post("/tanks/{tank}/fish/samples", classroom.fish()::measure, AT_THE_TANK);
        routes.post("/tanks/{tank}/fish/samples/{sample}/withdrawn", classroom.fish()::withdrawSample, AT_THE_TANK);
    }
}
