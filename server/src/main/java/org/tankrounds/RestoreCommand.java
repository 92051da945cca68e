package org.tankrounds;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.concurrent.Callable;
import org.tankrounds.backup.Manifest;
import org.tankrounds.backup.RestoreBackup;
import org.tankrounds.config.CommandException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A backup back into an empty database. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = "Fills an empty database from a file that \"backup\" wrote. The service must be stopped.")
final class RestoreCommand implements Callable<Integer> {
    @Option(names = "--in", required = true, description = "The file to read.", paramLabel = "F")
    private Path in;

    @Mixin
    private DataOption data;

    @Override
    public Integer call() throws SQLException, IOException {
        if (!Files.isReadable(in) || Files.isDirectory(in)) {
            throw CommandException.wrongCall("--in is " + in + "; a file that can be read is accepted.");
        }
        RestoreBackup.inspect(in);
        try (Database database = Database.open(data.configured())) {
            Manifest manifest = RestoreBackup.restore(in, database.logins().owner());
            System.out.println("Restored " + manifest.rows() + " rows of " + manifest.tables().size()
                    + " tables, as they were at " + manifest.madeAt());
        }
        return 0;
    }
}
