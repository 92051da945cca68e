package org.tankrounds.places;

import static org.tankrounds.db.schema.Tables.KITS;
import static org.tankrounds.db.schema.Tables.KIT_SCALES;

import java.util.Arrays;
import java.util.List;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/** The chapter's kits. */
public final class KitRepository {

    public Kit get(DSLContext tx, int chapterId, int kitId) {
        String name = tx.select(KITS.NAME).from(KITS)
                .where(KITS.CHAPTER_ID.eq(chapterId)).and(KITS.KIT_ID.eq(kitId))
                .fetchSingle(KITS.NAME);
        List<KitScale> scales = tx.selectFrom(KIT_SCALES)
                .where(KIT_SCALES.CHAPTER_ID.eq(chapterId)).and(KIT_SCALES.KIT_ID.eq(kitId))
                .orderBy(KIT_SCALES.ANALYTE)
                .fetch(KitRepository::scale);
        return new Kit(kitId, name, scales);
    }

    private static KitScale scale(Record row) {
        return new KitScale(
                Analyte.ofCode(row.get(KIT_SCALES.ANALYTE)).orElseThrow(),
                new UnitForm(row.get(KIT_SCALES.UNIT), row.get(KIT_SCALES.COUNTS_AS)),
                Arrays.stream(row.get(KIT_SCALES.STEPS)).map(KitRepository::exact).toList());
    }

    /** 0.2 stays 0.2: the shortest decimal of the stored single, not its binary neighbour. */
    private static Double exact(Float step) {
        return Double.valueOf(step.toString());
    }
}
