package org.tankrounds.release;

import static org.tankrounds.db.schema.Tables.RELEASE_RULES;

import java.util.Optional;
import org.jooq.DSLContext;

/** The chapter's rules for days at the water. */
public final class RulesRepository {

    public Optional<Rules> find(DSLContext tx, int chapterId) {
        return tx.selectFrom(RELEASE_RULES).where(RELEASE_RULES.CHAPTER_ID.eq(chapterId))
                .fetchOptional(row -> new Rules(row.get(RELEASE_RULES.CHILDREN_PER_ADULT),
                        row.get(RELEASE_RULES.DEEPEST_CM), Optional.ofNullable(row.get(RELEASE_RULES.OTHER_RULES))));
    }

    /** As {@link #find}, and nobody else changes them until this transaction ends. */
    Optional<Rules> lock(DSLContext tx, int chapterId) {
        tx.fetch("SELECT pg_advisory_xact_lock(hashtext('release_rules'), ?)", chapterId);
        return find(tx, chapterId);
    }

    public void put(DSLContext tx, int chapterId, Rules rules) {
        tx.insertInto(RELEASE_RULES)
                .set(RELEASE_RULES.CHAPTER_ID, chapterId)
                .set(RELEASE_RULES.CHILDREN_PER_ADULT, rules.childrenPerAdult())
                .set(RELEASE_RULES.DEEPEST_CM, rules.deepestCm())
                .set(RELEASE_RULES.OTHER_RULES, rules.others().orElse(null))
                .onConflict(RELEASE_RULES.CHAPTER_ID).doUpdate()
                .set(RELEASE_RULES.CHILDREN_PER_ADULT, rules.childrenPerAdult())
                .set(RELEASE_RULES.DEEPEST_CM, rules.deepestCm())
                .set(RELEASE_RULES.OTHER_RULES, rules.others().orElse(null))
                .execute();
    }
}
