package org.tankrounds.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tankrounds.demo.DemoReading.Value;
import org.tankrounds.tankmodel.TankState;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Units;

/**
 * Whatever weekday and hour the demo is started on, the troubles that it is there to show are in the
 * readings.
 */
class DemoStoryTest {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final long SEED = 20;

    /** A week of mornings, noons and nights, with the end of summer time in it. */
    static Stream<Instant> starts() {
        return Stream.iterate(0, day -> day < 7, day -> day + 1).flatMap(day -> Stream.of(6, 12, 23)
                .map(hour -> Instant.parse("2026-11-22T05:10:00Z").plus(Duration.ofHours(24L * day + hour))));
    }

    @ParameterizedTest
    @MethodSource("starts")
    void chillerStopped_waterIsAbove15AndClimbing(Instant now) {
        Told told = told("brindleford-12", now);
        List<Double> newest = told.newest(Analyte.TEMPERATURE, 6);
        assertThat(newest.get(0)).isGreaterThan(15.0).isLessThan(18.0);
        assertThat(newest.get(0)).isGreaterThan(newest.get(5) + 1);
        assertThat(told.ageH()).isLessThan(2.1);
        assertThat(told.life.truthAt(now.minus(Duration.ofHours(30))).temperatureC())
                .isCloseTo(10.5, within(0.3));
    }

    @ParameterizedTest
    @MethodSource("starts")
    void overFed_unIonisedAmmoniaHasDoubledAndIsNearItsLimit(Instant now) {
        Told told = told("quillmoss-lab", now);
        assertThat(told.unIonised(0)).isBetween(0.008, 0.025);
        assertThat(told.unIonised(0)).isGreaterThan(2 * told.unIonised(5));
        assertThat(told.newest(Analyte.TOTAL_AMMONIA, 1).get(0)).isGreaterThanOrEqualTo(0.5);
    }

    @ParameterizedTest
    @MethodSource("starts")
    void unripeFilter_ammoniaCameFirstAndNitriteClimbs(Instant now) {
        Told told = told("otterhythe-library", now);
        assertThat(told.truth(7).ammoniaMgPerL()).isGreaterThan(2 * told.truth(7).nitriteMgPerL());
        assertThat(told.truth(0).nitriteMgPerL()).isBetween(0.2, 0.6)
                .isGreaterThan(2 * told.truth(6).nitriteMgPerL());
        assertThat(told.newest(Analyte.NITRITE, 1).get(0)).isGreaterThan(0.15);
    }

    @ParameterizedTest
    @MethodSource("starts")
    void softWater_alkalinityIsNearlyUsedUpAndPhSags(Instant now) {
        Told told = told("brindleford-9", now);
        assertThat(told.newest(Analyte.ALKALINITY, 1).get(0)).isLessThanOrEqualTo(10);
        assertThat(told.newest(Analyte.PH, 1).get(0)).isBetween(5.9, 6.7);
        assertThat(told.life.truePhAt(now))
                .isLessThan(told.life.truePhAt(now.minus(Duration.ofDays(14))) - 0.3);
    }

    @ParameterizedTest
    @MethodSource("starts")
    void silentClass_wasLastHeardOfSixToEightDaysAgo(Instant now) {
        assertThat(told("saddlewick-3", now).ageH()).isBetween(6 * 24.0, 8 * 24.0);
    }

    @ParameterizedTest
    @MethodSource("starts")
    void deathsStart(Instant now) {
        Told told = told("ambleroot-5", now);
        assertThat(told.newest(Analyte.DEATHS, 3)).containsExactly(4.0, 2.0, 1.0);
        assertThat(told.ageH()).isLessThan(48);
    }

    @ParameterizedTest
    @MethodSource("starts")
    void lowChloride_nitriteIsBeyondItsLimit(Instant now) {
        // 3 mg/L of chloride: limit 0.09 mg/L as N, between 0.03 at 1 and 0.15 at 5 (EIFAC 1984, from
        // memory).
        assertThat(told("sedgewhistle-science", now).newest(Analyte.NITRITE, 1).get(0)).isGreaterThan(0.09);
    }

