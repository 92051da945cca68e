package org.tankrounds.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.tankrounds.config.CommandException;

/** The folder of a demo: ours alone, known by a marker, outside any checkout. */
public final class DemoDirectory {
    private static final String MARKER = "tankrounds-demo";
    private static final String BEGUN = "begun\n";
    private static final String LOADED = "loaded\n";
    /** Unpacked programs are the same for every demo, and the lock is held by whoever runs it. */
    private static final Set<String> KEPT = Set.of(MARKER, "programs", "tankrounds.lock");

    private final Path path;

    private DemoDirectory(Path path) {
        this.path = path;
    }

    /** {@code $XDG_DATA_HOME/tankrounds-demo}, or in the home folder; where neither can be written, a temporary one. */
    public static Path usual(Map<String, String> environment, Path home, Path temporary, String user) {
        String dataHome = environment.getOrDefault("XDG_DATA_HOME", "");
        Path base = dataHome.startsWith("/") ? Path.of(dataHome) : home.resolve(".local/share");
        return canMake(base) ? base.resolve(MARKER) : temporary.resolve(MARKER + "-" + user);
    }

    private static boolean canMake(Path folder) {
        Path existing = folder;
        while (existing != null && Files.notExists(existing)) {
            existing = existing.getParent();
        }
        return existing != null && Files.isDirectory(existing) && Files.isWritable(existing);
    }

    /** @throws CommandException where the folder holds something that is not a demo's */
    public static DemoDirectory open(Path path) {
        DemoDirectory directory = new DemoDirectory(path.toAbsolutePath());
        try {
            directory.claim();
            return directory;
        } catch (IOException e) {
            throw CommandException.failed("The folder " + path + " cannot be used (" + e.getMessage()
                    + "). Name another with --data.");
        }
    }

    private void claim() throws IOException {
        if (Files.exists(path) && !Files.isDirectory(path)) {
            throw CommandException.wrongCall(path + " is a file. Name a folder with --data.");
        }
        if (Files.exists(marker())) {
            return;
        }
        if (Files.exists(path) && !names().isEmpty()) {
            throw CommandException.wrongCall("The folder " + path + " holds files that are not a demo's, so nothing in "
                    + "it was touched. Name an empty or a new folder with --data.");
        }
        Files.createDirectories(path);
        Files.writeString(marker(), BEGUN);
    }

    public Path path() {
        return path;
    }

    /** Whether the whole story is in there; a start that was broken off leaves it false. */
    public boolean isLoaded() {
        return read().equals(LOADED);
    }

    public void setLoaded() {
        write(LOADED);
    }

    /** Whether no demo was ever begun in it. */
    public boolean isEmpty() {
        return entries().isEmpty();
    }

    /** Takes everything out that a demo has put in. Its database must not run. */
    public void empty() {
        write(BEGUN);
        try {
            for (String name : entries()) {
                delete(path.resolve(name));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot empty " + path, e);
        }
    }

    private List<String> entries() {
        try {
            return names().stream().filter(name -> !KEPT.contains(name)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot look into " + path, e);
        }
    }

    private Path marker() {
        return path.resolve(MARKER);
    }

    private String read() {
        try {
            return Files.readString(marker());
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read " + marker(), e);
        }
    }

    private void write(String text) {
        try {
            Files.writeString(marker(), text);
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot write " + marker(), e);
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> entries = Files.list(path)) {
            return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path one : walk.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(one);
            }
        }
    }
}
