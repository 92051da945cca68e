package org.tankrounds.eggday;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.places.Tank;
import org.tankrounds.season.Season;

/**
 * One egg day with all that belongs to it.
 *
 * @param stops in the order of driving
 * @param receipts that hold, by the number of their stop
 * @param tanks all of the chapter, by number
 */
record KnownRun(Season season, EggRun run, List<EggStop> stops, Map<Integer, EggReceipt> receipts,
        List<CoolerCheck> checks, Map<Integer, Tank> tanks) {

    static KnownRun load(EggReads reads, DSLContext tx, int chapterId, Season season, EggRun run) {
        return new KnownRun(season, run, reads.runs().stops(tx, chapterId, run.runId()),
                reads.receipts().ofRun(tx, chapterId, run.runId()), reads.checks().list(tx, chapterId, run.runId()),
                reads.season().tanks().listWithRetired(tx, chapterId).stream()
                        .collect(Collectors.toMap(Tank::tankId, Function.identity())));
    }

    String address() {
        return run.address(season.code());
    }

    Tank tank(EggStop stop) {
        return tanks.get(stop.tankId());
    }

    Optional<EggReceipt> receipt(EggStop stop) {
        return Optional.ofNullable(receipts.get(stop.stopId()));
    }

    Optional<EggStop> stopAt(int tankId) {
        return stops.stream().filter(stop -> stop.tankId() == tankId).findFirst();
    }

    EggBalance balance() {
        return EggBalance.of(run, stops.size(), receipts.values());
    }
}
