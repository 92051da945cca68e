package org.tankrounds.check;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.tankrounds.migrations.Logins;
import org.tankrounds.migrations.Migrations;

/** Whether the database answers, to each of its three roles, and fits this version of the service. */
public final class DatabaseCheck {
    private static final Duration CLOCK_TOLERANCE = Duration.ofSeconds(5);

    private final Logins logins;
    private final String which;
    private final Clock clock;

    /** @param which database it is, for people; without any password */
    public DatabaseCheck(Logins logins, String which, Clock clock) {
        this.logins = logins;
        this.which = which;
        this.clock = clock;
    }

    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        try (Connection connection = logins.owner().open()) {
            long start = System.nanoTime();
            String version = text(connection, "SHOW server_version");
            long millis = Duration.ofNanos(System.nanoTime() - start).toMillis();
            findings.add(Finding.fine("database",
                    which + ", PostgreSQL " + version + ", answers in " + millis + " ms"));
            findings.add(roles());
            findings.add(migrations(connection));
            findings.add(clocks(connection));
        } catch (SQLException e) {
            findings.add(Finding.wrong("database", which + " does not answer: " + e.getMessage()));
        }
        return findings;
    }

    private Finding roles() {
        try (Connection application = logins.application().open(); Connection backup = logins.backup().open()) {
            boolean seesAll = text(backup, "SELECT rolbypassrls OR rolsuper FROM pg_roles WHERE rolname = current_user")
                    .equals("t");
            return seesAll ? Finding.fine("roles", "owner, application and backup can connect")
                    : Finding.wrong("roles", "backups cannot be made: have the database's administrator run "
                            + "ALTER ROLE tankrounds_backup BYPASSRLS;");
        } catch (SQLException e) {
            return Finding.wrong("roles", "not all of owner, application and backup can connect: " + e.getMessage());
        }
    }

    private static Finding migrations(Connection connection) throws SQLException {
        boolean empty = text(connection, "SELECT to_regclass('public.flyway_schema_history') IS NULL").equals("t");
        int applied = empty ? 0 : Migrations.appliedVersion(connection);
        int expected = Migrations.expectedVersion();
        String detail = "schema version " + applied + ", this Tankrounds has " + expected;
        if (applied > expected) {
            return Finding.wrong("migrations", detail + ": the database was made by a newer one");
        }
        return Finding.fine("migrations",
                applied < expected ? detail + "; the next start brings it up to date" : detail);
    }

    private Finding clocks(Connection connection) throws SQLException {
        Instant before = clock.instant();
        Instant there = OffsetDateTime.parse(text(connection, "SELECT to_char(clock_timestamp() AT TIME ZONE 'UTC', "
                + "'YYYY-MM-DD\"T\"HH24:MI:SS.US\"Z\"')")).toInstant();
        Duration off = Duration.between(before, there).abs();
        String detail = before.toString() + ", the database's is " + off.toMillis() + " ms off";
        return off.compareTo(CLOCK_TOLERANCE) <= 0 ? Finding.fine("clock", detail)
                : Finding.wrong("clock", detail + ": set both by the same time server");
    }

    private static String text(Connection connection, String query) throws SQLException {
        try (Statement sql = connection.createStatement(); ResultSet row = sql.executeQuery(query)) {
            row.next();
            return row.getString(1);
        }
    }
}
