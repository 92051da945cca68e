package org.tankrounds.places;

import static org.tankrounds.db.schema.Tables.KITS;
import static org.tankrounds.db.schema.Tables.KIT_SCALES;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Digits;
import org.tankrounds.water.UnitForm;

/** The chapter's kits. */
public final class KitRepository {

    public Kit get(DSLContext tx, int chapterId, int kitId) {
        String name = tx.select(KITS.NAME).from(KITS)
                .where(KITS.CHAPTER_ID.eq(chapterId)).and(KITS.KIT_ID.eq(kitId))
                .fetchSingle(KITS.NAME);
        return new Kit(kitId, name, scales(tx, chapterId, kitId));
    }

    public Optional<Kit> find(DSLContext tx, int chapterId, String name) {
        return tx.select(KITS.KIT_ID).from(KITS)
                .where(KITS.CHAPTER_ID.eq(chapterId)).and(KITS.NAME.eq(name))
                .fetchOptional(row -> get(tx, chapterId, row.value1()));
    }

    /** By name; the kit that the chapter was set up with is one of them. */
    public List<Kit> list(DSLContext tx, int chapterId) {
        return tx.select(KITS.KIT_ID).from(KITS)
                .where(KITS.CHAPTER_ID.eq(chapterId))
                .orderBy(KITS.NAME)
                .fetch(row -> get(tx, chapterId, row.value1()));
    }

    /** The profile that every chapter starts with. */
    public Kit addGeneric(DSLContext tx, int chapterId, String name) {
        return add(tx, chapterId, name, GenericKit.SCALES);
    }

    public Kit add(DSLContext tx, int chapterId, String name, List<KitScale> scales) {
        int kitId = tx.insertInto(KITS)
                .set(KITS.CHAPTER_ID, chapterId)
                .set(KITS.NAME, name)
                .returning(KITS.KIT_ID)
                .fetchSingle(KITS.KIT_ID);
        insertScales(tx, chapterId, kitId, scales);
        return new Kit(kitId, name, scales);
    }

    void update(DSLContext tx, int chapterId, Kit kit) {
        tx.update(KITS)
                .set(KITS.NAME, kit.name())
                .where(KITS.CHAPTER_ID.eq(chapterId)).and(KITS.KIT_ID.eq(kit.kitId()))
                .execute();
        tx.deleteFrom(KIT_SCALES)
                .where(KIT_SCALES.CHAPTER_ID.eq(chapterId)).and(KIT_SCALES.KIT_ID.eq(kit.kitId()))
                .execute();
        insertScales(tx, chapterId, kit.kitId(), kit.scales());
    }

    /** Nobody else changes the kit until this transaction ends. */
    void lock(DSLContext tx, int chapterId, int kitId) {
        tx.select(KITS.KIT_ID).from(KITS)
                .where(KITS.CHAPTER_ID.eq(chapterId)).and(KITS.KIT_ID.eq(kitId))
                .forUpdate()
                .fetch();
    }

    private static void insertScales(DSLContext tx, int chapterId, int kitId, List<KitScale> scales) {
        for (KitScale scale : scales) {
            tx.insertInto(KIT_SCALES)
                    .set(KIT_SCALES.CHAPTER_ID, chapterId)
                    .set(KIT_SCALES.KIT_ID, kitId)
                    .set(KIT_SCALES.ANALYTE, scale.analyte().code())
                    .set(KIT_SCALES.UNIT, scale.form().unit())
                    .set(KIT_SCALES.COUNTS_AS, scale.form().as())
                    .set(KIT_SCALES.STEPS, scale.steps().stream().map(Double::floatValue).toArray(Float[]::new))
                    .execute();
        }
    }

    private static List<KitScale> scales(DSLContext tx, int chapterId, int kitId) {
        return tx.selectFrom(KIT_SCALES)
                .where(KIT_SCALES.CHAPTER_ID.eq(chapterId)).and(KIT_SCALES.KIT_ID.eq(kitId))
                .orderBy(KIT_SCALES.ANALYTE)
                .fetch(KitRepository::scale);
    }

    private static KitScale scale(Record row) {
        return new KitScale(
                Analyte.ofCode(row.get(KIT_SCALES.ANALYTE)).orElseThrow(),
                new UnitForm(row.get(KIT_SCALES.UNIT), row.get(KIT_SCALES.COUNTS_AS)),
                Arrays.stream(row.get(KIT_SCALES.STEPS)).map(step -> Digits.kept(step)).toList());
    }
}
