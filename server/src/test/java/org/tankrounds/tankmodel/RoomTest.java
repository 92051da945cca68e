package org.tankrounds.tankmodel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.water.WaterChange;

class RoomTest {
    private static final Room ROOM = new Room(190, 1, 0.25, 7);

    /** Speece 1973 (second-hand): g N a day on a square metre. */
    @ParameterizedTest
    @CsvSource({"5, 0.1825", "8, 0.3435", "10, 0.4509", "12, 0.5583"})
    void filter_takesWhatWasMeasuredOnASquareMetre(double celsius, double nitrogenG) {
        assertThat(ROOM.filterNitrogenGPerDay(celsius)).isCloseTo(nitrogenG, within(5e-5));
    }

    /** Beyond 5 to 22.5 °C nothing was measured. */
    @Test
    void filter_isTakenAsAtTheEdgeWhereNobodyMeasured() {
        assertThat(ROOM.filterNitrogenGPerDay(1)).isEqualTo(ROOM.filterNitrogenGPerDay(5));
        assertThat(ROOM.filterNitrogenGPerDay(30)).isEqualTo(ROOM.filterNitrogenGPerDay(22.5));
    }

    /**
     * With production p and a change f every d days the peak is p·d/f and the trough p·d(1−f)/f: 0.5, 7 d, 0.3 →
     * 11.6667 and 8.1667 (computed); so too after a hundred changes one by one.
     */
    @Test
    void nitrate_climbsToProductionByChange() {
        double peak = new Room(100, 1, 0.3, 7).nitrateMgPerL(0.5 * 100 / 1000);
        assertThat(peak).isCloseTo(11.6667, within(5e-5));
        double level = 0;
        for (int week = 0; week < 100; week++) {
            level = WaterChange.after(level + 7 * 0.5, 0, 0.3, 1);
        }
        assertThat(level).isCloseTo(8.1667, within(5e-5));
        assertThat(level + 7 * 0.5).isCloseTo(peak, within(1e-9));
    }

    /**
     * Piper et al. 1982, W = 0.5 · V · L (0.5 from memory): 3.335 kg of 2-inch trout in 55 gal, a ceiling for flowing
     * water that a classroom's tank must never come near; here 1 to 2 g/L are the most (common practice, no source).
     */
    @Test
    void space_endsFarBelowTheCeilingOfFlowingWater() {
        Room nominal55Gal = new Room(208.198, 1, 0.25, 7);
        assertThat(nominal55Gal.load(3335, 0, 10).space()).isGreaterThan(5);
        assertThat(nominal55Gal.load(2 * 208.198, 0, 10).space()).isCloseTo(1, within(1e-12));
    }

    /**
     * 3 g of feed with 50 % protein are 0.138 g N, 0.72632 mg/L a day in 190 L (Timmons and Ebeling, second-hand): on
     * a quarter a week 20.337 mg/L.
     */
    @Test
    void load_isSharesOfWhatTheTankCanCarry() {
        Room.Load load = ROOM.load(190, 3, 12);
        assertThat(load.space()).isCloseTo(190 / (2 * 190.0), within(1e-9));
        assertThat(load.filter()).isCloseTo(0.138 / 0.55826, within(1e-3));
        assertThat(load.water()).isCloseTo(0.72632 * 7 / 0.25 / 40, within(1e-4));
        assertThat(load.bound()).isEqualTo(Room.Bound.WATER);
        assertThat(ROOM.load(400, 1, 12).bound()).isEqualTo(Room.Bound.SPACE);
        assertThat(new Room(190, 0.05, 0.25, 7).load(190, 3, 12).bound()).isEqualTo(Room.Bound.FILTER);
    }

    @Test
    void largerChange_bringsNitrateToItsMost() {
        double share = ROOM.changeShareFor(8);
        double nitrogen = Wastes.nitrogenGPerDay(8, Room.FEED_PROTEIN_SHARE);
        assertThat(new Room(190, 1, share, 7).nitrateMgPerL(nitrogen)).isCloseTo(40, within(1e-9));
    }

    @Test
    void noTank_hasNoRoom() {
        assertThatThrownBy(() -> new Room(0, 1, 0.25, 7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Room(190, 1, 0, 7)).isInstanceOf(IllegalArgumentException.class);
    }
}
