package org.tankrounds.advice;

import java.util.Optional;
import org.tankrounds.forecast.Effect;

/**
 * A proposal with what the model expects of it.
 *
 * @param isSafe whether the model finds no harm in it
 * @param shown what the courses show of it, with what it leans on; empty where the water feels nothing
 * @param effect the same as far as that is to be trusted
 */
record Tried(Proposal proposal, boolean isSafe, Optional<Effect> shown, Optional<Effect> effect) {

    Remedy remedy() {
        return new Remedy(proposal.act(), effect, proposal.leansOn());
    }
}
