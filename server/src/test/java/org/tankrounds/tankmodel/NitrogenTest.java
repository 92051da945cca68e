package org.tankrounds.tankmodel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.water.Carbonate;

/**
 * A filter starting up. The reference runs were computed once with another program (Python, RK4, dt 0.01 d)
 * from the published equations and the constants of {@link Nitrifiers}: V 190 L, DO 9 mg/L, P 0.03 g N/d, XA
 * 1e-3 and XN 5e-4 mg COD/L, no nitrogen at the start. Printed digits, so the tolerance is half of the last.
 */
class NitrogenTest {
    private static final double STEP_DAYS = 0.01;
    private static final double VOLUME_L = 190;
    private static final SourceWater TAP = SourceWater.of(12, 1_000);

    @ParameterizedTest(name = "run {0}")
    @CsvSource({
        // run, °C, g N/d, seed share, change every 7 d, TAN peak, day, NO2 peak, day, TAN < 0.1 day, NO2 <
        // 0.1 day
        "A, 12, 0.03, 1,   0,    2.95541, 22.75, 6.38712, 45.18, 32.94, 57.19",
        "B,  8, 0.03, 1,   0,    4.79726, 36.67, 9.89156, 68.93, 52.03, 85.28",
        "C, 20, 0.03, 1,   0,    1.32073, 10.32, 3.08213, 22.42, 15.43, 29.62",
        "D, 12, 0.03, 1,   0.25, 2.24348, 21.00, 3.38410, 42.00, 35.00, 63.00",
        "E, 12, 0.10, 1,   0,    9.55026, 21.67, 20.2194, 42.47, 29.87, 53.04",
        "F, 12, 0.03, 0.1, 0,    4.33334, 31.26, 9.70801, 66.14, 41.60, 78.92",
    })
    void startUp_followsTheReferenceRun(
            String run, double temperatureC, double nitrogenGPerDay, double seedShare, double change,
            double ammoniaPeak, double ammoniaPeakDay, double nitritePeak, double nitritePeakDay,
            double ammoniaGoneDay, double nitriteGoneDay) {
        Course ammonia = new Course(TankState::ammoniaMgPerL);
        Course nitrite = new Course(TankState::nitriteMgPerL);
        TankModel model = steady(VOLUME_L);
        TankState state = TankState.fresh(temperatureC, 1_000, 1e-3 * seedShare, 5e-4 * seedShare);
        Conditions held = new Conditions(nitrogenGPerDay, 9, temperatureC, 0);
        for (int i = 1; i <= 100 / STEP_DAYS; i++) {
            state = model.after(state, held, STEP_DAYS);
            ammonia.see(i * STEP_DAYS, state);
            nitrite.see(i * STEP_DAYS, state);
            if (change > 0 && i % 700 == 0) {
                state = state.changed(change, TAP);
                ammonia.see(i * STEP_DAYS, state);
                nitrite.see(i * STEP_DAYS, state);
            }
        }
        assertThat(ammonia.peak).as("TAN peak").isCloseTo(ammoniaPeak, within(6e-6));
        assertThat(ammonia.peakDay).as("its day").isCloseTo(ammoniaPeakDay, within(0.011));
        assertThat(nitrite.peak).as("NO2 peak")
                .isCloseTo(nitritePeak, within(nitritePeak > 10 ? 6e-5 : 6e-6));
        assertThat(nitrite.peakDay).as("its day").isCloseTo(nitritePeakDay, within(0.011));
        assertThat(ammonia.goneDay).as("TAN below 0.1").isCloseTo(ammoniaGoneDay, within(0.011));
        assertThat(nitrite.goneDay).as("NO2 below 0.1").isCloseTo(nitriteGoneDay, within(0.011));
    }

    /** First day of a series' largest value, and the first day after it that finds it below 0.1 mg N/L. */
    private static final class Course {
        private final ToDoubleFunction<TankState> series;
        private double peak;
        private double peakDay;
        private double goneDay = Double.NaN;

        Course(ToDoubleFunction<TankState> series) {
            this.series = series;
        }

