package org.tankrounds.season;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.DatedTemperature;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.SeenStages;
import org.tankrounds.fish.Stage;
import org.tankrounds.fish.Warmth;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;

/**
 * What a season's lots in one tank went through, and what was moved there: their development by the tank's own
 * temperatures, and their deaths.
 */
public final class LotHistory {
    /** Taken where neither a reading nor the chiller's setting is known, °C (common practice, no source). */
    private static final double USUAL_C = 11.5;

    /**
     * Eggs or fish that came together.
     *
     * @param lot as which they came from a supplier; empty where they were moved here
     */
    private record Held(Instant from, Development development, Optional<Lot> lot) {
        /** What was moved here has no past here. */
        Stage stageAt(Instant moment) {
            return development.stageAt(lot.isPresent() || moment.isAfter(from) ? moment : from);
        }
    }

    private final Tank tank;
    private final List<Lot> lots;
    private final List<Observation> observations;
    private final List<DatedTemperature> trace;
    private final Instant asOf;
    private final List<Held> held;
    private final Stage beforeAny;
    private final boolean mixed;

    private LotHistory(Tank tank, List<Lot> lots, List<Observation> observations, List<DatedTemperature> trace,
            Instant asOf, List<Held> held, Stage beforeAny, boolean mixed) {
        this.tank = tank;
        this.lots = lots;
        this.observations = observations;
        this.trace = trace;
        this.asOf = asOf;
        this.held = held;
        this.beforeAny = beforeAny;
        this.mixed = mixed;
    }

    /**
     * @param observations of the tank in the season, oldest first
     * @param asOf the moment that thermal units are asked for
     */
    public static LotHistory of(Tank tank, List<Lot> lots, List<Observation> observations, Instant asOf) {
        List<DatedTemperature> trace = observations.stream()
                .filter(seen -> seen.analyte() == Analyte.TEMPERATURE && !seen.doubtful())
                .map(seen -> new DatedTemperature(seen.at(), seen.value()))
                .toList();
        List<Lot> inOrder = lots.stream()
                .sorted(Comparator.comparing(Lot::receivedAt).thenComparing(Lot::lotId))
                .toList();
        LotHistory nothing = new LotHistory(tank, inOrder, observations, trace, asOf, List.of(), Stage.EGG, false);
        return nothing.holding(inOrder.stream().map(nothing::held).toList(), Stage.EGG, false);
    }

    /**
     * The same, knowing what was moved here. It joins what is there already; what comes to an empty tank begins anew.
     *
     * @param entries of this tank, and those by which fish came to it
     */
    public LotHistory with(List<CountEntry> entries) {
        List<Held> all = new ArrayList<>(held.stream().filter(one -> one.lot().isPresent()).toList());
        List<Held> came = new ArrayList<>();
        boolean several = false;
        // How many were there does not hang on their stage.
        for (Account.Line line : booked(entries, moment -> Stage.EGG).lines()) {
            if (line.what() != Account.What.MOVED_IN && line.lot().isEmpty()) {
                continue;
            }
            boolean isEmpty = line.left() == line.fish();
            several |= !isEmpty && isOfAnotherStage(line, came);
            if (line.lot().isPresent()) {
                came.addAll(all.stream().filter(one -> one.lot().equals(line.lot())).toList());
            } else if (isEmpty) {
                came.add(held(line.entry().orElseThrow()));
                all.add(came.get(came.size() - 1));
            }
        }
        all.sort(Comparator.comparing(Held::from));
        return holding(all, all.isEmpty() && !entries.isEmpty() ? Stage.FEEDING : Stage.EGG, several);
    }

    /** @param came before, in the order in which they came; a lot may come later on the day from which it counts */
    private boolean isOfAnotherStage(Account.Line line, List<Held> came) {
        Optional<Stage> joins = line.lot().isPresent()
                ? line.lot().map(lot -> held(lot).stageAt(lot.receivedAt()))
                : line.entry().flatMap(CountEntry::stage);
        return joins.isPresent() && !came.isEmpty()
                && newest(came, line.at()).orElse(came.get(came.size() - 1)).stageAt(line.at()) != joins.get();
    }

    public Instant asOf() {
        return asOf;
    }

    /** Of the tank's water, as read and as is to be expected. */
    public Warmth warmth() {
        return Warmth.of(trace, usualC());
    }

    /** Whether some came to others of another stage: nobody can say which of them died since. */
    public boolean isMixed() {
        return mixed;
    }

