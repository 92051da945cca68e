package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * A version of a summary that was frozen.
 *
 * @param title the heading, after a word where something is to be put right
 * @param summary where the summary is
 * @param season its name
 * @param lead when, by whom and by which software
 * @param from heading of what is otherwise than in the version before; empty in the first
 * @param changes what that is
 * @param said why nothing was frozen just now; empty otherwise
 * @param last whether no newer version is there
 * @param since what is otherwise now than in it; told of the last only
 * @param freeze where the next version is frozen
 * @param handOver links by which others read it
 */
public record FrozenPage(String title, String heading, String summary, String season, String said, String lead,
        List<File> files, String from, List<SummaryPage.Change> changes, boolean last,
        List<SummaryPage.Change> since, String freeze, HandOver handOver) implements Page {

    public record File(String name, String to, String sha256, String size) {}

    /** @param action where a new link is asked for */
    public record HandOver(String action, String submissionId, FormField reader, FormField days, List<Link> links) {
        public List<FormField> wrong() {
            return Stream.of(reader, days).filter(FormField::wrong).toList();
        }
    }

    /** @param withdraw where it is taken back; empty of one that opens nothing any more */
    public record Link(String reader, String state, String withdraw) {}
}
