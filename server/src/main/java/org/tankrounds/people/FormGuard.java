package org.tankrounds.people;

import io.javalin.http.Context;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.web.Caller;
import org.tankrounds.web.ContentType;
import org.tankrounds.web.FieldError;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Uploads;
import org.tankrounds.words.Saying;

/** Lets a form through only when it comes from one of our own pages, shown to the very person who sends it. */
public final class FormGuard {
    private final Optional<String> ownOrigin;
    private final Set<String> uploads;

    /** @param uploads routes, with their parameters in braces, whose forms may come with a file */
    public FormGuard(Optional<URI> baseUrl, Set<String> uploads) {
        this.ownOrigin = baseUrl.map(url -> url.getScheme() + "://" + url.getRawAuthority());
        this.uploads = uploads;
    }

    /** @throws RefusedException with 415 for anything but a plain form, 403 for one that is not ours */
    void check(Context ctx, Caller caller) {
        if (!plain(ctx) && !isUpload(ctx)) {
            throw RefusedException.of(415, Saying.of("errors.plainForms"));
        }
        if (isOfAnotherSession(ctx, caller) && !isShownToThem(ctx, caller)) {
            throw RefusedException.of(403, Saying.of("errors.ofAnotherSession"));
        }
        if (!fromHere(ctx) || !isShownToThem(ctx, caller)) {
            throw new RefusedException(403, Saying.of("errors.notOurForm"),
                    List.of(new FieldError(FormToken.FIELD, Saying.of("errors.goBack"))));
        }
    }

    /**
     * Who has not signed in has no name in which anything could be sent. Their token may be that of another window, or
     * of a worker that looked at the same moment: what the browser says is enough.
     */
    private boolean isShownToThem(Context ctx, Caller caller) {
        return !caller.hasAccount() && surelyFromHere(ctx) || FormToken.same(caller.formToken(), token(ctx));
    }

    private boolean isUpload(Context ctx) {
        return Uploads.isOne(ctx) && uploads.contains(ctx.endpoints().matchedHttpEndpoint().path);
    }

    private static String token(Context ctx) {
        return Uploads.isOne(ctx)
                ? Uploads.of(ctx).field(FormToken.FIELD).orElse(null) : ctx.formParam(FormToken.FIELD);
    }

    /** Multipart bodies would not be held to the size limit. */
    boolean plain(Context ctx) {
        return ContentType.of(ctx).isEmpty() || ContentType.is(ctx, "application/x-www-form-urlencoded");
    }

    /**
     * Whether a plain form stands on a page of ours that was shown before the session changed, in another window of
     * the same browser. A device's outbox fetches a new token by itself.
     */
    private boolean isOfAnotherSession(Context ctx, Caller caller) {
        return plain(ctx) && surelyFromHere(ctx) && ctx.header(Caller.ACCOUNT_HEADER) == null
                && Optional.ofNullable(ctx.formParam(FormToken.FIELD)).filter(token -> !token.isBlank()
                        && !FormToken.same(caller.formToken(), token)).isPresent();
    }

    /** Also where it was carried through signing in, to somebody whose kind cannot send it. */
    boolean isMeantForAnother(Context ctx, Caller caller, Policy.Decision decision) {
        return isOfAnotherSession(ctx, caller)
                || decision == Policy.Decision.NOT_FOUND && plain(ctx) && surelyFromHere(ctx)
                && isShownToThem(ctx, caller);
    }

    /** Browsers say where a request comes from; those too old to say so are judged by the token alone. */
    boolean fromHere(Context ctx) {
        String site = ctx.header("Sec-Fetch-Site");
        return surelyFromHere(ctx) || (site == null ? ctx.header("Origin") == null : site.equals("none"));
    }

    /** Whether the browser itself says that one of our own pages sent this. */
    boolean surelyFromHere(Context ctx) {
        String site = ctx.header("Sec-Fetch-Site");
        if (site != null) {
            return site.equals("same-origin");
        }
        String origin = ctx.header("Origin");
        return origin != null
                && (ownOrigin.filter(origin::equals).isPresent() || sameHost(origin, ctx.header("Host")));
    }

    private static boolean sameHost(String origin, String host) {
        try {
            return host != null && host.equalsIgnoreCase(new URI(origin).getRawAuthority());
        } catch (URISyntaxException e) {
            return false;
        }
    }
}
