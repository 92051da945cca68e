package org.tankrounds.lab;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.tankrounds.forecast.Calibration;
import org.tankrounds.forecast.Experience;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.forecast.Trees;
import org.tankrounds.forecast.Trees.Node;

/** Makes experience from seasons in worlds drawn at random. The same numbers give the same experience. */
public final class Learning {

    private static final int TANKS = 10;
    private static final int MOMENTS = 12;
    private static final int CHANCE_TREES = 300;
    private static final int HARM_TREES = 120;
    /** Keeps the logarithm of small harm from drowning the rest, fish-hours per fish. */
    private static final double LEAST_HARM = 0.05;

    private final double[][] signs;
    private final List<Lesson> lessons;
    private final Luck luck = new Luck(1);

    private Learning(List<Lesson> lessons) {
        this.lessons = lessons;
        signs = lessons.stream().map(Lesson::signs).toArray(double[][]::new);
    }

    /**
     * Plays worlds by number and learns from them in the order of the streams, which may be parallel.
     *
     * @param others worlds that only tell how often what is then said comes true
     * @param progress told after each world, by any thread
     */
    public static Experience from(IntStream worlds, IntStream others, Forecaster forecaster, IntConsumer progress) {
        Experience learned = of(lessons(worlds, forecaster, progress));
        return calibrated(learned, lessons(others, forecaster, progress));
    }

    static Experience calibrated(Experience learned, List<Lesson> others) {
        return learned.with(Calibrating.of(others, lesson -> learned.chance(lesson.signs())));
    }

    private static List<Lesson> lessons(IntStream worlds, Forecaster forecaster, IntConsumer progress) {
        return worlds.mapToObj(world -> {
            List<Lesson> lessons = Lesson.of(world, TANKS, MOMENTS, forecaster);
            progress.accept(world);
            return lessons;
        }).flatMap(List::stream).toList();
    }

    static Experience of(List<Lesson> lessons) {
        double[] lookAhead = lessons.stream().mapToDouble(l -> Experience.lookAheadLogOdds(l.signs())).toArray();
        double[] line = Line.ofChance(lookAhead, lessons);
        Trees chance = new Learning(lessons).chance(line, lookAhead);
        List<Lesson> harmed = lessons.stream().filter(Lesson::beyond).toList();
        double harmAhead = harmAhead(harmed);
        Trees harm = new Learning(harmed).harm(harmAhead);
        Experience unscaled = new Experience(
                line[1], chance, Calibration.NONE, harmAhead, harm, harmTrust(harmed, harmAhead), 1);
        double said = lessons.stream().mapToDouble(lesson -> unscaled.exposurePerFish(lesson.signs())).sum();
        double came = lessons.stream().mapToDouble(Lesson::harm).sum();
        return unscaled.scaledBy(Rounded.toFigures(came / said, 4));
    }

    /** Learned from the worlds of one half, judged by those of the other, of which the trees know nothing. */
    private static double harmTrust(List<Lesson> harmed, double harmAhead) {
        int half = harmed.size() / 2;
        Trees learned = new Learning(harmed.subList(0, half)).harm(harmAhead);
        List<Lesson> others = harmed.subList(half, harmed.size());
        double[] logs = others.stream().mapToDouble(lesson -> learned.of(lesson.signs())
                + harmAhead * Experience.lookAheadHarm(lesson.signs())).toArray();
        return Line.ofMeanHarm(logs, others)[1];
    }

    /** What to add to a line through the look ahead's log-odds, by Newton steps on the logistic loss. */
    private Trees chance(double[] line, double[] lookAhead) {
        return grown(line[0], CHANCE_TREES, (i, sum) -> {
            double chance = 1 / (1 + StrictMath.exp(-sum - line[1] * lookAhead[i]));
            return new double[] {chance - (lessons.get(i).beyond() ? 1 : 0), chance * (1 - chance)};
        });
    }

    private static double harmAhead(List<Lesson> harmed) {
        return Line.ofNumbers(harmed.stream().mapToDouble(l -> Experience.lookAheadHarm(l.signs())).toArray(),
                harmed.stream().mapToDouble(Learning::logHarm).toArray())[1];
    }

    private static double logHarm(Lesson lesson) {
        return StrictMath.log(lesson.harm() + LEAST_HARM);
    }

    /** What to add to the look ahead's harm for the logarithm of what came, by least squares. */
    private Trees harm(double harmAhead) {
        double[] logs = lessons.stream()
                .mapToDouble(l -> logHarm(l) - harmAhead * Experience.lookAheadHarm(l.signs())).toArray();
        double start = 0;
        for (double log : logs) {
            start += log / logs.length;
        }
        return grown(Rounded.toFigures(start, 4), HARM_TREES, (i, sum) -> new double[] {sum - logs[i], 1});
    }

    /** Slope and curvature of the loss of a row at a sum. */
    private interface Loss {
        double[] at(int row, double sum);
    }

    private Trees grown(double start, int count, Loss loss) {
        TreeGrower grower = new TreeGrower(signs);
        double[] sum = new double[signs.length];
        Arrays.fill(sum, start);
        double[] slopes = new double[signs.length];
        double[] curves = new double[signs.length];
        List<Node> trees = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            for (int i = 0; i < sum.length; i++) {
                double[] at = loss.at(i, sum[i]);
                slopes[i] = at[0];
                curves[i] = at[1];
            }
            Node tree = grower.grow(slopes, curves, luck);
            trees.add(tree);
            for (int i = 0; i < sum.length; i++) {
                sum[i] += tree.of(signs[i]);
            }
        }
        return new Trees(start, trees);
    }
}
