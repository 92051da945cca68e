package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tankrounds.advice.Act;
import org.tankrounds.forecast.Driver;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Language;

class BringListTest {
    private static final BringList ENGLISH = new BringList(Speech.PLAIN);
    private static final Act SALT = act(Act.Kind.SALT, OptionalDouble.of(15), "g", "");
    private static final Act ASK_FOR_PH = act(Act.Kind.ASK_FOR_READING, OptionalDouble.empty(), "", "ph");

    @Test
    void row_namesThingsAndThenWhatToAskFor() {
        assertThat(ENGLISH.of(List.of(ASK_FOR_PH, SALT))).isEqualTo("Salt 15\u00a0g, ask for pH");
        assertThat(ENGLISH.of(List.of(ASK_FOR_PH))).isEqualTo("Ask for pH");
        assertThat(ENGLISH.of(List.of())).isEmpty();
    }

    /** A row that somebody is sent to never stands there with nothing to do. */
    @Test
    void row_withNothingToCarry_namesWhatToDoThere() {
        Act look = act(Act.Kind.LOOK_AT_FISH, OptionalDouble.empty(), "", "");
        Act fast = act(Act.Kind.SKIP_FEED, OptionalDouble.of(24), "h", "");

        assertThat(ENGLISH.of(List.of(fast, look))).isEqualTo("No feed, look at the fish");
        assertThat(ENGLISH.of(List.of(SALT, fast, look))).isEqualTo("Salt 15\u00a0g");
    }

    @Test
    void row_whereFishDieEnMasse_namesWhoHelps() {
        Act air = act(Act.Kind.MORE_AIR, OptionalDouble.empty(), "", "");
        Act chlorine = act(Act.Kind.ASK_FOR_READING, OptionalDouble.empty(), "", "chlorine");
        Act help = act(Act.Kind.CALL_FOR_HELP, OptionalDouble.empty(), "", "");

        assertThat(ENGLISH.of(List.of(air, chlorine, ASK_FOR_PH, help)))
                .isEqualTo("Air pump and stone, ask for chlorine and pH, call for help");
    }

    @Test
    void row_whereNothingIsSafeToAdd_namesTheReadingsOfTomorrow() {
        Act leave = act(Act.Kind.LEAVE_ALKALINITY, OptionalDouble.empty(), "", "");
        Act fast = act(Act.Kind.SKIP_FEED, OptionalDouble.of(24), "h", "");

        assertThat(ENGLISH.of(List.of(fast, leave)))
                .isEqualTo("No feed, read alkalinity, ammonia and nitrite again tomorrow");
    }

    @Test
    void sentences_bringThings_andAskForReadings() {
        assertThat(ENGLISH.sentences(List.of(ASK_FOR_PH))).isEqualTo("Ask for pH.");
        assertThat(ENGLISH.sentences(List.of(SALT))).isEqualTo("Bring: salt 15\u00a0g.");
        assertThat(ENGLISH.sentences(List.of(ASK_FOR_PH, SALT)))
                .isEqualTo("Bring: salt 15\u00a0g. Ask for pH.");
        assertThat(ENGLISH.sentences(List.of())).isEmpty();
    }

    @Test
    void dose_whereNobodySaidHowMuchWaterThereIs_isFor100Litres() {
        assertThat(ENGLISH.of(List.of(act(Act.Kind.SALT, OptionalDouble.of(7.9), Act.G_PER_100_L, ""))))
                .isEqualTo("Salt 7.9\u00a0g\u00a0per\u00a0100\u00a0L");
    }

    @Test
    void row_isSaidInSpanish() {
        BringList spanish = new BringList(new Speech(Language.SPANISH, Scale.CELSIUS));
        Act chlorine = act(Act.Kind.ASK_FOR_READING, OptionalDouble.empty(), "", "chlorine");

        assertThat(spanish.of(List.of(SALT, ASK_FOR_PH, chlorine))).isEqualTo("Sal 15\u00a0g, pedir pH y cloro");
        assertThat(spanish.sentences(List.of(SALT, ASK_FOR_PH))).isEqualTo("Llevar: sal 15\u00a0g. Pedir pH.");
    }

    private static Act act(Act.Kind kind, OptionalDouble amount, String unit, String asks) {
        return new Act(kind, Optional.of(Driver.NITRITE), amount, unit, OptionalDouble.empty(), "", asks, "");
    }
}
