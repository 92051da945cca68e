package org.tankrounds.lab;

import java.util.Locale;
import org.tankrounds.advice.Trusts;
import org.tankrounds.forecast.Effect;

/**
 * A piece of advice followed on one morning.
 *
 * @param tank its code and the season's seed
 * @param what was done
 * @param sort of it, as far as trust goes
 * @param said what the engine expected
 * @param without what came where nobody stepped in
 * @param alone what came where it was done, and the class did what it would have done without
 * @param with what came where it was done, and the class saw to the tank by what it then read
 */
public record Followed(String world, String tank, int hour, String what, Trusts.Sort sort, Effect said,
        Came without, Came alone, Came with) {

    boolean isNewlyBeyond() {
        return with.isBeyond() && !without.isBeyond();
    }

    /** Newly beyond by what was done, not by what the class then did or no longer did. */
    boolean isNewlyBeyondOfItself() {
        return alone.isBeyond() && !without.isBeyond();
    }

    /** Fish-hours more than without. */
    double exposureRaised() {
        return with.exposure() - without.exposure();
    }

    boolean isWorse() {
        return isNewlyBeyond() || isNewlyBeyondOfItself() || exposureRaised() > 0;
    }

    /** What came without, of itself, and with, and the limits that it went further beyond of itself. */
    String told() {
        return String.format(Locale.ROOT, "%-14s %-12s %s %s  %-6s %8.1f | %-6s %8.1f | %-6s %8.1f  %s", what, world,
                tank, LabSeason.at(hour), word(without), without.exposure(), word(alone), alone.exposure(),
                word(with), with.exposure(), alone.furtherThan(without));
    }

    private static String word(Came came) {
        return came.isBeyond() ? "beyond" : "within";
    }
}
