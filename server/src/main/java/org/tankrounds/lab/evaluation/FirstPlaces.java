package org.tankrounds.lab.evaluation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** How good the order of each chapter was each morning, against the harm that then came. */
final class FirstPlaces {

    private static final int PLACES = 3;

    private FirstPlaces() {
    }

    /** Share of the mornings with any harm on which the tank put first is (one of) the worst. */
    static Resampled worstFirst(Answered answered, int chapter) {
        return mean(answered, chapter, harm -> isWorstFirst(harm) ? 1 : 0);
    }

    /** Mean NDCG@3 of the same mornings, with harm as gain. */
    static Resampled ndcg(Answered answered, int chapter) {
        return mean(answered, chapter, harm -> ndcg(harm, PLACES));
    }

    /** @param harm in the order given */
    static boolean isWorstFirst(double[] harm) {
        return harm[0] == Arrays.stream(harm).max().orElseThrow();
    }

    /**
     * Discounted harm found in the first k places over that of the best order (Järvelin and Kekäläinen 2002,
     * ACM TOIS 20:422–446). NaN where there is no harm at all.
     *
     * @param harm in the order given
     */
    static double ndcg(double[] harm, int k) {
        double[] best = harm.clone();
        Arrays.sort(best);
        double found = 0;
        double most = 0;
        for (int place = 0; place < Math.min(k, harm.length); place++) {
            double discount = StrictMath.log(2) / StrictMath.log(place + 2.0);
            found += discount * harm[place];
            most += discount * best[best.length - 1 - place];
        }
        return found / most;
    }

    private static Resampled mean(Answered answered, int chapter, ToDoubleFunction<double[]> score) {
        int[] chapters = answered.chapters(chapter);
        Sums sums = new Sums(chapters, 2, sum -> sum[1] / sum[0]);
        for (List<Integer> morning : mornings(answered, chapters).values()) {
            double[] harm = inOrder(answered, morning);
            if (harm.length > 1 && Arrays.stream(harm).anyMatch(each -> each > 0)) {
                sums.add(chapters[morning.get(0)], 1, score.applyAsDouble(harm));
            }
        }
        return sums;
    }

    private static Map<Long, List<Integer>> mornings(Answered answered, int[] chapters) {
        Map<Long, List<Integer>> mornings = new TreeMap<>();
        for (int i = 0; i < chapters.length; i++) {
            long key = ((long) chapters[i] << Integer.SIZE) + answered.questions().get(i).morning();
            mornings.computeIfAbsent(key, none -> new ArrayList<>()).add(i);
        }
        return mornings;
    }

    /**
     * Harm of a chapter's tanks, the one to visit first in front: by exposure, ties by chance, then by
     * number.
     */
    private static double[] inOrder(Answered answered, List<Integer> tanks) {
        return tanks.stream().sorted(Comparator.<Integer>comparingDouble(i -> -answered.exposure()[i])
                        .thenComparingDouble(i -> -answered.said()[i]))
                .mapToDouble(i -> answered.questions().get(i).harm()).toArray();
    }
}
