package org.tankrounds;

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

    static Database open(Config config) {
        if (config.database().isPresent()) {
            Config.OutsideDatabase outside = config.database().get();
            return new Database(
                    DatabaseRoles.ensure(Login.of(outside.url(), outside.user(), outside.password())), null);
        }
        EmbeddedPostgres embedded = EmbeddedPostgres.start(config.dataDir());
        return new Database(embedded.logins(), embedded);
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
