package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LabSeasonTest {

    @Test
    void season_ofTheSameSeed_isTheSame() {
        TankSeason once = LabSeason.played(World.USUAL, 7, 2, 10).tanks().get(1);
        TankSeason again = LabSeason.played(World.USUAL, 7, 2, 10).tanks().get(1);
        assertThat(again.observations()).isEqualTo(once.observations());
        assertThat(again.excess()).isEqualTo(once.excess());
    }

    @Test
    void worldDrawn_ofTheSameNumber_isTheSame() {
        assertThat(World.drawn(12)).isEqualTo(World.drawn(12)).isNotEqualTo(World.drawn(13));
    }

    @Test
    void season_ofAnotherSeed_isAnother() {
        TankSeason one = LabSeason.played(World.USUAL, 7, 1, 10).tanks().get(0);
        TankSeason other = LabSeason.played(World.USUAL, 8, 1, 10).tanks().get(0);
        assertThat(other.observations()).isNotEqualTo(one.observations());
    }
}
