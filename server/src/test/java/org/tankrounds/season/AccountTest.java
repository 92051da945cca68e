package org.tankrounds.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Stage;
import org.tankrounds.water.Analyte;

/** The count of fish balances whatever is written down, and says so where it cannot be right. */
class AccountTest {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final Instant START = LocalDate.parse("2026-11-04").atStartOfDay(ZONE).toInstant();
    private static final int HERE = 1;
    private static final int THERE = 2;

    /** Something that happens, to one of two tanks. */
    private record Event(int hour, int tank, int what, int fish, CountMethod method) {}

    @Provide
    Arbitrary<List<Event>> histories() {
        return Combinators.combine(Arbitraries.integers().between(0, 2000), Arbitraries.of(HERE, THERE),
                Arbitraries.integers().between(0, 6), Arbitraries.integers().between(1, 120),
                Arbitraries.of(CountMethod.class)).as(Event::new).list().ofMaxSize(25);
    }

    @Property(tries = 500)
    void everyHistory_balances_andNothingIsForced(@ForAll("histories") List<Event> events) {
        List<Account> accounts = List.of(account(HERE, events), account(THERE, events));

        Ledger sum = Ledger.EMPTY;
        for (Account account : accounts) {
            assertThat(account.ledger().alive()).isNotNegative();
            assertThat(account.lines().stream().mapToInt(Account.Line::surplus).sum())
                    .as("what is unexplained stands at a line").isEqualTo(-account.ledger().unexplained());
            account.lines().forEach(line -> assertThat(line.left()).isNotNegative());
            sum = sum.plus(account.ledger());
        }
        assertThat(sum.movedAway()).as("what leaves one tank comes to another").isZero();
        assertThat(sum.received()).isEqualTo(
                sum.dead() + sum.thinned() + sum.released() + sum.alive() + sum.unexplained());
    }

    /** As the form takes them: one that more left by than can have been there is refused. */
    @Property(tries = 500)
    void allowedEntriesOfExactCounts_neverLetMoreLeaveThanWereThere(@ForAll("histories") List<Event> events) {
        List<Event> allowed = new ArrayList<>();
        for (Event event : events) {
            Event exact = new Event(event.hour, event.tank, event.what, event.fish, CountMethod.ONE_BY_ONE);
            allowed.add(exact);
            if (account(HERE, allowed).impossible().size() + account(THERE, allowed).impossible().size() > 0) {
                allowed.remove(exact);
            }
        }
        for (int tank : new int[] {HERE, THERE}) {
            assertThat(account(tank, allowed).lines()).filteredOn(line -> line.surplus() > 0)
                    .extracting(Account.Line::what).isSubsetOf(Account.What.DIED, Account.What.COUNTED);
        }
    }

    @Example
    void exactCounts_runWithoutSpread() {
        List<Event> events = List.of(lot(0, 100), deaths(30, 4), entry(60, CountKind.RELEASED, 90, CountMethod.ONE_BY_ONE));
        Account account = account(HERE, events);

        assertThat(account.lines()).extracting(Account.Line::left).containsExactly(100, 96, 6);
        assertThat(account.spread()).isZero();
        assertThat(account.impossible()).isEmpty();
    }

    /** Spreads of independent counts add as squares; a new count has its own only. */
    @Example
    void estimates_carryTheirSpread() {
        List<Event> events = List.of(new Event(0, HERE, 0, 100, CountMethod.BY_VOLUME),
                entry(40, CountKind.RELEASED, 60, CountMethod.WEIGHED));
        assertThat(account(HERE, events).spread()).as("√(10² + 3²), upwards").isEqualTo(11);

        List<Event> counted = new ArrayList<>(events);
        counted.add(entry(80, CountKind.COUNTED, 37, CountMethod.ONE_BY_ONE));
        Account account = account(HERE, counted);
        assertThat(account.spread()).isZero();
        assertThat(account.ledger().unexplained()).isEqualTo(3);
    }

    @Example
    void moreThanCanHaveBeenThere_isToldApartFromWhatAnEstimateLeavesOpen() {
        List<Event> estimated = List.of(new Event(0, HERE, 0, 100, CountMethod.BY_VOLUME));
        List<Event> within = new ArrayList<>(estimated);
        within.add(entry(40, CountKind.RELEASED, 108, CountMethod.ONE_BY_ONE));
        assertThat(account(HERE, within).impossible()).isEmpty();
        assertThat(account(HERE, within).ledger().unexplained()).isEqualTo(-8);

        List<Event> beyond = new ArrayList<>(estimated);
        beyond.add(entry(40, CountKind.RELEASED, 111, CountMethod.ONE_BY_ONE));
        assertThat(account(HERE, beyond).impossible()).hasSize(1);
    }

    /** Each within what the estimate leaves open, together not. */
    @Example
    void manySmallOverdrafts_areOneLargeOne() {
        List<Event> events = new ArrayList<>(List.of(new Event(0, HERE, 0, 100, CountMethod.BY_VOLUME),
                entry(40, CountKind.RELEASED, 105, CountMethod.ONE_BY_ONE)));
        assertThat(account(HERE, events).impossible()).isEmpty();
        events.add(entry(41, CountKind.RELEASED, 5, CountMethod.ONE_BY_ONE));
        assertThat(account(HERE, events).impossible()).isEmpty();
        events.add(entry(42, CountKind.RELEASED, 5, CountMethod.ONE_BY_ONE));
        assertThat(account(HERE, events).impossible()).hasSize(1);
    }

    private static Event lot(int hour, int eggs) {
        return new Event(hour, HERE, 0, eggs, CountMethod.ONE_BY_ONE);
    }

    private static Event deaths(int hour, int dead) {
        return new Event(hour, HERE, 1, dead, CountMethod.ONE_BY_ONE);
    }

    private static Event entry(int hour, CountKind kind, int fish, CountMethod method) {
        return new Event(hour, HERE, 2 + kind.ordinal(), fish, method);
    }

    private static Account account(int tank, List<Event> events) {
        List<Lot> lots = new ArrayList<>();
        List<Observation> deaths = new ArrayList<>();
        List<CountEntry> entries = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            Instant at = START.plusSeconds(3600L * event.hour);
            if (event.what == 0 && event.tank == tank) {
                lots.add(new Lot(i, 1, tank, event.fish, at, OptionalDouble.empty(), Optional.empty(), Optional.empty(),
                        SeenOn.NOTHING, event.method, event.method.usualSpread(event.fish)));
            } else if (event.what == 1 && event.tank == tank) {
                deaths.add(Observation.of(at, Analyte.DEATHS, event.fish, 0));
            } else if (event.what > 1) {
                entries.add(entry(i, event, at));
            }
        }
        return Account.of(tank, lots, deaths, at -> Stage.FEEDING, CountRepository.of(tank, entries), ZONE);
    }

    private static CountEntry entry(int id, Event event, Instant at) {
        CountKind kind = CountKind.values()[event.what - 2];
        Optional<Integer> to = kind == CountKind.MOVED ? Optional.of(HERE + THERE - event.tank) : Optional.empty();
        return new CountEntry(id, kind, at, event.tank, to, event.fish, event.method,
                event.method.usualSpread(event.fish), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
