package org.tankrounds;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tankrounds.db.Pools;
import org.tankrounds.db.Transactions;
import org.tankrounds.migrations.EmbeddedPostgres;
import org.tankrounds.migrations.Migrations;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.PersistentPosters;
import org.tankrounds.testing.ServiceProcess;
import org.tankrounds.testing.TestDatabase;

/**
 * Kill -9 while scripts post: of the service, then of its PostgreSQL. What was answered is there, none of it
 * twice.
 */
class CrashIT {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int POSTERS = 4;
    private static final int SOME = 40;

    @TempDir
    private Path folder;

    private Cast.TankOfCast tank;

    @BeforeEach
    void layOutADataDirectoryWithATank() {
        try (EmbeddedPostgres postgres = TestDatabase.startEmpty(folder.resolve("data"))) {
            Migrations.migrate(postgres.logins().owner());
            try (HikariDataSource pool = Pools.open(postgres.logins().application(), "tests")) {
                tank = Cast.add(new Transactions(pool), "Crashing Chapter").tankA();
            }
        }
    }

    @Test
    void killedServiceAndKilledDatabase_loseNothingThatWasAnswered_andDoubleNothing() throws Exception {
        ServiceProcess service = start();
        try (PersistentPosters posters =
                new PersistentPosters(service.baseUrl(), tank.code(), tank.token(), POSTERS)) {
            posters.awaitMore(SOME);
            service.kill();
            service = start();
            posters.goOnAt(service.baseUrl());
            posters.awaitMore(SOME);
            killPostgres(service);
            posters.awaitMore(SOME);
            posters.stop();

            assertThat(posters.complaints()).isEmpty();
            assertThat(service.log()).doesNotContain("reference");
            assertThat(stored(service)).doesNotHaveDuplicates().containsAll(posters.answered());
        } finally {
            service.close();
        }
    }

    private ServiceProcess start() throws IOException {
        return ServiceProcess.start(folder, Map.of(), "serve");
    }

    /** Returns when another one serves: until then, what the old one had begun may still be answered. */
    private void killPostgres(ServiceProcess service) throws IOException {
        long killed = ServiceProcess.postgresPid(folder);
        ProcessHandle.of(killed).orElseThrow().destroyForcibly();
        Browserless browser = new Browserless(service.baseUrl());
        long deadline = System.nanoTime() + 30_000_000_000L;
        while (List.of(0L, killed).contains(ServiceProcess.postgresPid(folder))
                || browser.get("/readyz").status() != 200) {
            assertThat(System.nanoTime()).as("ready again in time").isLessThan(deadline);
        }
    }

    /** The notes of the readings that are there, over all pages. */
    private List<String> stored(ServiceProcess service) throws IOException {
        Browserless browser = new Browserless(service.baseUrl()).bearer(tank.token());
        List<String> notes = new ArrayList<>();
        Optional<String> next = Optional.of("/api/v1/tanks/" + tank.code() + "/readings?limit=500");
        while (next.isPresent()) {
            Answer page = browser.get(next.get());
            assertThat(page.status()).isEqualTo(200);
            for (JsonNode reading : JSON.readTree(page.body()).get("readings")) {
                notes.add(reading.get("note").asText());
            }
            next = page.header("link").map(link -> link.substring(1, link.indexOf('>')));
        }
        return notes;
    }
}
