package org.tankrounds.eggday;

import static org.tankrounds.db.schema.Tables.EGG_RUNS;
import static org.tankrounds.db.schema.Tables.EGG_STOPS;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.Season;
import org.tankrounds.transport.Tempering;
import org.tankrounds.water.Digits;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.TypedNumber;

/** Egg days and their stops; one that was called off is nowhere shown, nor a stop that was taken out. */
public final class EggRunRepository {

    /** Of a season, the first comes first. */
    List<EggRun> list(DSLContext tx, int chapterId, int seasonId) {
        return tx.selectFrom(EGG_RUNS)
                .where(standing(chapterId)).and(EGG_RUNS.SEASON_ID.eq(seasonId))
                .orderBy(EGG_RUNS.DAY, EGG_RUNS.STARTS_AT, EGG_RUNS.RUN_ID)
                .fetch(EggRunRepository::run);
    }

    /** @param number as an address has it */
    EggRun get(DSLContext tx, int chapterId, Season season, String number) {
        OptionalInt runId = TypedNumber.whole(number);
        return runId.isEmpty() ? gone() : tx.selectFrom(EGG_RUNS)
                .where(standing(chapterId)).and(EGG_RUNS.SEASON_ID.eq(season.seasonId()))
                .and(EGG_RUNS.RUN_ID.eq(runId.getAsInt()))
                .fetchOptional(EggRunRepository::run).orElseGet(EggRunRepository::gone);
    }

    /** As {@link #get}, and nobody else changes it, its stops or its receipts until this transaction ends. */
    EggRun lock(DSLContext tx, int chapterId, Season season, EggRun run) {
        tx.select(EGG_RUNS.RUN_ID).from(EGG_RUNS)
                .where(EGG_RUNS.CHAPTER_ID.eq(chapterId)).and(EGG_RUNS.RUN_ID.eq(run.runId()))
                .forUpdate().fetch();
        return get(tx, chapterId, season, Integer.toString(run.runId()));
    }

    /** @return the run's number, also where the same form planned it before */
    int add(DSLContext tx, int chapterId, int seasonId, UUID submissionId, EggRun.Details details, int personId,
            Instant now) {
        tx.insertInto(EGG_RUNS)
                .set(columns(details))
                .set(EGG_RUNS.CHAPTER_ID, chapterId)
                .set(EGG_RUNS.SEASON_ID, seasonId)
                .set(EGG_RUNS.SUBMISSION_ID, submissionId)
                .set(EGG_RUNS.PLANNED_BY, personId)
                .set(EGG_RUNS.PLANNED_AT, now)
                .onConflict(EGG_RUNS.CHAPTER_ID, EGG_RUNS.SUBMISSION_ID).doNothing()
                .execute();
        return tx.select(EGG_RUNS.RUN_ID).from(EGG_RUNS)
                .where(EGG_RUNS.CHAPTER_ID.eq(chapterId)).and(EGG_RUNS.SUBMISSION_ID.eq(submissionId))
                .fetchSingle(EGG_RUNS.RUN_ID);
    }

    void update(DSLContext tx, int chapterId, int runId, EggRun.Details details) {
        tx.update(EGG_RUNS).set(columns(details))
                .where(EGG_RUNS.CHAPTER_ID.eq(chapterId)).and(EGG_RUNS.RUN_ID.eq(runId))
                .execute();
    }

    void callOff(DSLContext tx, int chapterId, int runId, int personId, Instant now) {
        tx.update(EGG_RUNS)
                .set(EGG_RUNS.CALLED_OFF_BY, personId)
                .set(EGG_RUNS.CALLED_OFF_AT, now)
                .where(EGG_RUNS.CHAPTER_ID.eq(chapterId)).and(EGG_RUNS.RUN_ID.eq(runId))
                .execute();
    }

    /** In the order of driving. */
    List<EggStop> stops(DSLContext tx, int chapterId, int runId) {
        return tx.selectFrom(EGG_STOPS)
                .where(EGG_STOPS.CHAPTER_ID.eq(chapterId)).and(EGG_STOPS.RUN_ID.eq(runId))
                .and(EGG_STOPS.DROPPED_AT.isNull())
                .orderBy(EGG_STOPS.PLACE, EGG_STOPS.STOP_ID)
                .fetch(EggRunRepository::stop);
    }

    /** What is planned for a tank; a stop that was taken out before comes back, at the end of the drive. */
    void plan(DSLContext tx, int chapterId, int runId, int tankId, int place, EggStop.Planned planned) {
        tx.insertInto(EGG_STOPS)
                .set(EGG_STOPS.CHAPTER_ID, chapterId)
                .set(EGG_STOPS.RUN_ID, runId)
                .set(EGG_STOPS.TANK_ID, tankId)
                .set(EGG_STOPS.PLACE, place)
                .set(EGG_STOPS.EGGS, planned.eggs())
                .set(EGG_STOPS.PLANNED_FOR, planned.plannedFor().orElse(null))
                .onConflict(EGG_STOPS.CHAPTER_ID, EGG_STOPS.RUN_ID, EGG_STOPS.TANK_ID).doUpdate()
                .set(EGG_STOPS.PLACE, place)
                .set(EGG_STOPS.EGGS, planned.eggs())
                .set(EGG_STOPS.PLANNED_FOR, planned.plannedFor().orElse(null))
                .setNull(EGG_STOPS.DROPPED_AT)
                .execute();
    }

