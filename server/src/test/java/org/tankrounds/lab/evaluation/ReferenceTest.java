package org.tankrounds.lab.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.TankSeason;
import org.tankrounds.water.Analyte;

/** What people do without an engine; every number is worked by hand. */
class ReferenceTest {
    private static final Instant MORNING = LabSeason.at(3_000);

    @Test
    void latestReading_isTheLargestShareOfALimit() {
        TankSeason tank = tank(read(50, Analyte.TEMPERATURE, 17), read(20, Analyte.TEMPERATURE, 15),
                read(20, Analyte.NITRITE, 0.06));
        // Feeding fish: (15 − 14) / 4 = 0.25; nitrite at 5 mg/L chloride 0.06 / 0.15 = 0.4.
        assertThat(Reference.LATEST.score(tank, MORNING)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void readingsAfterTheMorning_doNotCount() {
        TankSeason tank = tank(read(20, Analyte.TEMPERATURE, 15), read(-1, Analyte.TEMPERATURE, 25));
        assertThat(Reference.LATEST.score(tank, MORNING)).isLessThan(1);
        assertThat(Reference.SILENT.score(tank, MORNING)).isEqualTo(20);
    }

    @Test
    void tankNeverHeardOf_isSilentForLonger() {
        assertThat(Reference.SILENT.score(tank(), MORNING))
                .isGreaterThan(Reference.SILENT.score(tank(read(900, Analyte.PH, 7)), MORNING));
    }

    /** 16.2 °C is 0.55 of the way to 18 °C: 1 point; three days silent: 1; two dead: 2. */
    @Test
    void points_areAddedUp() {
        assertThat(Reference.POINTS.score(tank(read(72, Analyte.TEMPERATURE, 16.2)), MORNING)).isEqualTo(2);
        assertThat(Reference.POINTS.score(
                tank(read(20, Analyte.TEMPERATURE, 16.2), read(20, Analyte.DEATHS, 2)), MORNING)).isEqualTo(3);
    }

    @Test
    void oneSignAtThree_isUrgentByItself() {
        assertThat(Reference.POINTS.score(tank(read(2, Analyte.TEMPERATURE, 18.5)), MORNING)).isEqualTo(5);
    }

    @Test
    void trueWater_isKnownOfThisHourOnly() {
        TankSeason tank = tank();
        tank.nearest()[3_000] = 0.5f;
        tank.nearest()[3_001] = 2;
        assertThat(Reference.TRUTH.score(tank, MORNING)).isEqualTo(0.5);
    }

    private static TankSeason tank(Observation... readings) {
        TankFacts facts = TankFacts.of("T000").thermalUnitsC(300)
                .eggsReceivedAt(MORNING.minus(Duration.ofDays(60))).build();
        return new TankSeason(facts, List.of(readings), 100, new float[LabSeason.HOURS],
                new short[LabSeason.HOURS], new float[LabSeason.HOURS]);
    }

    private static Observation read(int hoursAgo, Analyte analyte, double value) {
        return Observation.of(MORNING.minus(Duration.ofHours(hoursAgo)), analyte, value, 0);
    }
}
