package org.tankrounds.readings;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.DeviceSorting.Look;
import org.tankrounds.readings.DeviceSorting.Sorted;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.readings.SenmlAnswer.Aside;
import org.tankrounds.readings.SenmlPack.Resolved;
import org.tankrounds.readings.StoreDeviceReadings.Target;
import org.tankrounds.readings.StoreReading.Sender;
import org.tankrounds.web.Caller;
import org.tankrounds.web.RefusedException;

/**
 * Readings of probes in SenML. Sent again, a pack stores nothing twice: no key is needed, since a probe hardly can keep
 * one.
 */
public final class SenmlApi {
    static final String MEDIA_TYPE = "application/senml+json";

    /** What a pack says: looks at one time each, and what of it is not taken. */
    private record Said(List<Look> looks, List<Aside> aside) {}

    private final Transactions transactions;
    private final TankRepository tanks;
    private final KitRepository kits;
    private final StoreDeviceReadings store;
    private final AfterChange afterChange;
    private final Clock clock;

    public SenmlApi(Transactions transactions, TankRepository tanks, KitRepository kits, ReadingRepository readings,
            DirtyTanks dirtyTanks, AfterChange afterChange, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.kits = kits;
        this.store = new StoreDeviceReadings(readings, dirtyTanks);
        this.afterChange = afterChange;
        this.clock = clock;
    }

    public void create(Context ctx) {
        RequestBody body = RequestBody.read(ctx, List.of(MEDIA_TYPE, "application/json"));
        Caller caller = Caller.of(ctx);
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        SenmlAnswer answer = transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, ctx.pathParam("tank"));
            return store(tx, caller, tank, said(body.json(), now), now);
        });
        if (!answer.stored().isEmpty()) {
            afterChange.changed(caller.chapterId());
        }
        ctx.contentType("application/json").result(JsonText.write(answer.json()));
    }

    private SenmlAnswer store(DSLContext tx, Caller caller, Tank tank, Said said, Instant now) {
        StoreDeviceReadings.alone(tx, tank.tankId());
        Sorted sorted = DeviceSorting.sort(tx, caller.chapterId(), tank.tankId(), said.looks(), false);
        Target target = new Target(caller.chapterId(), tank, kits.get(tx, caller.chapterId(), tank.kitId()),
                Reading.CHANNEL_PROBE, Sender.TOKEN, now);
        List<Reading> stored = store.store(tx, target, sorted.fresh());
        return new SenmlAnswer(tank.code(), stored, sorted.repeated(), sorted.conflicts(), said.aside());
    }

    private static Said said(JsonNode pack, Instant now) {
        Faults faults = new Faults();
        List<Aside> aside = new ArrayList<>();
        Map<Instant, List<GivenValue>> byTime = new TreeMap<>();
        Map<Instant, Boolean> exact = new TreeMap<>();
        for (Resolved record : SenmlPack.resolve(pack, now, faults)) {
            SenmlMeaning.of(record, faults).ifPresentOrElse(
                    value -> take(record, value, byTime, aside),
                    () -> record.text().ifPresent(text -> aside.add(Aside.text(record.at(), text))));
            exact.put(record.time(), record.exact());
        }
        if (!faults.none()) {
            throw new RefusedException(422, SenmlPack.TITLE, faults.errors());
        }
        return new Said(byTime.entrySet().stream()
                .map(look -> new Look(look.getKey(), look.getValue(), exact.get(look.getKey()))).toList(), aside);
    }

    private static void take(Resolved record, GivenValue value, Map<Instant, List<GivenValue>> byTime,
            List<Aside> aside) {
        List<GivenValue> beside = byTime.computeIfAbsent(record.time(), at -> new ArrayList<>());
        Aside.of(value).or(() -> Aside.unlessNew(value, beside)).ifPresentOrElse(aside::add, () -> beside.add(value));
    }
}
