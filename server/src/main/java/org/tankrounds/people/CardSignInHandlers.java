package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import org.tankrounds.pages.CardSignInPage;
import org.tankrounds.pages.FormField;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Role;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/**
 * Where a class comes in with its card. The address on the card only fills the code in: what looks at addresses by
 * itself, such as a phone's preview or a school's filter, opens no session, and learns of no code whether it is right.
 */
public final class CardSignInHandlers {
    private static final String CODE = "code";

    private final CardSignIn signIn;
    private final ComingIn comingIn;
    private final Cookies cookies;
    private final Pages pages;

    public CardSignInHandlers(
            CardSignIn signIn, Sessions sessions, Cookies cookies, FormReach reach, Pages pages) {
        this.signIn = signIn;
        this.comingIn = new ComingIn(sessions, cookies, reach, pages);
        this.cookies = cookies;
        this.pages = pages;
    }

    /** For a class that is in already, its form. */
    public void show(Context ctx) {
        Caller caller = Caller.of(ctx);
        if (caller.role() == Role.CLASS_CARD) {
            ctx.redirect(log(signIn.tank(caller)), HttpStatus.SEE_OTHER);
            return;
        }
        show(ctx, "", Optional.empty(), Optional.empty());
    }

    public void showFilledIn(Context ctx) {
        show(ctx, CardCode.of(ctx.pathParam(CODE)).map(CardCode::shown).orElse(""), Optional.empty(),
                Optional.empty());
    }

    public void create(Context ctx) {
        String typed = Optional.ofNullable(ctx.formParam(CODE)).orElse("");
        Optional<KeptForm> kept = KeptForm.carried(ctx);
        Optional<CardCode> code = CardCode.of(typed);
        if (code.isEmpty()) {
            ctx.status(422);
            show(ctx, typed, Optional.of(Saying.of("signin.card.noCode")), kept);
            return;
        }
        CardSignIn.Outcome outcome = signIn.with(code.get());
        if (outcome instanceof CardSignIn.Opened opened) {
            comingIn.goOn(ctx, opened.secret(), log(opened.tank()), kept);
        } else if (outcome instanceof CardSignIn.Wait wait) {
            ctx.status(429).header("Retry-After", Long.toString(SignInHandlers.seconds(wait.left())));
            show(ctx, typed, Optional.of(Saying.of("signin.card.tooMany", SignInHandlers.howLong(wait.left()))), kept);
        } else {
            ctx.status(422);
            show(ctx, typed, Optional.of(Saying.of("signin.card.wrong")), kept);
        }
    }

    private static String log(String tank) {
        return "/tanks/" + tank + "/log";
    }

    private void show(Context ctx, String code, Optional<Saying> error, Optional<KeptForm> kept) {
        cookies.openForm(ctx);
        Caller caller = Caller.of(ctx);
        Speech speech = Speech.of(ctx);
        FormField box = FormField.text(CODE, speech.say("signin.card.code"), code)
                .withHint(speech.say("signin.card.hint")).withError(error.map(speech::say).orElse(""));
        pages.show(ctx, "people/card-sign-in", new CardSignInPage(
                speech.titled(error.isPresent(), speech.say("signin.card.title")), box,
                caller.signedIn() ? caller.name() : "", kept.map(KeptForm::carrying).orElse(List.of())));
    }
}
