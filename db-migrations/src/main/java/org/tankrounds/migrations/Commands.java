package org.tankrounds.migrations;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Short-lived commands, and the surroundings every PostgreSQL command gets. */
final class Commands {

    record Outcome(int exitCode, String output) {

        boolean succeeded() {
            return exitCode == 0;
        }
    }

    private Commands() {
    }

    static Outcome run(Path workingDirectory, List<String> command) {
        try {
            Process process = prepare(workingDirectory, command).redirectErrorStream(true).start();
            process.getOutputStream().close();
            byte[] output = process.getInputStream().readAllBytes();
            return new Outcome(process.waitFor(), new String(output, StandardCharsets.UTF_8).strip());
        } catch (IOException notThere) {
            return new Outcome(127, notThere.getMessage());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new EmbeddedPostgresException("Interrupted while waiting for " + command.get(0));
        }
    }

    /** Neither the operator's PG… variables nor the machine's language may change what PostgreSQL does. */
    static ProcessBuilder prepare(Path workingDirectory, List<String> command) {
        ProcessBuilder builder = new ProcessBuilder(command).directory(workingDirectory.toFile());
        Map<String, String> environment = builder.environment();
        environment.keySet().removeIf(name -> name.startsWith("PG") || name.startsWith("LC_")
                || name.startsWith("LD_") || name.equals("LANG") || name.equals("LANGUAGE"));
        environment.put("LC_ALL", "C");
        environment.put("TZ", "UTC");
        return builder;
    }
}
