package org.tankrounds.web;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.HexFormat;

/** Answers that need not be sent again (RFC 9110, section 8.8.3). */
public final class ETags {
    private ETags() {}

    /** A strong tag of everything that the answer depends on. */
    public static String of(Object... parts) {
        byte[] hash = Secrets.sha256(Arrays.deepToString(parts));
        return "\"" + HexFormat.of().formatHex(hash, 0, 12) + "\"";
    }

    /** Sets the headers of an answer that the caller may keep but has to ask about; whether it still has it. */
    public static boolean isKnown(Context ctx, String tag) {
        ctx.header("ETag", tag);
        ctx.header("Cache-Control", "private, no-cache");
        String known = ctx.header("If-None-Match");
        if (known == null) {
            return false;
        }
        return Arrays.stream(known.split(","))
                .map(String::strip)
                .map(candidate -> candidate.startsWith("W/") ? candidate.substring(2) : candidate)
                .anyMatch(candidate -> candidate.equals(tag) || candidate.equals("*"));
    }
}
