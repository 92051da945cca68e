package org.tankrounds.pages;

import java.util.List;

/**
 * A page with one form: places, kits, seasons and lots are all added and edited on it.
 *
 * @param title the heading, after a word where something is to be put right
 * @param trail where the page stands; the last link leads one step up
 * @param lead a sentence below the heading; empty for none
 * @param action where the form is sent
 * @param save text of its button
 * @param shown goes back with the form, so that nobody overwrites what they have not seen
 * @param clashes what somebody else changed meanwhile; empty almost always
 * @param acts what else can be done with the thing, each a button of its own
 */
public record FormPage(
        String title,
        String heading,
        List<Link> trail,
        String lead,
        String action,
        String save,
        String shown,
        List<Group> groups,
        List<Clash> clashes,
        List<Act> acts) implements Page {

    public record Link(String text, String to) {}

    /**
     * Fields under one heading; each row holds what belongs side by side.
     *
     * @param caution what to beware of where it is done; empty for nothing
     */
    public record Group(String heading, String note, String caution, List<List<FormField>> rows) {
        public Group(String heading, String note, List<List<FormField>> rows) {
            this(heading, note, "", rows);
        }
    }

    public record Clash(String label, String yours, String theirs) {}

    /** @param opens whether the button only opens a page */
    public record Act(String heading, String explanation, String action, String button, boolean opens) {
        public Act(String heading, String explanation, String action, String button) {
            this(heading, explanation, action, button, false);
        }
    }

    public List<FormField> wrong() {
        return groups.stream()
                .flatMap(group -> group.rows().stream())
                .flatMap(List::stream)
                .filter(FormField::wrong)
                .toList();
    }

    public Link up() {
        return trail.get(trail.size() - 1);
    }
}
