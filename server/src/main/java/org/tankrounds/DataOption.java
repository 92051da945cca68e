package org.tankrounds;

import java.nio.file.Path;
import org.tankrounds.config.Config;
import org.tankrounds.config.ConfigReader;
import picocli.CommandLine.Option;

/** What every command that needs the database takes. */
final class DataOption {
    @Option(names = "--data", description = "Folder of the embedded database.", paramLabel = "DIR")
    private Path data;

    Config configured() {
        Config config = ConfigReader.read(System.getenv());
        return data == null ? config : config.withDataDir(data.toAbsolutePath());
    }
}
