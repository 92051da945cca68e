package org.tankrounds.years;

import static org.tankrounds.db.schema.Tables.PAST_ROWS;
import static org.tankrounds.db.schema.Tables.PAST_SEASONS;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.places.PublicCode;

/**
 * Seasons from before the chapter used this service, as its own sheets had them; one that was taken back is nowhere.
 */
final class PastSeasonRepository {

    /** @param code for addresses */
    record PastSeason(int pastSeasonId, String code, String name, LocalDate endedOn, List<String> header) {}

    /** The newest first. */
    List<PastSeason> list(DSLContext tx, int chapterId) {
        return tx.selectFrom(PAST_SEASONS)
                .where(PAST_SEASONS.CHAPTER_ID.eq(chapterId)).and(PAST_SEASONS.WITHDRAWN_AT.isNull())
                .orderBy(PAST_SEASONS.ENDED_ON.desc(), PAST_SEASONS.PAST_SEASON_ID.desc())
                .fetch(PastSeasonRepository::season);
    }

    PastSheet sheet(DSLContext tx, int chapterId, PastSeason season) {
        return PastSheet.of(season.header(), tx.selectFrom(PAST_ROWS)
                .where(PAST_ROWS.CHAPTER_ID.eq(chapterId)).and(PAST_ROWS.PAST_SEASON_ID.eq(season.pastSeasonId()))
                .orderBy(PAST_ROWS.LINE_NO)
                .fetch(row -> new PastSheet.Line(row.getLineNo(), List.of(row.getCells()))));
    }

    boolean isStored(DSLContext tx, int chapterId, UUID submissionId) {
        return tx.fetchExists(PAST_SEASONS,
                PAST_SEASONS.CHAPTER_ID.eq(chapterId), PAST_SEASONS.SUBMISSION_ID.eq(submissionId));
    }

    /** Stored once, however often the form is sent. */
    void add(DSLContext tx, int chapterId, UUID submissionId, String name, LocalDate endedOn, PastSheet sheet,
            int personId, Instant now) {
        String code = PublicCode.firstFree(candidate -> tx.fetchExists(PAST_SEASONS,
                PAST_SEASONS.CHAPTER_ID.eq(chapterId), PAST_SEASONS.CODE.eq(candidate)) ? 0 : 1);
        Optional<Integer> added = tx.insertInto(PAST_SEASONS)
                .set(PAST_SEASONS.CHAPTER_ID, chapterId)
                .set(PAST_SEASONS.CODE, code)
                .set(PAST_SEASONS.SUBMISSION_ID, submissionId)
                .set(PAST_SEASONS.NAME, name)
                .set(PAST_SEASONS.ENDED_ON, endedOn)
                .set(PAST_SEASONS.HEADER, sheet.header().toArray(String[]::new))
                .set(PAST_SEASONS.WRITTEN_BY, personId)
                .set(PAST_SEASONS.WRITTEN_AT, now)
                .onConflict(PAST_SEASONS.CHAPTER_ID, PAST_SEASONS.SUBMISSION_ID).doNothing()
                .returning(PAST_SEASONS.PAST_SEASON_ID)
                .fetchOptional(PAST_SEASONS.PAST_SEASON_ID);
        added.ifPresent(pastSeasonId -> tx.batch(sheet.lines().stream().map(line -> tx.insertInto(PAST_ROWS)
                .set(PAST_ROWS.CHAPTER_ID, chapterId)
                .set(PAST_ROWS.PAST_SEASON_ID, pastSeasonId)
                .set(PAST_ROWS.LINE_NO, line.number())
                .set(PAST_ROWS.CELLS, line.cells().toArray(String[]::new))).toList()).execute());
    }

    /** One that was taken back before stays so. */
    void withdraw(DSLContext tx, int chapterId, String code, int personId, Instant now) {
        tx.update(PAST_SEASONS)
                .set(PAST_SEASONS.WITHDRAWN_BY, personId)
                .set(PAST_SEASONS.WITHDRAWN_AT, now)
                .where(PAST_SEASONS.CHAPTER_ID.eq(chapterId)).and(PAST_SEASONS.CODE.eq(code))
                .and(PAST_SEASONS.WITHDRAWN_AT.isNull())
                .execute();
    }

    private static PastSeason season(Record row) {
        return new PastSeason(row.get(PAST_SEASONS.PAST_SEASON_ID), row.get(PAST_SEASONS.CODE),
                row.get(PAST_SEASONS.NAME), row.get(PAST_SEASONS.ENDED_ON),
                Arrays.asList(row.get(PAST_SEASONS.HEADER)));
    }
}
