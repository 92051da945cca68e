package org.tankrounds.db;

import java.util.HexFormat;
import java.util.List;
import java.util.function.Function;
import javax.sql.DataSource;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.conf.Settings;
import org.jooq.impl.DSL;

/**
 * The only way to the tables. Each transaction says first on whose behalf it works; row-level security then hides
 * everything else. The setting is local to the transaction, so a pooled connection carries nothing over.
 */
public final class Transactions {
    private final DSLContext database;

    public Transactions(DataSource dataSource) {
        Settings settings = new Settings().withRenderSchema(false);
        this.database = DSL.using(dataSource, SQLDialect.POSTGRES, settings);
    }

    /** Works inside one chapter: no row of another can be read or written. */
    public <T> T inChapter(int chapterId, Function<DSLContext, T> work) {
        return with("tankrounds.chapter", Integer.toString(chapterId), work);
    }

    /** The same; whatever others change meanwhile, all of it sees the rows as they were when it began. */
    public <T> T inChapterAtOneMoment(int chapterId, Function<DSLContext, T> work) {
        return database.transactionResult(configuration -> {
            DSLContext tx = DSL.using(configuration);
            tx.execute("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ");
            set(tx, "tankrounds.chapter", Integer.toString(chapterId));
            return work.apply(tx);
        });
    }

    /** Sees only rows outside every chapter, or those that carry this very hash: sessions, tokens, links, addresses. */
    public <T> T bySecret(byte[] sha256, Function<DSLContext, T> work) {
        return with("tankrounds.secret", HexFormat.of().formatHex(sha256), work);
    }

    /** The numbers of all chapters, for jobs and the command line, which then work in one after the other. */
    public List<Integer> chapterIds() {
        return with("tankrounds.listing", "chapters",
                tx -> tx.fetch("SELECT chapter_id FROM chapters ORDER BY chapter_id").getValues(0, Integer.class));
    }

    /** No chapter and no secret: for functions of the database and for asking whether it answers. */
    public <T> T outside(Function<DSLContext, T> work) {
        return with("tankrounds.chapter", "", work);
    }

    /** Goes on inside a chapter that a secret opened, or that was made just now; until the transaction ends. */
    public static void enter(DSLContext tx, int chapterId) {
        set(tx, "tankrounds.chapter", Integer.toString(chapterId));
    }

    private static void set(DSLContext tx, String setting, String value) {
        tx.fetch("SELECT set_config(?, ?, true)", setting, value);
    }

    private <T> T with(String setting, String value, Function<DSLContext, T> work) {
        return database.transactionResult(configuration -> {
            DSLContext tx = DSL.using(configuration);
            set(tx, setting, value);
            return work.apply(tx);
        });
    }
}
