package org.tankrounds.eggday;

import java.util.Collection;
import java.util.OptionalInt;

/**
 * What became of the eggs that were collected; nothing is forced to fit.
 *
 * @param collected empty until somebody said
 * @param handedOver to classes, the dead among them included
 * @param leftOver eggs that went back, or were disposed of as told; empty until somebody counted
 * @param open stops that have no receipt yet
 */
record EggBalance(OptionalInt collected, int handedOver, int dead, OptionalInt leftOver, int open) {

    static EggBalance of(EggRun run, int stops, Collection<EggReceipt> receipts) {
        return new EggBalance(run.details().eggs(),
                receipts.stream().mapToInt(receipt -> receipt.details().eggs()).sum(),
                receipts.stream().mapToInt(receipt -> receipt.details().dead().orElse(0)).sum(),
                run.details().leftOver(), stops - receipts.size());
    }

    int intoTanks() {
        return handedOver - dead;
    }

    /** Collected, and told of by nobody since; below 0 where more is told of than was collected. */
    OptionalInt untold() {
        return collected.isEmpty() ? OptionalInt.empty()
                : OptionalInt.of(collected.getAsInt() - handedOver - leftOver.orElse(0));
    }
}
