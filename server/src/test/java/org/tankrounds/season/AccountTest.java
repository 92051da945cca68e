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
import org.tankrounds.testing.SomeTank;
import org.tankrounds.water.Analyte;

/** The count of fish balances whatever is written down, and says so where it cannot be right. */
class AccountTest {
    /** The school's clock of {@link SomeTank}. */
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final Instant START = LocalDate.parse("2026-11-04").atStartOfDay(ZONE).toInstant();
    private static final int HERE = 1;
    private static final int THERE = 2;

    /**
     * Something that happens, to one of two tanks.
     *
     * @param stage of what is moved; empty where nobody said so
     */
    private record Event(int hour, int tank, int what, int fish, CountMethod method, Optional<Stage> stage) {}

    @Provide
    Arbitrary<List<Event>> histories() {
        return Combinators.combine(Arbitraries.integers().between(0, 2000), Arbitraries.of(HERE, THERE),
                Arbitraries.integers().between(0, 6), Arbitraries.integers().between(1, 120),
                Arbitraries.of(CountMethod.class), Arbitraries.of(Stage.class).optional())
                .as(Event::new).list().ofMaxSize(25);
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
            Event exact = new Event(event.hour, event.tank, event.what, event.fish, CountMethod.ONE_BY_ONE,
                    event.stage);
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

    /** In whichever stage eggs and fish are moved, their number stays, and each that died did so in one stage. */
    @Property(tries = 500)
    void whatIsMoved_isCountedOnce_whateverItsStage(@ForAll("histories") List<Event> events) {
        List<Event> unsaid = events.stream().map(event -> new Event(event.hour, event.tank, event.what, event.fish,
                event.method, Optional.empty())).toList();
        for (int tank : new int[] {HERE, THERE}) {
            Ledger said = account(tank, events).ledger();
            Ledger plain = account(tank, unsaid).ledger();
            assertThat(said.alive()).isEqualTo(plain.alive());
            assertThat(said.unexplained()).isEqualTo(plain.unexplained());
            assertThat(said.dead()).isEqualTo(plain.dead());
            assertThat(said.deadAsEggs() + said.deadAsSacFry() + said.deadFeeding()).isEqualTo(said.dead());
        }
    }

    /** A tank has no past before the first that came there, and what came first is of the stage that it came in. */
    @Property(tries = 500)
    void whatIsMovedIntoAnEmptyTank_isOfItsStageThere(@ForAll("histories") List<Event> events) {
        LotHistory history = history(HERE, events).with(entries(HERE, events));
        for (Account.Line line : account(HERE, events).lines()) {
            boolean begins = line.what() == Account.What.MOVED_IN && line.left() == line.fish();
            boolean isAlone = account(HERE, events).lines().stream()
                    .filter(one -> one.at().equals(line.at())).count() == 1;
            if (begins && isAlone && history(HERE, events).developmentAt(line.at()).isEmpty()) {
                assertThat(history.stageAt(line.at()))
                        .isEqualTo(line.entry().flatMap(CountEntry::stage).orElse(Stage.FEEDING));
            }
        }
    }

    /** A lot that may be taken away leaves a count that balances, and nothing that is less explained than before. */
    @Property(tries = 500)
    void lotsThatAreTakenAway_leaveNothingMoreUnexplained(@ForAll("histories") List<Event> events) {
        for (int i = 0; i < events.size(); i++) {
            Event lot = events.get(i);
            if (lot.what != 0 || isNeeded(events, i)) {
                continue;
            }
            List<Event> rest = without(events, i);
            Account with = account(lot.tank, events);
            Account without = account(lot.tank, rest);
            assertThat(without.ledger().received()).isEqualTo(with.ledger().received() - lot.fish);
            assertThat(without.ledger().dead()).isEqualTo(with.ledger().dead());
            assertThat(without.impossible().size()).isLessThanOrEqualTo(with.impossible().size());
            assertThat(surplus(without)).isLessThanOrEqualTo(surplus(with));
            assertThat(account(HERE + THERE - lot.tank, rest).ledger())
                    .isEqualTo(account(HERE + THERE - lot.tank, events).ledger());
        }
    }

    @Example
    void eggsAreNeeded_byWhatDiedOrLeftOrWasFound_andByNothingElse() {
        List<Event> lots = List.of(lot(0, 100), lot(10, 50));
        assertThat(isNeeded(lots)).as("nothing came after").isFalse();
        assertThat(isNeeded(List.of(lots.get(0), lots.get(1), deaths(30, 4)))).as("the other hundred died").isFalse();
        assertThat(isNeeded(List.of(deaths(5, 3), lot(10, 50), deaths(30, 4)))).isTrue();
        assertThat(isNeeded(List.of(lots.get(0), lots.get(1),
                entry(60, CountKind.RELEASED, 120, CountMethod.ONE_BY_ONE)))).isTrue();
        assertThat(isNeeded(List.of(lots.get(0), lots.get(1),
                entry(60, CountKind.COUNTED, 98, CountMethod.ONE_BY_ONE)))).as("all but 2 of the other").isFalse();
        assertThat(isNeeded(List.of(lots.get(0), lots.get(1),
                entry(60, CountKind.COUNTED, 149, CountMethod.ONE_BY_ONE)))).as("all but 1 of both").isTrue();
        assertThat(isNeeded(List.of(lots.get(0), lots.get(1),
                entry(60, CountKind.HATCHED, 130, CountMethod.ONE_BY_ONE)))).isTrue();
    }

    /** Whether the second event is, a lot. */
    private static boolean isNeeded(List<Event> events) {
        return isNeeded(events, 1);
    }

    private static boolean isNeeded(List<Event> events, int number) {
        int tank = events.get(number).tank;
        Account with = account(tank, events);
        Lot lot = with.lines().stream().flatMap(line -> line.lot().stream()).filter(one -> one.lotId() == number)
                .findFirst().orElseThrow();
        return NeededEggs.stand(with, account(tank, without(events, number)), lot);
    }

    /** Each keeps its number. */
    private static List<Event> without(List<Event> events, int number) {
        List<Event> rest = new ArrayList<>(events);
        Event gone = rest.get(number);
        rest.set(number, new Event(gone.hour, gone.tank, -1, gone.fish, gone.method, gone.stage));
        return rest;
    }

    /** Dead and gone that nothing explains. */
    private static int surplus(Account account) {
        return account.lines().stream().filter(line -> line.what() != Account.What.COUNTED)
                .mapToInt(Account.Line::surplus).sum();
    }

    @Example
    void exactCounts_runWithoutSpread() {
        List<Event> events = List.of(
                lot(0, 100), deaths(30, 4), entry(60, CountKind.RELEASED, 90, CountMethod.ONE_BY_ONE));
        Account account = account(HERE, events);

        assertThat(account.lines()).extracting(Account.Line::left).containsExactly(100, 96, 6);
        assertThat(account.spread()).isZero();
        assertThat(account.impossible()).isEmpty();
    }

    /** Spreads of independent counts add as squares; a new count has its own only. */
    @Example
    void estimates_carryTheirSpread() {
        List<Event> events = List.of(new Event(0, HERE, 0, 100, CountMethod.BY_VOLUME, Optional.empty()),
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
        List<Event> estimated = List.of(new Event(0, HERE, 0, 100, CountMethod.BY_VOLUME, Optional.empty()));
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
        List<Event> events = new ArrayList<>(List.of(
                new Event(0, HERE, 0, 100, CountMethod.BY_VOLUME, Optional.empty()),
                entry(40, CountKind.RELEASED, 105, CountMethod.ONE_BY_ONE)));
        assertThat(account(HERE, events).impossible()).isEmpty();
        events.add(entry(41, CountKind.RELEASED, 5, CountMethod.ONE_BY_ONE));
        assertThat(account(HERE, events).impossible()).isEmpty();
        events.add(entry(42, CountKind.RELEASED, 5, CountMethod.ONE_BY_ONE));
        assertThat(account(HERE, events).impossible()).hasSize(1);
    }

    private static Event lot(int hour, int eggs) {
        return new Event(hour, HERE, 0, eggs, CountMethod.ONE_BY_ONE, Optional.empty());
    }

    private static Event deaths(int hour, int dead) {
        return new Event(hour, HERE, 1, dead, CountMethod.ONE_BY_ONE, Optional.empty());
    }

    private static Event entry(int hour, CountKind kind, int fish, CountMethod method) {
        return new Event(hour, HERE, 2 + kind.ordinal(), fish, method, Optional.empty());
    }

    private static Account account(int tank, List<Event> events) {
        return history(tank, events).account(entries(tank, events));
    }

    private static LotHistory history(int tank, List<Event> events) {
        List<Lot> lots = new ArrayList<>();
        List<Observation> deaths = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            if (event.what == 0 && event.tank == tank) {
                lots.add(new Lot(i, 1, tank, event.fish, at(event), OptionalDouble.empty(), Optional.empty(),
                        Optional.empty(), SeenOn.NOTHING, event.method, event.method.usualSpread(event.fish)));
            } else if (event.what == 1 && event.tank == tank) {
                deaths.add(Observation.of(at(event), Analyte.DEATHS, event.fish, 0));
            }
        }
        return LotHistory.of(SomeTank.ofNumber(tank), lots, deaths, START.plusSeconds(3600L * 2000));
    }

    private static List<CountEntry> entries(int tank, List<Event> events) {
        List<CountEntry> entries = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            if (events.get(i).what > 1) {
                entries.add(entry(i, events.get(i)));
            }
        }
        return CountRepository.of(tank, entries);
    }

    private static Instant at(Event event) {
        return START.plusSeconds(3600L * event.hour);
    }

    private static CountEntry entry(int id, Event event) {
        CountKind kind = CountKind.values()[event.what - 2];
        Optional<Integer> to = kind == CountKind.MOVED ? Optional.of(HERE + THERE - event.tank) : Optional.empty();
        CountEntry entry = new CountEntry(id, kind, at(event), event.tank, to, event.fish, event.method,
                event.method.usualSpread(event.fish), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty());
        return kind == CountKind.MOVED && event.stage.isPresent()
                ? entry.as(new MovedAs(event.stage.get(), OptionalDouble.of(180 + event.fish))) : entry;
    }
}
