package org.tankrounds.pages;

/** Readings that wait on this device, and those sent lately; its script fills it in. */
public record OutboxPage(String title) implements Page {}
