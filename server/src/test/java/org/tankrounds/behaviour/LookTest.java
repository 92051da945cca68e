package org.tankrounds.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.fish.Stage;
import org.tankrounds.words.Words;

/** Common practice, no source. */
class LookTest {
    private static final Instant AT = Instant.parse("2026-01-13T14:00:00Z");

    @Test
    void sacFryLyingInACorner_doWhatSacFryDo() {
        Look look = look(Seen.LYING, Seen.CORNERS);
        assertThat(look.alarm(Stage.SAC_FRY)).isEqualTo(Alarm.NONE);
        assertThat(look.alarm(Stage.FEEDING)).isEqualTo(Alarm.WATCH);
    }

    @Test
    void oneGraveSign_orTwoSmallOnes_areTold() {
        assertThat(lately(look(Seen.GASPING)).isTold(Stage.FEEDING)).isTrue();
        assertThat(lately(look(Seen.DARK)).isTold(Stage.FEEDING)).isFalse();
        assertThat(lately(look(Seen.DARK, Seen.REFUSING)).isTold(Stage.FEEDING)).isTrue();
        assertThat(look(Seen.CALM, Seen.EVEN, Seen.EAGER).worries(Stage.FEEDING)).isEmpty();
    }

    @Test
    void whatALaterLookLeavesOut_stands_andWhatItSaysOtherwiseDoesNot() {
        SeenLately seen = lately(look(Seen.USUAL, Seen.CALM), look(Seen.GASPING, Seen.ROLLING));

        assertThat(seen.worries(Stage.FEEDING)).containsExactly(Seen.GASPING);
        assertThat(seen.looks()).extracting(Look::seen)
                .containsExactly(List.of(Seen.USUAL, Seen.CALM), List.of(Seen.GASPING));
        assertThat(lately(look(Seen.EVEN), look(Seen.GASPING)).alarm(Stage.FEEDING)).isEqualTo(Alarm.NONE);
        assertThat(lately(look(Seen.DARK), look(Seen.REFUSING)).isTold(Stage.FEEDING)).as("two, in two looks").isTrue();
    }

    @Test
    void smallSignsFade_whatIsGraveStandsUntilSomebodyLooksAgain() {
        Instant days2 = AT.plus(Duration.ofDays(2));
        List<Look> seen = List.of(look(Seen.GASPING, Seen.DARK, Seen.REFUSING));

        assertThat(SeenLately.of(seen, days2).worries(Stage.FEEDING)).containsExactly(Seen.GASPING);
        assertThat(SeenLately.of(seen, AT.plus(Duration.ofDays(8))).looks()).isEmpty();
    }

    @Test
    void everyBehaviour_canBeAsUsual_andEveryWayHasWordsOfItsOwn() {
        for (Behaviour behaviour : Behaviour.values()) {
            assertThat(behaviour.ways().get(0).alarm(Stage.FEEDING)).as(behaviour.code()).isEqualTo(Alarm.NONE);
        }
        assertThat(Arrays.stream(Seen.values()).map(seen -> LookWording.list(List.of(seen), Words.english()))
                .filter(words -> !words.contains("corner"))).doesNotHaveDuplicates();
    }

    private static SeenLately lately(Look... newestFirst) {
        return SeenLately.of(List.of(newestFirst), AT.plus(Duration.ofHours(1)));
    }

    private static Look look(Seen... seen) {
        return new Look(1, AT, List.of(seen));
    }
}
