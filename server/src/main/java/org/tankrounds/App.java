package org.tankrounds;

import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.zaxxer.hikari.HikariDataSource;
import io.javalin.Javalin;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Clock;
import java.util.Optional;
import org.tankrounds.config.Config;
import org.tankrounds.db.Pools;
import org.tankrounds.db.Transactions;
import org.tankrounds.migrations.Logins;
import org.tankrounds.migrations.Migrations;
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

        HealthHandlers health = new HealthHandlers(() -> Optional.empty(), metrics, config.metricsToken());
        Routes routes = new Routes(health);
        server = WebServer.create(config, json, assets, errors, ctx -> {}, routes::add);
    }

    /** @return the port that it listens on */
    public int start() {
        server.start();
        return server.port();
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
