package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Secrets;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Language;

/**
 * The cookies: the session's; before signing in one that only ties a form to the browser it was shown in; and one that
 * remembers a language.
 */
public final class Cookies {
    private static final int UNTIL_THE_BROWSER_CLOSES = -1;
    private static final int LANGUAGE_SECONDS = 365 * 24 * 60 * 60;
    private static final int FORM_SECONDS = 2 * 60 * 60;

    private final boolean secure;
    private final String session;
    private final String form;

    /** @param secure whether people come over TLS; then the names themselves keep other hosts from planting them */
    public Cookies(boolean secure) {
        this.secure = secure;
        this.session = secure ? "__Host-tkr" : "tkr";
        this.form = secure ? "__Host-tkr-form" : "tkr-form";
    }

    Optional<String> session(Context ctx) {
        return value(ctx, session);
    }

    Optional<String> form(Context ctx) {
        return value(ctx, form);
    }

    void signIn(Context ctx, String secret) {
        set(ctx, session, secret, UNTIL_THE_BROWSER_CLOSES);
        set(ctx, form, "", 0);
    }

    void signOut(Context ctx) {
        set(ctx, session, "", 0);
    }

    /** Before a page with a form is shown to somebody who has not signed in. */
    void openForm(Context ctx) {
        Caller caller = Caller.of(ctx);
        if (!caller.signedIn() && caller.formToken().isEmpty()) {
            String secret = Secrets.next();
            set(ctx, form, secret, FORM_SECONDS);
            Caller.anybody(FormToken.of(secret)).attach(ctx);
        }
    }

    /** For those who have no account that remembers it. */
    void remember(Context ctx, Language language) {
        set(ctx, Speech.COOKIE, language.tag(), LANGUAGE_SECONDS);
    }

    private static Optional<String> value(Context ctx, String name) {
        return Optional.ofNullable(ctx.cookie(name)).filter(value -> !value.isEmpty());
    }

    private void set(Context ctx, String name, String value, int seconds) {
        ctx.cookie(new Cookie(name, value, "/", seconds, secure, true, null, SameSite.LAX));
    }
}
