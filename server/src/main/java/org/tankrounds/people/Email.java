package org.tankrounds.people;

import java.util.Locale;
import java.util.regex.Pattern;
import org.tankrounds.web.Secrets;

/** An address as people sign in with it: lower-case, and as a hash while the chapter is not known yet. */
final class Email {
    static final int MAX_LENGTH = 254;
    // Whether it reaches anybody shows when it is used; this only catches slips.
    private static final Pattern SHAPE = Pattern.compile("[^\\s@\\p{Cntrl}]+@[^\\s@\\p{Cntrl}]+\\.[^\\s@\\p{Cntrl}.]+");

    private Email() {}

    static String normal(String typed) {
        return typed.strip().toLowerCase(Locale.ROOT);
    }

    static boolean plausible(String normal) {
        return normal.length() <= MAX_LENGTH && SHAPE.matcher(normal).matches();
    }

    static byte[] hash(String normal) {
        return Secrets.sha256(normal);
    }
}
