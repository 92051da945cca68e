package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tankrounds.forecast.Driver;
import org.tankrounds.rounds.MorningScore.Scored;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Language;

class MorningScoreTest {

    @Test
    void troubleHereAndElsewhere_isCounted() {
        assertThat(MorningScore.of(List.of(sent(1.5, true), sent(2, true), sent(0.5, true), left(1.2, true),
                left(0.3, true), unread(true)), Speech.PLAIN))
                .isEqualTo("Of the 3 tanks to go to, 2 went beyond a limit within three days by later readings; "
                        + "of the 3 others, 1 did. The water of 1 was not read.");
    }

    @Test
    void threeDaysThatHaveNotPassed_areToldSoFar() {
        assertThat(MorningScore.of(List.of(sent(1.5, false), left(0.3, false)), Speech.PLAIN))
                .isEqualTo("Of the one tank to go to, 1 has gone beyond a limit so far by later readings; "
                        + "the other one has not.");
    }

    @Test
    void quietMorning_isToldToo() {
        assertThat(MorningScore.of(List.of(left(0.2, true), left(0.3, true)), Speech.PLAIN))
                .isEqualTo("There was no tank to go to; of 2, none went beyond a limit within three days by later "
                        + "readings.");
    }

    @Test
    void score_isToldInSpanish() {
        Speech spanish = new Speech(Language.SPANISH, Scale.CELSIUS);
        assertThat(MorningScore.of(List.of(sent(1.5, true), sent(2, true), left(1.2, true), unread(true)), spanish))
                .isEqualTo("De los 2 tanques adonde ir, 2 cruzaron un límite en tres días según lecturas posteriores;"
                        + " de los otros 2, 1 lo cruzó. El agua de 1 no se midió.");
    }

    private static Scored sent(double u, boolean isOver) {
        return new Scored(true, read(u, isOver));
    }

    private static Scored left(double u, boolean isOver) {
        return new Scored(false, read(u, isOver));
    }

    private static Scored unread(boolean isOver) {
        return new Scored(false, new Aftermath(Set.of(), Optional.empty(), false, 0, List.of(), 0, isOver));
    }

    private static Aftermath read(double u, boolean isOver) {
        return new Aftermath(Set.of(Driver.NITRITE), Optional.of(new Aftermath.Worst(
                Driver.NITRITE, 0.15 * u, 0.15, u, Instant.EPOCH)), true, 0, List.of(), 1, isOver);
    }
}
