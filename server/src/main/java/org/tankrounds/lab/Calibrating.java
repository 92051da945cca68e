package org.tankrounds.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.tankrounds.forecast.Calibration;
import org.tankrounds.forecast.Calibration.Point;

/**
 * Finds what came true by the chance said: twenty classes of as many lessons each, neighbours pooled
 * until both rise.
 */
final class Calibrating {

    private static final int CLASSES = 20;

    private Calibrating() {
    }

    /** Lessons alike in the chance said. */
    private record Pool(double said, double came, int lessons) {
        Pool with(Pool next) {
            int all = lessons + next.lessons;
            return new Pool((said * lessons + next.said * next.lessons) / all,
                    (came * lessons + next.came * next.lessons) / all, all);
        }
    }

    static Calibration of(List<Lesson> lessons, ToDoubleFunction<Lesson> said) {
        List<Lesson> sorted = lessons.stream().sorted(Comparator.comparingDouble(said)).toList();
        List<Pool> pools = new ArrayList<>();
        for (int k = 0; k < CLASSES; k++) {
            add(pools, pool(sorted.subList(k * sorted.size() / CLASSES, (k + 1) * sorted.size() / CLASSES), said));
        }
        return new Calibration(pools.stream().map(pool -> new Point(
                Rounded.toFigures(pool.said, 4), Rounded.toFigures(pool.came, 4))).toList());
    }

    private static Pool pool(List<Lesson> lessons, ToDoubleFunction<Lesson> said) {
        return new Pool(lessons.stream().mapToDouble(said).sum() / lessons.size(),
                (double) lessons.stream().filter(Lesson::beyond).count() / lessons.size(), lessons.size());
    }

    /** Pool adjacent violators (Ayer et al. 1955, Annals of Mathematical Statistics 26:641–647). */
    private static void add(List<Pool> pools, Pool next) {
        Pool last = next;
        while (!pools.isEmpty() && pools.get(pools.size() - 1).came >= last.came) {
            last = pools.remove(pools.size() - 1).with(last);
        }
        pools.add(last);
    }
}
