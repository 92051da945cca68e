package org.tankrounds.advice;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.water.Analyte;

/**
 * An act that is yet to stand the test of the model.
 *
 * @param deed what the water feels of it; empty where it feels nothing
 * @param isForesight whether it is for what three days do not show; then it is enough that they show no harm
 */
record Proposal(Act act, Optional<Deed> deed, boolean isForesight) {

    /** Of the same act twice: the larger, the one for breath, the one that needs no effect, the one to go on with. */
    private static final Comparator<Proposal> BY_WEIGHT = Comparator
            .<Proposal>comparingDouble(each -> each.act.amount().orElse(0))
            .thenComparing(each -> each.act.isAgainst(Driver.DISSOLVED_OXYGEN))
            .thenComparing(Proposal::isForesight)
            .thenComparing(each -> !each.act.asks().isEmpty());

    static Proposal of(Act act, Deed deed) {
        return new Proposal(act, Optional.of(deed), false);
    }

    static Proposal of(Act act) {
        return new Proposal(act, Optional.empty(), false);
    }

    static Proposal waterChange(Driver driver, double percent, OptionalDouble volumeL, Optional<Analyte> next) {
        return of(Act.waterChange(driver, percent, volumeL, next), Deed.waterChange(percent / 100));
    }

    static Proposal moreAir(Driver driver) {
        return of(Act.plain(Act.Kind.MORE_AIR, driver), Deed.moreAir());
    }

    Proposal asForesight() {
        return new Proposal(act, deed, true);
    }

    /** Air for fish that lack it, or die of what nobody knows yet. */
    boolean isForBreath() {
        return act.kind() == Act.Kind.MORE_AIR
                && (act.isAgainst(Driver.DISSOLVED_OXYGEN) || act.isAgainst(Driver.DEATHS));
    }

    boolean isLike(Proposal other) {
        return act.kind() == other.act.kind()
                && (act.kind() != Act.Kind.ASK_FOR_READING || act.asks().equals(other.act.asks()));
    }

    boolean isMoreThan(Proposal other) {
        return BY_WEIGHT.compare(this, other) > 0;
    }
}
