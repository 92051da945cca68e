package org.tankrounds.season;

import static org.tankrounds.db.schema.Tables.LOTS;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.tankrounds.jobs.DirtyTanks;

/** Writes of lots; each also says that the tank's forecast is out of date. */
public final class LotEdits {
    private final DirtyTanks dirtyTanks;

    public LotEdits(DirtyTanks dirtyTanks) {
        this.dirtyTanks = dirtyTanks;
    }

    /**
     * What the coordinator writes down about eggs that came together.
     *
     * @param thermalUnitsC degree-Celsius days since fertilisation on arrival; empty where nobody told
     * @param seenOn what the class saw it come to
     * @param method how the supplier counted them
     * @param spread eggs more or less that the count may be off, 95 %
     */
    public record Details(
            int eggs, Instant receivedAt, OptionalDouble thermalUnitsC, Optional<String> supplier,
            Optional<String> certificate, SeenOn seenOn, CountMethod method, int spread) {

        static Details of(Lot lot) {
            return new Details(lot.eggs(), lot.receivedAt(), lot.thermalUnitsC(), lot.supplier(), lot.certificate(),
                    lot.seenOn(), lot.method(), lot.spread());
        }
    }

    /** @return the number that the database gave it */
    public int add(DSLContext tx, int chapterId, int seasonId, int tankId, Details details, Instant now) {
        int lotId = tx.insertInto(LOTS)
                .set(columns(details))
                .set(LOTS.CHAPTER_ID, chapterId)
                .set(LOTS.SEASON_ID, seasonId)
                .set(LOTS.TANK_ID, tankId)
                .returning(LOTS.LOT_ID)
                .fetchSingle(LOTS.LOT_ID);
        dirtyTanks.mark(tx, chapterId, tankId, now);
        return lotId;
    }

    /** Stored once, however often the form is sent. */
    void addOnce(DSLContext tx, int chapterId, int seasonId, int tankId, UUID submissionId, Details details,
            Instant now) {
        tx.insertInto(LOTS)
                .set(columns(details))
                .set(LOTS.CHAPTER_ID, chapterId)
                .set(LOTS.SEASON_ID, seasonId)
                .set(LOTS.TANK_ID, tankId)
                .set(LOTS.SUBMISSION_ID, submissionId)
                .onConflict(LOTS.CHAPTER_ID, LOTS.TANK_ID, LOTS.SUBMISSION_ID).doNothing()
                .execute();
        dirtyTanks.mark(tx, chapterId, tankId, now);
    }

    void update(DSLContext tx, int chapterId, Lot lot, Details details, Instant now) {
        tx.update(LOTS).set(columns(details))
                .where(LOTS.CHAPTER_ID.eq(chapterId)).and(LOTS.LOT_ID.eq(lot.lotId()))
                .execute();
        dirtyTanks.mark(tx, chapterId, lot.tankId(), now);
    }

    /** Written down by mistake: it counts nowhere any more, and stays to be read. */
    void withdraw(DSLContext tx, int chapterId, Lot lot, int personId, String because, Instant now) {
        tx.update(LOTS)
                .set(LOTS.WITHDRAWN_BY, personId)
                .set(LOTS.WITHDRAWN_AT, now)
                .set(LOTS.WITHDRAWN_BECAUSE, because)
                .where(LOTS.CHAPTER_ID.eq(chapterId)).and(LOTS.LOT_ID.eq(lot.lotId()))
                .and(LOTS.WITHDRAWN_AT.isNull())
                .execute();
        dirtyTanks.mark(tx, chapterId, lot.tankId(), now);
    }

    /** What a class saw, and nothing else. */
    public void see(DSLContext tx, int chapterId, Lot lot, SeenOn seenOn, Instant now) {
        tx.update(LOTS).set(columns(seenOn))
                .where(LOTS.CHAPTER_ID.eq(chapterId)).and(LOTS.LOT_ID.eq(lot.lotId()))
                .execute();
        dirtyTanks.mark(tx, chapterId, lot.tankId(), now);
    }

    /** Nobody else changes the lot until this transaction ends. */
    public void lock(DSLContext tx, int chapterId, int lotId) {
        tx.select(LOTS.LOT_ID).from(LOTS)
                .where(LOTS.CHAPTER_ID.eq(chapterId)).and(LOTS.LOT_ID.eq(lotId))
                .forUpdate()
                .fetch();
    }

    private static Map<Field<?>, Object> columns(SeenOn seen) {
        Map<Field<?>, Object> columns = new LinkedHashMap<>();
        columns.put(LOTS.EYED_ON, seen.eyedOn().orElse(null));
        columns.put(LOTS.HATCHED_ON, seen.hatchedOn().orElse(null));
        columns.put(LOTS.FIRST_FEEDING_ON, seen.firstFeedingOn().orElse(null));
        return columns;
    }

    private static Map<Field<?>, Object> columns(Details details) {
        Map<Field<?>, Object> columns = new LinkedHashMap<>();
        columns.put(LOTS.EGGS, details.eggs());
        columns.put(LOTS.RECEIVED_AT, details.receivedAt());
        columns.put(LOTS.THERMAL_UNITS_C, details.thermalUnitsC().isPresent()
                ? (float) details.thermalUnitsC().getAsDouble() : null);
        columns.put(LOTS.SUPPLIER, details.supplier().orElse(null));
        columns.put(LOTS.CERTIFICATE, details.certificate().orElse(null));
        columns.putAll(columns(details.seenOn()));
        columns.put(LOTS.METHOD, details.method().code());
        columns.put(LOTS.SPREAD, details.spread());
        return columns;
    }
}
