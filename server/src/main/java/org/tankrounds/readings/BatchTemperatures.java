package org.tankrounds.readings;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;
import org.tankrounds.readings.BatchTransaction.Placed;
import org.tankrounds.readings.LastTemperatures.Moment;
import org.tankrounds.readings.SubmissionRepository.TankKey;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.KnownTemperatures;

/**
 * The temperatures that oxygen in % of saturation is taken at in a batch: what was stored before, and what the
 * lines of one transaction say in whatever order they came, as if they had been a file.
 */
final class BatchTemperatures {
    private final Instant now;
    /** Only of the tanks that need one. */
    private final Map<Integer, KnownTemperatures> byTank = new HashMap<>();

    private BatchTemperatures(Instant now) {
        this.now = now;
    }

    /** @param fresh the lines whose keys have stored nothing yet */
    static BatchTemperatures find(DSLContext tx, int chapterId, List<Placed> fresh, Instant now) {
        BatchTemperatures temperatures = new BatchTemperatures(now);
        List<Placed> readable = fresh.stream().filter(one -> one.line().faults().none())
                .filter(one -> Judge.isPossible(temperatures.moment(one).at(), now)).toList();
        List<Moment> moments = readable.stream().filter(one -> Judge.needsLastTemperature(one.line().given()))
                .map(temperatures::moment).toList();
        if (!moments.isEmpty()) {
            temperatures.byTank.putAll(new LastTemperatures().findAll(tx, chapterId, moments));
            temperatures.addOwn(readable);
        }
        return temperatures;
    }

    private Moment moment(Placed one) {
        return new Moment(one.key().tankId(), one.line().given().measuredAt().orElse(now));
    }

    /** What a line that will be refused says of the temperature does not count. */
    private void addOwn(List<Placed> readable) {
        Map<TankKey, JudgedReading> toBeStored = new HashMap<>();
        readable.stream().filter(one -> byTank.containsKey(one.key().tankId()))
                .forEach(one -> triedOut(one).ifPresent(judged -> toBeStored.putIfAbsent(one.key(), judged)));
        toBeStored.forEach((key, judged) -> add(byTank.get(key.tankId()), judged));
    }

    private static void add(KnownTemperatures known, JudgedReading judged) {
        judged.measured().stream().filter(one -> one.analyte() == Analyte.TEMPERATURE)
                .forEach(one -> known.add(judged.measuredAt(), one.value(), one.isDoubtful()));
    }

    private Optional<JudgedReading> triedOut(Placed one) {
        Faults faults = new Faults();
        JudgedReading judged = Judge.judge(one.line().given(), known(one), Set.of(), faults);
        return faults.none() ? Optional.of(judged) : Optional.empty();
    }

    Judge.Known known(Placed one) {
        return new Judge.Known(one.place().tank(), one.place().kit(), now, byTank.getOrDefault(
                one.key().tankId(), new KnownTemperatures())::at);
    }
}
