package org.tankrounds.pages;

import java.util.List;

/**
 * @param next where to go on afterwards: a page of this service
 * @param kept what had been typed when the session ended; empty almost always
 */
public record SignInPage(String title, FormField email, FormField password, String next, List<HiddenField> kept)
        implements Page {
    @Override
    public boolean mayChangeLanguage() {
        return kept.isEmpty();
    }

    public List<FormField> errors() {
        return email.wrong() ? List.of(email) : List.of();
    }
}
