package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Advisor;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Driver;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Language;

class ActWordingTest {
    private static final ActWording ENGLISH = new ActWording(new Formats(ZoneOffset.UTC, Water.AS_OF));

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

    @Test
    void halfTheWater_whereItIsNotEnough_isToBeChangedAgainAfterAReading() {
        Observation alkalinity = Water.read(0.1, Analyte.ALKALINITY, 75, 5);
        assertThat(words(Water.with(Water.FINE.withNitriteMgPerL(2).lastRead(0.1), alkalinity),
                Act.Kind.WATER_CHANGE, false)).contains("change again tomorrow, after another reading of nitrite");
        assertThat(words(Water.with(Water.FINE.withNitriteMgPerL(0.26).lastRead(0.1), alkalinity),
                Act.Kind.WATER_CHANGE, false)).doesNotContain("tomorrow");
    }

    /** Where nobody knows what fresh water would do to the pH, the person is told why there is no amount yet. */
    @Test
    void alkalinityAskedForBeforeAChange_isSaidToDecideHowMuchToChange() {
        List<Observation> readings = Water.FINE.withPh(7.8).withTotalAmmoniaMgPerL(0.8).lastRead(0.1);
        assertThat(words(Water.feedingFish().sourceAlkalinityMgPerL(150), readings, Act.Kind.ASK_FOR_READING, false))
                .contains("alkalinity").contains("how much water to change");
    }

    @Test
    void ice_isOneLoad_andSaidToBeReplaced() {
        assertThat(words(Water.FINE.withTemperatureC(19.5).lastRead(0.1), Act.Kind.ICE, false))
                .contains("with 10 kg of ice").contains("half a day takes about 13 kg").contains("through the day");
    }

    @Test
    void doses_whereNobodySaidHowMuchWaterThereIs_areSaidForEvery100Litres() {
        TankFacts.Builder unsized = TankFacts.of("unsized").eggs(100).chlorideMgPerL(12)
                .eggsReceivedAt(Water.AS_OF.minus(Duration.ofDays(145))).thermalUnitsC(250);
        assertThat(words(unsized, Water.with(Water.FINE.withPh(5.8).withTotalAmmoniaMgPerL(0.1).lastRead(0.1),
                Water.read(0.1, Analyte.ALKALINITY, 5, 5)), Act.Kind.BICARBONATE, false))
                .contains("Add 0.34 g of baking soda for every 100 L, once");
        assertThat(words(unsized, Water.FINE.withNitriteMgPerL(0.4).lastRead(0.1), Act.Kind.SALT, false))
                .contains("Add 7.9 g of plain salt for every 100 L.");
        assertThat(words(unsized, Water.FINE.withTemperatureC(22).lastRead(0.1), Act.Kind.ICE, false))
                .contains("with some ice").doesNotContain("lasts");
    }

    /** Whoever doubled it again would do no harm, but run out of it. */
    @Test
    void thiosulfate_isSaidToBeForTwiceWhatWasRead() {
        assertThat(words(Water.with(Water.FINE.lastRead(0.1), Water.read(0.05, Analyte.CHLORINE, 0.5, 0.1)),
                Act.Kind.THIOSULFATE, false)).contains("for twice what was read already");
    }

    @Test
    void waterLeft_isToldWithTheReason() {
        assertThat(ENGLISH.of(left(Driver.UN_IONISED_AMMONIA), false, false).toString()).contains("lift the pH");
    }

    private static Act left(Driver driver) {
        OptionalDouble none = OptionalDouble.empty();
        return new Act(Act.Kind.LEAVE_WATER, Optional.of(driver), none, "", none, "", "", "");
    }

    /** The service hears nothing of what was treated. */
    @Test
    void thiosulfate_isGivenAfterAnotherReading_whereItWasGivenBefore() {
        assertThat(words(Water.with(Water.FINE.lastRead(0.1), Water.read(0.05, Analyte.CHLORINE, 0.5, 0.1)),
                Act.Kind.THIOSULFATE, false)).contains("treated since chlorine was read, read it again first");
    }

