package org.tankrounds.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import org.tankrounds.words.Saying;

/**
 * Forms that come with a file. The web server holds bodies of several parts to no limit and lays them into files of
 * its own; here they are read up to a limit, and only by routes that expect a file.
 */
public final class Uploads {
    /** Of a whole form: a file of 5 MB and what stands beside it. */
    static final int MOST_BYTES = 5_100_000;
    // A browser that is cut off while it sends never reads our answer, so some more is read and dropped.
    private static final long MOST_DROPPED_BYTES = 100_000_000;
    private static final String MEDIA_TYPE = "multipart/form-data";
    private static final String ATTRIBUTE = "upload";

    private Uploads() {}

    public static boolean isOne(Context ctx) {
        return ContentType.of(ctx).orElse("").toLowerCase(Locale.ROOT).startsWith(MEDIA_TYPE);
    }

    /**
     * Read once, however often it is asked for.
     *
     * @throws RefusedException with 413 for a body that is too large, 400 for one that broke off or is none
     */
    public static MultipartForm of(Context ctx) {
        MultipartForm form = ctx.attribute(ATTRIBUTE);
        if (form == null) {
            form = read(ctx);
            ctx.attribute(ATTRIBUTE, form);
        }
        return form;
    }

    private static MultipartForm read(Context ctx) {
        try (InputStream in = ctx.req().getInputStream()) {
            boolean announced = ctx.req().getContentLengthLong() > MOST_BYTES;
            byte[] body = announced ? new byte[0] : in.readNBytes(MOST_BYTES + 1);
            if (announced || body.length > MOST_BYTES) {
                drop(in);
                throw RefusedException.of(413, Saying.of("errors.fileTooLarge"));
            }
            return MultipartForm.parse(ContentType.of(ctx).orElse(""), body);
        } catch (IOException | IllegalArgumentException e) {
            throw RefusedException.of(400, Saying.of("errors.fileBrokeOff"));
        }
    }

    private static void drop(InputStream in) throws IOException {
        byte[] scratch = new byte[65_536];
        long dropped = 0;
        for (int read = in.read(scratch); read >= 0 && dropped < MOST_DROPPED_BYTES; read = in.read(scratch)) {
            dropped += read;
        }
    }
}
