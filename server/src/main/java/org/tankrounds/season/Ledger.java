package org.tankrounds.season;

import org.tankrounds.fish.Stage;

/**
 * Every egg accounted for: received + moved in = dead + moved out + thinned + released + alive + unexplained. Nothing
 * is forced. Where more left or died than were there, nobody is left alive by count and the surplus stands as a
 * negative number unexplained; where fewer were found than the count said, they stand as a positive one.
 *
 * @param received eggs, as the supplier counted them
 * @param movedIn from other tanks of the chapter
 * @param deadAsEggs deaths recorded before hatch
 * @param deadAsSacFry deaths recorded from hatch to first feeding
 * @param deadFeeding deaths recorded from first feeding on
 * @param movedOut to other tanks of the chapter
 * @param thinned taken out before the release
 * @param released into a stream
 * @param alive by count, never below none
 * @param unexplained what the count leaves over
 */
public record Ledger(int received, int movedIn, int deadAsEggs, int deadAsSacFry, int deadFeeding, int movedOut,
        int thinned, int released, int alive, int unexplained) {

    public static final Ledger EMPTY = new Ledger(0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    public Ledger {
        int left = deadAsEggs + deadAsSacFry + deadFeeding + movedOut + thinned + released;
        if (received + movedIn != left + alive + unexplained) {
            throw new IllegalArgumentException("the ledger does not balance: " + received + " received, " + movedIn
                    + " moved in, " + left + " dead or gone, " + alive + " alive, " + unexplained + " unexplained");
        }
    }

    public static Ledger ofReceived(int eggs) {
        return EMPTY.withReceived(eggs);
    }

    public int dead() {
        return deadAsEggs + deadAsSacFry + deadFeeding;
    }

    /** Away to other tanks, less those that came from them; of all tanks together none. */
    public int movedAway() {
        return movedOut - movedIn;
    }

    /** Eggs and fish that came from elsewhere. */
    public int came() {
        return received + Math.max(0, -movedAway());
    }

    /** Of those that came, the ones that are there by count or left alive; never more than came and did not die. */
    public int survived() {
        int left = alive + released + thinned + Math.max(0, movedAway());
        return Math.max(0, Math.min(came() - dead(), left));
    }

    public Ledger withReceived(int eggs) {
        return new Ledger(received + eggs, movedIn, deadAsEggs, deadAsSacFry, deadFeeding, movedOut, thinned, released,
                alive + eggs, unexplained);
    }

    public Ledger withMovedIn(int fish) {
        return new Ledger(received, movedIn + fish, deadAsEggs, deadAsSacFry, deadFeeding, movedOut, thinned, released,
                alive + fish, unexplained);
    }

    /** One tank's ledger with more deaths in it; for sums of tanks see {@link #plus}. */
    public Ledger withDeaths(Stage stage, int deaths) {
        return new Ledger(received, movedIn,
                deadAsEggs + (stage == Stage.EGG ? deaths : 0),
                deadAsSacFry + (stage == Stage.SAC_FRY ? deaths : 0),
                deadFeeding + (stage == Stage.FEEDING ? deaths : 0),
                movedOut, thinned, released, left(deaths), unexplained + surplus(deaths));
    }

    public Ledger withMovedOut(int fish) {
        return new Ledger(received, movedIn, deadAsEggs, deadAsSacFry, deadFeeding, movedOut + fish, thinned, released,
                left(fish), unexplained + surplus(fish));
    }

    public Ledger withThinned(int fish) {
        return new Ledger(received, movedIn, deadAsEggs, deadAsSacFry, deadFeeding, movedOut, thinned + fish, released,
                left(fish), unexplained + surplus(fish));
    }

    public Ledger withReleased(int fish) {
        return new Ledger(received, movedIn, deadAsEggs, deadAsSacFry, deadFeeding, movedOut, thinned, released + fish,
                left(fish), unexplained + surplus(fish));
    }

    /** All that are there were counted: what the count before had more, or less, is unexplained. */
    public Ledger withCounted(int fish) {
        return new Ledger(received, movedIn, deadAsEggs, deadAsSacFry, deadFeeding, movedOut, thinned, released, fish,
                unexplained + alive - fish);
    }

    /** Several tanks together: each column adds up, and one tank's surplus does not hide behind another's living. */
    public Ledger plus(Ledger other) {
        return new Ledger(received + other.received, movedIn + other.movedIn, deadAsEggs + other.deadAsEggs,
                deadAsSacFry + other.deadAsSacFry, deadFeeding + other.deadFeeding, movedOut + other.movedOut,
                thinned + other.thinned, released + other.released, alive + other.alive,
                unexplained + other.unexplained);
    }

    private int left(int less) {
        return Math.max(0, alive - less);
    }

    private int surplus(int less) {
        return Math.min(0, alive - less);
    }
}
