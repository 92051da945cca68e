package org.tankrounds.people;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.tankrounds.pages.FormField;

/** The two boxes in which a password is chosen. What was typed is never shown again, and never stripped. */
final class NewPassword {
    private static final String FIRST = "password";
    private static final String AGAIN = "password_again";

    private final String typed;
    private String firstError = "";
    private String againError = "";

    private NewPassword(String typed) {
        this.typed = typed;
    }

    static NewPassword blank() {
        return new NewPassword("");
    }

    /** @param about what others know of the person */
    static NewPassword of(Context ctx, List<String> about) {
        NewPassword chosen = new NewPassword(Optional.ofNullable(ctx.formParam(FIRST)).orElse(""));
        chosen.firstError = PasswordRules.refusal(chosen.typed, about).orElse("");
        if (chosen.firstError.isEmpty() && !chosen.typed.equals(ctx.formParam(AGAIN))) {
            chosen.againError = "The two are not the same. Type the password in both boxes again.";
        }
        return chosen;
    }

    boolean ok() {
        return firstError.isEmpty() && againError.isEmpty();
    }

    String text() {
        return typed;
    }

    FormField box() {
        return FormField.text(FIRST, "New password", "")
                .withHint(PasswordRules.HINT)
                .withType("password", "new-password")
                .withError(firstError);
    }

    FormField boxAgain() {
        return FormField.text(AGAIN, "The same password again", "")
                .withType("password", "new-password")
                .withError(againError);
    }
}
