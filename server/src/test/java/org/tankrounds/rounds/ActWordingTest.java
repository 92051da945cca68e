package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Advisor;
import org.tankrounds.belief.Observation;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

class ActWordingTest {

    /** The service hears nothing of what was given, so the dose must not read as one to go on with. */
    @Test
    void bakingSoda_isOneDoseAndThenReadAgain() {
        List<Observation> readings = Water.with(
                Water.FINE.withPh(5.7).withTotalAmmoniaMgPerL(0.1).lastRead(0.1),
                Water.read(1, Analyte.ALKALINITY, 15, 5));
        assertThat(words(readings, Act.Kind.BICARBONATE, false)).contains("3.2 g of baking soda, once")
                .contains("alkalinity").contains("again").doesNotContain("a day");
    }

    /** Nor of salt: what was given since would be given again. */
    @Test
    void salt_isGivenAfterChlorideIsRead() {
        assertThat(words(Water.FINE.withNitriteMgPerL(0.4).lastRead(0.1), Act.Kind.SALT, false))
                .contains("Read chloride first if salt was given");
    }

    @Test
    void chloramine_isCalledByItsName_andSaidToFreeAmmonia() {
        List<Observation> nitrite = Water.FINE.withNitriteMgPerL(0.4).lastRead(0.1);
        List<Observation> chlorine = Water.with(Water.FINE.lastRead(0.1),
                Water.read(0.05, Analyte.CHLORINE, 0.5, 0.1));
        assertThat(words(nitrite, Act.Kind.WATER_CHANGE, true))
                .contains("against chloramine").contains("frees ammonia");
        assertThat(words(chlorine, Act.Kind.THIOSULFATE, true))
                .contains("the chloramine").contains("frees ammonia");
        assertThat(words(nitrite, Act.Kind.WATER_CHANGE, false)).doesNotContain("chloramine");
        assertThat(words(chlorine, Act.Kind.THIOSULFATE, false)).doesNotContain("chloramine");
    }

    private static String words(List<Observation> readings, Act.Kind kind, boolean chloramine) {
        Act act = new Advisor().advise(Water.lookAhead(Water.feedingFish(), readings), readings).acts().stream()
                .filter(one -> one.kind() == kind).findFirst().orElseThrow();
        return ActWording.of(act, false, chloramine).toString();
    }
}
