package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.DIRTY_TANKS;
import static org.tankrounds.db.schema.Tables.TANK_FORECASTS;

import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jooq.Table;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

final class ForecastKeeperIT {
    private static final TestApp APP = TestApp.shared();
    private static final int POSTS = 24;

    private final Cast cast = Cast.add(APP.transactions(), "Many classes at once");

    @Test
    void aPost_neverWaitsForWhoeverForecasts_andIsForecastAfterwards() {
        List<Integer> answers = APP.transactions().inChapter(cast.chapterId(), other -> {
            other.fetch("SELECT pg_advisory_xact_lock(?, ?)", ForecastKeeper.LOCK, cast.chapterId());
            return postManyAtOnce();
        });
        assertThat(answers).hasSize(POSTS).containsOnly(201);
        assertThat(count(DIRTY_TANKS)).isPositive();

        assertThat(post(0)).isEqualTo(201);
        assertThat(count(DIRTY_TANKS)).isZero();
        assertThat(count(TANK_FORECASTS)).isPositive();
    }

    @Test
    void manyPostsAtOnce_areAllTaken_andLeaveNoMarkBehind() {
        assertThat(postManyAtOnce()).hasSize(POSTS).containsOnly(201);
        assertThat(post(0)).isEqualTo(201);
        assertThat(count(DIRTY_TANKS)).isZero();
    }

    private List<Integer> postManyAtOnce() {
        return IntStream.range(0, POSTS).parallel().mapToObj(this::post).toList();
    }

    private int post(int minute) {
        return APP.bearer(cast.tankA().token()).header("Idempotency-Key", UUID.randomUUID().toString())
                .postJson("/api/v1/tanks/" + cast.tankA().code() + "/readings", """
                        {"measuredAt": "2026-01-12T14:%02d:00Z",
                         "values": [{"analyte": "temperature", "value": 11, "unit": "Cel"}]}""".formatted(minute))
                .status();
    }

    private int count(Table<?> table) {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.fetchCount(table));
    }
}
