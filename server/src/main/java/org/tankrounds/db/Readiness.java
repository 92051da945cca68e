package org.tankrounds.db;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.tankrounds.migrations.Migrations;

/** Whether requests can be served now: not stopping, database answers in time and fits, room on the disk. */
public final class Readiness implements Supplier<Optional<String>>, AutoCloseable {
    private static final long PATIENCE_MS = 1_000;
    private static final long FREE_PERCENT = 10;

    private final DataSource pool;
    private final Path dataDir;
    private final ExecutorService asking = Executors.newCachedThreadPool(task -> {
        Thread thread = new Thread(task, "readiness");
        thread.setDaemon(true);
        return thread;
    });
    private volatile boolean draining;

    public Readiness(DataSource pool, Path dataDir) {
        this.pool = pool;
        this.dataDir = dataDir;
    }

    /** From now on it says that it is stopping. */
    @Override
    public void close() {
        draining = true;
    }

    /** @return why not, in a sentence; empty when ready */
    @Override
    public Optional<String> get() {
        return draining ? Optional.of("stopping") : database().or(this::disk);
    }

    /** Asked aside: a database that hangs must not make this hang. */
    private Optional<String> database() {
        Future<Optional<String>> answer = asking.submit(this::ask);
        try {
            return answer.get(PATIENCE_MS, TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            answer.cancel(true);
            return Optional.of("the database does not answer within a second");
        } catch (ExecutionException e) {
            return Optional.of("the database cannot be reached");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.of("stopping");
        }
    }

    private Optional<String> ask() throws SQLException {
        try (Connection connection = pool.getConnection()) {
            int applied = Migrations.appliedVersion(connection);
            int expected = Migrations.expectedVersion();
            return applied == expected ? Optional.empty()
                    : Optional.of("the schema has version " + applied + "; " + expected + " is needed");
        }
    }

    private Optional<String> disk() {
        try {
            FileStore disk = Files.getFileStore(existing(dataDir));
            long freePercent = 100 * disk.getUsableSpace() / Math.max(1, disk.getTotalSpace());
            return freePercent >= FREE_PERCENT ? Optional.empty()
                    : Optional.of("only " + freePercent + " % of the data directory's disk is free");
        } catch (IOException e) {
            return Optional.of("the data directory's disk cannot be asked for its free space");
        }
    }

    /** With an outside database the folder need not exist. */
    private static Path existing(Path folder) {
        Path nearest = folder.toAbsolutePath();
        while (Files.notExists(nearest)) {
            nearest = nearest.getParent();
        }
        return nearest;
    }
}
