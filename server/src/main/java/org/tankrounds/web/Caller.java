package org.tankrounds.web;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.OptionalInt;

/**
 * On whose behalf a request works, settled once before the handler runs.
 *
 * @param role ANYBODY for a caller who has neither signed in nor shown a token
 * @param chapterId 0 for ANYBODY
 * @param personId present for people
 * @param cardId present for a class that came with its card
 * @param tankId present for a tank token and a class card: the only tank that it opens
 * @param chosen how they want to be spoken to
 * @param account names the person, or the class of a tank, to a device that keeps what they wrote; else empty
 * @param name how the page greets them; the label of a token; empty for a class that came with its card
 * @param formToken what a form must send back, so that no other site can post in this person's name
 */
public record Caller(
        Role role,
        int chapterId,
        OptionalInt personId,
        OptionalInt cardId,
        OptionalInt tankId,
        Speech.Chosen chosen,
        String account,
        String name,
        String chapterName,
        ZoneId zone,
        String formToken) {

    /** Names an account: in an answer the one it was made for, in a question the one that wrote what it brings. */
    public static final String ACCOUNT_HEADER = "Tankrounds-Account";

    private static final String ATTRIBUTE = "caller";

    /** Somebody without a class card. */
    public Caller(Role role, int chapterId, OptionalInt personId, OptionalInt tankId, String account, String name,
            String chapterName, ZoneId zone, String formToken) {
        this(role, chapterId, personId, OptionalInt.empty(), tankId, Speech.Chosen.NOTHING, account, name, chapterName,
                zone, formToken);
    }

    public static Caller anybody(String formToken) {
        return new Caller(
                Role.ANYBODY, 0, OptionalInt.empty(), OptionalInt.empty(), "", "", "", ZoneId.of("UTC"), formToken);
    }

    public static Caller of(Context ctx) {
        Caller caller = ctx.attribute(ATTRIBUTE);
        return caller == null ? anybody("") : caller;
    }

    public void attach(Context ctx) {
        ctx.attribute(ATTRIBUTE, this);
    }

    /** As a row says who wrote it; null for a class with its card, and for scripts. */
    public Integer personIdOrNull() {
        return personId.isPresent() ? personId.getAsInt() : null;
    }

    /** As a row says with which card a class came; null for anybody else. */
    public Integer cardIdOrNull() {
        return cardId.isPresent() ? cardId.getAsInt() : null;
    }

    public boolean signedIn() {
        return personId.isPresent();
    }

    /** Signed in, or come with a class card. */
    public boolean hasAccount() {
        return !account.isEmpty();
    }
}
