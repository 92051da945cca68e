package org.tankrounds.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.belief.Observation;
import org.tankrounds.tankmodel.Room;
import org.tankrounds.water.Analyte;

/** What a class's own notes say of its water changes. */
class WaterHabitTest {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");

    @Test
    void everyWeekAQuarter_isWhatItIs() {
        WaterHabit habit = habit("2027-02-10T15:00:00Z", changed("2027-01-20T15:00:00Z", 25),
                changed("2027-01-27T15:00:00Z", 25), changed("2027-02-03T15:00:00Z", 25),
                changed("2027-02-10T14:00:00Z", 25));
        assertThat(habit.known()).isTrue();
        assertThat(habit.everyDays()).isEqualTo(7);
        assertThat(habit.share()).isCloseTo(0.25, within(1e-12));
    }

    /** Two half changes of an afternoon are no habit of minutes, and leave a quarter of the old water. */
    @Test
    void twoOfOneDay_areOne() {
        assertThat(habit("2027-02-10T15:00:00Z", changed("2027-02-10T14:00:00Z", 50),
                changed("2027-02-10T14:20:00Z", 50)).known()).isFalse();
        WaterHabit habit = habit("2027-02-10T15:00:00Z", changed("2027-02-03T14:00:00Z", 50),
                changed("2027-02-03T14:40:00Z", 50), changed("2027-02-10T14:00:00Z", 75));
        assertThat(habit.everyDays()).isEqualTo(7);
        assertThat(habit.share()).isCloseTo(0.75, within(1e-12));
    }

    @Test
    void aHabitThatIsGivenUp_fades() {
        assertThat(habit("2027-02-28T15:00:00Z", changed("2027-02-03T14:00:00Z", 25),
                changed("2027-02-04T14:00:00Z", 25)).everyDays()).isEqualTo(12.5);
    }

    @Test
    void nothingNoted_isTheUsual() {
        assertThat(habit("2027-02-28T15:00:00Z")).isEqualTo(new WaterHabit(
                Room.USUAL_CHANGE_SHARE, Room.USUAL_CHANGE_EVERY_DAYS, false));
    }

    private static WaterHabit habit(String asOf, Observation... seen) {
        return WaterHabit.of(List.copyOf(Arrays.asList(seen)), Instant.parse(asOf), ZONE);
    }

    private static Observation changed(String at, double percent) {
        return new Observation(Instant.parse(at), Analyte.WATER_CHANGE, percent, 0, false, false);
    }
}
