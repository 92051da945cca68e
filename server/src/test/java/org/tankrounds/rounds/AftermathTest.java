package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;

/** What is made of the readings after a morning. Limits as the public interface has them. */
class AftermathTest {
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    /** A Friday, 8:00 in New York. */
    private static final Instant MORNING = Instant.parse("2026-01-09T13:00:00Z");
    private static final Instant MUCH_LATER = MORNING.plus(Duration.ofDays(30));

    @Test
    void theLevelFurthestBeyondItsOwnLimit_isTheWorst() {
        Aftermath then = after(read(5, Analyte.TEMPERATURE, 19), read(6, Analyte.NITRITE, 0.30));
        assertThat(then.wentBeyond()).isTrue();
        // 0.30 against 0.15 mg/L at 5 mg/L chloride is worse than 19 against 18 degrees.
        assertThat(then.worst().orElseThrow().series()).isEqualTo(Driver.NITRITE);
        assertThat(then.worst().orElseThrow().u()).isCloseTo(2, within(1e-9));
        assertThat(words(then)).isEqualTo("Nitrite 0.3 mg/L as N, Fri 9 Jan, 14:00: beyond its limit of 0.15. "
                + "Deaths not counted. Read twice.");
    }

    @Test
    void limit_isThatOfTheStageAtTheTime() {
        assertThat(after(Stage.SAC_FRY, read(5, Analyte.TEMPERATURE, 14)).wentBeyond()).isTrue();
        assertThat(after(Stage.FEEDING, read(5, Analyte.TEMPERATURE, 14)).wentBeyond()).isFalse();
    }

    @Test
    void chlorideReadByThen_raisesTheNitriteLimit() {
        assertThat(after(read(4, Analyte.CHLORIDE, 20), read(6, Analyte.NITRITE, 0.3)).wentBeyond()).isFalse();
        assertThat(after(read(6, Analyte.NITRITE, 0.3), read(7, Analyte.CHLORIDE, 20)).wentBeyond()).isTrue();
    }

    @Test
    void ammonia_countsWithThePhAndTemperatureReadAboutThen() {
        Observation before = read(-20, Analyte.PH, 8.4);
        Aftermath then = after(List.of(before), Stage.FEEDING, List.of(
                read(5, Analyte.TEMPERATURE, 12), read(5, Analyte.TOTAL_AMMONIA, 1)));
        // Emerson et al. 1975 at pH 8.4 and 12 degrees: about 5 % of 1.2 mg/L, far above 0.0125.
        assertThat(then.worst().orElseThrow().series()).isEqualTo(Driver.UN_IONISED_AMMONIA);
        assertThat(after(read(5, Analyte.TOTAL_AMMONIA, 1)).read()).isEmpty();
    }

    @Test
    void whatIsDoubtful_orWasNotDetected_isNotHeldAgainstATank() {
        Observation doubtful = new Observation(at(5), Analyte.TEMPERATURE, 52, 0.5, false, true);
        Observation none = new Observation(at(5), Analyte.NITRITE, 0, 0.5, true, false);
        Aftermath then = after(doubtful, none);
        assertThat(then.wentBeyond()).isFalse();
        assertThat(then.read()).containsExactly(Driver.NITRITE);
        assertThat(words(then)).startsWith("Nothing was detected.");
    }

    @Test
    void oxygenAndPh_areBelowTheirLimits() {
        assertThat(words(after(read(5, Analyte.DISSOLVED_OXYGEN, 5)))).contains("below its limit of 6.");
        assertThat(words(after(read(5, Analyte.PH, 5.5))))
                .startsWith("pH 5.5, Fri 9 Jan, 13:00: below its limit of 6.");
        assertThat(words(after(read(5, Analyte.PH, 9.4)))).contains("beyond its limit of 9.");
    }

    @Test
    void quietDays_takeFewWords() {
        assertThat(words(after(read(5, Analyte.TEMPERATURE, 11), read(5, Analyte.DEATHS, 0))))
                .isEqualTo("Within limits as far as read. No deaths. Read once. Nitrite was not read.");
        assertThat(words(after(read(5, Analyte.NITRITE, 0.13))))
                .startsWith("Within limits as far as read. Nearest: nitrite 0.13 mg/L as N, Fri 9 Jan, "
                        + "13:00 (limit 0.15).");
    }

    @Test
    void nothingRead_isToldByWhetherTheTimeIsOver() {
        assertThat(words(after())).isEqualTo("Nothing was read in the 72 hours after.");
        Aftermath soon = Aftermath.of(input(List.of()), at -> Stage.FEEDING, List.of(), MORNING,
                MORNING.plusSeconds(60));
        assertThat(words(soon)).isEqualTo("Nothing has been read since.");
        assertThat(words(after(read(5, Analyte.FEED, 2)))).startsWith("The water was not read.");
    }

    private static String words(Aftermath then) {
        Forecast forecast = new Forecast("t", MORNING, 0.3, 1, Driver.NITRITE, OptionalDouble.empty(),
                OptionalDouble.empty(), Stage.FEEDING, 80, List.of(), List.of());
        return new AftermathWording(new Formats(NEW_YORK, MORNING)).of(then, forecast).whole().replace('\u00a0', ' ');
    }

    private static Aftermath after(Observation... later) {
        return after(Stage.FEEDING, later);
    }

    private static Aftermath after(Stage stage, Observation... later) {
        return after(List.of(), stage, List.of(later));
    }

    private static Aftermath after(List<Observation> before, Stage stage, List<Observation> later) {
        return Aftermath.of(input(before), at -> stage, new ArrayList<>(later), MORNING, MUCH_LATER);
    }

    private static TankInput input(List<Observation> before) {
        Tank tank = new Tank(1, "t", new Tank.Room(1, "Room 12", "s", "School"), NEW_YORK, OptionalDouble.empty(), 1,
                200,
                OptionalDouble.empty(), "other", Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), Optional.empty(), "Cel", Optional.empty());
        return new TankInput(tank, Optional.empty(), TankFacts.of("t").build(), before, Optional.empty(), false);
    }

    private static Observation read(int hoursAfter, Analyte analyte, double value) {
        return Observation.of(at(hoursAfter), analyte, value, 0);
    }

    private static Instant at(int hoursAfter) {
        return MORNING.plus(Duration.ofHours(hoursAfter));
    }
}
