package org.tankrounds.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class LocalTrendTest {

    /**
     * Annual flow of the Nile at Aswan, 1871 to 1970, 10^8 m³ (Cobb 1978, Biometrika 65:243–251; from
     * memory).
     */
    private static final double[] NILE = {
        1120, 1160, 963, 1210, 1160, 1160, 813, 1230, 1370, 1140,
        995, 935, 1110, 994, 1020, 960, 1180, 799, 958, 1140,
        1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774, 840,
        874, 694, 940, 833, 701, 916, 692, 1020, 1050, 969,
        831, 726, 456, 824, 702, 1120, 1100, 832, 764, 821,
        768, 845, 864, 862, 698, 845, 744, 796, 1040, 759,
        781, 865, 845, 944, 984, 897, 822, 1010, 771, 676,
        649, 846, 812, 742, 801, 1040, 860, 874, 848, 890,
        744, 749, 838, 1050, 918, 986, 797, 923, 975, 815,
        1020, 906, 901, 1170, 912, 746, 919, 718, 714, 740};
    private static final double OBSERVATION_VARIANCE = 15_099;
    private static final double LEVEL_VARIANCE = 1_469.1;
    /** No slope, no forgetting, no population to return to: the local level model. A year counts as a day. */
    private static final TrendModel LOCAL_LEVEL =
            new TrendModel(TrendModel.Scale.linear(), 1e9, 1e12, LEVEL_VARIANCE, 0, 1, 0, 0, 0);

    /**
     * Durbin and Koopman 2012, Time Series Analysis by State Space Methods, chapter 2: filtered levels of the
     * Nile under their variances 15099 and 1469.1, exact diffuse start; digits computed once elsewhere.
     */
    @Test
    void nile_isFilteredAsPublished() {
        LocalTrend[] filtered = nile();
        assertThat(DoubleStream.of(NILE).average().getAsDouble()).isCloseTo(919.35, within(1e-9));
        assertThat(filtered[1].level()).isCloseTo(1140.9278, within(5.1e-5));
        assertThat(filtered[1].levelVar()).isCloseTo(7899.736, within(5.1e-4));
        assertThat(filtered[2].level()).isCloseTo(1072.7985, within(5.1e-5));
        assertThat(filtered[3].level()).isCloseTo(1117.3090, within(5.1e-5));
        assertThat(filtered[99].level()).isCloseTo(798.3703, within(5.1e-5));
    }

    @Test
    void nile_comesToTheSteadyVariance() {
        LocalTrend predicted = nile()[99].after(1, LOCAL_LEVEL);
        assertThat(predicted.levelVar()).isCloseTo(5501.258, within(5.1e-4));
    }

    /** Irregular times: two days are two single days without a look. */
    @Test
    void gap_addsItsDaysOfNoise() {
        LocalTrend seen = nile()[40];
        LocalTrend twoDays = seen.after(2, LOCAL_LEVEL);
        LocalTrend twice = seen.after(1, LOCAL_LEVEL).after(1, LOCAL_LEVEL);
        assertThat(twoDays.levelVar()).isCloseTo(twice.levelVar(), within(1e-6));
        assertThat(twoDays.levelVar()).isCloseTo(seen.levelVar() + 2 * LEVEL_VARIANCE, within(1e-6));
    }

    /** Whether nobody looked for four weeks in one go or hour by hour, the same is expected. */
    @Test
    void oneLongStep_expectsWhatManyShortOnesDo() {
        LocalTrend seen = new LocalTrend(0.4, 0.05, 0.02, 0.001, 0.002);
        LocalTrend hourly = seen;
        for (int h = 0; h < 28 * 24; h++) {
            hourly = hourly.after(1 / 24.0, TrendModel.NITRITE);
        }
        LocalTrend atOnce = seen.after(28, TrendModel.NITRITE);
        assertThat(atOnce.level()).isCloseTo(hourly.level(), within(1e-9));
        assertThat(atOnce.slope()).isCloseTo(hourly.slope(), within(1e-9));
    }

    @Test
    void longSilence_returnsToThePopulationAndItsSpread() {
        TrendModel model = TrendModel.NITRITE;
        LocalTrend seen = new LocalTrend(1.5, 0.05, 0.01, 0, 0.001);
        LocalTrend after = seen.after(1_000, model);
        double populationVariance = model.populationSd() * model.populationSd();
        assertThat(after.level()).isCloseTo(0, within(1e-3));
        assertThat(after.slope()).isCloseTo(0, within(1e-9));
        assertThat(after.levelVar()).isBetween(0.9 * populationVariance, 2 * populationVariance);
    }

    private static LocalTrend[] nile() {
        LocalTrend[] filtered = new LocalTrend[NILE.length];
        filtered[0] = new LocalTrend(NILE[0], 0, OBSERVATION_VARIANCE, 0, 0);
        for (int i = 1; i < NILE.length; i++) {
            filtered[i] = filtered[i - 1].after(1, LOCAL_LEVEL).seeing(NILE[i], OBSERVATION_VARIANCE);
        }
        return filtered;
    }
}
