package org.tankrounds.rounds;

import java.util.Optional;
import java.util.OptionalInt;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.places.Tank;
import org.tankrounds.season.Lot;

/** From what the chapter wrote down about a tank and its eggs to what the engine wants to know. */
final class FactsOfTank {
    private FactsOfTank() {}

    /** @param fish to start from; where empty, as many as the lot has eggs */
    static TankFacts of(Tank tank, Optional<Lot> lot, OptionalInt fish) {
        TankFacts.Builder facts = TankFacts.of(tank.code())
                .zone(tank.zone())
                .volumeL(tank.volumeL());
        tank.elevationM().ifPresent(facts::elevationM);
        tank.chillerSetPointC().ifPresent(facts::chillerSetPointC);
        tank.alkalinityMgPerL().ifPresent(facts::sourceAlkalinityMgPerL);
        tank.chlorideMgPerL().ifPresent(facts::chlorideMgPerL);
        lot.ifPresent(eggs -> {
            facts.eggs(eggs.eggs()).eggsReceivedAt(eggs.receivedAt());
            eggs.thermalUnitsC().ifPresent(facts::thermalUnitsC);
            facts.seen(eggs.seenOn().at(tank.zone()));
        });
        fish.ifPresent(facts::eggs);
        return facts.build();
    }
}
