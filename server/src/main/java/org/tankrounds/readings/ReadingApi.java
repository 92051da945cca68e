package org.tankrounds.readings;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.db.Transactions;
import org.tankrounds.places.Kit;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.ReadingRepository.Position;
import org.tankrounds.readings.StoreReading.Outcome;
import org.tankrounds.readings.StoreReading.Submitted;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FieldError;
import org.tankrounds.web.NotFoundException;

/** Readings for scripts and probes, one at a time. */
public final class ReadingApi {
    private final Transactions transactions;
    private final TankRepository tanks;
    private final ReadingRepository readings;
    private final StoreReading storeReading;

    public ReadingApi(Transactions transactions, TankRepository tanks, ReadingRepository readings,
            StoreReading storeReading) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.readings = readings;
        this.storeReading = storeReading;
    }

    public void create(Context ctx) {
        RequestBody body = RequestBody.read(ctx);
        List<String> keys = Collections.list(ctx.req().getHeaders(IdempotencyKey.HEADER));
        Outcome outcome = storeReading.store(Caller.of(ctx), ctx.pathParam("tank"), Reading.CHANNEL_API,
                (tank, kit) -> submitted(body.json(), IdempotencyKey.of(keys), kit),
                (submitted, judged) -> true).orElseThrow();
        String code = outcome.tank().code();
        ctx.status(outcome.isNew() ? 201 : 200)
                .header("Location", "/api/v1/tanks/" + code + "/readings/" + outcome.reading().code());
        json(ctx, ReadingJson.stored(outcome.reading(), code));
    }

    public void show(Context ctx) {
        Caller caller = Caller.of(ctx);
        ObjectNode found = transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, ctx.pathParam("tank"));
            return readings.findHolding(tx, caller.chapterId(), tank.tankId(), ctx.pathParam("reading"))
                    .map(reading -> ReadingJson.stored(reading, tank.code()))
                    .orElseThrow(() -> new NotFoundException("reading"));
        });
        json(ctx, found);
    }

    public void list(Context ctx) {
        Caller caller = Caller.of(ctx);
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        ArrayNode array = answer.putArray("readings");
        transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, ctx.pathParam("tank"));
            ReadingQuery query = ReadingQuery.of(ctx);
            Optional<Position> behind = position(caller, tank, query);
            List<Reading> found = readings.listPage(tx, caller.chapterId(), tank.tankId(), query.from(), query.to(),
                    behind, query.limit() + 1);
            found.stream().limit(query.limit()).forEach(one -> array.add(ReadingJson.stored(one, tank.code())));
            if (found.size() > query.limit()) {
                Reading last = found.get(query.limit() - 1);
                String cursor = ReadingCursor.of(caller.chapterId(), tank.tankId(), last);
                String next = query.next("/api/v1/tanks/" + tank.code() + "/readings", cursor);
                ctx.header("Link", "<" + next + ">; rel=\"next\"");
            }
            return null;
        });
        json(ctx, answer);
    }

    private static Optional<Position> position(Caller caller, Tank tank, ReadingQuery query) {
        if (query.cursor().isEmpty()) {
            return Optional.empty();
        }
        Optional<Position> position =
                ReadingCursor.read(caller.chapterId(), tank.tankId(), query.cursor().get());
        if (position.isEmpty()) {
            ReadingQuery.refuse(List.of(new FieldError("/cursor",
                    "cursor is what the Link header of this tank's page before said. Leave it out to begin anew.")));
        }
        return position;
    }

    private static Submitted submitted(JsonNode body, String key, Kit kit) {
        Faults faults = new Faults();
        GivenReading given = ReadingParser.parse(body, faults);
        return new Submitted(key, Fingerprint.of(body), given, faults, kit, Set.of());
    }

    private static void json(Context ctx, JsonNode node) {
        ctx.contentType("application/json").result(JsonText.write(node));
    }
}
