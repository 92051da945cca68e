package org.tankrounds.pages;

/**
 * A secret that is shown once.
 *
 * @param explanation what to do with it
 * @param back where to go on
 */
public record HandOverPage(
        String title, String explanation, String label, String secret, String back, String backText) implements Page {}
