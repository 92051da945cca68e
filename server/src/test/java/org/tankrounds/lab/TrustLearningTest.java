package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tankrounds.advice.Trusts;
import org.tankrounds.forecast.Forecaster;

/** The shipped trust is made by the same steps from far more worlds. */
class TrustLearningTest {

    @Test
    void trust_saysForEverySortHowMuchComesTrue() {
        Trusts learned = TrustLearning.from(IntStream.of(8_001, 8_002), new Forecaster(), world -> { });
        assertThat(learned.bySort()).containsOnlyKeys(Trusts.Sort.values());
        assertThat(learned.bySort().values()).allSatisfy(trust -> {
            assertThat(trust.chance()).isBetween(0.0, 1.0);
            assertThat(trust.exposure()).isBetween(0.0, 1.0);
        });
        assertThat(learned.lines()).hasSize(Trusts.Sort.values().length).first().asString()
                .matches("water_change_for_ph=[0-9.]+ [0-9.]+");
    }

    @Test
    void trust_ofWhatIsKnownOfNoCases_isHalf() {
        Trusts learned = TrustLearning.of(List.of());
        assertThat(learned.lines()).allMatch(line -> line.endsWith("=0.5 0.5"));
    }
}
