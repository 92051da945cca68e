package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Reason;

class TierTest {
    private static final Instant NOW = Instant.parse("2027-01-12T13:00:00Z");
    private static final OptionalDouble NEVER = OptionalDouble.empty();

    @ParameterizedTest
    @CsvSource({
        "0.9,  GO_TODAY",
        "0.5,  GO_TODAY",
        "0.49, GO_THIS_WEEK",
        "0.2,  GO_THIS_WEEK",
        "0.19, NOTHING_NEEDED",
        "0.01, NOTHING_NEEDED",
    })
    void odds_sayWhatToDo(double chance, Tier tier) {
        assertThat(Tier.of(forecast(chance, Driver.NITRITE, NEVER, 12, List.of()))).isEqualTo(tier);
    }

    @Test
    void waterBeyondALimitNow_isAVisitToday_whateverTheOdds() {
        assertThat(Tier.of(forecast(0.3, Driver.NITRITE, OptionalDouble.of(0), 12, List.of())))
                .isEqualTo(Tier.GO_TODAY);
    }

    @Test
    void aClassThatFellSilent_isAskedFirst() {
        assertThat(Tier.of(forecast(0.1, Driver.SILENCE, NEVER, 6 * 24, List.of())))
                .isEqualTo(Tier.ASK_FOR_A_READING);
        assertThat(Tier.of(forecast(0.1, Driver.NITRITE, NEVER, 6 * 24, List.of())))
                .isEqualTo(Tier.ASK_FOR_A_READING);
    }

    @ParameterizedTest
    @CsvSource({
        "7, 144, ASK_FOR_A_READING",
        "3,  24, ASK_FOR_A_READING",
        "2,  24, NOTHING_NEEDED",
        "3, 168, NOTHING_NEEDED",
    })
    void fishThatDieInFineWater_areAskedAbout(int dead, double overHours, Tier tier) {
        Reason deaths = Reason.of(Reason.Kind.DEATHS, Driver.DEATHS, 0.15).withCount(dead)
                .withOverHours(overHours);

        assertThat(Tier.of(forecast(0.01, Driver.TEMPERATURE, NEVER, 2, List.of(deaths)))).isEqualTo(tier);
    }

    /** One in ten of the fish within a day: nothing presses more, whatever the odds (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"10, GO_TODAY", "9, ASK_FOR_A_READING"})
    void fishThatDieEnMasse_areAVisitToday(int deadInADay, Tier tier) {
        Reason deaths = Reason.of(Reason.Kind.DEATHS, Driver.DEATHS, 0.5).withCount(deadInADay)
                .withValue(deadInADay, "1").withOverHours(24);

        assertThat(Tier.of(forecast(0.01, Driver.TEMPERATURE, NEVER, 2, List.of(deaths)))).isEqualTo(tier);
        assertThat(Tier.of(forecast(0.01, Driver.SILENCE, NEVER, 200, List.of(deaths))))
                .isEqualTo(deadInADay >= 10 ? Tier.GO_TODAY : Tier.ASK_FOR_A_READING);
    }

    @Test
    void aReadingThatFitsNoOther_isAskedForAgain() {
        Reason lone = Reason.of(Reason.Kind.READING_SET_ASIDE, Driver.UN_IONISED_AMMONIA, 0.1);

        assertThat(Tier.of(forecast(0.01, Driver.TEMPERATURE, NEVER, 2, List.of(lone))))
                .isEqualTo(Tier.ASK_FOR_A_READING);
    }

    @ParameterizedTest
    @CsvSource({"0, GO_THIS_WEEK", "19, GO_THIS_WEEK", "25, NOTHING_NEEDED"})
    void alkalinityThatIsUsedUp_isBroughtThisWeek(double mgPerL, Tier tier) {
        Reason low = Reason.of(Reason.Kind.ALKALINITY_LOW, Driver.PH, 0.1).withValue(mgPerL, "mg/L as CaCO₃");

        assertThat(Tier.of(forecast(0.01, Driver.PH, NEVER, 2, List.of(low)))).isEqualTo(tier);
    }

    private static Forecast forecast(
            double chance, Driver driver, OptionalDouble hoursToLimit, double ageHours,
            List<Reason> reasons) {
        return new Forecast("tank-1", NOW, chance, 1, driver, hoursToLimit, OptionalDouble.of(ageHours),
                Stage.FEEDING,
                84, reasons, List.of());
    }
}
