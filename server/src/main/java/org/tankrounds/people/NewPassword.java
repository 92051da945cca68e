package org.tankrounds.people;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.tankrounds.pages.FormField;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** The two boxes in which a password is chosen. What was typed is never shown again, and never stripped. */
final class NewPassword {
    private static final String FIRST = "password";
    private static final String AGAIN = "password_again";

    private final String typed;
    private Optional<Saying> firstError = Optional.empty();
    private Optional<Saying> againError = Optional.empty();

    private NewPassword(String typed) {
        this.typed = typed;
    }

    static NewPassword blank() {
        return new NewPassword("");
    }

    /** @param about what others know of the person */
    static NewPassword of(Context ctx, List<String> about) {
        NewPassword chosen = new NewPassword(Optional.ofNullable(ctx.formParam(FIRST)).orElse(""));
        chosen.firstError = PasswordRules.refusal(chosen.typed, about);
        if (chosen.firstError.isEmpty() && !chosen.typed.equals(ctx.formParam(AGAIN))) {
            chosen.againError = Optional.of(Saying.of("account.password.notSame"));
        }
        return chosen;
    }

    boolean ok() {
        return firstError.isEmpty() && againError.isEmpty();
    }

    String text() {
        return typed;
    }

    FormField box(Speech speech) {
        return FormField.text(FIRST, speech.say("account.password.new"), "")
                .withHint(speech.say("account.password.hint", PasswordRules.SHORTEST))
                .withType("password", "new-password")
                .withError(firstError.map(speech::say).orElse(""));
    }

    FormField boxAgain(Speech speech) {
        return FormField.text(AGAIN, speech.say("account.password.again"), "")
                .withType("password", "new-password")
                .withError(againError.map(speech::say).orElse(""));
    }
}
