package org.tankrounds.pages;

import java.util.List;

/** What went wrong, in words that say what to do. */
public record ErrorPage(String title, String detail, List<String> sentences) implements Page {}
