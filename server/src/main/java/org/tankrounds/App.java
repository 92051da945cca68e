package org.tankrounds;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.zaxxer.hikari.HikariDataSource;
import io.javalin.Javalin;
import io.javalin.router.Endpoint;
import io.javalin.security.Roles;
import io.javalin.security.RouteRole;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.advice.Advisor;
import org.tankrounds.behaviour.LookRepository;
import org.tankrounds.breaks.BreakRepository;
import org.tankrounds.breaks.BreakWatches;
import org.tankrounds.config.Config;
import org.tankrounds.db.Pools;
import org.tankrounds.db.Readiness;
import org.tankrounds.db.Transactions;
import org.tankrounds.demo.DemoLoader;
import org.tankrounds.eggday.EggDayDoor;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.jobs.AtOnce;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.jobs.EachChapter;
import org.tankrounds.jobs.Housekeeping;
import org.tankrounds.jobs.Jobs;
import org.tankrounds.jobs.Jobs.Job;
import org.tankrounds.migrations.Logins;
import org.tankrounds.migrations.Migrations;
import org.tankrounds.people.AccountHandlers;
import org.tankrounds.people.Bearers;
import org.tankrounds.people.CardHandlers;
import org.tankrounds.people.CardSignIn;
import org.tankrounds.people.CardSignInHandlers;
import org.tankrounds.people.ChapterRepository;
import org.tankrounds.people.ClassCards;
import org.tankrounds.people.Cookies;
import org.tankrounds.people.Doorman;
import org.tankrounds.people.FormGuard;
import org.tankrounds.people.FormReach;
import org.tankrounds.people.InvitationHandlers;
import org.tankrounds.people.Invitations;
import org.tankrounds.people.LanguageHandlers;
import org.tankrounds.people.PasswordHashes;
import org.tankrounds.people.PersonActs;
import org.tankrounds.people.PersonHandlers;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.people.Sessions;
import org.tankrounds.people.SetUp;
import org.tankrounds.people.SetUpHandlers;
import org.tankrounds.people.SignIn;
import org.tankrounds.people.SignInHandlers;
import org.tankrounds.people.SiteAddress;
import org.tankrounds.people.TokenHandlers;
import org.tankrounds.people.TokenRepository;
import org.tankrounds.places.ClassroomRepository;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.PlaceReads;
import org.tankrounds.places.SchoolRepository;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.AlongReadings;
import org.tankrounds.readings.BatchApi;
import org.tankrounds.readings.CorrectReading;
import org.tankrounds.readings.CorrectionHandlers;
import org.tankrounds.readings.FileHandlers;
import org.tankrounds.readings.LastLooks;
import org.tankrounds.readings.LogHandlers;
import org.tankrounds.readings.LookDays;
import org.tankrounds.readings.LoggerFiles;
import org.tankrounds.readings.MonthHandlers;
import org.tankrounds.readings.ObservationRepository;
import org.tankrounds.readings.ReadingApi;
import org.tankrounds.readings.ReadingRepository;
import org.tankrounds.readings.SavedReceipt;
import org.tankrounds.readings.SenmlApi;
import org.tankrounds.readings.SheetHandlers;
import org.tankrounds.readings.StoreBatch;
import org.tankrounds.readings.StoreReading;
import org.tankrounds.rounds.ChapterRanking;
import org.tankrounds.rounds.ForecastKeeper;
import org.tankrounds.rounds.ForecastMaker;
import org.tankrounds.rounds.ForecastRepository;
import org.tankrounds.rounds.HelpHandlers;
import org.tankrounds.rounds.PastMornings;
import org.tankrounds.rounds.RoundsApi;
import org.tankrounds.rounds.RoundsHandlers;
import org.tankrounds.rounds.RoundsVersions;
import org.tankrounds.rounds.TankHandlers;
import org.tankrounds.rounds.TankInputs;
import org.tankrounds.rounds.TanksToday;
import org.tankrounds.season.LotRepository;
import org.tankrounds.season.SeasonRepository;
import org.tankrounds.season.Stock;
import org.tankrounds.tasks.TaskRepository;
import org.tankrounds.web.Assets;
import org.tankrounds.web.Errors;
import org.tankrounds.web.HealthHandlers;
import org.tankrounds.web.OfflineHandlers;
import org.tankrounds.web.Pages;
import org.tankrounds.web.RequestMetrics;
import org.tankrounds.web.WebServer;

/**
 * The composition root: everything is built here, by constructors, and reads from top to bottom. Nothing else
 * creates a feature, and nothing is looked up.
 */
