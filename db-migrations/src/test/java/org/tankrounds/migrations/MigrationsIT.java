package org.tankrounds.migrations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
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
