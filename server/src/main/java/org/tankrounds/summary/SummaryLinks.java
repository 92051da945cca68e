package org.tankrounds.summary;

import static org.tankrounds.db.schema.Tables.SUMMARY_LINKS;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.season.Season;
import org.tankrounds.web.Secrets;

/** Links by which somebody without an account reads one version of a summary; kept as hashes. */
public final class SummaryLinks {

    /** @param withdrawn whether it was taken back */
    record Link(int linkId, int chapterId, int seasonId, int version, String reader, Instant madeAt, Instant expiresAt,
            boolean withdrawn) {

        boolean opensAt(Instant now) {
            return !withdrawn && now.isBefore(expiresAt);
        }
    }

    /**
     * Only the last answer to a form is seen, so that a form that is sent again withdraws what it made before.
     *
     * @return the random value in it, which is kept nowhere
     */
    String add(DSLContext tx, int chapterId, Season season, int version, UUID submissionId, String reader, int personId,
            Instant now, Instant expiresAt) {
        String secret = Secrets.next();
        withdraw(tx, SUMMARY_LINKS.CHAPTER_ID.eq(chapterId).and(SUMMARY_LINKS.SUBMISSION_ID.eq(submissionId)),
                personId, now);
        tx.insertInto(SUMMARY_LINKS)
                .set(SUMMARY_LINKS.CHAPTER_ID, chapterId)
                .set(SUMMARY_LINKS.LINK_HASH, Secrets.sha256(secret))
                .set(SUMMARY_LINKS.SEASON_ID, season.seasonId())
                .set(SUMMARY_LINKS.VERSION, version)
                .set(SUMMARY_LINKS.SUBMISSION_ID, submissionId)
                .set(SUMMARY_LINKS.READER, reader)
                .set(SUMMARY_LINKS.MADE_BY, personId)
                .set(SUMMARY_LINKS.MADE_AT, now)
                .set(SUMMARY_LINKS.EXPIRES_AT, expiresAt)
                .execute();
        return secret;
    }

    /** The newest first. */
    List<Link> list(DSLContext tx, int chapterId, Season season, int version) {
        return tx.selectFrom(SUMMARY_LINKS)
                .where(SUMMARY_LINKS.CHAPTER_ID.eq(chapterId)).and(SUMMARY_LINKS.SEASON_ID.eq(season.seasonId()))
                .and(SUMMARY_LINKS.VERSION.eq(version))
                .orderBy(SUMMARY_LINKS.LINK_ID.desc())
                .fetch(SummaryLinks::link);
    }

    /** One that was taken back before stays so. */
    void withdraw(DSLContext tx, int chapterId, Season season, int version, int linkId, int personId, Instant now) {
        withdraw(tx, SUMMARY_LINKS.CHAPTER_ID.eq(chapterId).and(SUMMARY_LINKS.LINK_ID.eq(linkId))
                .and(SUMMARY_LINKS.SEASON_ID.eq(season.seasonId())).and(SUMMARY_LINKS.VERSION.eq(version)),
                personId, now);
    }

    private static void withdraw(DSLContext tx, Condition which, int personId, Instant now) {
        tx.update(SUMMARY_LINKS)
                .set(SUMMARY_LINKS.WITHDRAWN_BY, personId)
                .set(SUMMARY_LINKS.WITHDRAWN_AT, now)
                .where(which).and(SUMMARY_LINKS.WITHDRAWN_AT.isNull())
                .execute();
    }

    /** @param tx that sees rows by this secret's hash, whichever chapter they are of */
    static Optional<Link> find(DSLContext tx, byte[] sha256) {
        return tx.selectFrom(SUMMARY_LINKS).where(SUMMARY_LINKS.LINK_HASH.eq(sha256)).fetchOptional(SummaryLinks::link);
    }

    private static Link link(Record row) {
        return new Link(row.get(SUMMARY_LINKS.LINK_ID), row.get(SUMMARY_LINKS.CHAPTER_ID),
                row.get(SUMMARY_LINKS.SEASON_ID), row.get(SUMMARY_LINKS.VERSION), row.get(SUMMARY_LINKS.READER),
                row.get(SUMMARY_LINKS.MADE_AT), row.get(SUMMARY_LINKS.EXPIRES_AT),
                row.get(SUMMARY_LINKS.WITHDRAWN_AT) != null);
    }
}