public final class App implements AutoCloseable {
    /** @param path with its parameters in braces */
    public record Route(String method, String path, Set<RouteRole> roles) {}

    private final HikariDataSource pool;
    private final Readiness readiness;
    private final SetUp setUp;
    private final AtOnce atOnce;
    private final Jobs jobs;
    private final DemoLoader demoLoader;
    private final Javalin server;

    /** @param logins a running PostgreSQL; the schema is brought up to date here */
    public App(Config config, Clock clock, Logins logins) {
        Migrations.migrate(logins.owner());
        pool = Pools.open(logins.application(), "tankrounds");
        readiness = new Readiness(pool, config.dataDir());
        Transactions transactions = new Transactions(pool);
        ObjectMapper json = json();
        PrometheusMeterRegistry metrics = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);

        Assets assets = new Assets();
        Pages pages = new Pages(assets, clock);
        Errors errors = new Errors(pages, json);
        OfflineHandlers offline = new OfflineHandlers(assets, json, clock, config.offline());
        HealthHandlers health = new HealthHandlers(readiness, metrics, config.metricsToken());

        TankRepository tanks = new TankRepository();
        KitRepository kits = new KitRepository();
        LotRepository lots = new LotRepository();
        LookRepository looks = new LookRepository();
        TaskRepository tasks = new TaskRepository();
        BreakRepository breaks = new BreakRepository();
        BreakWatches breakWatches = new BreakWatches(breaks, new LookDays(), looks);
        DirtyTanks dirtyTanks = new DirtyTanks();

        ChapterRepository chapters = new ChapterRepository();
        PersonRepository people = new PersonRepository();
        PasswordHashes passwords = new PasswordHashes();
        Sessions sessions = new Sessions(transactions, clock);
        Cookies cookies = new Cookies(config.secure());
        SignIn signIn = new SignIn(transactions, people, passwords, sessions, clock);
        FormReach formReach = new FormReach(transactions, tanks);
        SignInHandlers signInHandlers = new SignInHandlers(signIn, sessions, cookies, formReach, pages);
        Doorman doorman = new Doorman(sessions, new Bearers(transactions, clock), cookies,
                new FormGuard(config.baseUrl(), Set.of(FileHandlers.UPLOAD)), signInHandlers);
        setUp = new SetUp(transactions, chapters, people, kits, passwords, sessions, clock);
        Invitations invitations = new Invitations(transactions, chapters, people, passwords, sessions, clock);
        PersonActs personActs = new PersonActs(people, sessions, invitations, clock);
        ClassCards classCards = new ClassCards(transactions, passwords, sessions, clock);
        SiteAddress siteAddress = new SiteAddress(config.baseUrl());
        Routes.People peopleRoutes = new Routes.People(
                signInHandlers,
                new SetUpHandlers(setUp, cookies, pages),
                new InvitationHandlers(invitations, cookies, pages),
                new AccountHandlers(transactions, people, passwords, signIn, sessions, cookies, pages),
                new PersonHandlers(transactions, people, personActs, tanks, siteAddress, pages),
                new TokenHandlers(transactions, new TokenRepository(), tanks, pages, clock),
                new CardSignInHandlers(
                        new CardSignIn(transactions, passwords, sessions, clock), sessions, cookies, formReach, pages),
                new CardHandlers(transactions, tanks, classCards, siteAddress, pages, clock),
                new LanguageHandlers(cookies));

        ForecastRepository forecasts = new ForecastRepository(json);
        RoundsVersions roundsVersions = new RoundsVersions();
        ForecastMaker forecastMaker = new ForecastMaker(new Forecaster(), new Advisor());
        TankInputs tankInputs = new TankInputs(lots, new Stock(SeasonPages.seasonReads()), new ObservationRepository(),
                new LastLooks());
        ForecastKeeper keeper = new ForecastKeeper(transactions, clock, dirtyTanks, tanks, tankInputs, forecastMaker,
                forecasts, roundsVersions);
        atOnce = new AtOnce(keeper::catchUp);
        ReadingRepository readings = new ReadingRepository();
        ChapterRanking ranking = new ChapterRanking(tanks, tankInputs, forecastMaker, roundsVersions);
        PastMornings pastMornings = new PastMornings(tanks, new SeasonRepository(), tankInputs, forecastMaker);
        EggDayDoor eggDays = new EggDayDoor(new SeasonRepository());
        Routes.Rounds roundsRoutes = new Routes.Rounds(
                new RoundsHandlers(
                        transactions, clock, tanks, forecasts, looks, breakWatches,
                        eggDays, roundsVersions, pastMornings, pages, assets),
                new RoundsApi(transactions, clock, ranking, json, assets),
                new TankHandlers(
                        transactions, clock, tanks, tankInputs, forecasts, readings, looks, tasks, eggDays, pages,
                        json),
                new HelpHandlers(pages));

