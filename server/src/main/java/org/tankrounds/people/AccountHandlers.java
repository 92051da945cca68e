package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.AccountPage;
import org.tankrounds.pages.FormField;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Pages;

/** A person's own account: who they are here, and a new password. */
public final class AccountHandlers {
    private static final String CURRENT = "current_password";

    private final Transactions transactions;
    private final PersonRepository people;
    private final PasswordHashes passwords;
    private final SignIn signIn;
    private final Sessions sessions;
    private final Cookies cookies;
    private final Pages pages;

    public AccountHandlers(Transactions transactions, PersonRepository people, PasswordHashes passwords, SignIn signIn,
            Sessions sessions, Cookies cookies, Pages pages) {
        this.transactions = transactions;
        this.people = people;
        this.passwords = passwords;
        this.signIn = signIn;
        this.sessions = sessions;
        this.cookies = cookies;
        this.pages = pages;
    }

    public void show(Context ctx) {
        show(ctx, me(ctx), "", NewPassword.blank());
    }

    /** Signs out every other browser; this one goes on with a new session. */
    public void changePassword(Context ctx) {
        Caller caller = Caller.of(ctx);
        Person me = me(ctx);
        NewPassword chosen = NewPassword.of(ctx, List.of(me.name(), me.email(), caller.chapterName()));
        String error = chosen.ok() ? refusal(caller, me, Optional.ofNullable(ctx.formParam(CURRENT)).orElse("")) : "";
        if (!chosen.ok() || !error.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, me, error, chosen);
            return;
        }
        String hash = passwords.hash(chosen.text());
        cookies.signIn(ctx, transactions.inChapter(caller.chapterId(), tx -> {
            people.setPassword(tx, caller.chapterId(), me.personId(), hash);
            sessions.endAll(tx, caller.chapterId(), me.personId());
            return sessions.open(tx, caller.chapterId(), me.personId(), me.role());
        }));
        ctx.redirect(LocalPath.START, HttpStatus.SEE_OTHER);
    }

    /** Judged as a sign-in is, and slowed down like one: a laptop left open must not become a place to guess. */
    private String refusal(Caller caller, Person me, String current) {
        SignIn.Outcome outcome = signIn.with(me.email(), current);
        if (outcome instanceof SignIn.Wait wait) {
            return SignInHandlers.tooMany(wait.left());
        }
        boolean mine = outcome instanceof SignIn.SignedIn in
                && in.chapterId() == caller.chapterId() && in.personId() == me.personId();
        return mine ? "" : "This is not your password of now. Type it again.";
    }

    private Person me(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(),
                tx -> people.get(tx, caller.chapterId(), caller.personId().orElseThrow()));
    }

    private void show(Context ctx, Person me, String currentError, NewPassword chosen) {
        FormField current = FormField.text(CURRENT, "Password of now", "")
                .withType("password", "current-password")
                .withError(currentError);
        pages.show(ctx, "people/account", new AccountPage(me.name(), me.email(), PersonRepository.word(me.role()),
                Caller.of(ctx).chapterName(), current, chosen.box(), chosen.boxAgain()));
    }
}
