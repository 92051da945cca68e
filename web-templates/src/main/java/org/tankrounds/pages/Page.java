package org.tankrounds.pages;

/** What a template prints. Everything is formatted already: a template only loops, tests and prints. */
public interface Page {
    /** The page's answer in a few words; stands in the window's title. */
    String title();

    /** Whether somebody may go over to another language without losing what they typed. */
    default boolean mayChangeLanguage() {
        return true;
    }
}
