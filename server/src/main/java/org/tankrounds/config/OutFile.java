package org.tankrounds.config;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * The file that a command was told to write, whole or not at all: a reader never meets half of it, and an
 * older one stays where the new one fails. What is no ordinary file, such as a pipe, is written to as it is.
 */
public final class OutFile {
    /** What goes into it. */
    public interface Content<T, E extends Exception> {
        T writeTo(OutputStream out) throws IOException, E;
    }

    private final Path path;
    private final String permissions;

    /**
     * @param permissions such as rw-r--r--
     * @throws CommandException where no file can be of that name
     */
    public OutFile(Path path, String permissions) {
        this.path = path.toAbsolutePath();
        this.permissions = permissions;
        if (this.path.getParent() == null || !Files.isDirectory(this.path.getParent())
                || Files.isDirectory(path)) {
            throw CommandException.wrongCall("--out is " + path
                    + "; a file in a folder that exists is accepted.");
        }
    }

    /** @throws CommandException where the disk is full or the place is somebody else's */
    public <T, E extends Exception> T write(Content<T, E> content) throws E {
        try {
            return Files.exists(path) && !Files.isRegularFile(path)
                    ? writeTo(path, content) : writeBeside(content);
        } catch (IOException e) {
            throw CommandException.failed(path + " could not be written: " + reason(e) + ".");
        }
    }

    private <T, E extends Exception> T writeBeside(Content<T, E> content) throws IOException, E {
        Path partial = Files.createTempFile(path.getParent(), ".tankrounds-", ".partial");
        try {
            T result = writeTo(partial, content);
            Files.setPosixFilePermissions(partial, PosixFilePermissions.fromString(permissions));
            Files.move(partial, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            return result;
        } finally {
            Files.deleteIfExists(partial);
        }
    }

    private static <T, E extends Exception> T writeTo(Path place, Content<T, E> content)
            throws IOException, E {
        try (FileOutputStream out = new FileOutputStream(place.toFile())) {
            T result = content.writeTo(out);
            if (Files.isRegularFile(place)) {
                out.getFD().sync();
            }
            return result;
        }
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "this account may not write there";
        }
        return e instanceof FileSystemException known && known.getReason() != null
                ? known.getReason() : e.getMessage();
    }
}
