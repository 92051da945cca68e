package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tankrounds.advice.Act;
import org.tankrounds.forecast.Forecaster;

/**
 * The advice followed on simulated tanks of six worlds, whose water knows nothing of the engine. Small: a few
 * hundred mornings; rare acts are judged only where there are enough of them.
 */
class AdviceTrialTest {
    private static final long SEED = 2031;
    private static final int TANKS = 6;
    private static final int EVERY_NTH_MORNING = 14;
    private static final int ENOUGH = 25;
    private static final long SODA_SEED = 77_204;
    private static final int SODA_TANKS = 11;
    private static final int EVERY_WEEK = 7;
    /**
     * Of a hundred followed, so many may go beyond a limit that would not have: soft water changed wakes the
     * filter.
     */
    private static final double MARGIN = 0.04;

    private static final Map<String, EffectRow> TOGETHER_BY_WORLD = new TreeMap<>();
    private static final Map<String, EffectRow> BY_ACT = new TreeMap<>();

    @BeforeAll
    static void followTheAdvice() {
        for (World world : World.NAMED) {
            for (EffectRow row : AdviceTrial.of(world, SEED, TANKS, EVERY_NTH_MORNING, new Forecaster())) {
                BY_ACT.merge(row.act(), row, EffectRow::plus);
                if (row.act().equals(AdviceTrial.ALL)) {
                    TOGETHER_BY_WORLD.put(world.name(), row);
                }
            }
        }
    }

    @Test
    void followingTheAdvice_keepsManyMoreTanksUnderTheirLimits() {
        EffectRow all = BY_ACT.get(AdviceTrial.ALL);
        assertThat(all.cases()).isGreaterThan(60);
        assertThat(all.beyondWith()).as("%s", all).isLessThan(0.6 * all.beyondWithout());
        assertThat(all.harmWith()).as("%s", all).isLessThan(0.6 * all.harmWithout());
    }

    @Test
    void followingTheAdvice_harmsInNoWorld() {
        // Careful classes may need no advice at all.
        assertThat(TOGETHER_BY_WORLD.keySet()).hasSizeGreaterThanOrEqualTo(World.NAMED.size() - 1);
        TOGETHER_BY_WORLD.forEach((world, row) -> {
            assertThat(row.beyondWith()).as("%s: %s", world, row).isLessThanOrEqualTo(row.beyondWithout());
            assertThat(row.harmWith()).as("%s: %s", world, row).isLessThanOrEqualTo(row.harmWithout());
        });
    }

    @Test
    void noActByItself_doesHarm() {
        assertThat(BY_ACT.values()).filteredOn(row -> row.cases() >= ENOUGH).hasSizeGreaterThan(3)
                .allSatisfy(row -> {
                    assertThat(row.beyondWith()).as("%s", row).isLessThanOrEqualTo(row.beyondWithout());
                    assertThat(row.harmWith()).as("%s", row).isLessThanOrEqualTo(row.harmWithout());
                    assertThat(row.madeWorse()).as("%s", row).isLessThanOrEqualTo(MARGIN);
                });
    }

    /** Alkalinity given back at a stroke wakes nitrifiers, and nitrite with them. */
    @Test
    void bakingSodaInSoftWater_bringsNoNitriteBeyondItsLimit() {
        EffectRow soda = AdviceTrial.of(World.SOFT_WATER, SODA_SEED, SODA_TANKS, EVERY_WEEK, new Forecaster())
                .stream().filter(row -> row.act().equals(Act.Kind.BICARBONATE.name())).findFirst().orElseThrow();
        assertThat(soda.cases()).isGreaterThan(4);
        assertThat(soda.beyondWith()).as("%s", soda).isLessThanOrEqualTo(soda.beyondWithout());
        assertThat(soda.harmWith()).as("%s", soda).isLessThanOrEqualTo(soda.harmWithout());
        assertThat(soda.madeWorse()).as("%s", soda).isZero();
    }

    /**
     * The page promises no more than comes; these worlds are kinder than those that the trust was learned in.
     */
    @Test
    void chancesSaid_promiseNoMoreThanComes() {
        assertThat(BY_ACT.values()).filteredOn(row -> row.cases() >= ENOUGH).allSatisfy(row -> {
            double said = row.saidWithout() - row.saidWith();
            double came = row.beyondWithout() - row.beyondWith();
            assertThat(said).as("%s", row).isLessThan(came + 0.05);
        });
        EffectRow all = BY_ACT.get(AdviceTrial.ALL);
        assertThat(all.saidWithout()).as("%s", all).isCloseTo(all.beyondWithout(), within(0.1));
    }

    @Test
    void trial_ofTheSameSeed_isTheSame() {
        assertThat(AdviceTrial.of(World.SOFT_WATER, 3, 2, 30, new Forecaster()).toString())
                .isEqualTo(AdviceTrial.of(World.SOFT_WATER, 3, 2, 30, new Forecaster()).toString());
    }
}
