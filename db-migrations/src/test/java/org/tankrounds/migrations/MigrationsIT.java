package org.tankrounds.migrations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MigrationsIT {

    @TempDir
    Path folder;

    @Test
    void migratesOnceAndTheApplicationCanTellTheVersion() throws Exception {
        try (EmbeddedPostgres postgres = Servers.start(folder.resolve("data"))) {
            Login owner = postgres.logins().owner();
            assertThat(Migrations.migrate(owner)).isEqualTo(MigrationFiles.read().size());
            assertThat(Migrations.migrate(owner)).isZero();
            try (Connection connection = postgres.logins().application().open()) {
                assertThat(Migrations.appliedVersion(connection)).isEqualTo(Migrations.expectedVersion());
            }
        }
    }

    /**
     * Months that are made later count as much as those of the beginning, and the library's own table too.
     */
    @Test
    void everyTableAndColumn_isExplained() throws Exception {
        try (EmbeddedPostgres postgres = Servers.start(folder.resolve("data"))) {
            Login owner = postgres.logins().owner();
            Migrations.migrate(owner);
            Servers.execute(owner, "SELECT ensure_measurement_months(now() + interval '6 months')");
            assertThat(unexplained(owner)).isEmpty();
        }
    }

    private static List<String> unexplained(Login owner) throws SQLException {
        List<String> names = new ArrayList<>();
        try (Connection connection = owner.open(); Statement sql = connection.createStatement();
                ResultSet row = sql.executeQuery("""
                        SELECT c.relname, a.attname FROM pg_class c
                        JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped
                        WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p')
                        AND (obj_description(c.oid, 'pg_class') IS NULL OR col_description(c.oid, a.attnum) IS NULL)
                        """)) {
            while (row.next()) {
                names.add(row.getString(1) + "." + row.getString(2));
            }
        }
        return names;
    }

    @Test
    void refusesASchemaMadeByALaterVersion() throws Exception {
        try (EmbeddedPostgres postgres = Servers.start(folder.resolve("data"))) {
            Login owner = postgres.logins().owner();
            Migrations.migrate(owner);
            Servers.execute(owner, "INSERT INTO flyway_schema_history SELECT installed_rank + 1000, "
                    + "'9999', 'from the future', type, 'V9999__from_the_future.sql', 1, installed_by, "
                    + "installed_on, execution_time, success FROM flyway_schema_history "
                    + "ORDER BY installed_rank DESC LIMIT 1");
            assertThatThrownBy(() -> Migrations.migrate(owner))
                    .isInstanceOf(SchemaTooNewException.class)
                    .hasMessageContaining("newer Tankrounds (schema version 9999");
        }
    }
}
