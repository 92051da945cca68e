package org.tankrounds.lab;

import java.util.List;
import org.tankrounds.advice.Trusts;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Effect;

/**
 * A piece of advice followed on one morning.
 *
 * @param tank of all tanks played
 * @param what was done
 * @param sort of it, as far as trust goes
 * @param said what the engine expected
 * @param without what came where nobody stepped in
 * @param alone what came where it was done, and the class did what it would have done without
 * @param with what came where it was done, and the class saw to the tank by what it then read
 */
public record Followed(String world, String tank, int hour, String what, Trusts.Sort sort, Effect said, Came without, Came alone,
        Came with) {

    boolean isNewlyBeyond() {
        return with.isBeyond() && !without.isBeyond();
    }

    /** Newly beyond by what was done, not by what the class then did or no longer did. */
    boolean isNewlyBeyondOfItself() {
        return alone.isBeyond() && !without.isBeyond();
    }

    double exposureRaised() {
        return with.exposure() - without.exposure();
    }

    double exposureRaisedOfItself() {
        return alone.exposure() - without.exposure();
    }

    /** The limits that it went further beyond, for what was done alone. */
    List<Driver> further() {
        return alone.furtherThan(without);
    }
}
