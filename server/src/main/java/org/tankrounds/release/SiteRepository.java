package org.tankrounds.release;

import static org.tankrounds.db.schema.Tables.RELEASE_SITES;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.tankrounds.water.Digits;
import org.tankrounds.web.NotFoundException;

/** The chapter's release sites. */
public final class SiteRepository {

    public List<Site> list(DSLContext tx, int chapterId) {
        return tx.selectFrom(RELEASE_SITES)
                .where(RELEASE_SITES.CHAPTER_ID.eq(chapterId))
                .orderBy(DSL.lower(RELEASE_SITES.NAME), RELEASE_SITES.SITE_ID)
                .fetch(SiteRepository::site);
    }

    /** @param siteId as an address names it */
    public Site get(DSLContext tx, int chapterId, OptionalInt siteId) {
        return tx.selectFrom(RELEASE_SITES).where(numbered(chapterId, siteId))
                .fetchOptional(SiteRepository::site).orElseThrow(() -> new NotFoundException("site"));
    }

    /** As {@link #get}, and nobody else changes it or what hangs on it until this transaction ends. */
    Site lock(DSLContext tx, int chapterId, OptionalInt siteId) {
        tx.select(RELEASE_SITES.SITE_ID).from(RELEASE_SITES).where(numbered(chapterId, siteId)).forUpdate().fetch();
        return get(tx, chapterId, siteId);
    }

    /**
     * @return the number that the database gave it
     * @throws org.jooq.exception.DataAccessException also when the name is taken
     */
    public int add(DSLContext tx, int chapterId, Site.Details details) {
        return tx.insertInto(RELEASE_SITES)
                .set(columns(details))
                .set(RELEASE_SITES.CHAPTER_ID, chapterId)
                .returning(RELEASE_SITES.SITE_ID)
                .fetchSingle(RELEASE_SITES.SITE_ID);
    }

    void update(DSLContext tx, int chapterId, int siteId, Site.Details details) {
        tx.update(RELEASE_SITES).set(columns(details))
                .where(numbered(chapterId, OptionalInt.of(siteId)))
                .execute();
    }

    private static Map<Field<?>, Object> columns(Site.Details details) {
        Map<Field<?>, Object> columns = new LinkedHashMap<>();
        columns.put(RELEASE_SITES.NAME, details.name());
        columns.put(RELEASE_SITES.WATER, details.water());
        columns.put(RELEASE_SITES.WAY_THERE, details.wayThere().orElse(null));
        columns.put(RELEASE_SITES.LATITUDE, details.point().map(Site.Point::north).orElse(null));
        columns.put(RELEASE_SITES.LONGITUDE, details.point().map(Site.Point::east).orElse(null));
        columns.put(RELEASE_SITES.ELEVATION_M,
                details.elevationM().isPresent() ? (float) details.elevationM().getAsDouble() : null);
        return columns;
    }

    private static Condition numbered(int chapterId, OptionalInt siteId) {
        return RELEASE_SITES.CHAPTER_ID.eq(chapterId).and(RELEASE_SITES.SITE_ID.eq(siteId.orElse(0)));
    }

    private static Site site(Record row) {
        Float elevationM = row.get(RELEASE_SITES.ELEVATION_M);
        Double north = row.get(RELEASE_SITES.LATITUDE);
        return new Site(row.get(RELEASE_SITES.SITE_ID), new Site.Details(
                row.get(RELEASE_SITES.NAME),
                row.get(RELEASE_SITES.WATER),
                Optional.ofNullable(row.get(RELEASE_SITES.WAY_THERE)),
                north == null ? Optional.empty()
                        : Optional.of(new Site.Point(north, row.get(RELEASE_SITES.LONGITUDE))),
                elevationM == null ? OptionalDouble.empty() : OptionalDouble.of(Digits.kept(elevationM))));
    }
}