    @Test
    void noFeed_saysWhy_andWhatToDoWithLeftovers() {
        List<Observation> readings = Water.FINE.withTotalAmmoniaMgPerL(8).lastRead(0.1);
        assertThat(words(readings, Act.Kind.SKIP_FEED, false)).contains("more ammonia").doesNotContain("leftovers");
        for (int day = 1; day < 16; day++) {
            readings.add(Water.read(day, Analyte.FEED, 1, 0.1));
        }
        readings.add(Water.read(0.1, Analyte.FEED, 4, 0.1));
        assertThat(words(readings, Act.Kind.SKIP_FEED, false)).contains("4 times as much as usual: take leftovers out");
    }

    @Test
    void nothingSafe_isSaidWithTheReason_andWhomToCall() {
        List<Observation> readings = Water.with(Water.FINE.withPh(6.4).withTotalAmmoniaMgPerL(2)
                .withNitriteMgPerL(0.3).lastRead(0.1), Water.read(0.1, Analyte.ALKALINITY, 5, 5));
        assertThat(words(readings, Act.Kind.LEAVE_ALKALINITY, false)).contains("the filter wakes")
                .contains("again tomorrow").contains("Call your coordinator or mentor");
    }

    @Test
    void saltBeforeAlkalinity_isSaidToComeFirst() {
        List<Observation> readings = Water.with(Water.FINE.withPh(6.6).withTotalAmmoniaMgPerL(0.4)
                .withNitriteMgPerL(0.03).lastRead(0.1), Water.read(0.1, Analyte.ALKALINITY, 5, 5));
        assertThat(words(readings, Act.Kind.SALT, false)).contains("Before anything that brings alkalinity back");
    }

    /** Whatever they die of may be catching. */
    @Test
    void massDeaths_callForHelp_andKeepWhatMayBeCatchingWhereItIs() {
        List<Observation> readings =
                Water.with(Water.FINE.lastRead(0.1), Water.read(0.1, Analyte.DEATHS, 12, 0.5));
        assertThat(words(readings, Act.Kind.CALL_FOR_HELP, false)).contains("fish health contact").contains("vet")
                .contains("to other tanks").contains("wash hands").contains("eaten, flushed or released");
    }

    @Test
    void readingAskedFor_isToldWithItsReason() {
        List<Observation> one = List.of(Water.read(0.1, Analyte.TOTAL_AMMONIA, 4, 0.5));
        assertThat(words(one, Act.Kind.ASK_FOR_READING, false)).contains("how much of the ammonia harms");
    }

    @Test
    void acts_areSaidInSpanish() {
        ActWording spanish = new ActWording(
                new Formats(ZoneOffset.UTC, Water.AS_OF, new Speech(Language.SPANISH, Scale.FAHRENHEIT)));
        Act half = act(Water.feedingFish(), Water.with(Water.FINE.withNitriteMgPerL(2).lastRead(0.1),
                Water.read(0.1, Analyte.ALKALINITY, 75, 5)), Act.Kind.WATER_CHANGE);
        Act ice = act(Water.feedingFish(), Water.FINE.withTemperatureC(19.5).lastRead(0.1), Act.Kind.ICE);

        assertThat(spanish.of(half, true, true).act()).startsWith("Cambia el 50 % del agua, ");
        assertThat(spanish.of(half, true, true).how()).isEqualTo("Trata el agua nueva contra la cloramina y llévala"
                + " antes a la temperatura del tanque. Romper la cloramina libera amoníaco:"
                + " mídelo al día siguiente. Viértela despacio, lejos de los huevos y los alevines con saco."
                + " Una vez no basta: cambia otra vez mañana, después de otra lectura de nitrito.");
        assertThat(spanish.of(ice, true, false).how()).contains("medio día requiere unos 13 kg")
                .endsWith("no más de 1.8\u00a0°F por hora.");
    }

    private static String words(List<Observation> readings, Act.Kind kind, boolean chloramine) {
        return words(Water.feedingFish(), readings, kind, chloramine);
    }

    private static String words(
            TankFacts.Builder facts, List<Observation> readings, Act.Kind kind, boolean chloramine) {
        return ENGLISH.of(act(facts, readings, kind), false, chloramine).toString();
    }

    private static Act act(TankFacts.Builder facts, List<Observation> readings, Act.Kind kind) {
        return new Advisor().advise(Water.lookAhead(facts, readings), readings).acts().stream()
                .filter(one -> one.kind() == kind).findFirst().orElseThrow();
    }
}
