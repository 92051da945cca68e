package org.tankrounds.season;

import static org.tankrounds.db.schema.Tables.LOTS;
import static org.tankrounds.db.schema.Tables.PEOPLE;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.water.Digits;

/** The chapter's egg lots; one that was taken away counts nowhere. */
public final class LotRepository {

    /** The lot that a tank holds at a time: the newest one received by then. */
    public Optional<Lot> findHeldBy(DSLContext tx, int chapterId, int tankId, Instant at) {
        return tx.selectFrom(LOTS)
                .where(LOTS.CHAPTER_ID.eq(chapterId)).and(LOTS.TANK_ID.eq(tankId)).and(LOTS.RECEIVED_AT.le(at))
                .and(LOTS.WITHDRAWN_AT.isNull())
                .orderBy(LOTS.RECEIVED_AT.desc(), LOTS.LOT_ID.desc())
                .limit(1)
                .fetchOptional(LotRepository::lot);
    }

    /** The next lot that a tank is to get after a time. */
    public Optional<Lot> findToCome(DSLContext tx, int chapterId, int tankId, Instant at) {
        return tx.selectFrom(LOTS)
                .where(LOTS.CHAPTER_ID.eq(chapterId)).and(LOTS.TANK_ID.eq(tankId)).and(LOTS.RECEIVED_AT.gt(at))
                .and(LOTS.WITHDRAWN_AT.isNull())
                .orderBy(LOTS.RECEIVED_AT, LOTS.LOT_ID.desc())
                .limit(1)
                .fetchOptional(LotRepository::lot);
    }

    public List<Lot> listOfSeason(DSLContext tx, int chapterId, int seasonId) {
        return tx.selectFrom(LOTS)
                .where(LOTS.CHAPTER_ID.eq(chapterId)).and(LOTS.SEASON_ID.eq(seasonId))
                .and(LOTS.WITHDRAWN_AT.isNull())
                .orderBy(LOTS.TANK_ID, LOTS.RECEIVED_AT)
                .fetch(LotRepository::lot);
    }

    /** The lots of one tank in a season, in the order in which they were written down; their numbers count from 1. */
    List<Lot> listOfTank(DSLContext tx, int chapterId, int seasonId, int tankId) {
        return tx.selectFrom(LOTS)
                .where(LOTS.CHAPTER_ID.eq(chapterId))
                .and(LOTS.SEASON_ID.eq(seasonId))
                .and(LOTS.TANK_ID.eq(tankId))
                .and(LOTS.WITHDRAWN_AT.isNull())
                .orderBy(LOTS.LOT_ID)
                .fetch(LotRepository::lot);
    }

    /** Those of one tank in a season that were taken away, the newest first. */
    List<WithdrawnLot> withdrawn(DSLContext tx, int chapterId, int seasonId, int tankId) {
        return tx.select(LOTS.fields()).select(PEOPLE.NAME)
                .from(LOTS)
                .join(PEOPLE).on(PEOPLE.CHAPTER_ID.eq(LOTS.CHAPTER_ID)).and(PEOPLE.PERSON_ID.eq(LOTS.WITHDRAWN_BY))
                .where(LOTS.CHAPTER_ID.eq(chapterId))
                .and(LOTS.SEASON_ID.eq(seasonId))
                .and(LOTS.TANK_ID.eq(tankId))
                .orderBy(LOTS.WITHDRAWN_AT.desc(), LOTS.LOT_ID.desc())
                .fetch(row -> new WithdrawnLot(lot(row), row.get(PEOPLE.NAME), row.get(LOTS.WITHDRAWN_AT),
                        row.get(LOTS.WITHDRAWN_BECAUSE)));
    }

    private static Lot lot(Record row) {
        Float thermalUnits = row.get(LOTS.THERMAL_UNITS_C);
        return new Lot(
                row.get(LOTS.LOT_ID),
                row.get(LOTS.SEASON_ID),
                row.get(LOTS.TANK_ID),
                row.get(LOTS.EGGS),
                row.get(LOTS.RECEIVED_AT),
                thermalUnits == null ? OptionalDouble.empty() : OptionalDouble.of(Digits.kept(thermalUnits)),
                Optional.ofNullable(row.get(LOTS.SUPPLIER)),
                Optional.ofNullable(row.get(LOTS.CERTIFICATE)),
                new SeenOn(Optional.ofNullable(row.get(LOTS.EYED_ON)), Optional.ofNullable(row.get(LOTS.HATCHED_ON)),
                        Optional.ofNullable(row.get(LOTS.FIRST_FEEDING_ON))),
                CountMethod.ofCode(row.get(LOTS.METHOD)).orElseThrow(),
                row.get(LOTS.SPREAD));
    }
}
