package org.tankrounds.readings;

import static org.jooq.impl.DSL.noCondition;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;

import java.time.Instant;
import java.util.List;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.belief.Observation;
import org.tankrounds.water.Analyte;

/** What the engine takes in: the measurements and husbandry acts that hold, oldest first. */
public final class ObservationRepository {
    static final int NOT_DETECTED = 1;
    static final int DOUBTFUL = 2;
    /** Rows that are held at a time: a season of a probe has a hundred thousand. */
    private static final int A_FEW = 2000;

    /** Everything measured in a tank from one time to another, both included. */
    public List<Observation> list(DSLContext tx, int chapterId, int tankId, Instant from, Instant until) {
        return list(tx, chapterId, tankId, from, until, noCondition());
    }

    /** Those of the dead alone. */
    public List<Observation> deaths(DSLContext tx, int chapterId, int tankId, Instant from, Instant until) {
        return list(tx, chapterId, tankId, from, until, MEASUREMENTS.ANALYTE.eq(Analyte.DEATHS.code()));
    }

    private static List<Observation> list(
            DSLContext tx, int chapterId, int tankId, Instant from, Instant until, Condition which) {
        return tx.select(MEASUREMENTS.MEASURED_AT, MEASUREMENTS.ANALYTE, MEASUREMENTS.VALUE,
                        MEASUREMENTS.HALF_STEP, MEASUREMENTS.FLAGS)
                .from(MEASUREMENTS)
                .where(MEASUREMENTS.CHAPTER_ID.eq(chapterId))
                .and(MEASUREMENTS.TANK_ID.eq(tankId))
                .and(MEASUREMENTS.MEASURED_AT.between(from, until))
                .and(which)
                .orderBy(MEASUREMENTS.MEASURED_AT, MEASUREMENTS.ANALYTE, MEASUREMENTS.READING_ID)
                .fetchSize(A_FEW)
                .fetchLazy().stream().map(ObservationRepository::observation).toList();
    }

    private static Observation observation(Record row) {
        short flags = row.get(MEASUREMENTS.FLAGS);
        return new Observation(
                row.get(MEASUREMENTS.MEASURED_AT),
                Analyte.ofCode(row.get(MEASUREMENTS.ANALYTE)).orElseThrow(),
                row.get(MEASUREMENTS.VALUE),
                row.get(MEASUREMENTS.HALF_STEP),
                (flags & NOT_DETECTED) != 0,
                (flags & DOUBTFUL) != 0);
    }
}
