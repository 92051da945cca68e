package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.web.Formats;

class SilenceWordingTest {
    private static final Instant NOW = Instant.parse("2027-03-10T19:00:00Z");
    private final SilenceWording wording = new SilenceWording(new Formats(ZoneOffset.UTC, NOW));

    /** Seventeen in five days is another thing where fourteen of them died in one. */
    @Test
    void deaths_areToldWithTheMostOfADay_whereThatIsNotAll() {
        assertThat(deaths(17, 14, 120)).isEqualTo("17 found dead in 5 days, 14 of them within a day.");
        assertThat(deaths(7, 7, 120)).isEqualTo("7 found dead in 5 days.");
        assertThat(deaths(4, 1, 120)).isEqualTo("4 found dead in 5 days.");
    }

    private String deaths(int count, int inADay, double overHours) {
        return wording.deaths(Reason.of(Reason.Kind.DEATHS, Driver.DEATHS, 0.5).withCount(count)
                .withValue(inADay, "1").withOverHours(overHours)).lead();
    }
}
