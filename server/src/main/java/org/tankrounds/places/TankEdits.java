package org.tankrounds.places;

import static org.tankrounds.db.schema.Tables.TANKS;

import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.tankrounds.jobs.DirtyTanks;

/** Writes of tanks; each also says that the tank's forecast is out of date. */
public final class TankEdits {
    private final DirtyTanks dirtyTanks;

    public TankEdits(DirtyTanks dirtyTanks) {
        this.dirtyTanks = dirtyTanks;
    }

    /**
     * What the coordinator writes down about a tank.
     *
     * @param filterStartedOn day since which the filter has had ammonia to live on
     * @param filterAreaM2 surface of the filter's media, m²
     * @param disinfectant none, chlorine or chloramine; empty where unknown
     * @param thermometerUnit UCUM code in which its class reads temperature
     */
    public record Details(
            int classroomId,
            int kitId,
            double volumeL,
            OptionalDouble chillerSetPointC,
            String filterKind,
            Optional<LocalDate> filterStartedOn,
            OptionalDouble filterAreaM2,
            OptionalDouble alkalinityMgPerL,
            OptionalDouble chlorideMgPerL,
            Optional<String> disinfectant,
            String thermometerUnit) {}

    /** @return the new tank's code */
    public String add(DSLContext tx, int chapterId, Details details, Instant now) {
        String code = PublicCode.firstFree(candidate -> tx.insertInto(TANKS)
                .set(columns(details))
                .set(TANKS.CHAPTER_ID, chapterId)
                .set(TANKS.CODE, candidate)
                .onConflict(TANKS.CHAPTER_ID, TANKS.CODE).doNothing()
                .execute());
        dirtyTanks.mark(tx, chapterId, idOf(tx, chapterId, code), now);
        return code;
    }

    void update(DSLContext tx, int chapterId, int tankId, Details details, Instant now) {
        tx.update(TANKS).set(columns(details)).where(keyed(chapterId, tankId)).execute();
        dirtyTanks.mark(tx, chapterId, tankId, now);
    }

    /** Off the rounds; its readings and lots stay. */
    void retire(DSLContext tx, int chapterId, int tankId, Instant now) {
        tx.update(TANKS).set(TANKS.RETIRED_AT, now)
                .where(keyed(chapterId, tankId)).and(TANKS.RETIRED_AT.isNull())
                .execute();
        dirtyTanks.mark(tx, chapterId, tankId, now);
    }

    void putBack(DSLContext tx, int chapterId, int tankId, Instant now) {
        tx.update(TANKS).setNull(TANKS.RETIRED_AT).where(keyed(chapterId, tankId)).execute();
        dirtyTanks.mark(tx, chapterId, tankId, now);
    }

    /** Nobody else changes the tank until this transaction ends. */
    void lock(DSLContext tx, int chapterId, int tankId) {
        tx.select(TANKS.TANK_ID).from(TANKS).where(keyed(chapterId, tankId)).forUpdate().fetch();
    }

    private static Condition keyed(int chapterId, int tankId) {
        return TANKS.CHAPTER_ID.eq(chapterId).and(TANKS.TANK_ID.eq(tankId));
    }

    private static int idOf(DSLContext tx, int chapterId, String code) {
        return tx.select(TANKS.TANK_ID).from(TANKS)
                .where(TANKS.CHAPTER_ID.eq(chapterId)).and(TANKS.CODE.eq(code))
                .fetchSingle(TANKS.TANK_ID);
    }

    private static Map<Field<?>, Object> columns(Details details) {
        Map<Field<?>, Object> columns = new LinkedHashMap<>();
        columns.put(TANKS.CLASSROOM_ID, details.classroomId());
        columns.put(TANKS.KIT_ID, details.kitId());
        columns.put(TANKS.VOLUME_L, (float) details.volumeL());
        columns.put(TANKS.CHILLER_SET_POINT_C, Columns.single(details.chillerSetPointC()));
        columns.put(TANKS.FILTER_KIND, details.filterKind());
        columns.put(TANKS.FILTER_STARTED_ON, details.filterStartedOn().orElse(null));
        columns.put(TANKS.FILTER_AREA_M2, Columns.single(details.filterAreaM2()));
        columns.put(TANKS.SOURCE_ALKALINITY_MG_L, Columns.single(details.alkalinityMgPerL()));
        columns.put(TANKS.SOURCE_CHLORIDE_MG_L, Columns.single(details.chlorideMgPerL()));
        columns.put(TANKS.SOURCE_DISINFECTANT, details.disinfectant().orElse(null));
        columns.put(TANKS.THERMOMETER_UNIT, details.thermometerUnit());
        return columns;
    }
}
