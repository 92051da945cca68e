package org.tankrounds.web;

import io.javalin.http.Context;
import java.util.Locale;
import java.util.Optional;

/** What a body says that it is. */
public final class ContentType {
    private ContentType() {}

    /** As sent: the web server's own reading of it fails where it names an encoding that nobody knows. */
    public static Optional<String> of(Context ctx) {
        return Optional.ofNullable(ctx.header("Content-Type"));
    }

    /** Whether a body is this media type in UTF-8. */
    public static boolean is(Context ctx, String mediaType) {
        String[] parts = of(ctx).orElse("").toLowerCase(Locale.ROOT).split(";");
        if (parts.length == 0 || !parts[0].strip().equals(mediaType)) {
            return false;
        }
        for (int i = 1; i < parts.length; i++) {
            String parameter = parts[i].strip().replace("\"", "").replace("'", "");
            if (!parameter.isEmpty() && !parameter.equals("charset=utf-8")) {
                return false;
            }
        }
        return true;
    }
}
