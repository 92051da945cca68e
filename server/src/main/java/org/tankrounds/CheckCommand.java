package org.tankrounds;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.tankrounds.check.DatabaseCheck;
import org.tankrounds.check.Finding;
import org.tankrounds.check.MachineCheck;
import org.tankrounds.config.Config;
import org.tankrounds.migrations.EmbeddedPostgres;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** What is configured and whether it works. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Says in a table what is configured and whether it works; exits 1 when something "
                + "needed does not.")
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private DataOption data;

    @Override
    public Integer call() {
        Config config = data.configured();
        List<Finding> findings = new ArrayList<>(database(config));
        findings.addAll(new MachineCheck(config).findings());
        for (Finding finding : findings) {
            System.out.printf("%-11s %-6s %s%n", finding.what(), finding.works() ? "ok" : "WRONG", finding.detail());
        }
        return findings.stream().allMatch(Finding::works) ? 0 : 1;
    }

    private static List<Finding> database(Config config) {
        String which = config.database().map(outside -> outside.url().replaceFirst("[?].*", ""))
                .orElse("embedded in " + config.dataDir());
        if (config.database().isEmpty() && !EmbeddedPostgres.existsIn(config.dataDir())) {
            return List.of(Finding.fine("database", "none in " + config.dataDir() + " yet; \"serve\" makes it"));
        }
        try (Database database = Database.join(config)) {
            return new DatabaseCheck(database.logins(), which, Clock.systemUTC()).findings();
        } catch (RuntimeException e) {
            return List.of(Finding.wrong("database", which + ": " + e.getMessage()));
        }
    }
}
