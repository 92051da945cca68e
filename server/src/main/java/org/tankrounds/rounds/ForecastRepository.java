package org.tankrounds.rounds;

import static org.tankrounds.db.schema.Tables.TANKS;
import static org.tankrounds.db.schema.Tables.TANK_FORECASTS;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jooq.DSLContext;
import org.jooq.JSONB;
import org.jooq.Record;
import org.jooq.SelectConditionStep;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.readings.LastLook;

/** One forecast a tank: all that a request for the rounds reads. */
public final class ForecastRepository {
    private final ObjectMapper json;

    public ForecastRepository(ObjectMapper json) {
        this.json = json;
    }

    List<TankForecast> list(DSLContext tx, int chapterId) {
        return select(tx, chapterId).orderBy(TANK_FORECASTS.TANK_ID).fetch(this::forecast);
    }

    Optional<TankForecast> find(DSLContext tx, int chapterId, int tankId) {
        return select(tx, chapterId).and(TANK_FORECASTS.TANK_ID.eq(tankId)).fetchOptional(this::forecast);
    }

    void replace(DSLContext tx, int chapterId, TankForecast row) {
        Forecast forecast = row.forecast();
        var stored = tx.newRecord(TANK_FORECASTS);
        stored.setChapterId(chapterId);
        stored.setTankId(row.tankId());
        stored.setAsOf(forecast.asOf());
        stored.setComputedAt(row.computedAt());
        stored.setChance((float) forecast.chance());
        stored.setExposure(forecast.exposure());
        stored.setDriver(forecast.driver().code());
        stored.setHoursToLimit(forecast.hoursToLimit().isPresent()
                ? (float) forecast.hoursToLimit().getAsDouble() : null);
        stored.setLastReadingAt(row.lastLook().map(LastLook::at).orElse(null));
        stored.setLastReadingBy(row.lastLook().map(LastLook::by).filter(by -> !by.isEmpty()).orElse(null));
        stored.setDetail(JSONB.valueOf(written(ForecastDetail.of(row))));
        tx.insertInto(TANK_FORECASTS).set(stored).onConflict(TANK_FORECASTS.CHAPTER_ID, TANK_FORECASTS.TANK_ID)
                .doUpdate().set(stored).execute();
    }

    /** @return whether a tank in use has no forecast, or one that looks ahead from longer ago than {@code age} */
    boolean isBehind(DSLContext tx, int chapterId, Instant now, Duration age) {
        return tx.fetchExists(tx.selectOne()
                .from(TANKS)
                .leftJoin(TANK_FORECASTS).on(TANK_FORECASTS.CHAPTER_ID.eq(TANKS.CHAPTER_ID)
                        .and(TANK_FORECASTS.TANK_ID.eq(TANKS.TANK_ID)))
                .where(TANKS.CHAPTER_ID.eq(chapterId))
                .and(TANKS.RETIRED_AT.isNull())
                .and(TANK_FORECASTS.AS_OF.isNull().or(TANK_FORECASTS.AS_OF.le(now.minus(age)))));
    }

    void remove(DSLContext tx, int chapterId, int tankId) {
        tx.deleteFrom(TANK_FORECASTS)
                .where(TANK_FORECASTS.CHAPTER_ID.eq(chapterId)).and(TANK_FORECASTS.TANK_ID.eq(tankId))
                .execute();
    }

    private static SelectConditionStep<Record> select(DSLContext tx, int chapterId) {
        return tx.select(TANK_FORECASTS.asterisk())
                .select(TANKS.CODE)
                .from(TANK_FORECASTS)
                .join(TANKS).on(TANKS.CHAPTER_ID.eq(TANK_FORECASTS.CHAPTER_ID)
                        .and(TANKS.TANK_ID.eq(TANK_FORECASTS.TANK_ID)))
                .where(TANK_FORECASTS.CHAPTER_ID.eq(chapterId));
    }

    private TankForecast forecast(Record row) {
        ForecastDetail detail = read(row.get(TANK_FORECASTS.DETAIL).data());
        Instant asOf = row.get(TANK_FORECASTS.AS_OF);
        Optional<LastLook> lastLook = Optional.ofNullable(row.get(TANK_FORECASTS.LAST_READING_AT))
                .map(at -> new LastLook(at, Optional.ofNullable(row.get(TANK_FORECASTS.LAST_READING_BY)).orElse("")));
        Float hoursToLimit = row.get(TANK_FORECASTS.HOURS_TO_LIMIT);
        Forecast forecast = new Forecast(
                row.get(TANKS.CODE),
                asOf,
                row.get(TANK_FORECASTS.CHANCE),
                row.get(TANK_FORECASTS.EXPOSURE),
                Driver.ofCode(row.get(TANK_FORECASTS.DRIVER)).orElseThrow(),
                hoursToLimit == null ? OptionalDouble.empty() : OptionalDouble.of(hoursToLimit),
                lastLook.map(look -> OptionalDouble.of(Duration.between(look.at(), asOf).toSeconds() / 3600.0))
                        .orElseGet(OptionalDouble::empty),
                detail.stageHeld(),
                detail.fishAlive(),
                detail.reasons().stream().map(ForecastDetail.ReasonRow::reason).toList(),
                detail.series().stream().map(ForecastDetail.SeriesRow::forecast).toList());
        return new TankForecast(
                row.get(TANK_FORECASTS.TANK_ID),
                row.get(TANK_FORECASTS.COMPUTED_AT),
                forecast,
                detail.waysHeld(),
                detail.tellingHeld(),
                detail.heldThen(),
                detail.advice(),
                detail.recentPoints(),
                lastLook);
    }

    private String written(ForecastDetail detail) {
        try {
            return json.writeValueAsString(detail);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a forecast can always be written", e);
        }
    }

    private ForecastDetail read(String detail) {
        try {
            return json.readValue(detail, ForecastDetail.class);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a stored forecast cannot be read", e);
        }
    }
}
