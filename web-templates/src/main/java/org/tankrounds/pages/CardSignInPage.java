package org.tankrounds.pages;

import java.util.List;

/**
 * Where a class comes in with its card.
 *
 * @param person who is signed in on this browser and would be signed out; empty almost always
 * @param kept what had been typed when the session ended; empty almost always
 */
public record CardSignInPage(String title, FormField code, String person, List<HiddenField> kept) implements Page {
    @Override
    public boolean mayChangeLanguage() {
        return kept.isEmpty();
    }

    public List<FormField> errors() {
        return code.wrong() ? List.of(code) : List.of();
    }

    public boolean filledIn() {
        return !code.wrong() && !code.value().isEmpty();
    }
}
