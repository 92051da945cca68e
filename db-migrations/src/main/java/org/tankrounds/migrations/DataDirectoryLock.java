package org.tankrounds.migrations;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One process per data directory. The lock belongs to the operating system, so it cannot outlive a
 * process that was killed. The file holds the process id, for the message that a second start prints.
 */
final class DataDirectoryLock implements AutoCloseable {

    private static final String FILE = "tankrounds.lock";

    /** Closing any channel on the file would drop this process's lock: never open a held one twice. */
    private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

    private final Path directory;
    private final FileChannel channel;

    private DataDirectoryLock(Path directory, FileChannel channel) {
        this.directory = directory;
        this.channel = channel;
    }

    static DataDirectoryLock take(Path directory) throws IOException {
        Path real = directory.toRealPath();
        if (!HELD_HERE.add(real)) {
            throw new DataDirectoryInUseException(directory, " in this process");
        }
        try {
            return lock(directory, real);
        } catch (IOException | RuntimeException failed) {
            HELD_HERE.remove(real);
            throw failed;
        }
    }

    /** Whether a service has it now; says nothing about the next moment. */
    static boolean isHeld(Path directory) throws IOException {
        Path file = directory.resolve(FILE);
        if (Files.notExists(file)) {
            return false;
        }
        if (HELD_HERE.contains(directory.toRealPath())) {
            return true;
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            return lock == null;
        }
    }

    private static DataDirectoryLock lock(Path directory, Path real) throws IOException {
        Path file = real.resolve(FILE);
        FileChannel channel = FileChannel.open(file,
                StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        FileLock lock = channel.tryLock();
        if (lock == null) {
            channel.close();
            throw new DataDirectoryInUseException(directory, holder(file));
        }
        byte[] pid = Long.toString(ProcessHandle.current().pid()).getBytes(StandardCharsets.US_ASCII);
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(pid), 0);
        return new DataDirectoryLock(real, channel);
    }

    private static String holder(Path file) throws IOException {
        String pid = Files.readString(file).strip();
        return pid.isEmpty() ? "" : " (process " + pid + ")";
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException alreadyGone) {
            // The operating system lets go of it with the process at the latest.
        } finally {
            HELD_HERE.remove(directory);
        }
    }
}
