package org.tankrounds.migrations;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Properties;

/** The embedded server's passwords: random, one per role, in a file that only the operator can read. */
final class Passwords {

    private static final FileAttribute<?> OWNER_ONLY =
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));
    private static final int SECRET_BYTES = 24;

    private final Properties byRole;

    private Passwords(Properties byRole) {
        this.byRole = byRole;
    }

    static Passwords in(Path directory) throws IOException {
        Path file = directory.resolve("database-passwords.properties");
        Properties passwords = new Properties();
        if (Files.exists(file)) {
            try (var reader = Files.newBufferedReader(file)) {
                passwords.load(reader);
            }
        } else {
            SecureRandom random = new SecureRandom();
            for (String role : DatabaseRoles.ALL) {
                byte[] secret = new byte[SECRET_BYTES];
                random.nextBytes(secret);
                passwords.setProperty(role, Base64.getUrlEncoder().withoutPadding().encodeToString(secret));
            }
            write(passwords, file);
        }
        return new Passwords(passwords);
    }

    String of(String role) {
        return byRole.getProperty(role);
    }

    /** One password alone in a file, for {@code initdb}; the caller deletes it. */
    Path fileWith(String role, Path directory) throws IOException {
        Path file = Files.createTempFile(directory, "initdb-", ".tmp", OWNER_ONLY);
        Files.writeString(file, of(role) + "\n");
        return file;
    }

    private static void write(Properties passwords, Path file) throws IOException {
        StringWriter text = new StringWriter();
        passwords.store(text, "Passwords of the database in this directory. Lost, they can't be made again.");
        Path partial = Files.createTempFile(file.getParent(), "passwords-", ".tmp", OWNER_ONLY);
        try (FileChannel channel = FileChannel.open(partial, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8)));
            channel.force(true);
        }
        Files.move(partial, file, StandardCopyOption.ATOMIC_MOVE);
        Folders.writeOut(file.getParent());
    }
}