        void see(double day, TankState state) {
            double level = series.applyAsDouble(state);
            if (level > peak) {
                peak = level;
                peakDay = day;
                goneDay = Double.NaN;
            } else if (level < 0.1 && Double.isNaN(goneDay)) {
                goneDay = day;
            }
        }
    }

    @ParameterizedTest(name = "day {0}")
    @CsvSource({
        // Run A of the same reference.
        "10,  1.55224,  0.0264163, 0.000291253",
        "30,  1.18467,  3.53436,   0.0178064",
        "60,  0.118869, 0.0480421, 9.30677",
        "120, 0.131560, 0.178537,  18.6373",
    })
    void startUp_atDay(double day, double ammonia, double nitrite, double nitrate) {
        TankState state = runA(day);
        assertThat(state.ammoniaMgPerL()).isCloseTo(ammonia, within(ammonia * 5e-6));
        assertThat(state.nitriteMgPerL()).isCloseTo(nitrite, within(nitrite * 5e-6));
        assertThat(state.nitrateMgPerL()).isCloseTo(nitrate, within(nitrate * 5e-6));
    }

    @Test
    void nitrogen_isNeitherMadeNorLost() {
        // Supply over 120 days: 1000 × 0.03 / 190 × 120.
        assertThat(runA(120).nitrogenMgPerL()).isCloseTo(18.94737, within(5e-6));
    }

    @Test
    void alkalinity_pays7Point14PerNitrogenOxidised() {
        TankState state = runA(60);
        double oxidised = state.nitriteMgPerL() + state.nitrateMgPerL();
        assertThat(1_000 - state.alkalinityMgPerL()).isCloseTo(7.14 * oxidised, within(1e-9));
    }

    @Test
    void ripeFilter_leavesTheSameWhateverTheLoad() {
        // Steady state at 12 °C and DO 9 of the same reference: TAN 0.131637, NO2 0.179386 mg N/L.
        assertThat(Nitrifiers.AMMONIA_OXIDISERS.residualMgPerL(9, 12)).isCloseTo(0.131637, within(5e-7));
        assertThat(Nitrifiers.NITRITE_OXIDISERS.residualMgPerL(9, 12)).isCloseTo(0.179386, within(5e-7));
        for (double load : new double[] {0.03, 0.10}) {
            TankState state = steady(VOLUME_L).after(
                    TankState.fresh(12, 1e5, 1e-3, 5e-4), new Conditions(load, 9, 12, 0), 600);
            assertThat(state.ammoniaMgPerL()).isCloseTo(0.131637, within(1e-5));
            assertThat(state.nitriteMgPerL()).isCloseTo(0.179386, within(1e-5));
        }
    }

    @ParameterizedTest(name = "{0} °C")
    @CsvSource({
        // Computed once elsewhere from Vannecke and Volcke's activation energies.
        "5, 0.22211, 0.37773", "8, 0.30397, 0.46276", "10, 0.37331, 0.52857",
        "12, 0.45715, 0.60261", "15, 0.61623, 0.73106", "20, 1, 1",
    })
    void cold_slowsTheFirstGuildMore(double temperatureC, double first, double second) {
        assertThat(Nitrifiers.AMMONIA_OXIDISERS.warmth(temperatureC)).isCloseTo(first, within(6e-6));
        assertThat(Nitrifiers.NITRITE_OXIDISERS.warmth(temperatureC)).isCloseTo(second, within(6e-6));
    }

    @Test
    void wastes_ofThreeGramsOfFeed() {
        // Timmons and Ebeling, Recirculating Aquaculture (second-hand), worked: 3 g/d at 50 % protein in 190 L.
        double nitrogen = Wastes.nitrogenGPerDay(3, 0.5);
        assertThat(nitrogen).isCloseTo(0.138, within(1e-12));
        assertThat(1000 * nitrogen / 190).isCloseTo(0.72632, within(5e-6));
        // 0.9729 g of alkalinity, with what the bacteria build in (7.05 per g N); the model leaves that out.
        assertThat(nitrogen * Wastes.ALKALINITY_PER_N).isCloseTo(0.9729, withinPercentage(1.5));
        assertThat(Carbonate.bicarbonateG(1000 * 0.9729 / 190, 190)).isCloseTo(1.6332, within(5.1e-5));
    }

