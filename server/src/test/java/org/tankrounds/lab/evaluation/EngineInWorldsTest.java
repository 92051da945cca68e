package org.tankrounds.lab.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.World;

/**
 * The engine on small seasons of worlds that it has not learned from: floors that fail when it gets worse.
 */
class EngineInWorldsTest {
    private static final long SEED = 2027;
    private static final int TANKS = 60;
    private static final int EVERY_NTH_MORNING = 18;
    /** Some 150 cases of few tanks miss by 0.06 at one standard deviation. */
    private static final double MOST_MISSED = 0.13;

    private static Examination examination;

    @BeforeAll
    static void askInEveryWorld() {
        Examiner examiner = new Examiner(new Forecaster(), List.of());
        examination = Examination.joined(World.NAMED.stream().map(world -> examiner.examine(
                LabSeason.played(world, SEED, TANKS, EVERY_NTH_MORNING), EVERY_NTH_MORNING)).toList());
    }

    @Test
    void order_isBetterThanThatOfTheNewestReadingsInEveryWorld() {
        for (String world : examination.worlds()) {
            Examination one = examination.of(tank -> tank.world().equals(world));
            assertThat(score(one, Measure.AUC, Examiner.ENGINE)).as(world)
                    .isGreaterThan(score(one, Measure.AUC, Reference.LATEST.title()));
        }
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "TRUTH")
    void order_isClearlyBetterThanEveryPlainReference(Reference reference) {
        assertThat(gain(Measure.AUC, reference)).isGreaterThan(0.12);
        assertThat(gain(Measure.AUC_OF_EXPOSURE, reference)).isGreaterThan(0.1);
        assertThat(gain(Measure.WORST_OF_SIX, reference)).isGreaterThan(0);
        assertThat(gain(Measure.NDCG_OF_SIX, reference)).isGreaterThan(0.07);
        assertThat(gain(Measure.NDCG_OF_THIRTY, reference)).isGreaterThan(0.07);
    }

    @Test
    void chances_areSharpAndKeepTheirWord() {
        Brier brier = Brier.of(examination.answered(examination.voice(Examiner.ENGINE)));
        assertThat(score(examination, Measure.AUC, Examiner.ENGINE)).isGreaterThan(0.86);
        assertThat(brier.skill()).isGreaterThan(0.4);
        assertThat(brier.reliability()).isLessThan(0.008);
    }

    /** Two tenths at a time, since some have less than a hundred cases here: the large report looks at every one. */
    @ParameterizedTest
    @ValueSource(ints = {0, 2, 4, 6, 8})
    void chances_comeTrueAsOftenAsTheySay(int tenth) {
        List<Reliability> two = Reliability.of(examination.answered(examination.voice(Examiner.ENGINE)))
                .subList(tenth, tenth + 2);
        int cases = two.stream().mapToInt(Reliability::cases).sum();
        double missed = two.stream().mapToDouble(one -> one.cases() * one.miss().value()).sum();
        assertThat(cases).isGreaterThan(50);
        assertThat(missed / cases).as(two.toString()).isBetween(-MOST_MISSED, MOST_MISSED);
    }

    private static double gain(Measure measure, Reference over) {
        return score(examination, measure, Examiner.ENGINE) - score(examination, measure, over.title());
    }

    private static double score(Examination part, Measure measure, String voice) {
        return Bootstrap.of(measure.of(part.answered(part.voice(voice)))).value();
    }
}
