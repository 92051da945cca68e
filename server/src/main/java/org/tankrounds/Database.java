package org.tankrounds;

import java.util.Optional;
import org.tankrounds.config.CommandException;
import org.tankrounds.config.Config;
import org.tankrounds.migrations.EmbeddedPostgres;
import org.tankrounds.migrations.DatabaseRoles;
import org.tankrounds.migrations.Login;
import org.tankrounds.migrations.Logins;

/** The PostgreSQL of a run: one that somebody else runs, or the one brought along. */
final class Database implements AutoCloseable {
    private final Logins logins;
    private final EmbeddedPostgres embedded;

    private Database(Logins logins, EmbeddedPostgres embedded) {
        this.logins = logins;
        this.embedded = embedded;
    }

    /** For whoever serves: the embedded one belongs to this process alone, and a killed PostgreSQL is revived. */
    static Database open(Config config) {
        if (config.database().isPresent()) {
            return new Database(outside(config.database().get()), null);
        }
        EmbeddedPostgres embedded = EmbeddedPostgres.start(config.dataDir());
        embedded.keepAlive();
        return new Database(embedded.logins(), embedded);
    }

    /** For a short command: beside a running service it uses that one's database, else it starts it for itself. */
    static Database join(Config config) {
        if (config.database().isEmpty()) {
            Optional<Logins> running = EmbeddedPostgres.running(config.dataDir());
            if (running.isPresent()) {
                return new Database(running.get(), null);
            }
            if (!EmbeddedPostgres.existsIn(config.dataDir())) {
                throw CommandException.failed("There is no database in " + config.dataDir()
                        + " yet: \"serve\" makes one. --data names another folder.");
            }
        }
        return open(config);
    }

    private static Logins outside(Config.OutsideDatabase outside) {
        return DatabaseRoles.ensure(Login.of(outside.url(), outside.user(), outside.password()));
    }

    Logins logins() {
        return logins;
    }

    @Override
    public void close() {
        if (embedded != null) {
            embedded.close();
        }
    }
}
