package org.tankrounds.lab.evaluation;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Mean squared error of chances and what it is made of (Brier 1950; Murphy 1973), over ten equal classes of
 * the chance given: {@code score = reliability − resolution + uncertainty + within}.
 *
 * @param score 0 is perfect
 * @param reliability how far chances are from what comes true; 0 is perfect
 * @param resolution how far the classes' outcomes spread about the base rate
 * @param uncertainty of the base rate itself
 * @param within what chances that differ inside a class add, or spare where they differ rightly; 0 where each
 *         class has one chance (Stephenson et al. 2008, Weather and Forecasting 23:752–757)
 * @param classes from 0–0.1 to 0.9–1
 */
record Brier(double score, double reliability, double resolution, double uncertainty, double within,
        List<ChanceClass> classes) {

    private static final int CLASSES = 10;

    /**
     * Cases given alike chances.
     *
     * @param cases how many
     * @param given mean chance; NaN without cases
     * @param came share that came true
     */
    record ChanceClass(int cases, double given, double came) {

        /** How far off it is; 0 without cases. */
        double miss() {
            return cases == 0 ? 0 : came - given;
        }
    }

    static Brier of(Answered answered) {
        return of(answered.chance(), answered.beyond());
    }

    static Brier of(double[] chance, boolean[] cameTrue) {
        Tally[] tallies = new Tally[CLASSES];
        Arrays.setAll(tallies, k -> new Tally());
        Tally all = new Tally();
        for (int i = 0; i < chance.length; i++) {
            tallies[classOf(chance[i])].add(chance[i], cameTrue[i] ? 1 : 0);
            all.add(chance[i], cameTrue[i] ? 1 : 0);
        }
        return new Brier(all.score(),
                mean(tallies, all, tally -> square(tally.given() - tally.came())),
                mean(tallies, all, tally -> square(tally.came() - all.came())),
                all.came() * (1 - all.came()),
                mean(tallies, all, Tally::within),
                Arrays.stream(tallies).map(Tally::chanceClass).toList());
    }

    /** Over all cases, each with the number of its class. */
    private static double mean(Tally[] tallies, Tally all, ToDoubleFunction<Tally> number) {
        return Arrays.stream(tallies).filter(tally -> tally.cases > 0)
                .mapToDouble(tally -> tally.cases * number.applyAsDouble(tally)).sum() / all.cases;
    }

    /** From 0 to 9. */
    static int classOf(double chance) {
        return Math.min(CLASSES - 1, (int) (chance * CLASSES));
    }

    /** Gain over always saying the base rate; 1 is perfect, below 0 is worse than that. */
    double skill() {
        return 1 - score / uncertainty;
    }

    /** The class that is furthest off. */
    ChanceClass worst() {
        return classes.stream().max(Comparator.comparingDouble(one -> Math.abs(one.miss()))).orElseThrow();
    }

    static Resampled skill(Answered answered) {
        int[] tanks = answered.chapters(1);
        Sums sums = new Sums(tanks, 3, sum -> {
            double base = sum[1] / sum[0];
            return 1 - sum[2] / sum[0] / (base * (1 - base));
        });
        for (int i = 0; i < answered.size(); i++) {
            double outcome = answered.beyond()[i] ? 1 : 0;
            sums.add(tanks[i], 1, outcome, square(answered.chance()[i] - outcome));
        }
        return sums;
    }

    /** How far a class is off. NaN of a sample without cases in it. */
    static Resampled miss(Answered answered, int chanceClass) {
        int[] tanks = answered.chapters(1);
        Sums sums = new Sums(tanks, 2, sum -> sum[1] / sum[0]);
        for (int i = 0; i < answered.size(); i++) {
            if (classOf(answered.chance()[i]) == chanceClass) {
                sums.add(tanks[i], 1, (answered.beyond()[i] ? 1 : 0) - answered.chance()[i]);
            }
        }
        return sums;
    }

    private static double square(double x) {
        return x * x;
    }

    /** Sums over the cases of a class. */
    private static final class Tally {
        private int cases;
        private double chances;
        private double outcomes;
        private double squares;
        private double chanceSquares;
        private double products;

        void add(double chance, double outcome) {
            cases++;
            chances += chance;
            outcomes += outcome;
            squares += square(chance - outcome);
            chanceSquares += chance * chance;
            products += chance * outcome;
        }

        double score() {
            return squares / cases;
        }

        double given() {
            return chances / cases;
        }

        double came() {
            return outcomes / cases;
        }

        /** Variance of the chances less twice their covariance with the outcomes. */
        double within() {
            double variance = chanceSquares / cases - square(given());
            double covariance = products / cases - given() * came();
            return variance - 2 * covariance;
        }

        ChanceClass chanceClass() {
            return new ChanceClass(cases, given(), came());
        }
    }
}
