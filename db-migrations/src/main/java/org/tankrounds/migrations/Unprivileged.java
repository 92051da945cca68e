package org.tankrounds.migrations;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * How PostgreSQL is run so that it does not run as root, which it refuses.
 *
 * <p>An ordinary user needs nothing. For root, the first way that works here is taken:
 * <ol>
 * <li>{@code setpriv} to the user {@code nobody}, who then owns the cluster's files. Best walled off,
 * works in containers without user namespaces, needs a data directory that others may pass through.
 * <li>{@code unshare -U}: the same user without any privilege, seen as {@code nobody} from inside.
 * Works below a closed home such as root's own; needs user namespaces.
 * </ol>
 * Each start chooses anew and gives the files to the chosen owner, so a machine may change its mind.
 */
record Unprivileged(List<String> prefix, int uid, int gid) {

    private static final String NOBODY = "nobody";

    static Unprivileged choose(PostgresBinaries binaries, Path directory) throws IOException {
        int uid = Folders.owner(Path.of("/proc/self"));
        int gid = (Integer) Files.getAttribute(Path.of("/proc/self"), "unix:gid");
        if (uid != 0) {
            return new Unprivileged(List.of(), uid, gid);
        }
        for (Unprivileged way : waysForRoot()) {
            if (way.canRun(binaries, directory)) {
                return way;
            }
        }
        throw new EmbeddedPostgresException("PostgreSQL does not run as root, and neither setpriv to "
                + "the user nobody nor unshare -U works with " + directory + ". Run as an ordinary "
                + "user, or choose a directory with --data that every user may enter.");
    }

    /** The command as the chosen user, in a session of its own so that Ctrl-C reaches only the JVM. */
    List<String> server(List<String> command) {
        List<String> whole = new ArrayList<>(List.of("setsid"));
        whole.addAll(wrap(command));
        return whole;
    }

    List<String> wrap(List<String> command) {
        List<String> whole = new ArrayList<>(prefix);
        whole.addAll(command);
        return whole;
    }

    void own(Path folder) throws IOException {
        if (Folders.owner(folder) != uid) {
            Folders.giveTo(uid, gid, folder);
        }
    }

    private boolean canRun(PostgresBinaries binaries, Path directory) {
        return Commands.run(Path.of("/"), wrap(List.of("/bin/sh", "-c",
                "\"$1\" --version && cd \"$2\"", "sh",
                binaries.program("postgres"), directory.toString()))).succeeded();
    }

    private static List<Unprivileged> waysForRoot() throws IOException {
        List<Unprivileged> ways = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("/etc/passwd"))) {
            String[] fields = line.split(":");
            if (fields.length > 3 && fields[0].equals(NOBODY)) {
                int uid = Integer.parseInt(fields[2]);
                int gid = Integer.parseInt(fields[3]);
                ways.add(new Unprivileged(List.of("setpriv", "--reuid=" + uid, "--regid=" + gid,
                        "--clear-groups", "--no-new-privs", "--"), uid, gid));
                ways.add(new Unprivileged(List.of("unshare", "--user", "--map-user=" + uid,
                        "--map-group=" + gid, "--"), 0, 0));
            }
        }
        return ways;
    }
}
