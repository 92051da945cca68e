package org.tankrounds.pages;

import java.util.List;

/**
 * A version of a summary that was frozen.
 *
 * @param summary where the summary is
 * @param season its name
 * @param lead when, by whom and by which software
 * @param from heading of what is otherwise than in the version before; empty in the first
 * @param changes what that is
 * @param last whether no newer version is there
 * @param since what is otherwise now than in it; told of the last only
 * @param freeze where the next version is frozen
 */
public record FrozenPage(String title, String summary, String season, String lead, List<File> files, String from,
        List<SummaryPage.Change> changes, boolean last, List<SummaryPage.Change> since, String freeze) implements Page {

    public record File(String name, String to, String sha256, String size) {}
}
