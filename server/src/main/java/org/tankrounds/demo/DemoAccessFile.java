package org.tankrounds.demo;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/** {@code demo-access.json}: readable by its owner only, and never half written. */
public final class DemoAccessFile {
    public static final String NAME = "demo-access.json";
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private final Path file;

    public DemoAccessFile(Path directory) {
        this.file = directory.resolve(NAME);
    }

    /** Empty where there is none, or none that is whole. */
    public Optional<DemoAccess> read() {
        try {
            return Files.isReadable(file)
                    ? Optional.of(JSON.readValue(file.toFile(), DemoAccess.class)).filter(DemoAccess::isComplete)
                    : Optional.empty();
        } catch (IOException notOurs) {
            return Optional.empty();
        }
    }

    public void write(DemoAccess access) {
        try {
            Path fresh = Files.createTempFile(file.getParent(), NAME, ".new",
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            Files.write(fresh, JSON.writeValueAsBytes(access));
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot write " + file, e);
        }
    }
}
