package org.tankrounds.web;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import javax.sql.DataSource;
import org.tankrounds.migrations.Migrations;

/** Whether this node should get requests: its database answers, is migrated, and it is not about to stop. */
public final class Readiness {
    private final DataSource database;
    private volatile boolean stopping;

    public Readiness(DataSource database) {
        this.database = database;
    }

    /** From now on a proxy should send requests to other nodes. */
    public void stopping() {
        stopping = true;
    }

    /** @return a sentence, or empty when ready */
    public Optional<String> whyNot() {
        if (stopping) {
            return Optional.of("stopping");
        }
        try (Connection connection = database.getConnection()) {
            int version = Migrations.appliedVersion(connection);
            int expected = Migrations.expectedVersion();
            return version == expected ? Optional.empty()
                    : Optional.of("the schema has version " + version + ", this service needs " + expected);
        } catch (SQLException e) {
            return Optional.of("the database does not answer");
        }
    }
}
