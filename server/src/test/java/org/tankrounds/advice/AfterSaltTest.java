package org.tankrounds.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** What wakes the filter is good where salt has gone before it, though it may harm by itself. */
class AfterSaltTest {

    @Test
    void sourTankWithNitrite_isGivenAlkalinityAfterSalt() {
        List<Observation> readings = readings(FINE.withPh(6.4).withTotalAmmoniaMgPerL(0.3).withNitriteMgPerL(0.3), 5);
        LookAhead ahead = Water.lookAhead(feedingFish(), readings);
        assertThat(ahead.effect(Deed.waterChange(0.2), Driver.PH).harms()).isTrue();
        Advice advice = new Advisor().advise(ahead, readings);
        assertAlkalinityAfterSalt(advice);
        assertThat(advice.together().orElseThrow().chanceFall()).isGreaterThan(0.3);
    }

    @ParameterizedTest(name = "pH {0}, ammonia {1}, nitrite {2}, alkalinity {3}")
    @CsvSource({"6.7, 0.25, 0.35, 12", "6.7, 0.25, 0.6, 12", "6.9, 0.3, 1.0, 10"})
    void nitriteWhereAlkalinityIsUsedUp_isMetWithAChangeAfterSalt(
            double ph, double ammonia, double nitrite, double alkalinity) {
        List<Observation> readings =
                readings(FINE.withPh(ph).withTotalAmmoniaMgPerL(ammonia).withNitriteMgPerL(nitrite), alkalinity);
        Advice advice = new Advisor().advise(
                Water.lookAhead(feedingFish().sourceAlkalinityMgPerL(110), readings), readings);
        assertAlkalinityAfterSalt(advice);
        assertThat(advice.acts()).extracting(Act::kind).contains(Act.Kind.WATER_CHANGE);
    }

    /** With chloride enough already none is given, and a change by itself would wake the filter. */
    @Test
    void nitriteWhereNoSaltCanBeGiven_isNotMetWithAChangeThatWakesTheFilter() {
        List<Observation> readings = with(readings(FINE.withPh(6.7).withNitriteMgPerL(0.6), 12),
                read(0.1, Analyte.CHLORIDE, 55, 5));
        LookAhead ahead = Water.lookAhead(feedingFish().sourceAlkalinityMgPerL(110), readings);
        assertThat(new Advisor().advise(ahead, readings).acts())
                .filteredOn(act -> act.kind() == Act.Kind.WATER_CHANGE && act.isAgainst(Driver.NITRITE))
                .allSatisfy(act -> assertThat(ahead.wakes(Deed.waterChange(act.amount().orElseThrow() / 100)))
                        .isLessThanOrEqualTo(1.3));
    }

    /** Salt raises what nitrite may come to, and does nothing against ammonia. */
    @Test
    void sourTankWithMuchAmmonia_isStillLeft() {
        List<Observation> readings = readings(FINE.withPh(5.8).withTotalAmmoniaMgPerL(5), 5);
        assertThat(new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings).acts())
                .extracting(Act::kind).doesNotContain(Act.Kind.WATER_CHANGE, Act.Kind.BICARBONATE);
    }

    private static void assertAlkalinityAfterSalt(Advice advice) {
        List<Act.Kind> kinds = advice.acts().stream().map(Act::kind).toList();
        assertThat(kinds).contains(Act.Kind.SALT)
                .doesNotContain(Act.Kind.LEAVE_ALKALINITY, Act.Kind.LEAVE_WATER, Act.Kind.LOOK_AT_FISH);
        Remedy brings = advice.remedies().stream().filter(each -> each.act().kind() == Act.Kind.BICARBONATE
                || each.act().kind() == Act.Kind.WATER_CHANGE).findFirst().orElseThrow();
        assertThat(brings.leansOn()).contains(Act.Kind.SALT);
        assertThat(kinds.indexOf(brings.act().kind())).isEqualTo(kinds.indexOf(Act.Kind.SALT) + 1);
    }

    private static List<Observation> readings(Water water, double alkalinityMgPerL) {
        return with(water.lastRead(0.1), read(0.1, Analyte.ALKALINITY, alkalinityMgPerL, 4));
    }
}
