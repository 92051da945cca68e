package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.forecast;
import static org.tankrounds.testing.Water.read;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** Water as bad as no classroom shows, read day after day the same: it is believed, and it comes first. */
class FarBeyondTest {
    private static final int FISH = 100;
    private static final double CHLORIDE_LIMIT_MG_N_PER_L = 0.288;

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"TEMPERATURE, 28", "PH, 9.6", "PH, 5.4", "NITRITE, 15.5", "NITRITE, 40", "TOTAL_AMMONIA, 12.5",
        "TOTAL_AMMONIA, 40", "DISSOLVED_OXYGEN, 2.5", "CHLORINE, 6", "CHLORINE, 10"})
    void readDailyForTenDays_isBeyondItsLimitNow(Analyte analyte, double value) {
        Forecast forecast = forecast(feedingFish(), tenDays(FINE, analyte, value));
        assertThat(forecast.hoursToLimit()).hasValue(0);
        assertThat(forecast.chance()).isGreaterThan(0.7);
        assertThat(forecast.reasons().get(0).kind()).isEqualTo(Reason.Kind.BEYOND_LIMIT);
    }

    /** What is shown is what was read. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"TEMPERATURE, 28", "PH, 9.6", "DISSOLVED_OXYGEN, 2.0", "CHLORINE, 10"})
    void whatWasRead_isSaid(Analyte analyte, double value) {
        assertThat(forecast(feedingFish(), tenDays(FINE, analyte, value)).reasons())
                .filteredOn(reason -> reason.kind() == Reason.Kind.BEYOND_LIMIT)
                .anySatisfy(reason -> assertThat(reason.value()).hasValue(value));
    }

    /** By the contract's sum: every hour by how far beyond. Ammonia 36 times its limit is ten times nitrite at 3.7. */
    @Test
    void ammoniaFarBeyondItsLimit_comesBeforeNitriteALittleBeyond() {
        Forecast ammonia = forecast(feedingFish(), tenDays(FINE.withPh(8.4), Analyte.TOTAL_AMMONIA, 8));
        Forecast nitrite = forecast(feedingFish(), tenDays(FINE, Analyte.NITRITE, 3.7 * CHLORIDE_LIMIT_MG_N_PER_L));
        Forecast oxygen = forecast(feedingFish(), tenDays(FINE, Analyte.DISSOLVED_OXYGEN, 2));
        assertThat(ammonia.exposure()).isGreaterThan(2 * nitrite.exposure());
        assertThat(oxygen.exposure()).isGreaterThan(0.3 * 72 * 2 * FISH);
    }

    @Test
    void eachDegreeBeyond_isMoreHarm() {
        double[] exposures = Stream.of(20.0, 22.0, 24.0, 26.0)
                .mapToDouble(warm -> forecast(feedingFish(), tenDays(FINE, Analyte.TEMPERATURE, warm)).exposure())
                .toArray();
        assertThat(exposures).isSorted();
        assertThat(exposures[3]).isGreaterThan(1.3 * exposures[1]);
    }

    /** As files and the service have them: marked where no classroom shows such a value. */
    private static List<Observation> tenDays(Water water, Analyte analyte, double value) {
        Stream<Observation> others = water.lastRead(0.1).stream().filter(o -> o.analyte() != analyte);
        Stream<Observation> odd = IntStream.range(0, 10).mapToObj(day -> read(0.1 + day, analyte, value, 0))
                .map(o -> new Observation(o.at(), analyte, value, 0, false, !analyte.isLikely(value)));
        return Stream.concat(others, odd).toList();
    }
}