    void drop(DSLContext tx, int chapterId, int runId, Set<Integer> tankIds, Instant now) {
        tx.update(EGG_STOPS)
                .set(EGG_STOPS.DROPPED_AT, now)
                .where(EGG_STOPS.CHAPTER_ID.eq(chapterId)).and(EGG_STOPS.RUN_ID.eq(runId))
                .and(EGG_STOPS.TANK_ID.in(tankIds)).and(EGG_STOPS.DROPPED_AT.isNull())
                .execute();
    }

    void place(DSLContext tx, int chapterId, int stopId, int place) {
        tx.update(EGG_STOPS).set(EGG_STOPS.PLACE, place)
                .where(EGG_STOPS.CHAPTER_ID.eq(chapterId)).and(EGG_STOPS.STOP_ID.eq(stopId))
                .execute();
    }

    void temper(DSLContext tx, int chapterId, int stopId, EggStop.Tempered tempered) {
        tx.update(EGG_STOPS)
                .set(EGG_STOPS.COOLER_C, (float) tempered.coolerC())
                .set(EGG_STOPS.TANK_C, (float) tempered.tankC())
                .set(EGG_STOPS.TANK_PH, single(tempered.ph()))
                .set(EGG_STOPS.PACE, tempered.pace().name().toLowerCase(Locale.ROOT))
                .set(EGG_STOPS.TEMPERING_FROM, tempered.from())
                .where(EGG_STOPS.CHAPTER_ID.eq(chapterId)).and(EGG_STOPS.STOP_ID.eq(stopId))
                .execute();
    }

    private static Condition standing(int chapterId) {
        return EGG_RUNS.CHAPTER_ID.eq(chapterId).and(EGG_RUNS.CALLED_OFF_AT.isNull());
    }

    private static EggRun gone() {
        throw new NotFoundException("run");
    }

    private static Map<Field<?>, Object> columns(EggRun.Details details) {
        Map<Field<?>, Object> columns = new LinkedHashMap<>();
        columns.put(EGG_RUNS.DAY, details.day());
        columns.put(EGG_RUNS.STARTS_AT, details.startsAt());
        columns.put(EGG_RUNS.SUPPLIER, details.supplier().orElse(null));
        columns.put(EGG_RUNS.CERTIFICATE, details.certificate().orElse(null));
        columns.put(EGG_RUNS.PERMIT, details.permit().orElse(null));
        columns.put(EGG_RUNS.THERMAL_UNITS_C, single(details.thermalUnitsC()));
        columns.put(EGG_RUNS.EGGS, whole(details.eggs()));
        columns.put(EGG_RUNS.METHOD, details.method().code());
        columns.put(EGG_RUNS.SPREAD, details.spread());
        columns.put(EGG_RUNS.LEFT_OVER, whole(details.leftOver()));
        columns.put(EGG_RUNS.NOTE, details.note().orElse(null));
        return columns;
    }

    private static EggRun run(Record row) {
        return new EggRun(row.get(EGG_RUNS.RUN_ID), row.get(EGG_RUNS.SEASON_ID), new EggRun.Details(
                row.get(EGG_RUNS.DAY), row.get(EGG_RUNS.STARTS_AT), Optional.ofNullable(row.get(EGG_RUNS.SUPPLIER)),
                Optional.ofNullable(row.get(EGG_RUNS.CERTIFICATE)), Optional.ofNullable(row.get(EGG_RUNS.PERMIT)),
                known(row.get(EGG_RUNS.THERMAL_UNITS_C)), known(row.get(EGG_RUNS.EGGS)),
                CountMethod.ofCode(row.get(EGG_RUNS.METHOD)).orElseThrow(), row.get(EGG_RUNS.SPREAD),
                known(row.get(EGG_RUNS.LEFT_OVER)), Optional.ofNullable(row.get(EGG_RUNS.NOTE))));
    }

    private static EggStop stop(Record row) {
        return new EggStop(row.get(EGG_STOPS.STOP_ID), row.get(EGG_STOPS.TANK_ID), row.get(EGG_STOPS.PLACE),
                row.get(EGG_STOPS.EGGS), Optional.ofNullable(row.get(EGG_STOPS.PLANNED_FOR)),
                Optional.ofNullable(row.get(EGG_STOPS.TEMPERING_FROM)).map(from -> new EggStop.Tempered(
                        Digits.kept(row.get(EGG_STOPS.COOLER_C)), Digits.kept(row.get(EGG_STOPS.TANK_C)),
                        known(row.get(EGG_STOPS.TANK_PH)),
                        Tempering.Pace.valueOf(row.get(EGG_STOPS.PACE).toUpperCase(Locale.ROOT)), from)));
    }

    private static Float single(OptionalDouble number) {
        return number.isPresent() ? (float) number.getAsDouble() : null;
    }

    private static Integer whole(OptionalInt number) {
        return number.isPresent() ? number.getAsInt() : null;
    }

    private static OptionalDouble known(Float number) {
        return number == null ? OptionalDouble.empty() : OptionalDouble.of(Digits.kept(number));
    }

    private static OptionalInt known(Integer number) {
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }
}
