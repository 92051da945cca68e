package org.tankrounds.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;

/** Random values that open something, and the hashes under which they are kept. */
public final class Secrets {
    private static final SecureRandom RANDOM = new SecureRandom();
    // No vowels and nothing that reads like another character: codes are copied by hand and must not spell words.
    private static final char[] CODE_ALPHABET = "23456789bcdfghjkmnpqrstvwxz".toCharArray();

    private Secrets() {}

    /** 256 random bits, safe in an address or a header. */
    public static String next() {
        byte[] bytes = new byte[32];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** A public code: hard to guess, but not a secret. */
    public static String code(int length) {
        return drawn(length, CODE_ALPHABET);
    }

    /** Characters drawn from an alphabet, each as likely as the others. */
    public static String drawn(int length, char[] alphabet) {
        StringBuilder code = new StringBuilder(length);
        for (int i = 0; i < length; i++) {
            code.append(alphabet[RANDOM.nextInt(alphabet.length)]);
        }
        return code.toString();
    }

    public static byte[] sha256(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    public static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
