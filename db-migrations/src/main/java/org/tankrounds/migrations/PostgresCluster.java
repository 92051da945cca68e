package org.tankrounds.migrations;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/**
 * The files of the embedded server. They are made under another name and renamed when whole, so a
 * first start that is cut off leaves nothing that would pass for a cluster.
 */
record PostgresCluster(Path directory, PostgresBinaries binaries, Unprivileged unprivileged) {

    static final String FOLDER = "postgresql";
    private static final String UNFINISHED = "unfinished-";

    Path files() {
        return directory.resolve(FOLDER);
    }

    Path log() {
        return directory.resolve("postgresql.log");
    }

    Leftovers leftovers() {
        return new Leftovers(binaries, unprivileged, files());
    }

    void createIfMissing(Passwords passwords) throws IOException {
        removeUnfinished();
        if (Files.notExists(files())) {
            Path unfinished = Files.createTempDirectory(directory, UNFINISHED);
            initialise(unfinished, passwords);
            Files.move(unfinished, files(), StandardCopyOption.ATOMIC_MOVE);
            Folders.writeOut(directory);
        }
        unprivileged.own(files());
    }

    /** Data checksums and syncing to disk are on: this may be the chapter's only copy. */
    private void initialise(Path into, Passwords passwords) throws IOException {
        unprivileged.own(into);
        Path password = passwords.fileWith(DatabaseRoles.SUPERUSER, directory);
        try {
            unprivileged.own(password);
            Commands.Outcome outcome = Commands.run(directory, unprivileged.wrap(List.of(
                    binaries.program("initdb"), "--pgdata=" + into, "--username=" + DatabaseRoles.SUPERUSER,
                    "--pwfile=" + password, "--auth=scram-sha-256", "--encoding=UTF8", "--locale=C",
                    "--locale-provider=builtin", "--builtin-locale=C.UTF-8", "--data-checksums",
                    "--no-instructions")));
            if (!outcome.succeeded()) {
                throw new EmbeddedPostgresException(
                        "PostgreSQL could not be set up in " + directory + ": " + outcome.output());
            }
        } finally {
            Files.deleteIfExists(password);
        }
    }

    /** An {@code initdb} whose JVM was killed may still be writing: what resists is left alone. */
    private void removeUnfinished() throws IOException {
        try (DirectoryStream<Path> leftBehind = Files.newDirectoryStream(directory, UNFINISHED + "*")) {
            for (Path unfinished : leftBehind) {
                try {
                    Folders.delete(unfinished);
                } catch (IOException | UncheckedIOException stillInUse) {
                    continue;
                }
            }
        }
    }
}
