package org.tankrounds.breaks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class BreakWatchTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 12, 19);
    private static final SchoolBreak WINTER = new SchoolBreak(1, "Winter break", FIRST, FIRST.plusDays(4),
            Map.of(day(0), "custodian", day(2), "mentor", day(4), "custodian"));

    @Test
    void dayThatSomebodyTook_andNobodyLooked_isMissedFromTheNextDayOn() {
        assertThat(on(day(0)).missed()).isEmpty();
        assertThat(on(day(1)).missed()).contains(day(0));
        assertThat(on(day(2), day(0)).missed()).isEmpty();
        assertThat(on(day(3), day(0)).missed()).contains(day(2));
    }

    @Test
    void lookThatComesLate_endsIt() {
        assertThat(on(day(3), day(3)).missed()).isEmpty();
        assertThat(on(day(1), day(0).minusDays(1)).missed()).contains(day(0));
    }

    @Test
    void dayThatNobodyTook_isOpenUntilItIsOver_orSomebodyLooked() {
        assertThat(on(day(-3)).open()).containsExactly(day(1), day(3));
        assertThat(on(day(1), day(0)).open()).containsExactly(day(1), day(3));
        assertThat(on(day(1), day(1)).open()).containsExactly(day(3));
        assertThat(on(day(4), day(4)).open()).isEmpty();
    }

    @Test
    void todaysLooker_isAwaited_untilSomebodyLooked() {
        assertThat(on(day(2), day(0)).awaitedToday()).contains("mentor");
        assertThat(on(day(2), day(2)).awaitedToday()).isEmpty();
        assertThat(on(day(-1)).awaitedToday()).isEmpty();
    }

    @Test
    void breakThatIsOver_orFarAhead_isNotTold() {
        assertThat(on(day(5)).isTold()).isFalse();
        assertThat(on(day(-BreakWatch.AHEAD_DAYS - 1)).isTold()).isFalse();
        assertThat(on(day(-BreakWatch.AHEAD_DAYS)).isTold()).isTrue();
    }

    private static LocalDate day(int after) {
        return FIRST.plusDays(after);
    }

    private static BreakWatch on(LocalDate today, LocalDate... looked) {
        return new BreakWatch(WINTER, Stream.of(looked).collect(Collectors.toSet()), today);
    }
}
