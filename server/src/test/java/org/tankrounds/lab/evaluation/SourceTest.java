package org.tankrounds.lab.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.lab.TankSeason;
import org.tankrounds.water.Analyte;

class SourceTest {
    private static final Instant NOON = Instant.parse("2027-01-12T17:00:00Z");
    private static final TankFacts FACTS = TankFacts.of("T001").volumeL(190).eggs(100).eggsReceivedAt(NOON)
            .thermalUnitsC(250).sourceAlkalinityMgPerL(80).chlorideMgPerL(12).chillerSetPointC(11).elevationM(300)
            .firstFeedingAt(NOON).zone(ZoneId.of("America/Chicago")).build();
    private static final TankSeason TANK = new TankSeason(FACTS, List.of(
            read(Analyte.TEMPERATURE, 11.2, 0.05), read(Analyte.TEMPERATURE, 11, 0.5), read(Analyte.PH, 7.2, 0.1),
            read(Analyte.TOTAL_AMMONIA, 0.5, 0.25), read(Analyte.NITRITE, 0.1, 0.05),
            read(Analyte.NITRATE, 5, 2.5), read(Analyte.DISSOLVED_OXYGEN, 10, 0.5),
            read(Analyte.FEED, 3, 0), read(Analyte.DEATHS, 1, 0), read(Analyte.WATER_CHANGE, 25, 0)),
            0, new float[0], new short[0], new float[0]);

    @ParameterizedTest
    @EnumSource
    void source_isTakenAwayWholeAndFoundByItsName(Source source) {
        TankSeason without = source.without(TANK);
        assertThat(source.tells(TANK)).isTrue();
        assertThat(source.tells(without)).isFalse();
        assertThat(Source.named(source.title())).contains(source);
    }

    @Test
    void probe_leavesTheThermometer() {
        assertThat(Source.PROBE.without(TANK).observations()).hasSize(9)
                .contains(read(Analyte.TEMPERATURE, 11, 0.5));
    }

    @Test
    void events_areFeedDeathsAndWaterChanges() {
        assertThat(Source.EVENTS.without(TANK).observations()).hasSize(7)
                .noneMatch(reading -> reading.analyte().isHusbandry());
    }

    @Test
    void stage_leavesTheOtherFacts() {
        TankFacts left = Source.STAGE.without(TANK).facts();
        assertThat(left.eggsReceivedAt()).isEmpty();
        assertThat(left.thermalUnitsC()).isEmpty();
        assertThat(left.firstFeedingAt()).isEmpty();
        assertThat(left).usingRecursiveComparison()
                .ignoringFields("eggsReceivedAt", "thermalUnitsC", "seen").isEqualTo(FACTS);
    }

    private static Observation read(Analyte analyte, double value, double halfStep) {
        return Observation.of(NOON, analyte, value, halfStep);
    }
}
