package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import org.tankrounds.pages.SendAgainPage;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** Gives a browser its new session in the place of any other, and back what had been typed when the last one ended. */
final class ComingIn {
    private final Sessions sessions;
    private final Cookies cookies;
    private final FormReach reach;
    private final Pages pages;

    ComingIn(Sessions sessions, Cookies cookies, FormReach reach, Pages pages) {
        this.sessions = sessions;
        this.cookies = cookies;
        this.reach = reach;
        this.pages = pages;
    }

    void goOn(Context ctx, String secret, String next, Optional<KeptForm> kept) {
        cookies.session(ctx).ifPresent(sessions::end);
        cookies.signIn(ctx, secret);
        if (kept.isEmpty()) {
            ctx.redirect(next, HttpStatus.SEE_OTHER);
            return;
        }
        sessions.find(secret).orElseThrow().attach(ctx);
        offer(ctx, "signin.again.lead", kept.get(), next, true);
    }

    /**
     * @param lead key of the sentence that says why it was not taken at once
     * @param isTheirKind whether people of their kind may send such a form at all
     */
    void offer(Context ctx, String lead, KeptForm kept, String leave, boolean isTheirKind) {
        Speech speech = Speech.of(ctx);
        Caller caller = Caller.of(ctx);
        boolean theirs = isTheirKind && reach.reaches(caller, kept.path());
        pages.show(ctx, "people/send-again", new SendAgainPage(speech.say("signin.again.title"), speech.say(lead),
                theirs ? inWhoseName(caller, speech) : speech.say("signin.again.notTheirs"), theirs, kept.path(),
                kept.fields(), kept.carrying(), leave));
    }

    private static String inWhoseName(Caller caller, Speech speech) {
        return caller.signedIn()
                ? speech.say("signin.again.asPerson", caller.name()) : speech.say("signin.again.asClass");
    }
}
