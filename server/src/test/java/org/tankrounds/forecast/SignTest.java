package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.testing.Water.AS_OF;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.eggs;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.water.Analyte;

/** What can only make things look worse must not shrink where a class reads worse water. */
class SignTest {
    /** Some signs are shares of a few hundred courses. */
    private static final double LUCK = 0.02;
    private static final double[] LEVELS = {0, 0.01, 0.02, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, 1};

    @ParameterizedTest(name = "{0} by steps of {1}")
    @CsvSource({"NITRITE, 0", "NITRITE, 0.02", "NITRITE, 0.05", "TOTAL_AMMONIA, 0", "TOTAL_AMMONIA, 0.125"})
    void signsOfTheWorse_neverShrinkAsALoneReadingRises(Analyte analyte, double halfStep) {
        for (TankFacts facts : List.of(feedingFish().build(), eggs().build(), TankFacts.of("bare").build())) {
            for (List<Observation> before : List.of(List.<Observation>of(), FINE.lastRead(1))) {
                assertRise(facts, before, analyte, halfStep);
            }
        }
    }

    private static void assertRise(TankFacts facts, List<Observation> before, Analyte analyte, double halfStep) {
        double[] last = null;
        for (double level : LEVELS) {
            double[] signs = new Forecaster().signs(facts, with(before, read(0.1, analyte, level, halfStep)), AS_OF);
            for (Sign sign : last == null ? List.<Sign>of() : worse(analyte)) {
                assertThat(signs[sign.ordinal()]).as("%s of %s at %s", sign, facts.tank(), level)
                        .isGreaterThanOrEqualTo(last[sign.ordinal()] - LUCK);
            }
            last = signs;
        }
    }

    /** Those of the water itself; one set aside no longer counts as read. */
    private static List<Sign> worse(Analyte analyte) {
        String name = analyte == Analyte.NITRITE ? "NITRITE_" : "AMMONIA_";
        return Stream.of(Sign.values()).filter(sign -> sign.direction() > 0)
                .filter(sign -> sign.name().startsWith(name) && !sign.name().matches(".*(READ|MEAN|MEDIAN)_.*"))
                .toList();
    }
}
