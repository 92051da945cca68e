package org.tankrounds.rounds;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.web.Assets;
import org.tankrounds.web.Caller;
import org.tankrounds.web.ETags;

/** The rounds for scripts: now, or as they would have stood at a past moment with what was known by then. */
public final class RoundsApi {
    private final Transactions transactions;
    private final Clock clock;
    private final ChapterRanking ranking;
    private final ObjectMapper json;
    private final String build;

    public RoundsApi(Transactions transactions, Clock clock, ChapterRanking ranking, ObjectMapper json,
            Assets assets) {
        this.transactions = transactions;
        this.clock = clock;
        this.ranking = ranking;
        this.json = json;
        this.build = assets.build();
    }

    public void show(Context ctx) throws JsonProcessingException {
        RoundsQuery query = RoundsQuery.of(ctx, clock.instant());
        int chapterId = Caller.of(ctx).chapterId();
        Optional<ObjectNode> body = transactions.inChapter(chapterId, tx -> query.asOf().isPresent()
                ? at(ctx, tx, chapterId, query.asOf().get(), query.limit())
                : now(ctx, tx, chapterId, query.limit()));
        if (body.isEmpty()) {
            ctx.status(304);
            return;
        }
        ctx.contentType("application/json").result(json.writeValueAsBytes(body.get()));
    }

    private Optional<ObjectNode> now(Context ctx, DSLContext tx, int chapterId, int limit) {
        ChapterRanking.Ranked ranked = ranking.now(tx, chapterId, clock.instant());
        return isKnown(ctx, chapterId, ranked.version(), ranked.asOf(), limit)
                ? Optional.empty()
                : Optional.of(RoundsJson.of(ranked.asOf(), ranked.forecasts(), limit));
    }

    private Optional<ObjectNode> at(Context ctx, DSLContext tx, int chapterId, Instant asOf, int limit) {
        return isKnown(ctx, chapterId, ranking.version(tx, chapterId), asOf, limit)
                ? Optional.empty()
                : Optional.of(RoundsJson.of(asOf, ranking.at(tx, chapterId, asOf), limit));
    }

    private boolean isKnown(Context ctx, int chapterId, long version, Instant asOf, int limit) {
        return ETags.isKnown(ctx, ETags.of("rounds", build, chapterId, version, asOf, limit));
    }
}
