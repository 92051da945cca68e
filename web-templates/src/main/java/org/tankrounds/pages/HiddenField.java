package org.tankrounds.pages;

/** What a form sends without showing it. */
public record HiddenField(String name, String value) {}
