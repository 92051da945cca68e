package org.tankrounds.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LoadTest {
    /** The worked box of transport: 100 fish of 1.375 g in 19 L, from 11 to 7 mg/L: 1.842 h (computed by hand). */
    @Test
    void load_lastsAsLongAsItsBox() {
        Load load = new Load(1, 100, OptionalDouble.empty(), OptionalDouble.of(1.375), 1, 19);
        assertThat(load.box().orElseThrow().hours(11)).isCloseTo(1.842, within(5e-4));
        Load shared = new Load(1, 100, OptionalDouble.empty(), OptionalDouble.of(1.375), 2, 9.5);
        assertThat(shared.box().orElseThrow().hours(11)).isCloseTo(1.842, within(5e-4));
    }

    /** 50 mm at a condition of 1.1 is 1.375 g (Piper et al. 1982, by hand: 1.1e-5 · 50³). */
    @Test
    void weight_comesFromTheLengthWhereNobodyWeighed() {
        Load load = new Load(1, 100, OptionalDouble.of(50), OptionalDouble.empty(), 1, 19);
        assertThat(load.biomassG().orElseThrow()).isCloseTo(137.5, within(1e-9));
        assertThat(new Load(1, 100, OptionalDouble.empty(), OptionalDouble.empty(), 1, 19).box()).isEmpty();
    }

    /**
     * Two boxes of 20 L, as cubes 0.44208 m² of 25 mm foam, 0.45891 W/K; 15 °C for an hour by 334,000 + 4186 · 10 J/kg
     * are 0.1319 kg, worked by hand. Films and foam from memory, the wall common practice.
     */
    @Test
    void ice_takesWhatComesThroughTheFoam() {
        assertThat(plan(25, 1).iceKg().orElseThrow()).isCloseTo(0.13186, within(1e-5));
    }

    @Test
    void ice_isNoneWhereItIsColderOutside_andMoreTheLongerTheWay() {
        assertThat(plan(5, 1).iceKg().orElseThrow()).isZero();
        double one = plan(25, 1).iceKg().orElseThrow();
        assertThat(plan(25, 2).iceKg().orElseThrow()).isCloseTo(2 * one, within(1e-9));
    }

    @Test
    void oxygen_isWhatTheWaterHolds_unlessSomebodyReadIt() {
        // EN 25814: 11.3 mg/L at 10 °C.
        assertThat(plan(5, 1).startOxygenMgPerL(0).orElseThrow()).isCloseTo(11.3, within(0.05));
        // At a mile up, 0.82 of the pressure.
        assertThat(plan(5, 1).startOxygenMgPerL(1609.344).orElseThrow()).isBetween(9.2, 9.3);
    }

    private static ReleasePlan.Details plan(double outsideC, double hours) {
        return new ReleasePlan.Details(Instant.EPOCH, hours, OptionalDouble.of(10), OptionalDouble.of(8),
                OptionalDouble.of(outsideC), OptionalDouble.empty(), true, 0, 2, Map.of(), Optional.empty(),
                List.of(new Load(1, 100, OptionalDouble.of(50), OptionalDouble.empty(), 2, 20)));
    }
}
