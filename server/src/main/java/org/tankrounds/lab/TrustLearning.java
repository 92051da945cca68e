package org.tankrounds.lab;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.tankrounds.advice.Advisor;
import org.tankrounds.advice.Trust;
import org.tankrounds.advice.Trusts;
import org.tankrounds.forecast.Forecaster;

/**
 * Learns from worlds drawn at random how much of what the courses show comes true where the advice is
 * followed: in all cases of a sort together, as a share of the fall in chance and as a power of the ratio of
 * exposures. The same numbers give the same trust.
 */
public final class TrustLearning {

    private static final int TANKS = 8;
    private static final int EVERY_NTH_MORNING = 10;
    /** What a sort is trusted before anything is known of it, and what that counts for, in cases. */
    private static final double BEFOREHAND = 0.5;
    private static final double BEFOREHAND_CASES = 30;
    private static final int BISECTIONS = 30;

    private TrustLearning() {
    }

    /** @param progress told after each world, by any thread */
    public static Trusts from(IntStream worlds, Forecaster forecaster, IntConsumer progress) {
        Advisor hopeful = new Advisor(Trusts.full());
        List<Followed> all = worlds.mapToObj(world -> {
            List<Followed> followed = AdviceTrial.of(
                    World.drawn(world), 1, TANKS, EVERY_NTH_MORNING, forecaster, hopeful);
            progress.accept(world);
            return followed;
        }).flatMap(List::stream).toList();
        return of(all);
    }

    static Trusts of(List<Followed> all) {
        Map<Trusts.Sort, Trust> bySort = new EnumMap<>(Trusts.Sort.class);
        for (Trusts.Sort sort : Trusts.Sort.values()) {
            List<Followed> cases = all.stream()
                    .filter(one -> one.sort().filter(sort::equals).isPresent()).toList();
            bySort.put(sort, new Trust(known(chance(cases), cases), known(exposure(cases), cases)));
        }
        return new Trusts(bySort);
    }

    private static double known(double learned, List<Followed> cases) {
        double sure = cases.size() / (cases.size() + BEFOREHAND_CASES);
        double mixed = sure * Math.min(1, Math.max(0, learned)) + (1 - sure) * BEFOREHAND;
        return Math.rint(100 * mixed) / 100;
    }

    private static double chance(List<Followed> cases) {
        double shown = sum(cases, one -> one.said().chanceFall());
        double came = sum(cases, one -> (one.without().isBeyond() ? 1 : 0) - (one.with().isBeyond() ? 1 : 0));
        return shown > 0 ? came / shown : BEFOREHAND;
    }

    /** The power at which the exposures said, with over without, have the ratio of those that came. */
    private static double exposure(List<Followed> cases) {
        double came = sum(cases, one -> one.with().exposure()) / sum(cases, one -> one.without().exposure());
        double low = 0;
        double high = 1;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (low + high) / 2;
            double said = sum(cases, one -> one.said().tempered(1, middle).exposureWith())
                    / sum(cases, one -> one.said().exposureWithout());
            low = said > came ? middle : low;
            high = said > came ? high : middle;
        }
        return (low + high) / 2;
    }

    private static double sum(List<Followed> cases, ToDoubleFunction<Followed> of) {
        return cases.stream().mapToDouble(of).sum();
    }
}
