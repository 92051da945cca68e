package org.tankrounds.migrations;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a killed JVM or a killed PostgreSQL leaves behind: a server that nobody looks after, orphaned
 * backends, a {@code postmaster.pid} whose number belongs to a zombie or, after a restart of the
 * container, to somebody else altogether. Only asked while the data directory's lock is held, so
 * every PostgreSQL process that works in the cluster is a leftover.
 */
record Leftovers(PostgresBinaries binaries, Unprivileged unprivileged, Path cluster) {

    private static final Duration PATIENCE = Duration.ofSeconds(30);

    void clear() throws IOException {
        Path pidFile = cluster.resolve("postmaster.pid");
        if (Files.notExists(pidFile)) {
            return;
        }
        if (!processes().isEmpty()) {
            stop("fast");
        }
        if (!Waiting.until(PATIENCE, () -> processes().isEmpty())) {
            stop("immediate");
            processes().forEach(ProcessHandle::destroyForcibly);
            Waiting.until(PATIENCE, () -> processes().isEmpty());
        }
        if (processes().isEmpty()) {
            Files.deleteIfExists(pidFile);
        }
    }

    void stop(String mode) {
        Commands.run(cluster.getParent(), unprivileged.wrap(List.of(binaries.program("pg_ctl"), "stop",
                "-D", cluster.toString(), "-m", mode, "-w", "-t", "20")));
    }

    /**
     * The live processes whose working directory is the cluster; PostgreSQL's always is. Asked as the
     * cluster's user too: in a container root may not look into another user's processes, and a user
     * inside one user namespace not into another's.
     */
    private Set<ProcessHandle> processes() {
        List<String> find = List.of("find", "/proc", "-maxdepth", "2", "-name", "cwd",
                "-lname", literally(cluster), "-printf", "%h\n");
        Set<ProcessHandle> processes = new HashSet<>(found(find));
        if (!unprivileged.prefix().isEmpty()) {
            processes.addAll(found(unprivileged.wrap(find)));
        }
        return processes;
    }

    private static List<ProcessHandle> found(List<String> find) {
        return Commands.run(Path.of("/"), find).output().lines()
                .filter(line -> line.matches("/proc/\\d+"))
                .map(line -> Long.parseLong(line.substring("/proc/".length())))
                .flatMap(pid -> ProcessHandle.of(pid).stream())
                .toList();
    }

    private static String literally(Path path) {
        return path.toString().replaceAll("([\\\\*?\\[\\]])", "\\\\$1");
    }
}
