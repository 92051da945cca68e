package org.tankrounds.migrations;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** The running server: a child process that listens on the loopback interface only. */
final class PostgresServer {

    /** Recovery after a crash replays at most {@code max_wal_size}; slow disks need their time. */
    private static final Duration START_PATIENCE = Duration.ofMinutes(2);
    private static final Duration ATTACH_PATIENCE = Duration.ofSeconds(20);
    private static final int PORT_ATTEMPTS = 5;
    private static final long LOG_LIMIT_BYTES = 10_000_000;
    private static final int PORT_LINE = 3;
    private static final int STATUS_LINE = 7;
    private static final int LOG_TAIL_LINES = 8;

    /** Sized for a small machine: a chapter's data fits in memory, its requests in ten connections. */
    private static final List<String> SETTINGS = List.of(
            "listen_addresses=127.0.0.1", "unix_socket_directories=", "max_connections=40",
            "shared_buffers=64MB", "max_wal_size=256MB", "io_method=sync",
            "max_parallel_workers_per_gather=0", "max_parallel_maintenance_workers=0", "jit=off",
            "timezone=UTC", "log_timezone=UTC", "log_checkpoints=off", "logging_collector=off",
            "fsync=on", "synchronous_commit=on", "full_page_writes=on");

    private final PostgresCluster cluster;
    private final int port;
    private volatile Process process;

    private PostgresServer(PostgresCluster cluster, int port) {
        this.cluster = cluster;
        this.port = port;
    }

    static PostgresServer start(PostgresCluster cluster) throws IOException {
        cluster.leftovers().clear();
        for (int attempt = 1; ; attempt++) {
            PostgresServer server = new PostgresServer(cluster, freePort());
            try {
                server.launch();
                return server;
            } catch (EmbeddedPostgresException failed) {
                if (attempt == PORT_ATTEMPTS || !failed.getMessage().contains("Address already in use")) {
                    throw failed;
                }
            }
        }
    }

    /** Of a server that another process looks after; waits while it starts. */
    static OptionalInt awaitPort(Path files) {
        Waiting.until(ATTACH_PATIENCE, () -> readyPort(files).isPresent());
        return readyPort(files);
    }

    private static OptionalInt readyPort(Path files) {
        List<String> lines = status(files);
        return lines.size() > STATUS_LINE && lines.get(STATUS_LINE).startsWith("ready")
                ? OptionalInt.of(Integer.parseInt(lines.get(PORT_LINE).strip()))
                : OptionalInt.empty();
    }

    int port() {
        return port;
    }

    Process process() {
        return process;
    }

    void startAgain() {
        try {
            cluster.leftovers().clear();
            launch();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    void stop() {
        cluster.leftovers().stop("fast");
        if (process.isAlive()) {
            cluster.leftovers().stop("immediate");
            process.destroyForcibly();
        }
    }

    private void launch() throws IOException {
        List<String> command = new ArrayList<>(List.of(cluster.binaries().program("postgres"),
                "-D", cluster.files().toString(), "-p", Integer.toString(port)));
        for (String setting : SETTINGS) {
            command.addAll(List.of("-c", setting));
        }
        File log = freshLog();
        long logStart = log.length();
        process = Commands.prepare(cluster.directory(), cluster.unprivileged().server(command))
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(log))
                .start();
        Waiting.until(START_PATIENCE, () -> isReady() || !process.isAlive());
        if (!isReady()) {
            process.destroy();
            throw new EmbeddedPostgresException("PostgreSQL did not start. The end of " + log + ":\n"
                    + tail(log.toPath(), logStart));
        }
    }

    private boolean isReady() {
        List<String> lines = status(cluster.files());
        return lines.size() > STATUS_LINE
                && lines.get(0).strip().equals(Long.toString(process.pid()))
                && lines.get(STATUS_LINE).startsWith("ready");
    }

    /** The server tells in its pid file how far it has come. */
    private static List<String> status(Path files) {
        try {
            return Files.readAllLines(files.resolve("postmaster.pid"));
        } catch (IOException notYet) {
            return List.of();
        }
    }

    /** Closed to others: a failed statement is logged with its values. */
    private File freshLog() throws IOException {
        Path log = cluster.log();
        if (Files.exists(log) && Files.size(log) > LOG_LIMIT_BYTES) {
            Files.move(log, log.resolveSibling("postgresql.log.1"), StandardCopyOption.REPLACE_EXISTING);
        }
        if (Files.notExists(log)) {
            Files.createFile(log, PosixFilePermissions.asFileAttribute(
                    PosixFilePermissions.fromString("rw-------")));
        }
        return log.toFile();
    }

    private static String tail(Path log, long from) throws IOException {
        byte[] all = Files.readAllBytes(log);
        String written = new String(all, (int) from, (int) (all.length - from),
                StandardCharsets.UTF_8);
        List<String> lines = written.lines().toList();
        return String.join("\n", lines.subList(Math.max(0, lines.size() - LOG_TAIL_LINES), lines.size()));
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
