package org.tankrounds.tankmodel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.fish.DateWindow;
import org.tankrounds.fish.DatedTemperature;
import org.tankrounds.fish.FeedSize;
import org.tankrounds.fish.GrowthAhead;
import org.tankrounds.fish.GrowthPace;
import org.tankrounds.fish.Warmth;
import org.tankrounds.tankmodel.WeeksAhead.Week;

class WeeksAheadTest {
    private static final Instant START = Instant.parse("2027-01-10T12:00:00Z");

    /**
     * Iwama and Tautz 1981, doi:10.1139/f81-087: 0.12 g, 10 °C, 90 d, TGC 0.10 → 2.70446 g. Leitritz and Lewis 1976:
     * at 50 °F fish of 2 to 3 inches grow fastest on 3.4 % a day, so a release tank's 2 % stand (common practice).
     */
    @Test
    void weeks_tellSizeAndFeed() {
        WeeksAhead ahead = ahead(100, 0.10, new Room(400, 2, 0.3, 7), 91);
        Week last = ahead.weeks().get(ahead.weeks().size() - 1);
        assertThat(last.at()).isEqualTo(at(91));
        assertThat(last.weightG()).isCloseTo(2.70446 * 1.02, within(0.06));
        assertThat(last.ration().orElseThrow().gramsPerDay()).isCloseTo(100 * last.weightG() * 0.02, within(1e-9));
        assertThat(last.feedSize()).isEqualTo(FeedSize.CRUMBLE_3);
        assertThat(ahead.weeks()).extracting(Week::weightG).isSorted();
        assertThat(ahead.firstTooFull()).isEmpty();
        assertThat(ahead.fishWithRoom()).isEqualTo(100);
        assertThat(ahead.lessFeed()).isEmpty();
    }

    @Test
    void thinning_leavesAsManyAsTheTankCarries() {
        Room room = new Room(100, 5, 0.9, 7);
        WeeksAhead ahead = ahead(200, 0.10, room, 91);
        assertThat(ahead.firstTooFull()).isPresent();
        assertThat(ahead.fullest().orElseThrow().load().bound()).isEqualTo(Room.Bound.SPACE);
        int most = ahead.fishWithRoom();
        assertThat(ahead(most, 0.10, room, 91).firstTooFull()).isEmpty();
        assertThat(ahead(most + 1, 0.10, room, 91).firstTooFull()).isPresent();
    }

    @Test
    void feedingLess_makesRoomInTheFilterAndCostsGrowth() {
        WeeksAhead ahead = ahead(150, 0.06, new Room(400, 0.16, 0.9, 7), 91);
        assertThat(ahead.fullest().orElseThrow().load().bound()).isEqualTo(Room.Bound.FILTER);
        WeeksAhead.Less less = ahead.lessFeed().orElseThrow();
        assertThat(less.share()).isBetween(0.5, 1.0);
        assertThat(less.lengthMm()).isLessThan(ahead.weeks().get(ahead.weeks().size() - 1).lengthMm());
    }

    /** Less than 1 % a day is no ration (common practice, no source: 1 to 3 %). */
    @Test
    void fish_areNotStarvedToMakeRoom() {
        assertThat(ahead(400, 0.10, new Room(100, 5, 0.9, 7), 91).lessFeed()).isEmpty();
    }

    @Test
    void largerWaterChange_helpsWhereNitrateBinds_andNowhereElse() {
        WeeksAhead ahead = ahead(200, 0.08, new Room(300, 5, 0.1, 7), 91);
        assertThat(ahead.fullest().orElseThrow().load().bound()).isEqualTo(Room.Bound.WATER);
        double share = ahead.largerChange().orElseThrow();
        assertThat(share).isGreaterThan(0.1);
        assertThat(ahead(200, 0.08, new Room(300, 5, share, 7), 91).firstTooFull()).isEmpty();
        assertThat(ahead(200, 0.10, new Room(100, 5, 0.9, 7), 91).largerChange()).isEmpty();
    }

    /** Leitritz and Lewis 1976 end at 60 °F: warmer water does not make room. */
    @Test
    void warmWater_leavesNoMoreRoomThanTheTablesEdge() {
        Room room = new Room(200, 0.3, 0.2, 7);
        DateWindow now = new DateWindow(START, START, START, true);
        GrowthPace pace = new GrowthPace(0.05, 0.06, 0.07, true);
        int[] most = new int[2];
        for (int i = 0; i < 2; i++) {
            Warmth warmth = Warmth.of(List.of(new DatedTemperature(START, 15.4 + 0.4 * i)), 15);
            most[i] = WeeksAhead.of(new GrowthAhead(now, 0.3, 1.1, pace, warmth), room, 300, START, at(80)).fishWithRoom();
        }
        assertThat(most[1]).isLessThanOrEqualTo(most[0] + 2);
    }

    @Test
    void weeksBegin_whenTheFryFeed() {
        GrowthAhead fry = GrowthAhead.ofFry(new DateWindow(at(20), at(24), at(30), false), warmth());
        WeeksAhead ahead = WeeksAhead.of(fry, new Room(200, 1, 0.25, 7), 100, START, at(60));
        assertThat(ahead.weeks().get(0).at()).isEqualTo(at(24));
        assertThat(WeeksAhead.of(fry, new Room(200, 1, 0.25, 7), 100, START, at(10)).weeks()).isEmpty();
    }

    private static WeeksAhead ahead(int fish, double tgcPercent, Room room, int days) {
        GrowthPace pace = new GrowthPace(tgcPercent * 0.8, tgcPercent, tgcPercent * 1.2, true);
        DateWindow now = new DateWindow(START, START, START, true);
        return WeeksAhead.of(new GrowthAhead(now, 0.12, 1.1, pace, warmth()), room, fish, START, at(days));
    }

    private static Warmth warmth() {
        List<DatedTemperature> trace = new ArrayList<>();
        for (int day = 0; day < 120; day++) {
            trace.add(new DatedTemperature(at(day), 10));
        }
        return Warmth.of(trace, 10);
    }

    private static Instant at(int day) {
        return START.plus(Duration.ofDays(day));
    }
}