    @Test
    void stoichiometry_isThatOfTheReaction() {
        // NH4 + 2 O2 → NO3 + 2 H + H2O: two equivalents of acid (50.0435 g CaCO3 each) per 14.0067 g N.
        assertThat(Wastes.ALKALINITY_PER_N).isCloseTo(2 * 50.0435 / 14.0067, within(0.01));
    }

    @Test
    void lackOfAlkalinity_stallsTheFilter() {
        TankParameters soft = TankParameters.ofVolume(VOLUME_L, Chiller.setTo(12));
        Conditions fed = new Conditions(0.05, 9, 20, 1);
        TankState plenty = new TankModel(soft).after(TankState.fresh(12, 200, 0.05, 0.02), fed, 21);
        TankState little = new TankModel(soft).after(TankState.fresh(12, 8, 0.05, 0.02), fed, 21);
        assertThat(little.alkalinityMgPerL()).isBetween(0.0, 3.0);
        assertThat(little.ammoniaMgPerL()).isGreaterThan(3 * plenty.ammoniaMgPerL());
        assertThat(new TankModel(soft).ph(little)).isLessThan(6.5);
    }

    @Test
    void ph_isTheInverseOfTheCarbonDioxideFormula() {
        // Computed once elsewhere from Plummer and Busenberg: 100 mg/L at 10 °C with 8.082 mg/L CO2 is pH
        // 7.5.
        assertThat(TankState.fresh(10, 100, 0, 0).ph(8.082)).isCloseTo(7.5, within(5e-5));
        assertThat(TankState.fresh(10, 50, 0, 0).ph(40.412)).isCloseTo(6.5, within(5e-5));
        assertThat(TankState.fresh(12, 60, 0, 0).ph(23.276)).isCloseTo(6.8, within(5e-5));
    }

    @Test
    void waterChange_leavesTheBacteria() {
        // 1.0 mg/L after three changes of 25 % is 0.421875.
        TankState state = new TankState(12, 1, 1, 1, 80, 0.3, 0.2);
        SourceWater tap = SourceWater.of(12, 80);
        TankState changed = state.changed(0.25, tap).changed(0.25, tap).changed(0.25, tap);
        assertThat(changed.ammoniaMgPerL()).isEqualTo(0.421875);
        assertThat(changed.alkalinityMgPerL()).isEqualTo(80);
        assertThat(changed.ammoniaOxidisersCodPerL()).isEqualTo(0.3);
    }

    @Test
    void longSteps_areCutIntoShortOnes() {
        assertThat(runA(10).ammoniaMgPerL()).isCloseTo(runInPieces(10).ammoniaMgPerL(), within(1e-9));
    }

    @Test
    void nonsense_isNamed() {
        assertThatThrownBy(() -> steady(0)).hasMessageContaining("volume");
        assertThatThrownBy(() -> new Conditions(-1, 9, 20, 1)).hasMessageContaining("nitrogenGPerDay");
        assertThatThrownBy(() -> runA(Double.NaN)).hasMessageContaining("days");
        assertThatThrownBy(() -> TankState.fresh(10, 80, 0, 0).changed(1.5, TAP))
                .hasMessageContaining("share");
    }

    private static TankState runA(double days) {
        return steady(VOLUME_L)
                .after(TankState.fresh(12, 1_000, 1e-3, 5e-4), new Conditions(0.03, 9, 12, 0), days);
    }

    private static TankState runInPieces(int days) {
        TankState state = TankState.fresh(12, 1_000, 1e-3, 5e-4);
        for (int i = 0; i < days * 24; i++) {
            state = steady(VOLUME_L).after(state, new Conditions(0.03, 9, 12, 0), 1 / 24.0);
        }
        return state;
    }

    /** At the room's temperature and with alkalinity never short. */
    private static TankModel steady(double volumeL) {
        return new TankModel(new TankParameters(volumeL, 0, 0, Chiller.NONE,
                Nitrifiers.AMMONIA_OXIDISERS, Nitrifiers.NITRITE_OXIDISERS, 0, 3));
    }
}