        StoreReading storeReading = new StoreReading(transactions, tanks, kits, readings, dirtyTanks, atOnce, clock);
        StoreBatch storeBatch = new StoreBatch(transactions, tanks, kits, readings, dirtyTanks, atOnce, clock);
        SavedReceipt receipts = new SavedReceipt(readings, new ObservationRepository());
        CorrectReading correctReading =
                new CorrectReading(transactions, tanks, readings, storeReading, atOnce, clock);
        Routes.Readings readingRoutes = new Routes.Readings(
                new ReadingApi(transactions, tanks, readings, storeReading), new BatchApi(storeBatch),
                new SenmlApi(transactions, tanks, kits, readings, dirtyTanks, atOnce, clock),
                new LogHandlers(transactions, tanks, kits, readings, receipts, storeReading, pages, clock),
                new CorrectionHandlers(transactions, tanks, kits, people, correctReading, pages, clock),
                new FileHandlers(new LoggerFiles(transactions, tanks, kits, readings, dirtyTanks, atOnce, clock),
                        pages, clock),
                new SheetHandlers(transactions, tanks, kits, pages, clock),
                new MonthHandlers(transactions, tanks, kits, readings, storeReading, pages, clock));

        PlaceReads placeReads = new PlaceReads(new SchoolRepository(), new ClassroomRepository(), kits, tanks);
        PlacePages placeRoutes = PlacePages.of(transactions, placeReads, dirtyTanks, atOnce, pages, clock);
        SeasonPages seasonRoutes = SeasonPages.of(
                transactions, dirtyTanks, atOnce, siteAddress, pages, clock);
        EggDayPages eggDayRoutes = EggDayPages.of(transactions, dirtyTanks,
                new AlongReadings(storeReading, correctReading), atOnce, pages, clock);

        ClassroomPages classroomRoutes = ClassroomPages.of(transactions, tanks,
                new TanksToday(tanks, tankInputs, forecasts), kits, looks, tasks, breaks, breakWatches, dirtyTanks,
                atOnce, pages, clock);

        jobs = new Jobs(List.of(
                new Job("keep forecasts", Duration.ofSeconds(30), new EachChapter(transactions, keeper::keep)),
                new Job("housekeeping", Duration.ofDays(1),
                        new Housekeeping(transactions, sessions::forgetEnded, clock))));
        StoreBatch storeDemo = new StoreBatch(transactions, tanks, kits, readings, dirtyTanks, chapterId -> { }, clock);
        demoLoader = new DemoLoader(transactions, storeDemo, passwords, classCards, dirtyTanks, keeper::catchUp,
                SeasonPages.freezer(transactions, pages, clock), clock);

        Routes routes = new Routes(
                health, offline, peopleRoutes, placeRoutes, seasonRoutes, eggDayRoutes, readingRoutes, roundsRoutes,
                classroomRoutes, ReleaseRoutes.of(transactions, dirtyTanks, atOnce, pages, clock));
        server = WebServer.create(config, json, assets, errors, doorman, new RequestMetrics(metrics), routes::add);
    }

    /** @return the port that it listens on */
    public int start() {
        server.start();
        jobs.start();
        return server.port();
    }

    /** @return where the first chapter is set up; a new path each time, and empty once there is one */
    public Optional<String> setUpPath() {
        return setUp.newLink();
    }

    /** Writes the invented chapters, for the demo's command. */
    public DemoLoader demoLoader() {
        return demoLoader;
    }

    /** Every route with those it is for, as the server holds them. */
    public List<Route> routes() {
        return server.unsafe.internalRouter.allHttpHandlers().stream()
                .map(handler -> handler.endpoint)
                .filter(endpoint -> endpoint.method.isHttpMethod())
                .map(endpoint -> new Route(endpoint.method.name(), endpoint.path, roles(endpoint)))
                .toList();
    }

    /** Answers what has been asked, then lets the database go. */
    @Override
    public void close() {
        readiness.close();
        server.stop();
        atOnce.close();
        jobs.close();
        pool.close();
    }

    private static Set<RouteRole> roles(Endpoint endpoint) {
        Roles roles = endpoint.metadata(Roles.class);
        return roles == null ? Set.of() : roles.getRoles();
    }

    private static ObjectMapper json() {
        JsonFactory factory = JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(20).build())
                .build();
        return new ObjectMapper(factory)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .findAndRegisterModules();
    }
}
