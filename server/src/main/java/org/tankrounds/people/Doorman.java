package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpStatus;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tankrounds.web.Caller;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Role;

/**
 * Stands before every handler: settles who calls and whether they may. Pages know people by their cookie and never
 * look at tokens; the API knows scripts by their token and never looks at cookies, so no form can reach it. What is
 * for anybody below /api/ is asked by pages.
 */
public final class Doorman implements Handler {
    private static final Pattern BEARER = Pattern.compile("(?i:bearer) +([A-Za-z0-9._~+/-]+=*)");
    private static final Set<String> SAFE_METHODS = Set.of("GET", "HEAD", "OPTIONS");

    private final Sessions sessions;
    private final Bearers bearers;
    private final Cookies cookies;
    private final FormGuard forms;
    private final SignInHandlers signIn;

    public Doorman(
            Sessions sessions, Bearers bearers, Cookies cookies, FormGuard forms, SignInHandlers signIn) {
        this.sessions = sessions;
        this.bearers = bearers;
        this.cookies = cookies;
        this.forms = forms;
        this.signIn = signIn;
    }

    @Override
    public void handle(Context ctx) {
        Set<Role> roles = roles(ctx);
        if (roles.contains(Role.OPEN)) {
            return;
        }
        if (roles.isEmpty() && ctx.method().name().equals("HEAD")) {
            throw onlyGet(ctx);
        }
        boolean forScripts = ctx.path().startsWith("/api/") && !roles.contains(Role.ANYBODY);
        Caller caller = forScripts ? script(ctx) : person(ctx);
        caller.attach(ctx);
        Policy.Decision decision = Policy.decide(caller, roles);
        if (!roles.isEmpty() && caller.hasAccount() && isForm(ctx) && forms.isMeantForAnother(ctx, caller, decision)
                && signIn.giveBack(ctx, decision == Policy.Decision.ALLOW)) {
            ctx.skipRemainingHandlers();
            return;
        }
        switch (decision) {
            case ALLOW -> checkForm(ctx, caller);
            case SIGN_IN -> askToSignIn(ctx);
            case UNAUTHORISED -> throw unauthorised(ctx);
            case FORBIDDEN -> throw forbidden(ctx);
            case NOT_FOUND -> throw new NotFoundException("page");
        }
    }

    private static Set<Role> roles(Context ctx) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        ctx.routeRoles().forEach(role -> roles.add((Role) role));
        return roles;
    }

    private Caller script(Context ctx) {
        return presented(ctx).flatMap(bearers::find).orElseGet(() -> Caller.anybody(""));
    }

    private Caller person(Context ctx) {
        return cookies.session(ctx).flatMap(sessions::find)
                .orElseGet(() -> Caller.anybody(cookies.form(ctx).map(FormToken::of).orElse("")));
    }

    private static Optional<String> presented(Context ctx) {
        Matcher matcher = BEARER.matcher(String.valueOf(ctx.header("Authorization")));
        return matcher.matches() ? Optional.of(matcher.group(1)) : Optional.empty();
    }

    private void checkForm(Context ctx, Caller caller) {
        if (isForm(ctx)) {
            forms.check(ctx, caller);
        }
    }

    private static boolean isForm(Context ctx) {
        return !ctx.path().startsWith("/api/") && !SAFE_METHODS.contains(ctx.method().name());
    }

    private void askToSignIn(Context ctx) {
        if (SAFE_METHODS.contains(ctx.method().name()) || !forms.fromHere(ctx)
                || !forms.plain(ctx)) {
            ctx.redirect(LocalPath.signIn(LocalPath.wanted(ctx)), HttpStatus.SEE_OTHER);
        } else {
            signIn.askAgain(ctx, forms.surelyFromHere(ctx));
        }
        ctx.skipRemainingHandlers();
    }

    /** The server would say 200 for every address that answers GET, whoever asks. */
    private static RefusedException onlyGet(Context ctx) {
        ctx.header("Allow", "GET");
        return RefusedException.of(405, "This address answers GET, not HEAD.");
    }

    private static RefusedException unauthorised(Context ctx) {
        boolean shown = ctx.header("Authorization") != null;
        ctx.header("WWW-Authenticate",
                shown ? "Bearer realm=\"tankrounds\", error=\"invalid_token\"" : "Bearer realm=\"tankrounds\"");
        return RefusedException.of(401, shown
                ? "This token opens nothing: it was mistyped, or revoked."
                : "A bearer token is needed: send it as \"Authorization: Bearer tkr_…\".");
    }

    private static RefusedException forbidden(Context ctx) {
        ctx.header("WWW-Authenticate", "Bearer realm=\"tankrounds\", error=\"insufficient_scope\"");
        return RefusedException.of(403, "A tank's token opens only its own tank; this needs a chapter's token.");
    }
}
