package org.tankrounds.season;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.DatedTemperature;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.Stage;
import org.tankrounds.fish.Warmth;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;

/**
 * What a season's lots in one tank went through: their development by the tank's own temperatures, and their
 * deaths.
 */
public final class LotHistory {
    /** Taken where neither a reading nor the chiller's setting is known, °C (common practice, no source). */
    private static final double USUAL_C = 11.5;

    private record Held(Lot lot, Development development) {}

    private final Tank tank;
    private final List<Held> held;
    private final List<Observation> observations;
    private final Warmth warmth;
    private final Instant asOf;

    private LotHistory(Tank tank, List<Held> held, List<Observation> observations, Warmth warmth, Instant asOf) {
        this.tank = tank;
        this.held = held;
        this.observations = observations;
        this.warmth = warmth;
        this.asOf = asOf;
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
        double usualC = tank.chillerSetPointC().orElse(USUAL_C);
        List<Held> held = lots.stream()
                .sorted(Comparator.comparing(Lot::receivedAt).thenComparing(Lot::lotId))
                .map(lot -> new Held(lot, Development.of(
                        lot.receivedAt(), lot.thermalUnitsC(), trace, usualC, lot.seenOn().at(tank.zone()), asOf)))
                .toList();
        return new LotHistory(tank, held, observations, Warmth.of(trace, usualC), asOf);
    }

    public Instant asOf() {
        return asOf;
    }

    /** Of the tank's water, as read and as is to be expected. */
    public Warmth warmth() {
        return warmth;
    }

    /** The stage of the newest lot there at a moment; of the first lot before that; eggs where there is none. */
    public Stage stageAt(Instant moment) {
        return heldAt(moment).map(known -> known.development().stageAt(moment)).orElse(Stage.EGG);
    }

    /** How far the newest lot there at a moment has come; empty before any came. */
    public Optional<Development> developmentAt(Instant moment) {
        return heldAt(moment).filter(known -> !known.lot().receivedAt().isAfter(moment)).map(Held::development);
    }

    /** @param entries of this tank, and those by which fish came to it */
    public Account account(List<CountEntry> entries) {
        // Fish are moved, not eggs.
        Function<Instant, Stage> stageAt = held.isEmpty() && !entries.isEmpty() ? at -> Stage.FEEDING : this::stageAt;
        return Account.of(tank.tankId(), held.stream().map(Held::lot).filter(this::hasCome).toList(),
                observations.stream().filter(seen -> seen.analyte() == Analyte.DEATHS).toList(), stageAt, entries,
                tank.zone());
    }

    /** Eggs count from the beginning of their day. */
    private boolean hasCome(Lot lot) {
        return !lot.receivedAt().atZone(tank.zone()).toLocalDate().isAfter(asOf.atZone(tank.zone()).toLocalDate());
    }

    /** As {@link #account} stood at a moment. */
    Account accountUntil(Instant moment, List<CountEntry> entries) {
        List<Observation> seen = observations.stream().filter(one -> !one.at().isAfter(moment)).toList();
        List<Held> came = held.stream().filter(one -> !one.lot().receivedAt().isAfter(moment)).toList();
        return new LotHistory(tank, came, seen, warmth, asOf)
                .account(entries.stream().filter(entry -> !entry.at().isAfter(moment)).toList());
    }

    private Optional<Held> heldAt(Instant moment) {
        Optional<Held> found = held.stream().findFirst();
        for (Held candidate : held) {
            if (!candidate.lot().receivedAt().isAfter(moment)) {
                found = Optional.of(candidate);
            }
        }
        return found;
    }
}
