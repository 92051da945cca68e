package org.tankrounds.pages;

import java.util.List;

/**
 * A season in figures, on screen and on paper.
 *
 * @param address of this page, to which a format's ending is added
 * @param standing whether this is frozen, or what changed since it was; empty where nothing was ever frozen
 * @param ledger the count
 * @param deliveries where the eggs came from
 * @param stages how many outlived each stage of life
 * @param water held against the limits
 * @param actions what was read, asked and done
 * @param causes what the dead are put down to, where somebody said so
 * @param sites where fish were released, and by which approval
 * @param looks at the streams of the sites
 * @param spells the longest runs of days beyond a limit
 * @param surplus a sentence where the count leaves something unexplained; empty where it balances
 * @param freeze where it is frozen, and what has been
 * @param changes on paper: what is otherwise than in the version before
 * @param made when and by which version this was made
 */
public record SummaryPage(
        String title, String chapter, String season, String period, String address, Standing standing,
        String lead, Table ledger, List<Delivery> deliveries, Table stages, Table water, Table actions,
        List<Cause> causes, List<Site> sites, List<Look> looks, List<Spell> spells, String surplus, Freeze freeze,
        List<Change> changes, List<String> notes, String made)
        implements Page {

    /**
     * @param id of its heading
     * @param columns behind that of the names
     * @param groups school by school
     * @param total the chapter's line
     */
    public record Table(String id, List<Column> columns, List<Group> groups, Line total) {
        public int width() {
            return columns.size() + 1;
        }
    }

    public record Column(String name, boolean number) {}

    /** @param sum shown where the school has several tanks */
    public record Group(String school, List<Line> tanks, Line sum) {
        public boolean several() {
            return tanks.size() > 1;
        }
    }

    /** @param name of the room, or what is summed up */
    public record Line(String name, String code, List<Figure> figures) {}

    /**
     * @param to where the rows behind it are; empty on paper, and where there is nothing behind it
     * @param about what the link leads to, said to those who hear it without the table
     * @param more what stands small below it
     */
    public record Figure(String text, String to, String about, List<String> more) {
        public boolean linked() {
            return !to.isEmpty();
        }
    }

    /**
     * @param how its eggs were counted, and how far that may be off
     * @param age degree-days on arrival
     */
    public record Delivery(String day, String to, Figure eggs, String how, String age, String supplier,
            String certificate) {}

    public record Cause(String name, Figure dead) {}

    /** @param approval a sentence with its number, or that none was written down */
    public record Site(String place, String approval, Figure fish, List<Release> releases) {}

    /**
     * @param seen what was seen and measured at the water; empty where nobody wrote it down
     * @param plan where that is told at length; empty on paper, and without a plan
     */
    public record Release(String day, String from, Figure fish, String how, String temperature, String seen,
            String plan) {}

    /**
     * One look at a stream; what its animals tell is empty where nobody looked for them.
     *
     * @param to its own page; empty on paper
     * @param water temperature, pH and oxygen
     */
    public record Look(String day, String to, String site, String stream, String water, String animals, String index,
            String ept, String kinds, String score) {}

    public record Spell(String what, String where, Figure when, String read, String worst) {}

    /**
     * @param text what stands now
     * @param to where it is told at length; empty where there is no more to tell
     */
    public record Standing(String text, String to) {
        public static final Standing NONE = new Standing("", "");
    }

    /** @param to where a version is frozen; empty where that cannot be asked for */
    public record Freeze(String to, List<Frozen> versions) {
        public static final Freeze NONE = new Freeze("", List.of());
    }

    public record Frozen(String name, String when, String to) {}

    /** @param where the tank, or the site */
    public record Change(String where, String what, String before, String now) {}
}
