package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.AccountPage;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.web.Speech.Chosen;
import org.tankrounds.words.Language;
import org.tankrounds.words.Saying;

/** A person's own account: who they are here, and a new password. */
public final class AccountHandlers {
    private static final String CURRENT = "current_password";
    private static final String LANGUAGE = "language";
    private static final String SCALE = "temperature_unit";

    /** What is wrong with a form that was sent. */
    private record Asked(Optional<Saying> currentError, Optional<Saying> speechError) {
        static final Asked NOTHING = new Asked(Optional.empty(), Optional.empty());

        boolean wrong() {
            return currentError.isPresent() || speechError.isPresent();
        }
    }

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
        show(ctx, me(ctx), Asked.NOTHING, NewPassword.blank());
    }

    /** In which language and on which scale the pages speak to this person. */
    public void chooseSpeech(Context ctx) {
        Caller caller = Caller.of(ctx);
        String tag = Optional.ofNullable(ctx.formParam(LANGUAGE)).orElse("");
        String unit = Optional.ofNullable(ctx.formParam(SCALE)).orElse("");
        Optional<Language> language = Language.ofTag(tag);
        Optional<Scale> scale = Arrays.stream(Scale.values()).filter(one -> one.unit().equals(unit)).findFirst();
        if (language.isEmpty() && !tag.isEmpty() || scale.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            Saying unknown = Saying.of("account.speech.unknown");
            show(ctx, me(ctx), new Asked(Optional.empty(), Optional.of(unknown)), NewPassword.blank());
            return;
        }
        transactions.inChapter(caller.chapterId(), tx -> {
            people.setChosen(tx, caller.chapterId(), caller.personId().orElseThrow(),
                    new Chosen(language, scale.get()));
            return null;
        });
        ctx.redirect("/account?saved", HttpStatus.SEE_OTHER);
    }

    /** Signs out every other browser; this one goes on with a new session. */
    public void changePassword(Context ctx) {
        Caller caller = Caller.of(ctx);
        Person me = me(ctx);
        NewPassword chosen = NewPassword.of(ctx, List.of(me.name(), me.email(), caller.chapterName()));
        Optional<Saying> error = chosen.ok()
                ? refusal(caller, me, Optional.ofNullable(ctx.formParam(CURRENT)).orElse("")) : Optional.empty();
        if (!chosen.ok() || error.isPresent()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, me, new Asked(error, Optional.empty()), chosen);
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
    private Optional<Saying> refusal(Caller caller, Person me, String current) {
        SignIn.Outcome outcome = signIn.with(me.email(), current);
        if (outcome instanceof SignIn.Wait wait) {
            return Optional.of(SignInHandlers.tooMany(wait.left()));
        }
        boolean mine = outcome instanceof SignIn.SignedIn in
                && in.chapterId() == caller.chapterId() && in.personId() == me.personId();
        return mine ? Optional.empty() : Optional.of(Saying.of("account.password.notCurrent"));
    }

    private Person me(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(),
                tx -> people.get(tx, caller.chapterId(), caller.personId().orElseThrow()));
    }

    private void show(Context ctx, Person me, Asked asked, NewPassword chosen) {
        Speech speech = Speech.of(ctx);
        FormField current = FormField.text(CURRENT, speech.say("account.password.current"), "")
                .withType("password", "current-password")
                .withError(asked.currentError().map(speech::say).orElse(""));
        FormField language = languages(speech, Caller.of(ctx).chosen())
                .withError(asked.speechError().map(speech::say).orElse(""));
        boolean wrong = asked.wrong() || !chosen.ok();
        pages.show(ctx, "people/account", new AccountPage(speech.titled(wrong, speech.say("account.title")), me.name(),
                me.email(), PersonRepository.word(me.role()), Caller.of(ctx).chapterName(),
                !wrong && ctx.queryParam("saved") != null, language, scales(speech, Caller.of(ctx).chosen()), current,
                chosen.box(speech), chosen.boxAgain(speech)));
    }

    private static FormField languages(Speech speech, Chosen chosen) {
        Stream<Option> named = Arrays.stream(Language.values())
                .map(language -> new Option(language.tag(), language.ownName()));
        List<Option> options = Stream.concat(
                Stream.of(new Option("", speech.say("account.speech.asBrowser"))), named).toList();
        return FormField.select(LANGUAGE, speech.say("account.speech.language"),
                chosen.language().map(Language::tag).orElse(""), options);
    }

    private static FormField scales(Speech speech, Chosen chosen) {
        List<Option> options = Arrays.stream(Scale.values())
                .map(scale -> new Option(scale.unit(), scale.sign())).toList();
        return FormField.select(SCALE, speech.say("account.speech.scale"), chosen.scale().unit(), options);
    }
}
