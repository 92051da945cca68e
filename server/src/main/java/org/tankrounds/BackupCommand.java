package org.tankrounds;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.tankrounds.backup.Manifest;
import org.tankrounds.backup.TakeBackup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The whole service's data in one file. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description = "Writes all chapters' data into one file, also while the service runs. Keep the file as safe as "
                + "the database: it holds names and addresses.")
final class BackupCommand implements Callable<Integer> {
    @Option(names = "--out", required = true, description = "The file to write; replaced when it exists.",
            paramLabel = "F")
    private Path out;

    @Mixin
    private DataOption data;

    @Override
    public Integer call() throws SQLException {
        try (Database database = Database.join(data.configured())) {
            Manifest manifest = new TakeBackup(Clock.systemUTC()).write(database.logins().backup(), out);
            System.out.println("Backed up " + manifest.rows() + " rows of " + manifest.tables().size()
                    + " tables to " + out);
        }
        return 0;
    }
}
