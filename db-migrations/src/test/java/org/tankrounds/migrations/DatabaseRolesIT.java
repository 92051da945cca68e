package org.tankrounds.migrations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.SQLException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who may do what, in the embedded server and in one that the operator brings. */
class DatabaseRolesIT {

    @TempDir
    static Path folder;

    private static EmbeddedPostgres postgres;

    @BeforeAll
    static void start() {
        postgres = Servers.start(folder.resolve("data"));
    }

    @AfterAll
    static void stop() {
        postgres.close();
    }

    @Test
    void theApplicationNeitherCreatesTablesNorPassesRowLevelSecurity() throws Exception {
        Login application = postgres.logins().application();
        assertThatThrownBy(() -> Servers.execute(application, "CREATE TABLE mine (a int)"))
                .isInstanceOf(SQLException.class).hasMessageContaining("permission denied");
        assertThatThrownBy(() -> Servers.execute(application, "CREATE TEMP TABLE mine (a int)"))
                .isInstanceOf(SQLException.class).hasMessageContaining("permission denied");
        assertThat(attributes(application)).isEqualTo("super false, bypass false");
    }

    @Test
    void onlyTheBackupPassesRowLevelSecurityAndNobodyIsSuperuser() throws Exception {
        assertThat(attributes(postgres.logins().owner())).isEqualTo("super false, bypass false");
        assertThat(attributes(postgres.logins().backup())).isEqualTo("super false, bypass true");
    }

    @Test
    void rowLevelSecurityHidesFromTheApplicationWhatTheBackupSees() throws Exception {
        Logins logins = postgres.logins();
        Servers.execute(logins.owner(), "CREATE TABLE walled (chapter_id int)",
                "INSERT INTO walled VALUES (1)", "ALTER TABLE walled ENABLE ROW LEVEL SECURITY",
                "GRANT SELECT ON walled TO tankrounds_app, tankrounds_backup");
        assertThat(Servers.ask(logins.application(), "SELECT count(*) FROM walled")).isEqualTo("0");
        assertThat(Servers.ask(logins.backup(), "SELECT count(*) FROM walled")).isEqualTo("1");
    }

    @Test
    void oneUserOfAnOutsideServerTakesOnEachRole() throws Exception {
        Login visitor = outside("visitor", "LOGIN PASSWORD 'secret'");
        Servers.execute(superuser("outside_visitor"),
                "GRANT tankrounds_owner, tankrounds_app, tankrounds_backup TO visitor");

        Logins logins = DatabaseRoles.ensure(visitor);

        assertThat(Servers.ask(logins.owner(), "SELECT current_user")).isEqualTo("tankrounds_owner");
        assertThat(Servers.ask(logins.application(), "SELECT current_user")).isEqualTo("tankrounds_app");
        assertThat(Servers.ask(logins.backup(), "SELECT current_user")).isEqualTo("tankrounds_backup");
        Servers.execute(logins.owner(), "CREATE TABLE ours (a int)");
        assertThatThrownBy(() -> Servers.execute(logins.application(), "CREATE TABLE mine (a int)"))
                .isInstanceOf(SQLException.class).hasMessageContaining("permission denied");
    }

    @Test
    void aUserWhoMayNotTakeOnTheRolesIsToldWhatTheAdministratorMustRun() throws Exception {
        Login stranger = outside("stranger", "LOGIN PASSWORD 'secret'");
        assertThatThrownBy(() -> DatabaseRoles.ensure(stranger))
                .isInstanceOf(DatabaseSetupException.class)
                .hasMessageContaining("GRANT tankrounds_owner TO stranger;");
    }

    @Test
    void aPasswordIsNeverPrinted() {
        assertThat(new Login("jdbc:postgresql://db/x?password=secret", "u", "secret").toString())
                .doesNotContain("secret");
    }

    private static Login outside(String user, String options) throws SQLException {
        Servers.execute(superuser("postgres"), "CREATE ROLE " + user + " " + options,
                "CREATE DATABASE outside_" + user + " OWNER " + user);
        return Login.of(superuser("outside_" + user).url() + "?user=" + user + "&password=secret", null,
                null);
    }

    private static Login superuser(String database) {
        Login login = postgres.superuser();
        return new Login(login.url().replaceFirst("/[^/]*$", "/" + database), login.user(),
                login.password());
    }

    private static String attributes(Login login) throws SQLException {
        return Servers.ask(login, "SELECT format('super %s, bypass %s', "
                + "rolsuper::text, rolbypassrls::text) FROM pg_roles WHERE rolname = current_user");
    }
}
