package org.tankrounds.db;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import org.tankrounds.migrations.Login;

/** Connection pools. A caller waits two seconds for a connection and then hears that the database is busy. */
public final class Pools {
    private static final int SIZE = 10;
    private static final long WAIT_MS = 2_000;

    private Pools() {}

    public static HikariDataSource open(Login login, String name) {
        HikariConfig config = new HikariConfig();
        config.setPoolName(name);
        config.setJdbcUrl(login.url());
        config.setUsername(login.user());
        config.setPassword(login.password());
        config.setMaximumPoolSize(SIZE);
        config.setMinimumIdle(2);
        config.setConnectionTimeout(WAIT_MS);
        config.setInitializationFailTimeout(WAIT_MS);
        config.setAutoCommit(true);
        config.addDataSourceProperty("ApplicationName", name);
        config.addDataSourceProperty("options",
                "-c statement_timeout=10000 -c lock_timeout=5000 -c idle_in_transaction_session_timeout=30000");
        login.role().ifPresent(role -> config.setConnectionInitSql("SET ROLE " + role));
        return new HikariDataSource(config);
    }
}
