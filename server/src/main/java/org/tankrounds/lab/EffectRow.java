package org.tankrounds.lab;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.tankrounds.forecast.Driver;

/** What one act was said to do and what it did, over many mornings. */
final class EffectRow {

    private static final int SAMPLES = 400;
    private static final double TAIL = 0.025;
    private static final Set<Driver> GIVEN_OFF = EnumSet.of(Driver.UN_IONISED_AMMONIA, Driver.NITRITE);
    private static final String WIDE = "%-45s";

    private final String act;
    private final List<Followed> cases;

    EffectRow(String act, List<Followed> cases) {
        this.act = act;
        this.cases = cases;
    }

    /** By act, in the order of their names. */
    static List<EffectRow> of(List<Followed> all) {
        Map<String, List<Followed>> byAct = new TreeMap<>();
        all.forEach(one -> byAct.computeIfAbsent(one.what(), act -> new ArrayList<>()).add(one));
        return byAct.entrySet().stream()
                .map(entry -> new EffectRow(entry.getKey(), entry.getValue())).toList();
    }

    public String act() {
        return act;
    }

    public int cases() {
        return cases.size();
    }

    List<Followed> followed() {
        return cases;
    }

    /** Share of the mornings after which the tank went beyond a limit though nobody stepped in. */
    public double beyondWithout() {
        return mean(one -> one.without().isBeyond() ? 1 : 0);
    }

    public double beyondWith() {
        return mean(one -> one.with().isBeyond() ? 1 : 0);
    }

    public double saidWithout() {
        return mean(one -> one.said().chanceWithout());
    }

    public double saidWith() {
        return mean(one -> one.said().chanceWith());
    }

    /** Mean true exposure, fish-hours. */
    public double exposureWithout() {
        return mean(one -> one.without().exposure());
    }

    public double exposureWith() {
        return mean(one -> one.with().exposure());
    }

    /** Share of the mornings on which the act brought a tank beyond a limit. */
    public double newlyBeyond() {
        return mean(one -> one.isNewlyBeyond() ? 1 : 0);
    }

    /** Mornings on which what was done took a tank beyond a limit. */
    long broughtBeyond() {
        return count(Followed::isNewlyBeyondOfItself);
    }

    /** Mornings on which what was done kept a tank within every limit. */
    long keptWithin() {
        return count(Followed::isKeptOfItself);
    }

    /** Mornings on which what was done took a tank that was beyond anyhow clearly further. */
    long broughtFurther() {
        return count(Followed::isFurtherOfItself);
    }

    long broughtLessFar() {
        return count(Followed::isLessFarOfItself);
    }

    /** The share of mornings that brought one beyond may be so large at most, by what was seen of them. */
    double broughtBeyondAtMost() {
        return ClopperPearson.upper(broughtBeyond(), cases());
    }

    /** How much more mean exposure there was with the act: the ends of 95 of 100 resamplings of whole tanks. */
    public double[] exposureRaised() {
        Map<String, double[]> byTank = new TreeMap<>();
        for (Followed one : cases) {
            double[] sums = byTank.computeIfAbsent(one.world() + one.tank(), tank -> new double[2]);
            sums[0] += one.exposureRaised();
            sums[1]++;
        }
        List<double[]> tanks = List.copyOf(byTank.values());
        Luck luck = new Luck(tanks.size());
        double[] means = new double[SAMPLES];
        Arrays.setAll(means, i -> resampled(tanks, luck));
        Arrays.sort(means);
        return new double[] {means[(int) (TAIL * SAMPLES)], means[(int) ((1 - TAIL) * SAMPLES) - 1]};
    }

    private static double resampled(List<double[]> tanks, Luck luck) {
        double sum = 0;
        double cases = 0;
        for (int i = 0; i < tanks.size(); i++) {
            double[] tank = tanks.get(luck.between(0, tanks.size() - 1));
            sum += tank[0];
            cases += tank[1];
        }
        return sum / cases;
    }

    private double mean(ToDoubleFunction<Followed> of) {
        return cases.stream().mapToDouble(of).average().orElse(0);
    }

    private long count(Predicate<Followed> which) {
        return cases.stream().filter(which).count();
    }

    /** Share of the mornings after which the tank went beyond a limit of what its fish give off. */
    double poisonedWithout() {
        return mean(one -> one.without().isBeyondAnyOf(GIVEN_OFF) ? 1 : 0);
    }

    double poisonedWith() {
        return mean(one -> one.with().isBeyondAnyOf(GIVEN_OFF) ? 1 : 0);
    }

    static String heading() {
        return String.format(Locale.ROOT, WIDE + " %6s %15s %15s %8s %19s %19s %21s", "act", "cases",
                "chance said", "came", "newly", "exposure said", "came", "more by");
    }

    static String headingOfItself() {
        return String.format(Locale.ROOT, WIDE + " %6s %6s %6s %9s %9s %8s %8s %15s", "act", "cases",
                "kept", "newly", "at most", "slightly", "further", "less far", "poisoned");
    }

    /** The same of what was done alone, the class doing what it would have done. */
    String ofItself() {
        return String.format(Locale.ROOT, WIDE + " %6d %6d %6d %8.2f%% %9d %8d %8d %6.3f → %6.3f", act, cases(),
                keptWithin(), broughtBeyond(), 100 * broughtBeyondAtMost(), count(Followed::isSlightlyBeyondOfItself),
                broughtFurther(), broughtLessFar(), poisonedWithout(), poisonedWith());
    }

    @Override
    public String toString() {
        double[] raised = exposureRaised();
        return String.format(Locale.ROOT, WIDE + " %6d %6.3f → %6.3f %6.3f → %6.3f %3d, %3d %8.1f → %8.1f"
                        + " %8.1f → %8.1f %9.1f to %8.1f",
                act, cases(), saidWithout(), saidWith(), beyondWithout(), beyondWith(),
                broughtBeyond(), count(Followed::isNewlyBeyond),
                mean(one -> one.said().exposureWithout()), mean(one -> one.said().exposureWith()),
                exposureWithout(), exposureWith(), raised[0], raised[1]);
    }
}
