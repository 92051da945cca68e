package org.tankrounds.people;

import static org.tankrounds.db.schema.Tables.CHAPTERS;

import java.time.ZoneId;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Sequence;
import org.jooq.impl.DSL;
import org.tankrounds.db.Transactions;
import org.tankrounds.web.Secrets;

/** Chapters themselves. */
public final class ChapterRepository {
    private static final int CODE_LENGTH = 6;
    // The generator leaves out the sequences behind identity columns.
    private static final Sequence<Integer> NUMBERS = DSL.sequence("chapters_chapter_id_seq", Integer.class);

    /** Makes a chapter and goes on inside it: the rest of the transaction works in its name. */
    public Chapter add(DSLContext tx, String name, ZoneId zone) {
        return add(tx, Secrets.code(CODE_LENGTH), name, zone);
    }

    public Chapter add(DSLContext tx, String code, String name, ZoneId zone) {
        // The number comes first, since the wall lets nobody write a chapter that they are not inside of.
        int chapterId = tx.nextval(NUMBERS);
        Transactions.enter(tx, chapterId);
        tx.insertInto(CHAPTERS)
                .set(CHAPTERS.CHAPTER_ID, chapterId)
                .set(CHAPTERS.CODE, code)
                .set(CHAPTERS.NAME, name)
                .set(CHAPTERS.TIME_ZONE, zone.getId())
                .execute();
        return new Chapter(chapterId, code, name, zone);
    }

    public Chapter get(DSLContext tx, int chapterId) {
        return tx.selectFrom(CHAPTERS)
                .where(CHAPTERS.CHAPTER_ID.eq(chapterId))
                .fetchSingle(ChapterRepository::chapter);
    }

    /** For the operator's commands, which name a chapter by its code. */
    public Optional<Chapter> find(Transactions transactions, String code) {
        return transactions.chapterIds().stream()
                .map(chapterId -> transactions.inChapter(chapterId, tx -> get(tx, chapterId)))
                .filter(chapter -> chapter.code().equals(code))
                .findFirst();
    }

    private static Chapter chapter(Record row) {
        return new Chapter(row.get(CHAPTERS.CHAPTER_ID), row.get(CHAPTERS.CODE), row.get(CHAPTERS.NAME),
                ZoneId.of(row.get(CHAPTERS.TIME_ZONE)));
    }
}
