package org.tankrounds.readings;

import io.javalin.http.Context;
import java.util.List;
import java.util.stream.Stream;
import org.tankrounds.pages.AskBack;
import org.tankrounds.readings.LogPageMaker.Message;
import org.tankrounds.web.Caller;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/**
 * Answers to the outbox of a device, which sends forms by a script: a few words that it can judge, in place of a page.
 * The sentences are those that the page would show.
 */
public final class OutboxAnswers {
    /** @param receipt of what was stored; only with it does the device believe that it is */
    private record Stored(String receipt, String savedTo, List<String> flags) {}

    private record Refused(String title, List<String> sentences) {}

    private OutboxAnswers() {}

    public static boolean wanted(Context ctx) {
        return ctx.header(Caller.ACCOUNT_HEADER) != null;
    }

    /** Nothing that somebody wrote is stored in the name of whoever happens to be signed in. */
    public static boolean refuseAnothers(Context ctx) {
        boolean anothers = wanted(ctx) && !Caller.of(ctx).account().equals(ctx.header(Caller.ACCOUNT_HEADER));
        if (anothers) {
            answer(ctx, 403, Saying.of("log.anothers"), List.of());
        }
        return anothers;
    }

    static void stored(Context ctx, Reading reading, String savedTo) {
        ctx.json(new Stored(reading.code(), savedTo, reading.flags()));
    }

    /** @param receipt any text; the same for the same form */
    public static void stored(Context ctx, String receipt, String savedTo) {
        ctx.json(new Stored(receipt, savedTo, List.of()));
    }

    /** @param sentences what is to be put right */
    public static void needsFixing(Context ctx, List<String> sentences) {
        answer(ctx, 422, Faults.TITLE, sentences);
    }

    static void needsFixing(Context ctx, Message message) {
        answer(ctx, 422, Faults.TITLE, Stream.concat(message.errors().values().stream(),
                message.asks().stream().map(AskBack::question)).distinct().toList());
    }

    /** A key that has stored something else will not get better by waiting; one that is just being stored will. */
    static void refused(Context ctx, RefusedException refusal) {
        boolean forGood = refusal.saying().equals(StoreReading.OTHER_READING);
        answer(ctx, forGood ? 422 : refusal.status(), refusal.saying(), List.of());
    }

    private static void answer(Context ctx, int status, Saying title, List<String> sentences) {
        ctx.status(status).json(new Refused(Speech.of(ctx).say(title), sentences));
    }
}
