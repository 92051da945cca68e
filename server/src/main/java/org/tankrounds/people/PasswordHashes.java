package org.tankrounds.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.concurrent.Semaphore;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * Argon2id with 19 MiB, two passes, one lane: OWASP Password Storage Cheat Sheet. At most four are worked out
 * at once, or a crowd at the door would eat the memory of a small server.
 */
public final class PasswordHashes {
    private static final int MEMORY_KIB = 19_456;
    private static final int PASSES = 2;
    private static final int LANES = 1;
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final int AT_ONCE = 4;

    private final SecureRandom random = new SecureRandom();
    private final Semaphore places = new Semaphore(AT_ONCE, true);
    private final PhcString nobodys = new PhcString(MEMORY_KIB, PASSES, LANES, salt(), new byte[HASH_BYTES]);

    public String hash(String password) {
        PhcString empty = new PhcString(MEMORY_KIB, PASSES, LANES, salt(), new byte[HASH_BYTES]);
        return new PhcString(MEMORY_KIB, PASSES, LANES, empty.salt(), work(password, empty)).print();
    }

    boolean matches(String password, String phc) {
        PhcString kept = PhcString.parse(phc);
        return MessageDigest.isEqual(kept.hash(), work(password, kept));
    }

    /** Takes as long as {@link #matches}, so that time does not tell which addresses have an account. */
    void matchNobody(String password) {
        work(password, nobodys);
    }

    /** Whether it was made with other parameters than those of today. */
    boolean outdated(String phc) {
        PhcString kept = PhcString.parse(phc);
        return kept.memoryKib() != MEMORY_KIB || kept.passes() != PASSES || kept.lanes() != LANES
                || kept.hash().length != HASH_BYTES;
    }

    /**
     * For a secret that is looked up by its hash, so that its salt cannot be random. Other parameters than those of
     * today would find none of the hashes that are kept.
     */
    byte[] under(byte[] salt, String secret) {
        return work(secret, new PhcString(MEMORY_KIB, PASSES, LANES, salt, new byte[HASH_BYTES]));
    }

    private byte[] work(String password, PhcString how) {
        Argon2Parameters parameters = new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withMemoryAsKB(how.memoryKib())
                .withIterations(how.passes())
                .withParallelism(how.lanes())
                .withSalt(how.salt())
                .build();
        // The same password typed on two keyboards may arrive as different code points.
        byte[] typed = Normalizer.normalize(password, Normalizer.Form.NFC).getBytes(StandardCharsets.UTF_8);
        byte[] hash = new byte[how.hash().length];
        places.acquireUninterruptibly();
        try {
            Argon2BytesGenerator generator = new Argon2BytesGenerator();
            generator.init(parameters);
            generator.generateBytes(typed, hash);
        } finally {
            places.release();
        }
        return hash;
    }

    private byte[] salt() {
        byte[] salt = new byte[SALT_BYTES];
        random.nextBytes(salt);
        return salt;
    }
}
