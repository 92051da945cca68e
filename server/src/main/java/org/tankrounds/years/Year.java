package org.tankrounds.years;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.season.DeathCause;
import org.tankrounds.season.DeathCauses;
import org.tankrounds.season.Ledger;
import org.tankrounds.season.Survivors;

/**
 * The counts of all tanks of one season together.
 *
 * @param endsOn its last day
 * @param running it is not over
 * @param past where it was put in from a sheet: the sheet's code
 * @param deadUnstaged dead of which nobody told at what stage
 */
record Year(String name, LocalDate endsOn, boolean running, Optional<String> past, Ledger ledger,
        Survivors survivors, int deadUnstaged, DeathCauses causes) {

    int dead() {
        return ledger.dead() + deadUnstaged;
    }

    int came() {
        return survivors.came();
    }

    /** Of those that came, the ones that left alive or are there by count. */
    int survived() {
        return survivors.survived();
    }

    Map<DeathCause, Integer> deadByCause() {
        return causes.dead();
    }
}
