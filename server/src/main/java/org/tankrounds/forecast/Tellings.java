package org.tankrounds.forecast;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.tankrounds.belief.Draws;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.Analyte;

/**
 * Which reading a class could take now would tell most about whether the water goes beyond a limit: the paths start
 * from different water, and a reading that parts those that go beyond from those that do not would narrow the odds.
 * A reading is what the class would see, with an ordinary card's step and a reader's eye in it, so that reading
 * again what was read this morning tells little.
 */
final class Tellings {

    /** Below this share a reading would hardly move the odds (the project's choice). */
    static final double WORTH_ASKING = 0.1;
    /** With fewer different paths on either side their chance features would speak (the project's choice). */
    private static final int FEWEST_PATHS = 10;
    private static final int STREAM = 9_000;
    /** Half a usual step of the method, and what share of a higher value it is on a card (common practice). */
    private static final double TEMPERATURE_HALF_STEP_C = 0.5;
    private static final double PH_HALF_STEP = 0.2;
    private static final double AMMONIA_HALF_STEP_MG_PER_L = 0.12;
    private static final double NITRITE_HALF_STEP_MG_PER_L = 0.04;
    private static final double OXYGEN_HALF_STEP_MG_PER_L = 0.5;
    private static final double CARD_SHARE = 0.3;
    /** Standard deviation of a reading in half steps: anywhere within the step, and the reader. */
    private static final double SD_PER_HALF_STEP = Math.sqrt(1 / 3.0 + 0.16);

    private final Paths course;
    private final int[] picked;
    private final double[] beyond;

    private Tellings(Paths course, Outcome outcome) {
        this.course = course;
        this.picked = outcome.picked();
        this.beyond = Arrays.stream(picked).mapToDouble(i -> outcome.goesBeyond(i) ? 1 : 0).toArray();
    }

    /** Empty where no single reading would tell much. */
    static Optional<Telling> most(Paths course, Outcome outcome) {
        Tellings tellings = new Tellings(course, outcome);
        return tellings.areManyOnEitherSide() ? tellings.all().stream()
                .filter(telling -> telling.share() >= WORTH_ASKING)
                .max(Comparator.comparingDouble(Telling::share)) : Optional.empty();
    }

    private boolean areManyOnEitherSide() {
        return different(1) >= FEWEST_PATHS && different(0) >= FEWEST_PATHS;
    }

    private long different(int side) {
        return Stream.iterate(0, k -> k < picked.length, k -> k + 1)
                .filter(k -> beyond[k] == side).map(k -> picked[k]).distinct().count();
    }

    private List<Telling> all() {
        return List.of(
                telling(Analyte.TEMPERATURE, i -> course.temperatureC()[0][i], TEMPERATURE_HALF_STEP_C, 0),
                telling(Analyte.PH, i -> course.ph()[0][i], PH_HALF_STEP, 0),
                telling(Analyte.TOTAL_AMMONIA, this::totalAmmoniaMgPerL, AMMONIA_HALF_STEP_MG_PER_L, CARD_SHARE),
                telling(Analyte.NITRITE, i -> course.nitriteMgPerL()[0][i], NITRITE_HALF_STEP_MG_PER_L,
                        CARD_SHARE),
                telling(Analyte.DISSOLVED_OXYGEN, i -> course.oxygenMgPerL()[0][i], OXYGEN_HALF_STEP_MG_PER_L, 0));
    }

    private Telling telling(Analyte analyte, IntToDoubleFunction now, double halfStep, double shareOfValue) {
        double[] read = new double[picked.length];
        for (int k = 0; k < read.length; k++) {
            double value = now.applyAsDouble(picked[k]);
            double half = Math.max(halfStep, shareOfValue * value);
            // A draw a pick, not a path: a path that counts often is not read alike each time.
            read[k] = value + SD_PER_HALF_STEP * half * Draws.normal((STREAM + analyte.ordinal()) * read.length + k);
        }
        return new Telling(analyte, CorrelationRatio.of(beyond, read));
    }

    private double totalAmmoniaMgPerL(int path) {
        return course.unIonisedMgPerL()[0][path]
                / Ammonia.unIonisedMgPerL(1, course.ph()[0][path], course.temperatureC()[0][path]);
    }
}
