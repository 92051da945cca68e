package org.tankrounds;

import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.zaxxer.hikari.HikariDataSource;
import io.javalin.Javalin;
import io.javalin.router.Endpoint;
import io.javalin.security.RouteRole;
import io.javalin.security.Roles;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.config.Config;
import org.tankrounds.db.Pools;
import org.tankrounds.db.Readiness;
import org.tankrounds.db.Transactions;
import org.tankrounds.migrations.Logins;
import org.tankrounds.migrations.Migrations;
import org.tankrounds.people.AccountHandlers;
import org.tankrounds.people.Bearers;
import org.tankrounds.people.ChapterRepository;
import org.tankrounds.people.Cookies;
import org.tankrounds.people.Doorman;
import org.tankrounds.people.FormGuard;
import org.tankrounds.people.InvitationHandlers;
import org.tankrounds.people.Invitations;
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
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Assets;
import org.tankrounds.web.Errors;
import org.tankrounds.web.HealthHandlers;
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
    private final Javalin server;
    private final SetUp setUp;

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

        HealthHandlers health = new HealthHandlers(readiness, metrics, config.metricsToken());

        TankRepository tanks = new TankRepository();
        KitRepository kits = new KitRepository();

        ChapterRepository chapters = new ChapterRepository();
        PersonRepository people = new PersonRepository();
        PasswordHashes passwords = new PasswordHashes();
        Sessions sessions = new Sessions(transactions, clock);
        Cookies cookies = new Cookies(config.secure());
        Doorman doorman = new Doorman(
                sessions, new Bearers(transactions, clock), cookies, new FormGuard(config.baseUrl()));
        SignIn signIn = new SignIn(transactions, people, passwords, sessions, clock);
        SetUp setUp = new SetUp(transactions, chapters, people, kits, passwords, sessions, clock);
        Invitations invitations = new Invitations(transactions, chapters, people, passwords, sessions, clock);
        PersonActs personActs = new PersonActs(people, sessions, invitations, clock);
        Routes.People peopleHandlers = new Routes.People(
                new SignInHandlers(signIn, sessions, cookies, pages),
                new SetUpHandlers(setUp, cookies, pages),
                new InvitationHandlers(invitations, cookies, pages),
                new AccountHandlers(transactions, people, passwords, signIn, sessions, cookies, pages),
                new PersonHandlers(transactions, people, personActs, tanks, new SiteAddress(config.baseUrl()), pages),
                new TokenHandlers(transactions, new TokenRepository(), tanks, pages, clock));

        Routes routes = new Routes(health, peopleHandlers);
        this.setUp = setUp;
        server = WebServer.create(config, json, assets, errors, doorman,
                new RequestMetrics(metrics), routes::add);
    }

    /** @return the port that it listens on */
    public int start() {
        server.start();
        return server.port();
    }

    /** Every route with those it is for, as the server holds them. */
    public List<Route> routes() {
        return server.unsafe.internalRouter.allHttpHandlers().stream()
                .map(handler -> handler.endpoint)
                .filter(endpoint -> endpoint.method.isHttpMethod())
                .map(endpoint -> new Route(endpoint.method.name(), endpoint.path, roles(endpoint)))
                .toList();
    }

    private static Set<RouteRole> roles(Endpoint endpoint) {
        Roles roles = endpoint.metadata(Roles.class);
        return roles == null ? Set.of() : roles.getRoles();
    }

    /** @return where the first chapter is set up; a new path each time, and empty once there is one */
    public Optional<String> setUpPath() {
        return setUp.newLink();
    }

    /** Answers what has been asked, then lets the database go. */
    @Override
    public void close() {
        readiness.close();
        server.stop();
        pool.close();
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
