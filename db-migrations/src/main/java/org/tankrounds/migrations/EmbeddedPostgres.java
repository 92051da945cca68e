package org.tankrounds.migrations;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A real, durable PostgreSQL kept in a data directory, for chapters that run none of their own. It
 * belongs to one JVM at a time and comes back by itself after that JVM or the server was killed.
 * {@link #close()} stops it; a JVM that is killed leaves it running for the next start to stop.
 */
public final class EmbeddedPostgres implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(EmbeddedPostgres.class);
    private static final long RETRY_SECONDS = 2;

    private final DataDirectoryLock lock;
    private final PostgresServer server;
    private final Login superuser;
    private final Logins logins;
    private boolean closed;

    private EmbeddedPostgres(DataDirectoryLock lock, PostgresServer server, Login superuser,
            Logins logins) {
        this.lock = lock;
        this.server = server;
        this.superuser = superuser;
        this.logins = logins;
    }

    /** Starts the server, making the cluster in an empty directory; the programs go beside the data. */
    public static EmbeddedPostgres start(Path dataDirectory) {
        return start(dataDirectory, dataDirectory.resolve("programs"));
    }

    /**
     * @param programsDirectory where the unpacked PostgreSQL programs are kept; may be shared
     * @throws DataDirectoryInUseException when another JVM holds the directory
     */
    public static EmbeddedPostgres start(Path dataDirectory, Path programsDirectory) {
        try {
            Path directory = createIfMissing(dataDirectory.toAbsolutePath()).toRealPath();
            DataDirectoryLock lock = DataDirectoryLock.take(directory);
            try {
                return start(lock, directory, programsDirectory.toAbsolutePath());
            } catch (IOException | RuntimeException | SQLException failed) {
                lock.close();
                throw failed;
            }
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot use the data directory " + dataDirectory, failed);
        } catch (SQLException failed) {
            throw new EmbeddedPostgresException("Cannot prepare the database in " + dataDirectory, failed);
        }
    }

    private static EmbeddedPostgres start(DataDirectoryLock lock, Path directory, Path programs)
            throws IOException, SQLException {
        PostgresBinaries binaries = PostgresBinaries.unpack(programs);
        Unprivileged unprivileged = Unprivileged.choose(binaries, directory);
        Passwords passwords = Passwords.in(directory);
        PostgresCluster cluster = new PostgresCluster(directory, binaries, unprivileged);
        cluster.createIfMissing(passwords);
        PostgresServer server = PostgresServer.start(cluster);
        try {
            Login superuser = DatabaseRoles.superuser(server.port(), passwords);
            Logins logins = DatabaseRoles.prepare(superuser, passwords);
            return new EmbeddedPostgres(lock, server, superuser, logins);
        } catch (SQLException | RuntimeException failed) {
            server.stop();
            throw failed;
        }
    }

    /** Whether a database was ever made in the directory. */
    public static boolean existsIn(Path dataDirectory) {
        return Files.isDirectory(dataDirectory.resolve(PostgresCluster.FOLDER));
    }

    /**
     * The way into a server that another process keeps running, for commands beside a service; empty when none
     * runs. Waits for one that is just starting.
     */
    public static Optional<Logins> running(Path dataDirectory) {
        try {
            if (!DataDirectoryLock.isHeld(dataDirectory)) {
                return Optional.empty();
            }
            Path directory = dataDirectory.toRealPath();
            OptionalInt port = PostgresServer.awaitPort(directory.resolve(PostgresCluster.FOLDER));
            if (port.isEmpty()) {
                throw new EmbeddedPostgresException("A Tankrounds holds " + dataDirectory
                        + ", but its PostgreSQL does not get ready. Look at its log.");
            }
            Passwords passwords = Passwords.in(directory);
            return Optional.of(DatabaseRoles.logins(
                    DatabaseRoles.superuser(port.getAsInt(), passwords), passwords));
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read the data directory " + dataDirectory
                    + "; call this as the user whose service it is", failed);
        }
    }

    public Logins logins() {
        return logins;
    }

    /** For this package's own tests; the service never works as superuser. */
    Login superuser() {
        return superuser;
    }

    /** Process id of the server, for those who watch its memory. */
    public long pid() {
        return server.process().pid();
    }

    /** Starts the server again, on the same port, when it has died; says whether it had. */
    public synchronized boolean restartIfDead() {
        if (closed || server.process().isAlive()) {
            return false;
        }
        LOG.warn("PostgreSQL ended unexpectedly; starting it again");
        server.startAgain();
        return true;
    }

    /** From now on a server that dies is started again without being asked, until {@link #close()}. */
    public void keepAlive() {
        server.process().onExit().thenRunAsync(this::revive);
    }

    private void revive() {
        try {
            if (restartIfDead()) {
                keepAlive();
            }
        } catch (RuntimeException failed) {
            LOG.error("PostgreSQL did not start again; trying once more in {} s", RETRY_SECONDS, failed);
            CompletableFuture.delayedExecutor(RETRY_SECONDS, TimeUnit.SECONDS).execute(this::revive);
        }
    }

    /** Ends open transactions, writes everything out, stops the server, frees the directory. */
    @Override
    public synchronized void close() {
        if (!closed) {
            closed = true;
            server.stop();
            lock.close();
        }
    }

    /** Others may pass through (not look): else root could not hand the cluster to another user. */
    private static Path createIfMissing(Path directory) throws IOException {
        if (Files.notExists(directory)) {
            Files.createDirectories(directory);
            Files.setPosixFilePermissions(directory, PosixFilePermissions.fromString("rwx--x--x"));
        }
        return directory;
    }
}
