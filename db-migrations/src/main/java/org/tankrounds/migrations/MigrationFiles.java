package org.tankrounds.migrations;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The migrations on the class path, read without a database. */
final class MigrationFiles {

    static final String FOLDER = "db/migration";
    private static final Pattern VERSIONED = Pattern.compile("V(\\d+)__.*\\.sql");

    private MigrationFiles() {
    }

    /** File name to content, in the order of the names. */
    static Map<String, byte[]> read() {
        URL folder = MigrationFiles.class.getClassLoader().getResource(FOLDER);
        if (folder == null) {
            return Map.of();
        }
        try {
            URI uri = folder.toURI();
            if (!uri.getScheme().equals("jar")) {
                return read(Path.of(uri));
            }
            try (FileSystem jar = FileSystems.newFileSystem(jarFile(uri))) {
                return read(jar.getPath(FOLDER));
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    static int newestVersion() {
        int newest = 0;
        for (String name : read().keySet()) {
            Matcher versioned = VERSIONED.matcher(name);
            if (versioned.matches()) {
                newest = Math.max(newest, Integer.parseInt(versioned.group(1)));
            }
        }
        return newest;
    }

    private static Path jarFile(URI inside) {
        String text = inside.getRawSchemeSpecificPart();
        return Path.of(URI.create(text.substring(0, text.indexOf("!/"))));
    }

    private static Map<String, byte[]> read(Path folder) throws IOException {
        Map<String, byte[]> contents = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                contents.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        return contents;
    }
}
