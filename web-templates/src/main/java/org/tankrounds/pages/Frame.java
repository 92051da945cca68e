package org.tankrounds.pages;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * What surrounds every page.
 *
 * @param chapter empty where nobody is signed in
 * @param person empty where nobody is signed in
 * @param personTo address of the person's own page; empty for a class that came with its card
 * @param account names the person, or the class, to the device; empty where nobody is signed in
 * @param now the chapter's clock, in words
 * @param formToken goes back with every form
 * @param languages others that the page can be had in; empty where the account says it
 * @param build changes with every build that looks or behaves differently
 * @param assets from a file's name to its address in this build
 */
public record Frame(
        String title,
        String chapter,
        String person,
        String personTo,
        String account,
        String now,
        String formToken,
        List<Link> navigation,
        List<OtherLanguage> languages,
        String build,
        UnaryOperator<String> assets) {

    public record Link(String text, String to, boolean here) {}

    /** @param name as those call it who speak it */
    public record OtherLanguage(String tag, String name) {}

    public String asset(String name) {
        return assets.apply(name);
    }

    public boolean signedIn() {
        return !person.isEmpty();
    }
}
