package org.tankrounds.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.water.Ammonia;

/** What makes a limit's trouble worse, or explains it; each explains a part of the limit's share. */
final class Circumstances {

    private static final double UNRIPE_DAYS = 56;
    private static final double LITTLE_CHLORIDE_MG_PER_L = 10;
    private static final double HIGH_PH = 7.6;
    private static final double LITTLE_ALKALINITY_MG_PER_L = 30;

    private final Driver limit;
    private final double share;
    private final TankBelief belief;
    private final List<Reason> reasons = new ArrayList<>();

    private Circumstances(Driver limit, double share, TankBelief belief) {
        this.limit = limit;
        this.share = share;
        this.belief = belief;
    }

    static List<Reason> of(Driver limit, double share, TankBelief belief, Limits limits) {
        Circumstances circumstances = new Circumstances(limit, share, belief);
        switch (limit) {
            case UN_IONISED_AMMONIA -> {
                circumstances.youngFilter();
                circumstances.highPh();
            }
            case NITRITE -> {
                circumstances.youngFilter();
                circumstances.littleChloride(limits.nitriteMgPerL(belief.chlorideMgPerL()));
            }
            case PH -> circumstances.littleAlkalinity();
            default -> { }
        }
        return circumstances.reasons;
    }

    private void youngFilter() {
        double days = belief.development().daysFeedingAt(belief.asOf());
        if (days >= 0 && days <= UNRIPE_DAYS) {
            reasons.add(Reason.of(Reason.Kind.FILTER_NOT_RIPE, limit, share * 0.4)
                    .withSince(belief.development().firstFeedingAt()).withOverHours(days * 24));
        }
    }

    private void littleChloride(double nitriteLimitMgPerL) {
        if (belief.chlorideMgPerL() <= LITTLE_CHLORIDE_MG_PER_L) {
            reasons.add(Reason.of(Reason.Kind.LOW_CHLORIDE, limit, share * 0.3)
                    .withValue(belief.chlorideMgPerL(), "mg/L")
                    .withLimit(OptionalDouble.of(nitriteLimitMgPerL)));
        }
    }

    private void highPh() {
        double ph = belief.ph().valueNow();
        if (ph >= HIGH_PH) {
            double percent = 100 * Ammonia.unIonisedFraction(ph, belief.temperature().medianC());
            reasons.add(Reason.of(Reason.Kind.HIGH_PH_MAKES_AMMONIA_HARMFUL, limit, share * 0.3)
                    .withValue(ph, "pH").withShareOfAmmonia(percent)
                    .withAt(belief.ph().newest().map(Observation::at).orElse(null)));
        }
    }

    private void littleAlkalinity() {
        belief.newestAlkalinity().filter(read -> read.value() < LITTLE_ALKALINITY_MG_PER_L)
                .ifPresent(read -> reasons.add(Reason.of(Reason.Kind.ALKALINITY_LOW, limit, share * 0.4)
                        .withValue(read.value(), "mg/L as CaCO₃").withAt(read.at())));
    }
}
