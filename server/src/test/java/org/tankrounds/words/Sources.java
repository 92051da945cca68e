package org.tankrounds.words;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Our own files as they are written, for tests that read them. */
final class Sources {
    static final Path RESOURCES = Path.of("../web-templates/src/main/resources");
    static final Path TEMPLATES = RESOURCES.resolve("templates");
    static final Path ASSETS = RESOURCES.resolve("assets");
    private static final List<Path> JAVA =
            List.of(Path.of("src/main/java/org/tankrounds"), Path.of("../web-templates/src/main/java/org/tankrounds"));

    private static final List<Path> MODULES =
            List.of(Path.of("src"), Path.of("../web-templates/src"), Path.of("../db-migrations/src"),
                    Path.of("../ops"));

    private Sources() {}

    static List<Path> templates() {
        return below(TEMPLATES, ".html");
    }

    static List<Path> scripts() {
        return below(ASSETS, ".js");
    }

    static List<Path> java() {
        return JAVA.stream().flatMap(root -> below(root, ".java").stream()).toList();
    }

    /** Of all modules, tests and measuring tools too; what a build makes is not written by anybody. */
    static List<Path> javaOfAllModules() {
        return MODULES.stream().flatMap(root -> below(root, ".java").stream())
                .filter(file -> !file.toString().replace('\\', '/').contains("/target/")).toList();
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Below {@code org.tankrounds}, {@code templates} or {@code assets}, for lists of files. */
    static String name(Path file) {
        return file.toString().replace('\\', '/').replaceFirst(".*/(?:org/tankrounds|templates|assets)/", "");
    }

    private static List<Path> below(Path root, String ending) {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(ending)).sorted(Comparator.naturalOrder()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
