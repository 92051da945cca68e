package org.tankrounds.pages;

import java.util.List;

/**
 * Signed in again: what had been typed can be sent now.
 *
 * @param lead why it was not taken at once
 * @param inWhoseName whose it will be
 * @param theirs whether it can be sent in that name
 * @param carrying the same as the sign-in form carries it, for somebody else to come in
 * @param leave where to go on without sending it
 */
public record SendAgainPage(String title, String lead, String inWhoseName, boolean theirs, String action,
        List<HiddenField> fields, List<HiddenField> carrying, String leave) implements Page {
    @Override
    public boolean mayChangeLanguage() {
        return false;
    }
}
