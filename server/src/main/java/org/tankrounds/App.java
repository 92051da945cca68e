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
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.migrations.Logins;
import org.tankrounds.migrations.Migrations;
import org.tankrounds.people.Bearers;
import org.tankrounds.people.Cookies;
import org.tankrounds.people.Doorman;
import org.tankrounds.people.FormGuard;
import org.tankrounds.people.PasswordHashes;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.people.Sessions;
import org.tankrounds.people.SignIn;
import org.tankrounds.people.SignInHandlers;
import org.tankrounds.places.AfterChange;
import org.tankrounds.places.ClassroomRepository;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.PlaceReads;
import org.tankrounds.places.SchoolRepository;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Assets;
import org.tankrounds.web.Errors;
import org.tankrounds.web.HealthHandlers;
import org.tankrounds.web.Pages;
import org.tankrounds.web.WebServer;

/**
 * The composition root: everything is built here, by constructors, and reads from top to bottom. Nothing else
 * creates a feature, and nothing is looked up.
 */
public final class App implements AutoCloseable {
    /** @param path with its parameters in braces */
    public record Route(String method, String path, Set<RouteRole> roles) {}

    private final HikariDataSource pool;
    private final Javalin server;

    /** @param logins a running PostgreSQL; the schema is brought up to date here */
    public App(Config config, Clock clock, Logins logins) {
        Migrations.migrate(logins.owner());
        pool = Pools.open(logins.application(), "tankrounds");
        Transactions transactions = new Transactions(pool);
        ObjectMapper json = json();
        PrometheusMeterRegistry metrics = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);

        Assets assets = new Assets();
        Pages pages = new Pages(assets, clock);
        Errors errors = new Errors(pages, json);

        PersonRepository people = new PersonRepository();
        PasswordHashes passwords = new PasswordHashes();
        Sessions sessions = new Sessions(transactions, clock);
        Cookies cookies = new Cookies(config.secure());
        FormGuard forms = new FormGuard(config.baseUrl());
        Doorman doorman = new Doorman(sessions, new Bearers(transactions, clock), cookies, forms);
        SignIn signIn = new SignIn(transactions, people, passwords, sessions, clock);
        SignInHandlers signInHandlers = new SignInHandlers(signIn, sessions, cookies, pages);

        PlaceReads placeReads = new PlaceReads(
                new SchoolRepository(), new ClassroomRepository(), new KitRepository(), new TankRepository());
        DirtyTanks dirtyTanks = new DirtyTanks();
        AfterChange afterChange = chapterId -> {};
        PlacePages places = PlacePages.of(transactions, placeReads, dirtyTanks, afterChange, pages, clock);
        SeasonPages season = SeasonPages.of(transactions, dirtyTanks, afterChange, pages, clock);

        HealthHandlers health = new HealthHandlers(() -> Optional.empty(), metrics, config.metricsToken());
        Routes routes = new Routes(health, signInHandlers, places, season);
        server = WebServer.create(config, json, assets, errors, doorman, routes::add);
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

    @Override
    public void close() {
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
