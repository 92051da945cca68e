package org.tankrounds.pages;

import java.util.List;

/**
 * Where a season's summary is frozen.
 *
 * @param summary where the summary is
 * @param season its name
 * @param open what an agency would ask about; each leads to where it can be looked at
 * @param same a sentence where no figure has changed since the last version; empty where one has
 * @param action where the form is sent
 * @param freeze text of its button
 */
public record FreezePage(String title, String summary, String season, List<FormPage.Link> open, String same,
        String action, String freeze) implements Page {}
