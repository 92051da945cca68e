package org.tankrounds.season;

import static org.tankrounds.db.schema.Tables.SEASONS;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.places.PublicCode;
import org.tankrounds.web.NotFoundException;

/** The chapter's seasons. */
public final class SeasonRepository {

    /** The newest first. */
    public List<Season> list(DSLContext tx, int chapterId) {
        return tx.selectFrom(SEASONS)
                .where(SEASONS.CHAPTER_ID.eq(chapterId))
                .orderBy(SEASONS.STARTS_ON.desc(), SEASONS.SEASON_ID.desc())
                .fetch(SeasonRepository::season);
    }

    public Season get(DSLContext tx, int chapterId, String code) {
        return find(tx, chapterId, code).orElseThrow(() -> new NotFoundException("season"));
    }

    public Optional<Season> find(DSLContext tx, int chapterId, String code) {
        return tx.selectFrom(SEASONS).where(coded(chapterId, code)).fetchOptional(SeasonRepository::season);
    }

    /** As {@link #get}, and nobody else changes it until this transaction ends. */
    Season lock(DSLContext tx, int chapterId, String code) {
        tx.select(SEASONS.SEASON_ID).from(SEASONS).where(coded(chapterId, code)).forUpdate().fetch();
        return get(tx, chapterId, code);
    }

    /** @throws org.jooq.exception.DataAccessException also when the name is taken */
    public Season add(DSLContext tx, int chapterId, Season.Details details) {
        String code = PublicCode.firstFree(candidate -> tx.insertInto(SEASONS)
                .set(SEASONS.CHAPTER_ID, chapterId)
                .set(SEASONS.CODE, candidate)
                .set(SEASONS.NAME, details.name())
                .set(SEASONS.STARTS_ON, details.startsOn())
                .set(SEASONS.ENDS_ON, details.endsOn())
                .set(SEASONS.RELEASE_ON, details.releaseOn().orElse(null))
                .set(SEASONS.RELEASE_LENGTH_MM, boxed(details.releaseLengthMm()))
                .onConflict(SEASONS.CHAPTER_ID, SEASONS.CODE).doNothing()
                .execute());
        return get(tx, chapterId, code);
    }

    void update(DSLContext tx, int chapterId, int seasonId, Season.Details details) {
        tx.update(SEASONS)
                .set(SEASONS.NAME, details.name())
                .set(SEASONS.STARTS_ON, details.startsOn())
                .set(SEASONS.ENDS_ON, details.endsOn())
                .set(SEASONS.RELEASE_ON, details.releaseOn().orElse(null))
                .set(SEASONS.RELEASE_LENGTH_MM, boxed(details.releaseLengthMm()))
                .where(SEASONS.CHAPTER_ID.eq(chapterId)).and(SEASONS.SEASON_ID.eq(seasonId))
                .execute();
    }

    private static Condition coded(int chapterId, String code) {
        return SEASONS.CHAPTER_ID.eq(chapterId).and(SEASONS.CODE.eq(code));
    }

    private static Season season(Record row) {
        return new Season(row.get(SEASONS.SEASON_ID), row.get(SEASONS.CODE), new Season.Details(
                row.get(SEASONS.NAME), row.get(SEASONS.STARTS_ON), row.get(SEASONS.ENDS_ON),
                Optional.ofNullable(row.get(SEASONS.RELEASE_ON)), unboxed(row.get(SEASONS.RELEASE_LENGTH_MM))));
    }

    private static Integer boxed(OptionalInt value) {
        return value.isPresent() ? value.getAsInt() : null;
    }

    private static OptionalInt unboxed(Integer value) {
        return value == null ? OptionalInt.empty() : OptionalInt.of(value);
    }
}
