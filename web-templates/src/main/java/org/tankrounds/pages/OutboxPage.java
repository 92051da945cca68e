package org.tankrounds.pages;

/**
 * Readings that wait on this device, and those sent lately; its script fills it in.
 *
 * @param weekdays short, from Sunday, with bars between: a browser's own are not those of the other pages
 * @param months short, likewise
 */
public record OutboxPage(String title, String weekdays, String months) implements Page {}
