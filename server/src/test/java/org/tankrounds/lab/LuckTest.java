package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LuckTest {

    @Test
    void luckOfAnHour_isTheSameForAPurpose_whateverElseIsDrawn() {
        Luck quiet = new Luck(1);
        Luck busy = new Luck(2);
        quiet.beginAnew(5, 7);
        busy.beginAnew(5, 7);
        busy.about("deaths").count(40, 0.5);
        double air = quiet.about("air").uniform();
        assertThat(busy.about("air").uniform()).isEqualTo(air);
        assertThat(busy.about("filter").uniform()).isNotEqualTo(air);
        busy.beginAnew(5, 8);
        assertThat(busy.about("air").uniform()).isNotEqualTo(air);
    }

    /** A season is one sequence of draws: naming what they are for moves none of them. */
    @Test
    void luckThatWasNotBegunAnew_goesOnInOneSequence() {
        Luck plain = new Luck(3);
        Luck named = new Luck(3);
        plain.uniform();
        named.about("air").uniform();
        assertThat(named.about("filter").uniform()).isEqualTo(plain.uniform());
    }
}
