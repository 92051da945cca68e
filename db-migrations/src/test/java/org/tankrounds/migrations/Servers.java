package org.tankrounds.migrations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;

/** What the tests of the embedded server share: one copy of the programs, a second JVM, short SQL. */
final class Servers {

    static final Duration PATIENCE = Duration.ofSeconds(30);

    private Servers() {
    }

    static Path programs() {
        return Path.of(System.getProperty("tankrounds.programs", "target/programs"));
    }

    static EmbeddedPostgres start(Path data) {
        return EmbeddedPostgres.start(data, programs());
    }

    /** Another JVM that starts the server on the directory and holds it until it is killed. */
    static Process startElsewhere(Path data) throws IOException {
        return new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dslf4j.internal.verbosity=ERROR", "-cp", System.getProperty("java.class.path"),
                HoldPostgres.class.getName(), data.toString(), programs().toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /** The process id of the server that the other JVM has started. */
    static long awaitServer(Process holder) throws IOException {
        BufferedReader lines = new BufferedReader(
                new InputStreamReader(holder.getInputStream(), StandardCharsets.US_ASCII));
        String line = lines.readLine();
        assertThat(line).as("the other JVM's server started").isNotNull();
        return Long.parseLong(line);
    }

    static void kill(long pid) {
        ProcessHandle.of(pid).ifPresent(ProcessHandle::destroyForcibly);
    }

    static void kill(Process process) throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    static void execute(Login login, String... statements) throws SQLException {
        try (Connection connection = login.open(); Statement sql = connection.createStatement()) {
            for (String statement : statements) {
                sql.execute(statement);
            }
        }
    }

    static String ask(Login login, String query) throws SQLException {
        try (Connection connection = login.open();
                Statement sql = connection.createStatement();
                ResultSet row = sql.executeQuery(query)) {
            row.next();
            return row.getString(1);
        }
    }

    static boolean answers(Login login) {
        try {
            return ask(login, "SELECT 1").equals("1");
        } catch (SQLException notYet) {
            return false;
        }
    }

    static boolean contains(Path directory, String prefix) {
        String[] names = directory.toFile().list();
        return names != null && List.of(names).stream().anyMatch(name -> name.startsWith(prefix));
    }
}
