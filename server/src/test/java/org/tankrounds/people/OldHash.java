package org.tankrounds.people;

import java.nio.charset.StandardCharsets;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/** A password as a release of years ago might have kept it: with cheaper parameters. */
final class OldHash {
    private OldHash() {}

    static String of(String password) {
        byte[] salt = "salt of long ago".getBytes(StandardCharsets.UTF_8);
        byte[] hash = new byte[32];
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withMemoryAsKB(8192).withIterations(1).withParallelism(1).withSalt(salt).build());
        generator.generateBytes(password.getBytes(StandardCharsets.UTF_8), hash);
        return new PhcString(8192, 1, 1, salt, hash).print();
    }
}
