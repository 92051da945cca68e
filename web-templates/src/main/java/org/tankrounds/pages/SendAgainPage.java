package org.tankrounds.pages;

import java.util.List;

/**
 * Signed in again: what had been typed can be sent now.
 *
 * @param leave where to go on without sending it
 */
public record SendAgainPage(String title, String action, List<HiddenField> fields, String leave) implements Page {}