    @ParameterizedTest
    @MethodSource("starts")
    void healthyTanks_showNothing(Instant now) {
        for (String key
                : List.of("quillmoss-hall", "larchquill-21", "sedgewhistle-foyer", "dapplethorpe-6")) {
            Told told = told(key, now);
            assertThat(told.unIonised(0)).as(key).isLessThan(0.004);
            assertThat(told.newest(Analyte.NITRITE, 1).get(0)).as(key).isLessThanOrEqualTo(0.1);
            assertThat(told.truth(0).temperatureC()).as(key).isLessThan(11);
            assertThat(told.ageH()).as(key).isLessThan(48);
        }
    }

    @ParameterizedTest
    @MethodSource("starts")
    void everyReading_canBeStored(Instant now) {
        for (DemoChapter chapter : DemoScenario.chapters()) {
            for (DemoTank tank : chapter.tanks()) {
                Told told = told(tank.key(), now);
                assertThat(told.readings).as(tank.key()).hasSizeGreaterThan(20)
                        .allSatisfy(reading -> assertThat(reading.measuredAt())
                                .isBetween(told.life.eggsReceivedAt(), now));
                assertThat(told.newest(Analyte.DEATHS, 1000).stream().mapToDouble(found -> found).sum())
                        .isLessThan(tank.eggs().count() / 2.0);
            }
        }
    }

    @Test
    void slipOfThePen_isThereOnce() {
        List<Double> ph = told("sedgewhistle-foyer", starts().findFirst().orElseThrow())
                .newest(Analyte.PH, 1000);
        assertThat(ph.stream().filter(value -> value > 9)).hasSize(1);
    }

    @Test
    void someLiveOnTheirYolk_othersFeed() {
        Instant now = starts().findFirst().orElseThrow();
        assertThat(told("larchquill-21", now).life.firstFeedingOn()).isEmpty();
        assertThat(told("quillmoss-hall", now).life.firstFeedingOn()).isPresent();
    }

    @Test
    void sameSeedAndMoment_tellTheSame() {
        Instant now = Instant.parse("2026-11-25T08:15:00Z");
        assertThat(told("quillmoss-lab", now).readings).isEqualTo(told("quillmoss-lab", now).readings);
        assertThat(told("quillmoss-lab", now).readings)
                .isNotEqualTo(told("quillmoss-lab", now.plus(Duration.ofDays(1))).readings);
        DemoTank tank = tank("quillmoss-lab");
        assertThat(new DemoSimulator(tank, 100, ZONE, now, SEED + 1).readings(DemoKit.KIT))
                .isNotEqualTo(new DemoSimulator(tank, 100, ZONE, now, SEED).readings(DemoKit.KIT));
    }

    private static Told told(String key, Instant now) {
        DemoSimulator life = new DemoSimulator(tank(key), 100, ZONE, now, SEED);
        return new Told(life, now, life.readings(DemoKit.KIT));
    }

    private static DemoTank tank(String key) {
        return DemoScenario.chapters().stream().flatMap(chapter -> chapter.tanks().stream())
                .filter(tank -> tank.key().equals(key)).findFirst().orElseThrow();
    }

    /** A tank's life, and what its class wrote down of it. */
    private record Told(DemoSimulator life, Instant now, List<DemoReading> readings) {

        TankState truth(int daysAgo) {
            return life.truthAt(now.minus(Duration.ofDays(daysAgo)));
        }

        double unIonised(int daysAgo) {
            TankState water = truth(daysAgo);
            return Ammonia.unIonisedMgPerL(water.ammoniaMgPerL(),
                    life.truePhAt(now.minus(Duration.ofDays(daysAgo))), water.temperatureC());
        }

        double ageH() {
            Instant newest = readings.get(readings.size() - 1).measuredAt();
            return Duration.between(newest, now).toMinutes() / 60.0;
        }

        /** In canonical units, the newest first. */
        List<Double> newest(Analyte analyte, int count) {
            List<Double> values = readings.stream().map(reading -> value(reading, analyte))
                    .filter(OptionalDouble::isPresent).map(OptionalDouble::getAsDouble).toList();
            return Stream.iterate(values.size() - 1, i -> i >= Math.max(0, values.size() - count), i -> i - 1)
                    .map(values::get).toList();
        }

        private static OptionalDouble value(DemoReading reading, Analyte analyte) {
            return reading.values().stream().filter(value -> value.analyte() == analyte)
                    .mapToDouble(Told::canonical).findFirst();
        }

        private static double canonical(Value value) {
            return Units.toCanonical(value.analyte(), value.form(), value.value().doubleValue(), 10);
        }
    }
}
