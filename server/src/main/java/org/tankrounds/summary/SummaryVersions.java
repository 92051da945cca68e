package org.tankrounds.summary;

import static org.tankrounds.db.schema.Tables.PEOPLE;
import static org.tankrounds.db.schema.Tables.SUMMARY_FILES;
import static org.tankrounds.db.schema.Tables.SUMMARY_VERSIONS;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.tankrounds.season.Season;
import org.tankrounds.web.Secrets;

/** What was frozen of a season's summary; written once, and read. */
public final class SummaryVersions {

    /** The newest first. */
    List<FrozenVersion> list(DSLContext tx, int chapterId, Season season) {
        List<FrozenVersion> versions = new ArrayList<>();
        tx.select(SUMMARY_VERSIONS.fields()).select(PEOPLE.NAME)
                .from(SUMMARY_VERSIONS)
                .join(PEOPLE).on(PEOPLE.CHAPTER_ID.eq(SUMMARY_VERSIONS.CHAPTER_ID))
                .and(PEOPLE.PERSON_ID.eq(SUMMARY_VERSIONS.FROZEN_BY))
                .where(SUMMARY_VERSIONS.CHAPTER_ID.eq(chapterId))
                .and(SUMMARY_VERSIONS.SEASON_ID.eq(season.seasonId()))
                .orderBy(SUMMARY_VERSIONS.VERSION.desc())
                .forEach(row -> versions.add(version(tx, chapterId, season, row)));
        return versions;
    }

    Optional<FrozenVersion> find(DSLContext tx, int chapterId, Season season, int version) {
        return list(tx, chapterId, season).stream().filter(one -> one.version() == version).findFirst();
    }

    /** The version that a form was frozen as; empty while it was not. */
    Optional<Integer> frozenBy(DSLContext tx, int chapterId, Season season, UUID submissionId) {
        return tx.select(SUMMARY_VERSIONS.VERSION).from(SUMMARY_VERSIONS)
                .where(SUMMARY_VERSIONS.CHAPTER_ID.eq(chapterId))
                .and(SUMMARY_VERSIONS.SEASON_ID.eq(season.seasonId()))
                .and(SUMMARY_VERSIONS.SUBMISSION_ID.eq(submissionId))
                .fetchOptional(SUMMARY_VERSIONS.VERSION);
    }

    Optional<byte[]> content(DSLContext tx, int chapterId, Season season, int version, String name) {
        return tx.select(SUMMARY_FILES.CONTENT).from(SUMMARY_FILES)
                .where(of(chapterId, season, version)).and(SUMMARY_FILES.NAME.eq(name))
                .fetchOptional(SUMMARY_FILES.CONTENT);
    }

    void add(DSLContext tx, int chapterId, Season season, UUID submissionId, int personId, Stamp stamp,
            Map<String, byte[]> files) {
        int version = stamp.version().orElseThrow();
        tx.insertInto(SUMMARY_VERSIONS)
                .set(SUMMARY_VERSIONS.CHAPTER_ID, chapterId)
                .set(SUMMARY_VERSIONS.SEASON_ID, season.seasonId())
                .set(SUMMARY_VERSIONS.VERSION, version)
                .set(SUMMARY_VERSIONS.SUBMISSION_ID, submissionId)
                .set(SUMMARY_VERSIONS.FROZEN_AT, stamp.at())
                .set(SUMMARY_VERSIONS.FROZEN_BY, personId)
                .set(SUMMARY_VERSIONS.SOFTWARE, stamp.software())
                .execute();
        files.forEach((name, content) -> tx.insertInto(SUMMARY_FILES)
                .set(SUMMARY_FILES.CHAPTER_ID, chapterId)
                .set(SUMMARY_FILES.SEASON_ID, season.seasonId())
                .set(SUMMARY_FILES.VERSION, version)
                .set(SUMMARY_FILES.NAME, name)
                .set(SUMMARY_FILES.SHA256, Secrets.sha256(content))
                .set(SUMMARY_FILES.CONTENT, content)
                .execute());
    }

    private static FrozenVersion version(DSLContext tx, int chapterId, Season season, Record row) {
        int version = row.get(SUMMARY_VERSIONS.VERSION);
        List<FrozenVersion.File> files = tx
                .select(SUMMARY_FILES.NAME, SUMMARY_FILES.SHA256,
                        DSL.field("octet_length({0})", Integer.class, SUMMARY_FILES.CONTENT))
                .from(SUMMARY_FILES).where(of(chapterId, season, version)).orderBy(SUMMARY_FILES.NAME)
                .fetch(file -> new FrozenVersion.File(file.value1(), file.value2(), file.value3()));
        return new FrozenVersion(version, row.get(SUMMARY_VERSIONS.FROZEN_AT), row.get(PEOPLE.NAME),
                row.get(SUMMARY_VERSIONS.SOFTWARE), files);
    }

    private static Condition of(int chapterId, Season season, int version) {
        return SUMMARY_FILES.CHAPTER_ID.eq(chapterId).and(SUMMARY_FILES.SEASON_ID.eq(season.seasonId()))
                .and(SUMMARY_FILES.VERSION.eq(version));
    }
}
