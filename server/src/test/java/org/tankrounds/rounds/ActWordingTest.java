package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Advisor;
import org.tankrounds.belief.Observation;
import org.tankrounds.pages.TankPage.Advice;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

class ActWordingTest {

    /** The service hears nothing of what was given, so the dose must not read as one to go on with. */
    @Test
    void bakingSoda_isOneDoseAndThenReadAgain() {
        List<Observation> readings = Water.with(Water.FINE.withPh(5.7).lastRead(0.1),
                Water.read(1, Analyte.ALKALINITY, 15, 5));
        Act act = new Advisor().advise(Water.lookAhead(Water.feedingFish(), readings), readings).acts().stream()
                .filter(one -> one.kind() == Act.Kind.BICARBONATE).findFirst().orElseThrow();
        Advice advice = ActWording.of(act, false);
        assertThat(advice.toString()).contains("6.4 g of baking soda, once").contains("alkalinity").contains("again")
                .doesNotContain("a day");
    }
}
