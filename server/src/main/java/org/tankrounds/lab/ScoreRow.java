package org.tankrounds.lab;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * The scores of a set of answers, each chapter of six ranked by itself every morning.
 *
 * @param baseRate share that came true
 * @param auc of the order by exposure
 * @param aucOfChance of the order by chance
 * @param skill Brier skill against the base rate
 * @param reliability part of the Brier score, see {@link Brier}
 * @param worstFirst share of mornings and chapters with any harm that have the worst tank first
 * @param ndcg mean NDCG@3 of the same, harm as gain
 */
public record ScoreRow(double baseRate, double auc, double aucOfChance, double skill, double reliability,
        double worstFirst, double ndcg) {

    private static final int CHAPTER = 6;
    private static final int FIRST_PLACES = 3;

    public static final String HEADING = "  base   AUC  (ch.)  skill   rel.  worst  ndcg";

    public static ScoreRow of(List<Answer> answers) {
        boolean[] beyond = new boolean[answers.size()];
        for (int i = 0; i < beyond.length; i++) {
            beyond[i] = answers.get(i).beyond();
        }
        Brier brier = Brier.of(of(answers, Answer::chance), beyond);
        double chapters = 0;
        double worstFirst = 0;
        double ndcg = 0;
        for (List<Answer> chapter : chapters(answers).values()) {
            double[] harm = of(chapter, Answer::harm);
            double[] exposure = of(chapter, Answer::exposure);
            double gain = Scores.ndcg(exposure, harm, FIRST_PLACES);
            if (chapter.size() > 1 && !Double.isNaN(gain)) {
                chapters++;
                ndcg += gain;
                worstFirst += Scores.isWorstFirst(exposure, harm) ? 1 : 0;
            }
        }
        return new ScoreRow(base(beyond), Scores.auc(of(answers, Answer::exposure), beyond),
                Scores.auc(of(answers, Answer::chance), beyond), brier.skill(), brier.reliability(),
                worstFirst / chapters, ndcg / chapters);
    }

    private static Map<Integer, List<Answer>> chapters(List<Answer> answers) {
        return answers.stream().collect(Collectors.groupingBy(
                answer -> answer.morning() * 1_000 + answer.tank() / CHAPTER, TreeMap::new, Collectors.toList()));
    }

    private static double[] of(List<Answer> answers, ToDoubleFunction<Answer> number) {
        return answers.stream().mapToDouble(number).toArray();
    }

    private static double base(boolean[] beyond) {
        double trues = 0;
        for (boolean each : beyond) {
            trues += each ? 1 : 0;
        }
        return trues / beyond.length;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%6.3f %5.3f %6.3f %6.3f %6.4f %6.3f %5.3f",
                baseRate, auc, aucOfChance, skill, reliability, worstFirst, ndcg);
    }
}
