package org.tankrounds.lab;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Trusts;
import org.tankrounds.forecast.Effect;

/**
 * A piece of advice followed on one morning.
 *
 * @param tank its code and the season's seed
 * @param what was done, and what was staged before
 * @param acts in full
 * @param sort of it, as far as trust goes; empty where none is asked for
 * @param said what the engine expected
 * @param without what came where nobody stepped in
 * @param alone what came where it was done, and the class did what it would have done without
 * @param with what came where it was done, and the class saw to the tank by what it then read
 */
public record Followed(String world, String tank, int hour, String what, List<Act> acts,
        Optional<Trusts.Sort> sort, Effect said, Came without, Came alone, Came with) {

    /** Fewer fish-hours more are a matter of a few fish that lived (the project's choice). */
    private static final double FURTHER = 0.1;
    private static final int FEW_HOURS = 6;

    /** Whether anything was done: to leave the water is to do nothing. */
    boolean isDone() {
        return acts.stream().noneMatch(act -> act.kind() == Act.Kind.LEAVE_WATER);
    }

    boolean isNewlyBeyond() {
        return with.isBeyond() && !without.isBeyond();
    }

    /** Newly beyond by what was done, not by what the class then did or no longer did. */
    boolean isNewlyBeyondOfItself() {
        return alone.isBeyond() && !without.isBeyond();
    }

    /** So, but for some hours or by little only. */
    boolean isSlightlyBeyondOfItself() {
        return isNewlyBeyondOfItself() && (alone.hoursBeyond() <= FEW_HOURS || alone.furthest() <= FURTHER);
    }

    /** Kept within every limit by what was done. */
    boolean isKeptOfItself() {
        return !alone.isBeyond() && without.isBeyond();
    }

    /** Beyond a limit anyhow, and by what was done clearly further. */
    boolean isFurtherOfItself() {
        return without.isBeyond() && alone.exposure() > (1 + FURTHER) * without.exposure();
    }

    /** The other way round: clearly less far. */
    boolean isLessFarOfItself() {
        return without.isBeyond() && alone.isBeyond() && (1 + FURTHER) * alone.exposure() < without.exposure();
    }

    /** Fish-hours more than without. */
    double exposureRaised() {
        return with.exposure() - without.exposure();
    }

    boolean isWorse() {
        return isNewlyBeyond() || isNewlyBeyondOfItself() || exposureRaised() > 0;
    }

    /** What was done; what came without, of itself, and with; and how far it went further beyond of itself. */
    String told() {
        return String.format(Locale.ROOT, "%s [%s]  %s %s %s  %s %.1f | %s %.1f | %s %.1f  %s", what, amounts(), world,
                tank, LabSeason.at(hour), word(without), without.exposure(), word(alone), alone.exposure(),
                word(with), with.exposure(), String.join(", ", alone.furtherThan(without)));
    }

    private String amounts() {
        return acts.stream().map(act -> act.kind() + (act.amount().isEmpty() ? ""
                : String.format(Locale.ROOT, " %.3g %s", act.amount().getAsDouble(), act.unit())))
                .collect(Collectors.joining(", "));
    }

    private static String word(Came came) {
        return came.isBeyond() ? "beyond" : "within";
    }
}
