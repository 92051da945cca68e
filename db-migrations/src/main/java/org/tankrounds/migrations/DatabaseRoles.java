package org.tankrounds.migrations;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/**
 * The three roles. The owner migrates, the application works under row-level security, the backup
 * reads past it. What each may do with which table is said by the migrations.
 */
public final class DatabaseRoles {

    static final String SUPERUSER = "tankrounds_superuser";
    static final String DATABASE = "tankrounds";
    static final String OWNER = "tankrounds_owner";
    static final String APPLICATION = "tankrounds_app";
    static final String BACKUP = "tankrounds_backup";
    static final List<String> ALL = List.of(SUPERUSER, OWNER, APPLICATION, BACKUP);

    private static final String INSUFFICIENT_PRIVILEGE = "42501";

    private DatabaseRoles() {
    }

    static Login superuser(int port, Passwords passwords) {
        return new Login("jdbc:postgresql://127.0.0.1:" + port + "/postgres", SUPERUSER,
                passwords.of(SUPERUSER));
    }

    /** In the embedded server, whose superuser is ours: three roles that log in, one database. */
    static Logins prepare(Login superuser, Passwords passwords) throws SQLException {
        try (Connection connection = superuser.open(); Statement sql = connection.createStatement()) {
            if (!exists(connection, "SELECT 1 FROM pg_database WHERE datname = ?", DATABASE)) {
                createLogin(connection, OWNER, "NOBYPASSRLS", passwords);
                createLogin(connection, APPLICATION, "NOBYPASSRLS", passwords);
                createLogin(connection, BACKUP, "BYPASSRLS", passwords);
                sql.execute("CREATE DATABASE " + DATABASE + " OWNER " + OWNER);
            }
            sql.execute("REVOKE ALL ON DATABASE " + DATABASE + " FROM PUBLIC");
            sql.execute("GRANT CONNECT ON DATABASE " + DATABASE + " TO " + APPLICATION + ", " + BACKUP);
        }
        return logins(superuser, passwords);
    }

    static Logins logins(Login superuser, Passwords passwords) {
        String url = superuser.url().replaceFirst("/[^/]*$", "/" + DATABASE);
        return new Logins(new Login(url, OWNER, passwords.of(OWNER)),
                new Login(url, APPLICATION, passwords.of(APPLICATION)),
                new Login(url, BACKUP, passwords.of(BACKUP)));
    }

    private static void createLogin(Connection connection, String role, String bypass, Passwords passwords)
            throws SQLException {
        try (Statement sql = connection.createStatement()) {
            if (!exists(connection, "SELECT 1 FROM pg_roles WHERE rolname = ?", role)) {
                sql.execute("CREATE ROLE " + role);
            }
            sql.execute("ALTER ROLE " + role + " LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE " + bypass
                    + " PASSWORD '" + passwords.of(role) + "'");
        }
    }

    /**
     * In a PostgreSQL of the operator's own, reached as one user: the roles without login, taken on by
     * each connection. Where the user may not give the backup role its view of all rows, backups run
     * as the owner.
     *
     * @throws DatabaseSetupException with what the administrator has to run, where roles are missing
     */
    public static Logins ensure(Login operator) {
        try {
            return ensureRoles(operator);
        } catch (SQLException failed) {
            throw new DatabaseSetupException(
                    "Cannot use the database " + operator + ": " + failed.getMessage(), failed);
        }
    }

    private static Logins ensureRoles(Login operator) throws SQLException {
        try (Connection connection = operator.open(); Statement sql = connection.createStatement()) {
            for (String role : List.of(OWNER, APPLICATION, BACKUP)) {
                if (!exists(connection, "SELECT 1 FROM pg_roles WHERE rolname = ?", role)) {
                    createOutside(connection, role);
                }
                takeOn(connection, role);
            }
            if (!ownerMayCreate(connection)) {
                sql.execute("GRANT USAGE, CREATE ON SCHEMA public TO " + OWNER);
            }
            boolean backupSeesAll = exists(connection,
                    "SELECT 1 FROM pg_roles WHERE rolname = ? AND rolbypassrls", BACKUP);
            return new Logins(operator.as(OWNER), operator.as(APPLICATION),
                    operator.as(backupSeesAll ? BACKUP : OWNER));
        }
    }

    private static void createOutside(Connection connection, String role) throws SQLException {
        try (Statement sql = connection.createStatement()) {
            if (role.equals(BACKUP) && tryTo(sql, "CREATE ROLE " + role + " NOLOGIN BYPASSRLS")) {
                return;
            }
            if (!tryTo(sql, "CREATE ROLE " + role + " NOLOGIN")) {
                throw missing(connection, role);
            }
        }
    }

    /** Since PostgreSQL 16 who makes a role may not take it on before granting it to itself. */
    private static void takeOn(Connection connection, String role) throws SQLException {
        try (Statement sql = connection.createStatement()) {
            if (tryTo(sql, "SET ROLE " + role)) {
                sql.execute("RESET ROLE");
                return;
            }
            if (!tryTo(sql, "GRANT " + role + " TO CURRENT_USER")) {
                throw missing(connection, role);
            }
        }
    }

    private static boolean ownerMayCreate(Connection connection) throws SQLException {
        return exists(connection, "SELECT 1 WHERE has_schema_privilege(?, 'public', 'CREATE')", OWNER);
    }

    private static boolean tryTo(Statement sql, String command) throws SQLException {
        try {
            sql.execute(command);
            return true;
        } catch (SQLException refused) {
            if (INSUFFICIENT_PRIVILEGE.equals(refused.getSQLState())) {
                return false;
            }
            throw refused;
        }
    }

    private static DatabaseSetupException missing(Connection connection, String role)
            throws SQLException {
        String user = connection.getMetaData().getUserName();
        return new DatabaseSetupException("The database user " + user + " may not make or take on the "
                + "role " + role + ". Have the database's administrator run: CREATE ROLE " + role
                + (role.equals(BACKUP) ? " NOLOGIN BYPASSRLS" : " NOLOGIN") + "; GRANT " + role + " TO "
                + user + ";");
    }

    private static boolean exists(Connection connection, String query, String name) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(query)) {
            statement.setString(1, name);
            try (ResultSet rows = statement.executeQuery()) {
                return rows.next();
            }
        }
    }
}
