package org.tankrounds.pages;

import java.util.List;

/**
 * @param next where to go on afterwards: a page of this service
 * @param kept what had been typed when the session ended; empty almost always
 */
public record SignInPage(FormField email, FormField password, String next, List<HiddenField> kept) implements Page {
    @Override
    public String title() {
        return email.wrong() ? "Error: sign in" : "Sign in";
    }

    public List<FormField> errors() {
        return email.wrong() ? List.of(email) : List.of();
    }
}
