package org.tankrounds.migrations;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.tukaani.xz.XZInputStream;

/**
 * The PostgreSQL programs from the class path, unpacked once per version. The folder is filled under
 * another name and renamed when whole, so an interrupted or a simultaneous start does no harm.
 */
record PostgresBinaries(Path home) {

    private static final String VERSION = "18.6.0";
    private static final String FOLDER = "postgresql-" + VERSION;
    private static final String UNPACKED = "tankrounds.unpacked-programs";

    static PostgresBinaries unpack(Path under) throws IOException {
        Path home = under.resolve(FOLDER);
        if (Files.notExists(home)) {
            Files.createDirectories(under);
            Path partial = Files.createTempDirectory(under, "unpacking-");
            fill(partial);
            Files.setPosixFilePermissions(partial, PosixFilePermissions.fromString("rwxr-xr-x"));
            moveIntoPlace(partial, home);
        }
        return new PostgresBinaries(home);
    }

    /** A copy beside the jar spares two seconds of unpacking at the very first start. */
    private static void fill(Path partial) throws IOException {
        Path unpacked = Path.of(System.getProperty(UNPACKED, "")).resolve(FOLDER);
        if (System.getProperty(UNPACKED) != null && Files.isDirectory(unpacked)) {
            Folders.copy(unpacked, partial);
        } else {
            extract(partial);
        }
    }

    String program(String name) {
        return home.resolve("bin").resolve(name).toString();
    }

    private static void moveIntoPlace(Path partial, Path home) throws IOException {
        try {
            Files.move(partial, home, StandardCopyOption.ATOMIC_MOVE);
        } catch (FileAlreadyExistsException | DirectoryNotEmptyException
                | AtomicMoveNotSupportedException another) {
            Folders.delete(partial);
        } catch (IOException failed) {
            if (Files.notExists(home)) {
                throw failed;
            }
            Folders.delete(partial);
        }
    }

    private static void extract(Path into) throws IOException {
        String archive = archiveName(System.getProperty("os.name"), System.getProperty("os.arch"));
        try (InputStream packed = PostgresBinaries.class.getResourceAsStream("/" + archive)) {
            if (packed == null) {
                throw new EmbeddedPostgresException("The class path lacks " + archive + ".");
            }
            TarArchiveInputStream tar = new TarArchiveInputStream(
                    new XZInputStream(new BufferedInputStream(packed, 1 << 16)));
            for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
                if (isNeeded(entry.getName())) {
                    extract(tar, entry, into);
                }
            }
        }
    }

    /** Headers and static libraries are for compiling extensions: a quarter of the files. */
    private static boolean isNeeded(String name) {
        return !name.startsWith("include/") && !name.startsWith("./include/") && !name.endsWith(".a");
    }

    private static void extract(TarArchiveInputStream tar, TarArchiveEntry entry, Path into)
            throws IOException {
        Path target = into.resolve(entry.getName()).normalize();
        if (!target.startsWith(into)) {
            throw new EmbeddedPostgresException("The PostgreSQL archive is damaged: " + entry.getName());
        }
        if (entry.isDirectory()) {
            Files.createDirectories(target);
            return;
        }
        Files.createDirectories(target.getParent());
        if (entry.isSymbolicLink()) {
            Files.createSymbolicLink(target, Path.of(entry.getLinkName()));
            return;
        }
        Files.copy(tar, target);
        boolean executable = (entry.getMode() & 0100) != 0;
        Files.setPosixFilePermissions(target,
                PosixFilePermissions.fromString(executable ? "rwxr-xr-x" : "rw-r--r--"));
    }

    static String archiveName(String system, String processor) {
        if (system.equals("Linux") && (processor.equals("amd64") || processor.equals("x86_64"))) {
            return "postgres-linux-x86_64.txz";
        }
        if (system.equals("Linux") && processor.equals("aarch64")) {
            return "postgres-linux-arm_64.txz";
        }
        throw new EmbeddedPostgresException("No PostgreSQL comes along for " + system + " on "
                + processor + ". Name a PostgreSQL 15 or newer in TANKROUNDS_DATABASE_URL.");
    }
}
