package org.tankrounds.tankmodel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        assertThat(last.largest().weightG()).isCloseTo(2.70446 * 1.02, within(0.06));
        assertThat(last.largest().ration().orElseThrow().gramsPerDay())
                .isCloseTo(100 * last.largest().weightG() * 0.02, within(1e-9));
        assertThat(last.largest().feedSize()).isEqualTo(FeedSize.CRUMBLE_3);
        assertThat(ahead.weeks()).extracting(week -> week.largest().weightG()).isSorted();
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
        assertThat(less.lengthMm()).isLessThan(ahead.weeks().get(ahead.weeks().size() - 1).largest().lengthMm());
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
            Cohort cohort = new Cohort(new GrowthAhead(now, 0.3, 1.1, pace, warmth), 300);
            most[i] = WeeksAhead.of(List.of(cohort), room, START, at(80)).fishWithRoom();
        }
        assertThat(most[1]).isLessThanOrEqualTo(most[0] + 2);
    }

    @Test
    void weeksBegin_whenTheFryFeed() {
        Room room = new Room(200, 1, 0.25, 7);
        List<Cohort> fry = List.of(fry(24, 100));
        assertThat(WeeksAhead.of(fry, room, START, at(60)).weeks().get(0).at()).isEqualTo(at(24));
        assertThat(WeeksAhead.of(fry, room, START, at(10)).weeks()).isEmpty();
    }

    /**
     * Iwama and Tautz 1981 at 10 °C and a TGC of 0.05: 84 fry of 0.15 g weigh (0.5313 + 0.28)³ = 0.5341 g each after
     * 56 days, 44.87 g together; 100 that began four weeks later (0.5313 + 0.14)³ = 0.3025 g, 30.25 g together. Each
     * gets 2 % (common practice), 0.897 and 0.605 g a day, 1.502 g for all, of which 50 % protein and 0.092 g N per g
     * protein make 0.0691 g N.
     */
    @Test
    void twoCohorts_addUp() {
        Room room = new Room(200, 1, 0.25, 7);
        WeeksAhead older = WeeksAhead.of(List.of(fry(0, 84)), room, START, at(84));
        WeeksAhead younger = WeeksAhead.of(List.of(fry(28, 100)), room, START, at(84));
        WeeksAhead both = WeeksAhead.of(List.of(fry(0, 84), fry(28, 100)), room, START, at(84));

        Week week = both.weeks().get(8);
        assertThat(week.at()).isEqualTo(at(56));
        assertThat(week.feeding().get(0).weightG()).isCloseTo(0.5341, within(5e-4));
        assertThat(week.feeding().get(1).weightG()).isCloseTo(0.3025, within(5e-4));
        assertThat(week.biomassG()).isCloseTo(44.87 + 30.25, within(0.1));
        assertThat(week.feedGPerDay()).isCloseTo(1.502, within(0.002));
        assertThat(week.load().filter()).isCloseTo(0.0691 / (0.5368 - 0.0859), within(2e-4));

        for (int i = 0; i < both.weeks().size(); i++) {
            Week one = older.weeks().get(i);
            Week sum = both.weeks().get(i);
            Optional<Week> other = younger.weeks().stream().filter(later -> later.at().equals(sum.at())).findFirst();
            assertThat(sum.at()).isEqualTo(one.at());
            assertThat(sum.feeding()).hasSize(other.isPresent() ? 2 : 1);
            assertThat(sum.biomassG()).isCloseTo(one.biomassG() + other.map(Week::biomassG).orElse(0.0), within(1e-9));
            assertThat(sum.feedGPerDay())
                    .isCloseTo(one.feedGPerDay() + other.map(Week::feedGPerDay).orElse(0.0), within(1e-9));
            assertThat(sum.load().water()).isCloseTo(
                    one.load().water() + other.map(later -> later.load().water()).orElse(0.0), within(1e-12));
        }
    }

    @Test
    void largestOfTwoCohorts_isTheOlder_andEachHasItsSizeOfFeed() {
        WeeksAhead both = WeeksAhead.of(List.of(fry(0, 84), fry(84, 100)), new Room(200, 1, 0.25, 7), START, at(84));
        Week last = both.weeks().get(12);
        assertThat(last.largest()).isEqualTo(last.feeding().get(0));
        assertThat(last.feeding().get(0).feedSize()).isEqualTo(FeedSize.CRUMBLE_2);
        assertThat(last.feeding().get(1).feedSize()).isEqualTo(FeedSize.STARTER);
    }

    /** More fish fill a tank no later, and where the older fill it alone the younger do not hide it. */
    @Test
    void moreEggs_makeRoomForNobody() {
        Room room = new Room(100, 0.1, 0.5, 7);
        for (int later = 0; later <= 84; later += 21) {
            WeeksAhead older = WeeksAhead.of(List.of(fry(0, 150)), room, START, at(200));
            WeeksAhead both = WeeksAhead.of(List.of(fry(0, 150), fry(later, 100)), room, START, at(200));
            assertThat(both.firstTooFull().orElseThrow().at())
                    .isBeforeOrEqualTo(older.firstTooFull().orElseThrow().at());
            assertThat(both.fishWithRoom()).isLessThanOrEqualTo(older.fishWithRoom() + 100);
        }
    }

    /** The oldest weigh most, so that fewest have to go; what is left has room, and one more has not. */
    @Test
    void thinning_beginsWithTheOldest() {
        Room room = new Room(60, 5, 0.9, 7);
        WeeksAhead both = WeeksAhead.of(List.of(fry(0, 100), fry(28, 80)), room, START, at(140));
        int older = both.fishWithRoom() - 80;
        assertThat(older).isBetween(1, 99);
        assertThat(WeeksAhead.of(List.of(fry(0, older), fry(28, 80)), room, START, at(140)).firstTooFull()).isEmpty();
        assertThat(WeeksAhead.of(List.of(fry(0, older + 1), fry(28, 80)), room, START, at(140)).firstTooFull())
                .isPresent();
    }

    @Test
    void feedingLess_slowsBothCohorts() {
        WeeksAhead both = WeeksAhead.of(List.of(fry(0, 100), fry(28, 80)), new Room(400, 0.22, 0.9, 7), START, at(91));
        assertThat(both.fullest().orElseThrow().load().bound()).isEqualTo(Room.Bound.FILTER);
        WeeksAhead.Less less = both.lessFeed().orElseThrow();
        assertThat(less.share()).isBetween(0.5, 1.0);
        assertThat(less.lengthMm()).isLessThan(both.weeks().get(13).largest().lengthMm());
    }

    private static Cohort fry(int feedsOnDay, int fish) {
        Instant fed = at(feedsOnDay);
        return new Cohort(GrowthAhead.ofFry(new DateWindow(fed, fed, fed, true), warmth()), fish);
    }

    private static WeeksAhead ahead(int fish, double tgcPercent, Room room, int days) {
        GrowthPace pace = new GrowthPace(tgcPercent * 0.8, tgcPercent, tgcPercent * 1.2, true);
        DateWindow now = new DateWindow(START, START, START, true);
        Cohort cohort = new Cohort(new GrowthAhead(now, 0.12, 1.1, pace, warmth()), fish);
        return WeeksAhead.of(List.of(cohort), room, START, at(days));
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