    /**
     * The stage of the newest that began in the tank by a moment; of the first of them before that; eggs where there
     * are none, and fish that feed where something was counted all the same.
     */
    public Stage stageAt(Instant moment) {
        return heldAt(moment).map(known -> known.stageAt(moment)).orElse(beforeAny);
    }

    /** How far the newest there at a moment have come; empty before any came. */
    public Optional<Development> developmentAt(Instant moment) {
        return heldAt(moment).filter(known -> !known.from().isAfter(moment)).map(Held::development);
    }

    /**
     * How far what is taken out of the tank at a moment has come.
     *
     * @param entries of this tank, and those by which fish came to it
     * @param said the stage that somebody saw
     */
    MovedAs movedAs(Instant moment, List<CountEntry> entries, Optional<Stage> said) {
        LotHistory then = of(tank, lots, observations, moment).with(entries);
        Optional<Held> there = then.heldAt(moment);
        return new MovedAs(said.orElse(then.stageAt(moment)), there.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(there.get().development().thermalUnitsC()));
    }

    /** @param entries of this tank, and those by which fish came to it */
    public Account account(List<CountEntry> entries) {
        return booked(entries, with(entries)::stageAt);
    }

    private Account booked(List<CountEntry> entries, Function<Instant, Stage> stageAt) {
        return Account.of(tank.tankId(), lots.stream().filter(lot -> lot.hasCome(asOf, tank.zone())).toList(),
                observations.stream().filter(seen -> seen.analyte() == Analyte.DEATHS).toList(), stageAt, entries,
                tank.zone());
    }

    /** As if a lot had never come. */
    LotHistory without(Lot lot) {
        return of(tank, lots.stream().filter(one -> !one.equals(lot)).toList(), observations, asOf);
    }

    /** As {@link #account} stood at a moment; eggs count from the beginning of their day. */
    Account accountUntil(Instant moment, List<CountEntry> entries) {
        List<Observation> seen = observations.stream().filter(one -> !one.at().isAfter(moment)).toList();
        List<Lot> came = lots.stream().filter(one -> one.hasCome(moment, tank.zone())).toList();
        return new LotHistory(tank, came, seen, trace, asOf, held, beforeAny, mixed)
                .account(entries.stream().filter(entry -> !entry.at().isAfter(moment)).toList());
    }

    private LotHistory holding(List<Held> all, Stage before, boolean several) {
        return new LotHistory(tank, lots, observations, trace, asOf, all, before, several);
    }

    private Held held(Lot lot) {
        return new Held(lot.receivedAt(), development(
                lot.receivedAt(), lot.thermalUnitsC(), lot.seenOn().at(tank.zone())), Optional.of(lot));
    }

    /** What somebody saw wins over the days that they have; the last eggs of a day hatch with it. */
    private Held held(CountEntry entry) {
        Instant at = entry.at();
        Stage stage = entry.stage().orElse(Stage.FEEDING);
        OptionalDouble units = entry.movedAs().map(MovedAs::thermalUnitsC).orElse(OptionalDouble.empty());
        Development reckoned = development(at, units, SeenStages.NONE);
        if (stage == Stage.FEEDING) {
            return new Held(at, development(at, units, seen(at, Optional.of(at))), Optional.empty());
        }
        if (reckoned.stageAt(at) == stage) {
            return new Held(at, reckoned, Optional.empty());
        }
        Instant endOfDay = at.atZone(tank.zone()).toLocalDate().plusDays(1).atStartOfDay(tank.zone()).toInstant();
        Instant hatchedAt = stage == Stage.EGG ? endOfDay : at;
        return new Held(at, development(at, units, seen(hatchedAt, Optional.empty())), Optional.empty());
    }

    private static SeenStages seen(Instant hatchedAt, Optional<Instant> firstFeedingAt) {
        return new SeenStages(Optional.empty(), Optional.of(hatchedAt), firstFeedingAt);
    }

    private Development development(Instant from, OptionalDouble thermalUnitsC, SeenStages seen) {
        return Development.of(from, thermalUnitsC, trace, usualC(), seen, asOf);
    }

    private double usualC() {
        return tank.chillerSetPointC().orElse(USUAL_C);
    }

    private Optional<Held> heldAt(Instant moment) {
        return newest(held, moment).or(() -> held.stream().findFirst());
    }

    private static Optional<Held> newest(List<Held> inOrder, Instant moment) {
        return inOrder.stream().filter(one -> !one.from().isAfter(moment)).reduce((before, next) -> next);
    }
}
