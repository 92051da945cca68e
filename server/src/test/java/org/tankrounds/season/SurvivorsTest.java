package org.tankrounds.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.tankrounds.fish.Stage;

/** What several tanks have left of what came: no more and no less than the tanks by themselves. */
class SurvivorsTest {

    /** 85 eggs, of which 94 were counted, and 113, of which 104: nobody can have 94 of 85. */
    @Test
    void oneTanksSurplus_hidesNoLossOfAnother() {
        Ledger over = Ledger.ofReceived(110).withDeaths(Stage.EGG, 25).withCounted(94);
        Ledger under = Ledger.ofReceived(140).withDeaths(Stage.EGG, 27).withCounted(104);
        assertThat(over.survived()).isEqualTo(85);
        assertThat(under.survived()).isEqualTo(104);
        Survivors both = Survivors.of(over).plus(Survivors.of(under));
        assertThat(both.survived()).isEqualTo(189);
        assertThat(both.came()).isEqualTo(250);
    }

    @Test
    void oneSlip_doesNotKillTheOthers() {
        Ledger slip = Ledger.ofReceived(100).withDeaths(Stage.FEEDING, 900);
        Survivors both = Survivors.of(slip).plus(Survivors.of(Ledger.ofReceived(100)));
        assertThat(both.survived()).isEqualTo(100);
    }

    @Test
    void whatWasMovedAmongThem_cameOnce_andSurvivesOnce() {
        Ledger from = Ledger.ofReceived(100).withMovedOut(40);
        Ledger to = Ledger.EMPTY.withMovedIn(40).withDeaths(Stage.FEEDING, 10);
        Survivors both = Survivors.of(from).plus(Survivors.of(to));
        assertThat(both.came()).isEqualTo(100);
        assertThat(both.survived()).isEqualTo(90);
        assertThat(Survivors.of(to).came()).isEqualTo(40);
        assertThat(Survivors.of(to).survived()).isEqualTo(30);
    }

    /** Forty came to B, five died there, and thirty-eight went on by eye: these five lived nowhere. */
    @Test
    void whatDiedOnTheWay_didNotSurviveWhereItWasSaidToGo() {
        Ledger a = Ledger.ofReceived(100).withMovedOut(40).withCounted(60);
        Ledger b = Ledger.EMPTY.withMovedIn(40).withDeaths(Stage.FEEDING, 5).withMovedOut(38);
        Ledger c = Ledger.EMPTY.withMovedIn(38).withCounted(38);
        assertThat(together(List.of(a, b, c)).came()).isEqualTo(100);
        assertThat(together(List.of(a, b, c)).survived()).isEqualTo(95);
        assertThat(Survivors.of(c).survived()).as("by itself").isEqualTo(38);
    }

    @Test
    void aSlipAmongTanksThatFishWereMovedBetween_doesNotKillThoseElsewhere() {
        Ledger slip = Ledger.ofReceived(100).withMovedOut(100).withMovedIn(100).withDeaths(Stage.FEEDING, 900);
        Ledger other = Ledger.EMPTY.withMovedIn(100).withMovedOut(100);
        assertThat(together(List.of(slip, other, Ledger.ofReceived(100))).survived()).isEqualTo(100);
    }

    @Property
    void survivorsAndDead_areNeverMoreThanCame(@ForAll("tanks") List<Ledger> tanks, @ForAll("moved") int moved) {
        List<Ledger> with = Stream.concat(tanks.stream(), Stream.of(Ledger.ofReceived(50).withMovedOut(moved),
                Ledger.EMPTY.withMovedIn(moved).withDeaths(Stage.EGG, 3))).toList();
        int dead = with.stream().mapToInt(tank -> Math.min(tank.dead(), tank.received() + tank.movedIn())).sum();
        assertThat(together(with).survived()).isLessThanOrEqualTo(Math.max(0, together(with).came() - dead));
    }

    @Property
    void together_isTheSumOfEach_whereNothingWasMoved(@ForAll("tanks") List<Ledger> tanks) {
        Survivors all = together(tanks);
        assertThat(all.survived()).isEqualTo(tanks.stream().mapToInt(Ledger::survived).sum());
        assertThat(all.came()).isEqualTo(tanks.stream().mapToInt(Ledger::came).sum());
    }

    @Property
    void survivors_areNeverMoreThanCame(@ForAll("tanks") List<Ledger> tanks, @ForAll("moved") int moved) {
        List<Ledger> with = Stream.concat(tanks.stream(),
                Stream.of(Ledger.ofReceived(50).withMovedOut(moved), Ledger.EMPTY.withMovedIn(moved))).toList();
        assertThat(together(with).survived()).isBetween(0, together(with).came());
    }

    @Provide
    Arbitrary<Integer> moved() {
        return Arbitraries.integers().between(0, 80);
    }

    @Provide
    Arbitrary<List<Ledger>> tanks() {
        Arbitrary<Integer> fish = Arbitraries.integers().between(0, 300);
        return Combinators.combine(fish, fish, fish, Arbitraries.of(Stage.values()), fish).as(
                (eggs, dead, counted, stage, released) -> Ledger.ofReceived(eggs).withDeaths(stage, dead)
                        .withCounted(counted).withReleased(released)).list().ofMaxSize(8);
    }

    private static Survivors together(List<Ledger> tanks) {
        return tanks.stream().map(Survivors::of).reduce(Survivors.NONE, Survivors::plus);
    }
}
