package org.tankrounds.readings;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.tankrounds.web.ContentType;
import org.tankrounds.web.RefusedException;

/**
 * A body read with a limit, whether or not its length was announced. What is wrong with it is said only once
 * somebody asks for the content: first comes whether the caller may post there at all.
 */
final class RequestBody {
    static final int MOST_BYTES = 1_000_000;
    // A sender that is cut off in the middle of its body may never read our answer, so some more is read and dropped.
    private static final long MOST_DROPPED_BYTES = 32_000_000;

    static final String ENCODED = "Send the body as it is, without Content-Encoding.";

    private final byte[] bytes;
    private final RefusedException refusal;

    private RequestBody(byte[] bytes, RefusedException refusal) {
        this.bytes = bytes;
        this.refusal = refusal;
    }

    static RequestBody read(Context ctx) {
        return read(ctx, List.of("application/json"));
    }

    /** @param mediaTypes that are taken, the usual one first */
    static RequestBody read(Context ctx, List<String> mediaTypes) {
        try {
            InputStream in = ctx.req().getInputStream();
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                drop(in, MOST_DROPPED_BYTES);
                return refused(413, "A body has at most 1 MB (1,000,000 bytes). Nothing was stored.");
            }
            if (mediaTypes.stream().noneMatch(type -> ContentType.is(ctx, type))) {
                return refused(415, "Send the reading as Content-Type: " + mediaTypes.get(0) + ", in UTF-8.");
            }
            if (isEncoded(ctx)) {
                return refused(415, ENCODED);
            }
            return new RequestBody(bytes, null);
        } catch (IOException e) {
            return refused(400, "The body broke off. Nothing was stored; send it again with the same key.");
        }
    }

    JsonNode json() {
        if (refusal != null) {
            throw refusal;
        }
        return JsonText.read(bytes);
    }

    /** Compressed bodies are not unpacked: a small one may hold an endless one. */
    static boolean isEncoded(Context ctx) {
        String encoding = ctx.header("Content-Encoding");
        return encoding != null && !encoding.strip().equalsIgnoreCase("identity");
    }

    static void drop(InputStream in, long most) throws IOException {
        byte[] scratch = new byte[65_536];
        long dropped = 0;
        for (int read = in.read(scratch); read >= 0 && dropped < most; read = in.read(scratch)) {
            dropped += read;
        }
    }

    private static RequestBody refused(int status, String title) {
        return new RequestBody(new byte[0], RefusedException.of(status, title));
    }
}
