package org.tankrounds.migrations;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/** Brings a database to the schema that this version of the service was built with. */
public final class Migrations {

    private static final String HISTORY = "flyway_schema_history";

    private Migrations() {
    }

    /** @return how many migrations were applied */
    public static int migrate(Login owner) {
        return migrate(owner, expectedVersion());
    }

    /** Stops at an earlier schema, so that a backup of it fits in. */
    public static int migrate(Login owner, int upTo) {
        Flyway flyway = configure(owner).target(Integer.toString(upTo)).load();
        for (MigrationInfo migration : flyway.info().applied()) {
            if (migration.getState().name().startsWith("FUTURE")) {
                throw new SchemaTooNewException(migration.getVersion().getVersion(), expectedVersion());
            }
        }
        int applied = flyway.migrate().migrationsExecuted;
        if (applied > 0) {
            letTheOthersRead(owner);
        }
        return applied;
    }

    /** The schema version that this version of the service was built with. */
    public static int expectedVersion() {
        return MigrationFiles.newestVersion();
    }

    /** The schema version that a database has; any of the three logins may ask. */
    public static int appliedVersion(Connection connection) throws SQLException {
        try (Statement sql = connection.createStatement();
                ResultSet row = sql.executeQuery(
                        "SELECT coalesce(max(version::int), 0) FROM " + HISTORY + " WHERE success")) {
            row.next();
            return row.getInt(1);
        }
    }

    private static FluentConfiguration configure(Login owner) {
        FluentConfiguration flyway = Flyway.configure(Migrations.class.getClassLoader())
                .dataSource(owner.url(), owner.user(), owner.password())
                .locations("classpath:" + MigrationFiles.FOLDER)
                .defaultSchema("public")
                .createSchemas(false)
                .cleanDisabled(true)
                .loggers("slf4j")
                .validateMigrationNaming(true);
        owner.openingStatement().ifPresent(flyway::initSql);
        return flyway;
    }

    /** Readiness and backups ask for the version too. */
    private static void letTheOthersRead(Login owner) {
        try (Connection connection = owner.open(); Statement sql = connection.createStatement()) {
            sql.execute("GRANT SELECT ON " + HISTORY + " TO " + DatabaseRoles.APPLICATION + ", "
                    + DatabaseRoles.BACKUP);
        } catch (SQLException failed) {
            throw new IllegalStateException("Cannot grant reading the schema's version", failed);
        }
    }
}
