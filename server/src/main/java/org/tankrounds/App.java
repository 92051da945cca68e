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
import org.tankrounds.places.ClassroomRepository;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.PlaceReads;
import org.tankrounds.places.SchoolRepository;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Assets;
import org.tankrounds.web.Errors;
import org.tankrounds.web.HealthHandlers;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Readiness;
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
    private final Javalin server;
    private final Readiness ready;
    private final PeoplePages people;

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

        ready = new Readiness(pool);
        HealthHandlers health = new HealthHandlers(ready::whyNot, metrics, config.metricsToken());

        TankRepository tanks = new TankRepository();
        KitRepository kits = new KitRepository();
        people = PeoplePages.of(config, clock, transactions, tanks, kits, pages);

        PlaceReads placeReads = new PlaceReads(new SchoolRepository(), new ClassroomRepository(), kits, tanks);
        PlacePages places = PlacePages.of(transactions, placeReads, new DirtyTanks(), chapterId -> {}, pages, clock);

        Routes routes = new Routes(health, people, places);
        server = WebServer.create(config, json, assets, errors, people.doorman(),
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
        return people.setUpPath();
    }

    /** Answers what has been asked, then lets the database go. */
    @Override
    public void close() {
        ready.stopping();
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
