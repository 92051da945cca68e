package org.tankrounds.summary;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Stage;
import org.tankrounds.season.Account;
import org.tankrounds.season.CountEntry;
import org.tankrounds.season.CountKind;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.Lot;
import org.tankrounds.season.SeenOn;
import org.tankrounds.water.Analyte;

/** Whatever is written down of tanks that fish are moved between, no stage begins with more than there can be. */
class StagesOfHistoriesTest {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final Instant START = Instant.parse("2026-11-04T05:00:00Z");
    private static final int HATCH = 30;
    private static final int FEEDING = 60;
    private static final int LAST = 100;
    private static final int TANKS = 3;

    private enum Kind { LOT, DEATHS, MOVED, THINNED, RELEASED, COUNTED, HATCHED }

    private record Event(int day, int tank, Kind kind, int fish, int on) {
        /** Of the other tanks. */
        int to() {
            return 1 + (tank - 1 + on) % TANKS;
        }
    }

    @Provide
    Arbitrary<List<Event>> histories() {
        return Combinators.combine(Arbitraries.integers().between(0, LAST), Arbitraries.integers().between(1, TANKS),
                Arbitraries.of(Kind.class), Arbitraries.integers().between(0, 120),
                Arbitraries.integers().between(1, TANKS - 1)).as(Event::new).list().ofMaxSize(30);
    }

    @Property(tries = 2000)
    void noStage_beginsWithMoreThanOutlivedTheOneBefore_andCame(@ForAll("histories") List<Event> events) {
        Map<Integer, Stages> stages = stages(events);
        Stages all = Stages.NONE;
        Map<Stage, Integer> receivedByAll = new EnumMap<>(Stage.class);
        for (int tank = 1; tank <= TANKS; tank++) {
            Stages one = stages.get(tank);
            all = all.plus(one);
            Map<Stage, Integer> came = new EnumMap<>(Stage.class);
            events.stream().filter(lot(tank)).forEach(event -> {
                came.merge(stageAt(event.day()), event.fish(), Integer::sum);
                receivedByAll.merge(stageAt(event.day()), event.fish(), Integer::sum);
            });
            int here = tank;
            events.stream().filter(event -> event.kind() == Kind.MOVED && event.to() == here)
                    .forEach(event -> came.merge(stageAt(event.day()), event.fish(), Integer::sum));
            check(one, came);
            one.lines().forEach((stage, lines) -> {
                if (one.survival().containsKey(stage)) {
                    assertThat(lines.stream().mapToInt(Stages.Line::fish).sum()).isEqualTo(one.of(stage).survived());
                }
            });
        }
        check(all, receivedByAll);
    }

    private static void check(Stages stages, Map<Stage, Integer> came) {
        int before = 0;
        for (Stage stage : Stage.values()) {
            assertThat(stages.of(stage).began()).as(stage.name())
                    .isLessThanOrEqualTo(before + came.getOrDefault(stage, 0));
            before = stages.of(stage).survived();
        }
    }

    /** A hundred eggs: forty to B, where five died, and thirty-eight by eye from there to C. */
    @Example
    void moreThanCanHaveLeftATank_areNowhereElse() {
        Map<Integer, Stages> stages = stages(List.of(new Event(0, 1, Kind.LOT, 100, 1),
                new Event(62, 1, Kind.MOVED, 40, 1), new Event(63, 2, Kind.DEATHS, 5, 1),
                new Event(64, 2, Kind.MOVED, 38, 1), new Event(70, 1, Kind.COUNTED, 60, 1),
                new Event(70, 3, Kind.COUNTED, 38, 1)));
        assertThat(stages.get(3).of(Stage.FEEDING).began()).isEqualTo(35);
        StageSurvival all = stages.get(1).plus(stages.get(2)).plus(stages.get(3)).of(Stage.FEEDING);
        assertThat(all.began()).isEqualTo(100);
        assertThat(all.survived()).isEqualTo(95);
    }

    private static Predicate<Event> lot(int tank) {
        return event -> event.kind() == Kind.LOT && event.tank() == tank;
    }

    private static Map<Integer, Stages> stages(List<Event> events) {
        List<CountEntry> entries = new ArrayList<>();
        for (Event event : events) {
            kind(event.kind()).ifPresent(kind -> entries.add(new CountEntry(entries.size() + 1, kind, at(event.day()),
                    event.tank(), kind == CountKind.MOVED ? Optional.of(event.to()) : Optional.empty(), event.fish(),
                    CountMethod.ONE_BY_ONE, 0, Optional.empty(), Optional.empty(), Optional.empty(),
                    Optional.empty())));
        }
        Map<Integer, Stages.Course> courses = new LinkedHashMap<>();
        for (int tank = 1; tank <= TANKS; tank++) {
            int here = tank;
            List<Lot> lots = events.stream().filter(lot(here)).map(event -> new Lot(1, 1, here, event.fish(),
                    at(event.day()), OptionalDouble.empty(), Optional.empty(), Optional.empty(), SeenOn.NOTHING,
                    CountMethod.ONE_BY_ONE, 0)).toList();
            List<Observation> deaths = events.stream()
                    .filter(event -> event.kind() == Kind.DEATHS && event.tank() == here)
                    .map(event -> Observation.of(at(event.day()), Analyte.DEATHS, event.fish(), 0)).toList();
            Account account = Account.of(here, lots, deaths, StagesOfHistoriesTest::stageAt, entries.stream()
                    .filter(entry -> entry.tankId() == here || entry.toTankId().filter(to -> to == here).isPresent())
                    .toList(), ZONE);
            courses.put(here, Stages.Course.of(account.lines(), StagesOfHistoriesTest::stageAt, at(LAST)));
        }
        Map<Integer, Integer> letGo = Stages.letGo(courses.values());
        Map<Integer, Stages> stages = new LinkedHashMap<>();
        courses.forEach((tank, course) -> stages.put(tank, Stages.of(course, letGo)));
        return stages;
    }

    private static Optional<CountKind> kind(Kind kind) {
        return CountKind.ofCode(kind.name().toLowerCase(Locale.ROOT));
    }

    private static Stage stageAt(int day) {
        return day < HATCH ? Stage.EGG : day < FEEDING ? Stage.SAC_FRY : Stage.FEEDING;
    }

    private static Stage stageAt(Instant moment) {
        return stageAt((int) Duration.between(START, moment).toDays());
    }

    private static Instant at(int day) {
        return START.plusSeconds(86_400L * day);
    }
}
