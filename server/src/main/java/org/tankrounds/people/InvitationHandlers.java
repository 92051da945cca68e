package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import org.tankrounds.pages.InvitationPage;
import org.tankrounds.people.Invitations.Invited;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** Behind the link that a coordinator hands over. */
public final class InvitationHandlers {
    private final Invitations invitations;
    private final Cookies cookies;
    private final Pages pages;

    public InvitationHandlers(Invitations invitations, Cookies cookies, Pages pages) {
        this.invitations = invitations;
        this.cookies = cookies;
        this.pages = pages;
    }

    public void show(Context ctx) {
        Invited invited = invitations.look(ctx.pathParam("link"));
        cookies.openForm(ctx);
        show(ctx, invited, NewPassword.blank());
    }

    public void accept(Context ctx) {
        String link = ctx.pathParam("link");
        Invited invited = invitations.look(link);
        NewPassword password = NewPassword.of(ctx, invited.about());
        if (!password.ok()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, invited, password);
            return;
        }
        cookies.signIn(ctx, invitations.choose(link, password.text()));
        ctx.redirect(LocalPath.START, HttpStatus.SEE_OTHER);
    }

    private void show(Context ctx, Invited invited, NewPassword password) {
        Speech speech = Speech.of(ctx);
        pages.show(ctx, "people/invitation", new InvitationPage(
                speech.titled(!password.ok(), speech.say("people.invitation.title")),
                invited.person().name(), invited.person().email(), invited.chapter().name(), ctx.path(),
                password.box(speech), password.boxAgain(speech)));
    }
}
