package org.tankrounds.season;

import org.tankrounds.fish.Stage;

/**
 * Every egg accounted for: received = dead + alive + unexplained. Nothing is forced. Where more deaths were recorded
 * than eggs received, nobody is left alive by count and the surplus stands as a negative number unexplained.
 *
 * @param received eggs, as the supplier counted them
 * @param deadAsEggs deaths recorded before hatch
 * @param deadAsSacFry deaths recorded from hatch to first feeding
 * @param deadFeeding deaths recorded from first feeding on
 * @param alive by count: received less dead, never below none
 * @param unexplained what the count leaves over: 0 or negative
 */
public record Ledger(
        int received, int deadAsEggs, int deadAsSacFry, int deadFeeding, int alive, int unexplained) {

    public static final Ledger EMPTY = new Ledger(0, 0, 0, 0, 0, 0);

    public Ledger {
        if (received != deadAsEggs + deadAsSacFry + deadFeeding + alive + unexplained) {
            throw new IllegalArgumentException("the ledger does not balance: " + received + " received, "
                    + (deadAsEggs + deadAsSacFry + deadFeeding) + " dead, " + alive + " alive, "
                    + unexplained + " unexplained");
        }
    }

    public static Ledger ofReceived(int eggs) {
        return new Ledger(eggs, 0, 0, 0, eggs, 0);
    }

    public int dead() {
        return deadAsEggs + deadAsSacFry + deadFeeding;
    }

    /** One tank's ledger with more deaths in it; for sums of tanks see {@link #plus}. */
    public Ledger withDeaths(Stage stage, int deaths) {
        int left = received - dead() - deaths;
        return new Ledger(
                received,
                deadAsEggs + (stage == Stage.EGG ? deaths : 0),
                deadAsSacFry + (stage == Stage.SAC_FRY ? deaths : 0),
                deadFeeding + (stage == Stage.FEEDING ? deaths : 0),
                Math.max(0, left),
                Math.min(0, left));
    }

    /** Several tanks together: each column adds up, and one tank's surplus does not hide behind another's living. */
    public Ledger plus(Ledger other) {
        return new Ledger(
                received + other.received,
                deadAsEggs + other.deadAsEggs,
                deadAsSacFry + other.deadAsSacFry,
                deadFeeding + other.deadFeeding,
                alive + other.alive,
                unexplained + other.unexplained);
    }
}
