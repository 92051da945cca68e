package org.tankrounds.migrations;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.Properties;
import org.postgresql.Driver;

/**
 * How to connect. With a {@code role}, a connection takes that role on as soon as it is open: so an
 * outside PostgreSQL needs one user only.
 */
public record Login(String url, String user, String password, Optional<String> role) {

    public Login(String url, String user, String password) {
        this(url, user, password, Optional.empty());
    }

    /** User and password are null where the JDBC URL carries them. */
    public static Login of(String jdbcUrl, String user, String password) {
        return new Login(jdbcUrl, user, password);
    }

    Login as(String otherRole) {
        return new Login(url, user, password, Optional.of(otherRole));
    }

    /** What a connection pool must run on each new connection. */
    public Optional<String> openingStatement() {
        return role.map(name -> "SET ROLE " + name);
    }

    /** Past the driver manager: inside a build its class loader does not see this driver. */
    public Connection open() throws SQLException {
        Properties properties = new Properties();
        if (user != null) {
            properties.setProperty("user", user);
        }
        if (password != null) {
            properties.setProperty("password", password);
        }
        Connection connection = new Driver().connect(url, properties);
        if (connection == null) {
            throw new SQLException("Not the JDBC URL of a PostgreSQL; it starts with jdbc:postgresql://");
        }
        if (role.isPresent()) {
            takeOn(connection);
        }
        return connection;
    }

    private void takeOn(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(openingStatement().orElseThrow());
        } catch (SQLException refused) {
            connection.close();
            throw refused;
        }
    }

    /** Logs must not show a password, neither the field nor one inside the URL. */
    @Override
    public String toString() {
        return "Login[" + url.replaceFirst("\\?.*", "") + ", role " + role.orElse(user) + "]";
    }
}
