package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.SignInPage;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Role;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** Coming in and going out. */
public final class SignInHandlers {
    private final SignIn signIn;
    private final Sessions sessions;
    private final Cookies cookies;
    private final ComingIn comingIn;
    private final Pages pages;

    public SignInHandlers(SignIn signIn, Sessions sessions, Cookies cookies, FormReach reach, Pages pages) {
        this.signIn = signIn;
        this.sessions = sessions;
        this.cookies = cookies;
        this.comingIn = new ComingIn(sessions, cookies, reach, pages);
        this.pages = pages;
    }

    /** Everybody's own first page. */
    public void start(Context ctx) {
        ctx.redirect(firstPage(Caller.of(ctx).role()), HttpStatus.SEE_OTHER);
    }

    public void show(Context ctx) {
        if (Caller.of(ctx).signedIn()) {
            ctx.redirect(LocalPath.orStart(ctx.queryParam("next")), HttpStatus.SEE_OTHER);
            return;
        }
        cookies.openForm(ctx);
        show(ctx, "", Optional.empty(), LocalPath.orStart(ctx.queryParam("next")), Optional.empty());
    }

    /**
     * For a form that arrives when its session has ended: what was typed goes along, so that it is not lost.
     *
     * @param ours whether a page of ours sent it; the cookie of a session that is over says so too
     */
    void askAgain(Context ctx, boolean ours) {
        Optional<KeptForm> kept = ours || cookies.session(ctx).isPresent() ? KeptForm.sent(ctx) : Optional.empty();
        if (kept.isEmpty()) {
            ctx.redirect(LocalPath.signIn(LocalPath.wanted(ctx)), HttpStatus.SEE_OTHER);
        } else {
            askAgain(ctx, LocalPath.wanted(ctx), kept);
        }
    }

    private void askAgain(Context ctx, String next, Optional<KeptForm> kept) {
        cookies.openForm(ctx);
        ctx.status(HttpStatus.FORBIDDEN);
        show(ctx, "", Optional.empty(), next, kept);
    }

    /**
     * For a form of ours from before the session changed in another window: back to whoever is signed in now, who says
     * whether it is sent.
     *
     * @param isTheirKind whether people of their kind may send such a form at all
     * @return false where there is nothing to give back, or nothing that may be shown again
     */
    boolean giveBack(Context ctx, boolean isTheirKind) {
        Optional<KeptForm> kept = KeptForm.carried(ctx).or(() -> KeptForm.sent(ctx));
        kept.ifPresent(form -> {
            ctx.status(HttpStatus.FORBIDDEN);
            comingIn.offer(ctx, "signin.again.changed", form, LocalPath.wanted(ctx), isTheirKind);
        });
        return kept.isPresent();
    }

    public void create(Context ctx) {
        String email = Optional.ofNullable(ctx.formParam("email")).orElse("");
        String password = Optional.ofNullable(ctx.formParam("password")).orElse("");
        String next = LocalPath.orStart(ctx.formParam("next"));
        Optional<KeptForm> kept = KeptForm.carried(ctx);
        if (email.isBlank() || password.isEmpty()) {
            ctx.status(422);
            show(ctx, email, Optional.of(Saying.of("signin.empty")), next, kept);
            return;
        }
        SignIn.Outcome outcome = signIn.with(email, password);
        if (outcome instanceof SignIn.SignedIn in) {
            comingIn.goOn(ctx, in.secret(), next, kept);
        } else if (outcome instanceof SignIn.Wait wait) {
            ctx.status(429).header("Retry-After", Long.toString(seconds(wait.left())));
            show(ctx, email, Optional.of(tooMany(wait.left())), next, kept);
        } else {
            ctx.status(422);
            show(ctx, email, Optional.of(Saying.of("signin.wrong")), next, kept);
        }
    }

    /** What was typed in somebody else's time stays for the one who typed it. */
    public void remove(Context ctx) {
        cookies.session(ctx).ifPresent(sessions::end);
        cookies.signOut(ctx);
        // Never "storage": readings that wait on the device would go with it. Not "cookies" either: that would sign
        // people out of whatever else the school serves under the same domain.
        ctx.header("Clear-Site-Data", "\"cache\"");
        Optional<KeptForm> kept = KeptForm.carried(ctx);
        if (kept.isEmpty()) {
            ctx.redirect("/sign-in", HttpStatus.SEE_OTHER);
        } else {
            Caller.anybody("").attach(ctx);
            cookies.openForm(ctx);
            show(ctx, "", Optional.empty(), LocalPath.orStart(ctx.formParam("next")), kept);
        }
    }

    private void show(Context ctx, String email, Optional<Saying> error, String next, Optional<KeptForm> kept) {
        Speech speech = Speech.of(ctx);
        FormField address = FormField.text("email", speech.say("signin.email"), email)
                .withType("email", "username")
                .withError(error.map(speech::say).orElse(""));
        FormField password = FormField.text("password", speech.say("signin.password"), "")
                .withType("password", "current-password");
        pages.show(ctx, "people/sign-in", new SignInPage(speech.titled(error.isPresent(), speech.say("signin.title")),
                address, password, next, kept.map(KeptForm::carrying).orElse(List.of())));
    }

    static Saying tooMany(Duration wait) {
        return Saying.of("signin.tooMany", howLong(wait));
    }

    static Saying howLong(Duration wait) {
        long seconds = seconds(wait);
        return seconds < 100 ? Saying.of("signin.seconds", seconds) : Saying.of("signin.minutes", (seconds + 59) / 60);
    }

    static long seconds(Duration wait) {
        return Math.max(1, wait.plusMillis(999).toSeconds());
    }

    static String firstPage(Role role) {
        return switch (role) {
            case COORDINATOR, MENTOR -> "/rounds";
            case TEACHER -> "/tanks";
            case CLASS_CARD -> "/card";
            default -> "/sign-in";
        };
    }
}
