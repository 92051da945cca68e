package org.tankrounds.advice;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.forecast.Prospect;
import org.tankrounds.water.Analyte;

/**
 * An act that is yet to stand the test of the model.
 *
 * @param deed what the water feels of it; empty where it feels nothing
 * @param isForesight whether it is for what three days do not show; then it is enough that they show no harm
 * @param beside what has to be done with it, which is proposed too; nothing where it is good by itself
 */
record Proposal(Act act, Optional<Deed> deed, boolean isForesight, Deed beside) {

    /** Of the same act twice: the larger, the one for breath, salt that serves by itself, the one to go on with. */
    private static final Comparator<Proposal> BY_WEIGHT = Comparator
            .<Proposal>comparingDouble(each -> each.act.amount().orElse(0))
            .thenComparing(each -> each.act.isAgainst(Driver.DISSOLVED_OXYGEN))
            .thenComparing(each -> each.act.isAgainst(Driver.NITRITE))
            .thenComparing(Proposal::isForesight)
            .thenComparing(each -> !each.act.asks().isEmpty());

    static Proposal of(Act act, Deed deed) {
        return new Proposal(act, Optional.of(deed), false, Deed.NOTHING);
    }

    static Proposal of(Act act) {
        return new Proposal(act, Optional.empty(), false, Deed.NOTHING);
    }

    static Proposal waterChange(Driver driver, double percent, OptionalDouble volumeL, Optional<Analyte> next) {
        return of(Act.waterChange(driver, percent, volumeL, next), Deed.waterChange(percent / 100));
    }

    static Proposal moreAir(Driver driver) {
        return of(Act.plain(Act.Kind.MORE_AIR, driver), Deed.moreAir());
    }

    /** What the water feels of all of them. */
    static Deed deedOf(Stream<Proposal> proposals) {
        return proposals.flatMap(each -> each.deed.stream()).reduce(Deed.NOTHING, Deed::and);
    }

    Proposal asForesight() {
        return new Proposal(act, deed, true, beside);
    }

    Proposal with(Deed others) {
        return new Proposal(act, deed, isForesight, others);
    }

    boolean leansOnOthers() {
        return !beside.equals(Deed.NOTHING);
    }

    /** What is to be done with it, as kinds of acts. */
    Set<Act.Kind> leansOn() {
        Set<Act.Kind> kinds = EnumSet.noneOf(Act.Kind.class);
        if (beside.chlorideMgPerL() > 0) {
            kinds.add(Act.Kind.SALT);
        }
        if (beside.fastHours() > 0) {
            kinds.add(Act.Kind.SKIP_FEED);
        }
        return kinds;
    }

    /** What the courses show of it with what is done beside it; empty where the water feels nothing. */
    Optional<Prospect> shown(LookAhead ahead) {
        return deed.map(own -> ahead.prospect(beside.and(own), driver()));
    }

    /** No harm is found in it, and of the good that is done beside it hardly any is undone. */
    boolean isHarmless(LookAhead ahead) {
        return shown(ahead).map(all -> Worth.isSafe(all) && isBorne(all, ahead)).orElse(true);
    }

    boolean isBorne(Prospect all, LookAhead ahead) {
        return !leansOnOthers() || Worth.isBorne(all.effect(), ahead.effect(beside, driver()));
    }

    Driver driver() {
        return act.driver().orElseThrow();
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

    /** The weightier of two alike; for later, where either is. */
    Proposal mergedWith(Proposal earlier) {
        Proposal weightier = BY_WEIGHT.compare(this, earlier) > 0 ? this : earlier;
        return isForesight || earlier.isForesight ? weightier.asForesight() : weightier;
    }
}
