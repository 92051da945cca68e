package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.LastLooks;
import org.tankrounds.readings.ObservationRepository;
import org.tankrounds.season.Lot;
import org.tankrounds.season.LotRepository;
import org.tankrounds.season.Stock;

/** Gathers what is known of a tank up to a moment. */
public final class TankInputs {
    private static final Duration CLOCKS_DIFFER_BY = Duration.ofMinutes(10);

    private final LotRepository lots;
    private final Stock stock;
    private final ObservationRepository observations;
    private final LastLooks lastLooks;

    public TankInputs(LotRepository lots, Stock stock, ObservationRepository observations, LastLooks lastLooks) {
        this.lots = lots;
        this.stock = stock;
        this.observations = observations;
        this.lastLooks = lastLooks;
    }

    TankInput load(DSLContext tx, int chapterId, Tank tank, Instant asOf) {
        Optional<Lot> lot = lots.findHeldBy(tx, chapterId, tank.tankId(), asOf)
                .map(eggs -> eggs.knownOn(asOf.atZone(tank.zone()).toLocalDate()));
        Optional<Lot> eggs = lot.or(() -> toCome(tx, chapterId, tank, asOf));
        Instant from = FactsOfTank.of(tank, eggs, OptionalInt.empty()).seasonFrom(asOf);
        List<Observation> all = observations.list(
                tx, chapterId, tank.tankId(), from, asOf.plus(CLOCKS_DIFFER_BY));
        List<Observation> counted = all.stream().filter(o -> !o.at().isAfter(asOf)).toList();
        TankFacts facts = FactsOfTank.of(tank, eggs, stock.of(tx, chapterId, tank, lot, counted, asOf));
        return new TankInput(tank, lot, facts, counted,
                lastLooks.find(tx, chapterId, tank.tankId(), asOf), counted.size() < all.size());
    }

    /** What was measured after a moment and until another, oldest first. */
    List<Observation> after(DSLContext tx, int chapterId, Tank tank, Instant asOf, Instant until) {
        return observations.list(tx, chapterId, tank.tankId(), asOf, until).stream()
                .filter(seen -> seen.at().isAfter(asOf)).toList();
    }

    /** Eggs that are ordered tell how a tank without any will be stocked. */
    private Optional<Lot> toCome(DSLContext tx, int chapterId, Tank tank, Instant asOf) {
        return lots.findToCome(tx, chapterId, tank.tankId(), asOf).map(Lot::unseen);
    }

}
