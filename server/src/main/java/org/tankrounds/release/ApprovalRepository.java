package org.tankrounds.release;

import static org.tankrounds.db.schema.Tables.RELEASE_APPROVALS;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.tankrounds.web.NotFoundException;

/** What agencies allowed at the chapter's sites, with what was taken back since. */
public final class ApprovalRepository {

    /** Those that stand come first, the one that ends last before the others. */
    public List<Approval> list(DSLContext tx, int chapterId) {
        return tx.selectFrom(RELEASE_APPROVALS)
                .where(RELEASE_APPROVALS.CHAPTER_ID.eq(chapterId))
                .orderBy(RELEASE_APPROVALS.WITHDRAWN_AT.isNotNull(), RELEASE_APPROVALS.LAST_DAY.desc(),
                        RELEASE_APPROVALS.APPROVAL_ID)
                .fetch(ApprovalRepository::approval);
    }

    public List<Approval> listOfSite(DSLContext tx, int chapterId, int siteId) {
        return list(tx, chapterId).stream().filter(approval -> approval.siteId() == siteId).toList();
    }

    /** @param approvalId as an address names it */
    Approval get(DSLContext tx, int chapterId, int siteId, OptionalInt approvalId) {
        return tx.selectFrom(RELEASE_APPROVALS)
                .where(numbered(chapterId, approvalId.orElse(0))).and(RELEASE_APPROVALS.SITE_ID.eq(siteId))
                .fetchOptional(ApprovalRepository::approval).orElseThrow(() -> new NotFoundException("approval"));
    }

    /**
     * @return the number that the database gave it
     * @throws org.jooq.exception.DataAccessException also when one of that number stands at the site
     */
    public int add(DSLContext tx, int chapterId, int siteId, Approval.Details details) {
        return tx.insertInto(RELEASE_APPROVALS)
                .set(columns(details))
                .set(RELEASE_APPROVALS.CHAPTER_ID, chapterId)
                .set(RELEASE_APPROVALS.SITE_ID, siteId)
                .returning(RELEASE_APPROVALS.APPROVAL_ID)
                .fetchSingle(RELEASE_APPROVALS.APPROVAL_ID);
    }

    void update(DSLContext tx, int chapterId, int approvalId, Approval.Details details) {
        tx.update(RELEASE_APPROVALS).set(columns(details)).where(numbered(chapterId, approvalId)).execute();
    }

    /** One that was taken back before stays as it was. */
    void withdraw(DSLContext tx, int chapterId, int approvalId, int personId, Instant now) {
        tx.update(RELEASE_APPROVALS)
                .set(RELEASE_APPROVALS.WITHDRAWN_BY, personId)
                .set(RELEASE_APPROVALS.WITHDRAWN_AT, now)
                .where(numbered(chapterId, approvalId)).and(RELEASE_APPROVALS.WITHDRAWN_AT.isNull())
                .execute();
    }

    private static Map<Field<?>, Object> columns(Approval.Details details) {
        Map<Field<?>, Object> columns = new LinkedHashMap<>();
        columns.put(RELEASE_APPROVALS.NUMBER, details.number());
        columns.put(RELEASE_APPROVALS.AGENCY, details.agency());
        columns.put(RELEASE_APPROVALS.SPECIES, details.species().code());
        columns.put(RELEASE_APPROVALS.FIRST_DAY, details.firstDay());
        columns.put(RELEASE_APPROVALS.LAST_DAY, details.lastDay());
        columns.put(RELEASE_APPROVALS.MOST_FISH, details.mostFish());
        columns.put(RELEASE_APPROVALS.EXPIRES_ON, details.expiresOn().orElse(null));
        columns.put(RELEASE_APPROVALS.NOTE, details.note().orElse(null));
        return columns;
    }

    private static Condition numbered(int chapterId, int approvalId) {
        return RELEASE_APPROVALS.CHAPTER_ID.eq(chapterId).and(RELEASE_APPROVALS.APPROVAL_ID.eq(approvalId));
    }

    private static Approval approval(Record row) {
        return new Approval(row.get(RELEASE_APPROVALS.APPROVAL_ID), row.get(RELEASE_APPROVALS.SITE_ID),
                new Approval.Details(
                        row.get(RELEASE_APPROVALS.NUMBER),
                        row.get(RELEASE_APPROVALS.AGENCY),
                        Species.ofCode(row.get(RELEASE_APPROVALS.SPECIES)).orElseThrow(),
                        row.get(RELEASE_APPROVALS.FIRST_DAY),
                        row.get(RELEASE_APPROVALS.LAST_DAY),
                        row.get(RELEASE_APPROVALS.MOST_FISH),
                        Optional.ofNullable(row.get(RELEASE_APPROVALS.EXPIRES_ON)),
                        Optional.ofNullable(row.get(RELEASE_APPROVALS.NOTE))),
                Optional.ofNullable(row.get(RELEASE_APPROVALS.WITHDRAWN_AT)));
    }
}
