package org.tankrounds.season;

import static org.tankrounds.db.schema.Tables.COUNT_ENTRIES;
import static org.tankrounds.db.schema.Tables.PEOPLE;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Record2;
import org.jooq.impl.DSL;
import org.tankrounds.water.Digits;

/** What was written down of the number of fish; an entry that was taken back counts nowhere. */
public final class CountRepository {

    /** Of all tanks in a season, in the order in which it happened. */
    public List<CountEntry> list(DSLContext tx, int chapterId, int seasonId) {
        return tx.select(COUNT_ENTRIES.fields()).select(PEOPLE.NAME)
                .from(COUNT_ENTRIES)
                .join(PEOPLE).on(PEOPLE.CHAPTER_ID.eq(COUNT_ENTRIES.CHAPTER_ID))
                .and(PEOPLE.PERSON_ID.eq(COUNT_ENTRIES.WRITTEN_BY))
                .where(COUNT_ENTRIES.CHAPTER_ID.eq(chapterId)).and(COUNT_ENTRIES.SEASON_ID.eq(seasonId))
                .and(COUNT_ENTRIES.WITHDRAWN_AT.isNull())
                .orderBy(COUNT_ENTRIES.HAPPENED_AT, COUNT_ENTRIES.ENTRY_ID)
                .fetch(CountRepository::entry);
    }

    /** Those of them by which a tank's count changes. */
    public static List<CountEntry> of(int tankId, List<CountEntry> entries) {
        return entries.stream().filter(entry -> entry.tankId() == tankId || entry.comesTo(tankId)).toList();
    }

    /** Fish released under each approval, in any season; its number in small letters. */
    public Map<String, Integer> releasedByApproval(DSLContext tx, int chapterId) {
        Field<String> number = DSL.lower(COUNT_ENTRIES.APPROVAL);
        return tx.select(number, DSL.sum(COUNT_ENTRIES.FISH).cast(Integer.class))
                .from(COUNT_ENTRIES)
                .where(COUNT_ENTRIES.CHAPTER_ID.eq(chapterId))
                .and(COUNT_ENTRIES.KIND.eq(CountKind.RELEASED.code()))
                .and(COUNT_ENTRIES.APPROVAL.isNotNull()).and(COUNT_ENTRIES.WITHDRAWN_AT.isNull())
                .groupBy(number)
                .fetchMap(Record2::value1, Record2::value2);
    }

    /** Fish released by each form that stands, in any season. */
    public Map<UUID, Integer> releasedByForm(DSLContext tx, int chapterId) {
        return tx.select(COUNT_ENTRIES.SUBMISSION_ID, COUNT_ENTRIES.FISH)
                .from(COUNT_ENTRIES)
                .where(COUNT_ENTRIES.CHAPTER_ID.eq(chapterId))
                .and(COUNT_ENTRIES.KIND.eq(CountKind.RELEASED.code())).and(COUNT_ENTRIES.WITHDRAWN_AT.isNull())
                .fetchMap(COUNT_ENTRIES.SUBMISSION_ID, COUNT_ENTRIES.FISH);
    }

    /** The form by which each release of a season that stands was written down, by the entry's number. */
    public Map<Integer, UUID> formsOfReleases(DSLContext tx, int chapterId, int seasonId) {
        return tx.select(COUNT_ENTRIES.ENTRY_ID, COUNT_ENTRIES.SUBMISSION_ID)
                .from(COUNT_ENTRIES)
                .where(COUNT_ENTRIES.CHAPTER_ID.eq(chapterId)).and(COUNT_ENTRIES.SEASON_ID.eq(seasonId))
                .and(COUNT_ENTRIES.KIND.eq(CountKind.RELEASED.code())).and(COUNT_ENTRIES.WITHDRAWN_AT.isNull())
                .fetchMap(COUNT_ENTRIES.ENTRY_ID, COUNT_ENTRIES.SUBMISSION_ID);
    }

    /** The entry that a form was written down as, also one that was taken back since; empty while it was not. */
    Optional<Integer> writtenBy(DSLContext tx, int chapterId, int tankId, UUID submissionId) {
        return tx.select(COUNT_ENTRIES.ENTRY_ID).from(COUNT_ENTRIES)
                .where(COUNT_ENTRIES.CHAPTER_ID.eq(chapterId)).and(COUNT_ENTRIES.TANK_ID.eq(tankId))
                .and(COUNT_ENTRIES.SUBMISSION_ID.eq(submissionId))
                .fetchOptional(COUNT_ENTRIES.ENTRY_ID);
    }

    public void add(DSLContext tx, int chapterId, int seasonId, UUID submissionId, CountEntry entry, int personId,
            Instant now) {
        tx.insertInto(COUNT_ENTRIES)
                .set(COUNT_ENTRIES.CHAPTER_ID, chapterId)
                .set(COUNT_ENTRIES.SEASON_ID, seasonId)
                .set(COUNT_ENTRIES.TANK_ID, entry.tankId())
                .set(COUNT_ENTRIES.TO_TANK_ID, entry.toTankId().orElse(null))
                .set(COUNT_ENTRIES.SUBMISSION_ID, submissionId)
                .set(COUNT_ENTRIES.KIND, entry.kind().code())
                .set(COUNT_ENTRIES.HAPPENED_AT, entry.at())
                .set(COUNT_ENTRIES.FISH, entry.fish())
                .set(COUNT_ENTRIES.METHOD, entry.method().code())
                .set(COUNT_ENTRIES.SPREAD, entry.spread())
                .set(COUNT_ENTRIES.PLACE, entry.place().orElse(null))
                .set(COUNT_ENTRIES.APPROVAL, entry.approval().orElse(null))
                .set(COUNT_ENTRIES.NOTE, entry.note().orElse(null))
                .set(COUNT_ENTRIES.STAGE, entry.stage().map(MovedAs::code).orElse(null))
                .set(COUNT_ENTRIES.THERMAL_UNITS_C, entry.movedAs().map(MovedAs::thermalUnitsC)
                        .filter(OptionalDouble::isPresent).map(units -> (float) units.getAsDouble()).orElse(null))
                .set(COUNT_ENTRIES.WRITTEN_BY, personId)
                .set(COUNT_ENTRIES.WRITTEN_AT, now)
                .execute();
    }

    void withdraw(DSLContext tx, int chapterId, int entryId, int personId, Instant now) {
        tx.update(COUNT_ENTRIES)
                .set(COUNT_ENTRIES.WITHDRAWN_BY, personId)
                .set(COUNT_ENTRIES.WITHDRAWN_AT, now)
                .where(COUNT_ENTRIES.CHAPTER_ID.eq(chapterId)).and(COUNT_ENTRIES.ENTRY_ID.eq(entryId))
                .and(COUNT_ENTRIES.WITHDRAWN_AT.isNull())
                .execute();
    }

    private static CountEntry entry(Record row) {
        return new CountEntry(
                row.get(COUNT_ENTRIES.ENTRY_ID),
                CountKind.ofCode(row.get(COUNT_ENTRIES.KIND)).orElseThrow(),
                row.get(COUNT_ENTRIES.HAPPENED_AT),
                row.get(COUNT_ENTRIES.TANK_ID),
                Optional.ofNullable(row.get(COUNT_ENTRIES.TO_TANK_ID)),
                row.get(COUNT_ENTRIES.FISH),
                CountMethod.ofCode(row.get(COUNT_ENTRIES.METHOD)).orElseThrow(),
                row.get(COUNT_ENTRIES.SPREAD),
                Optional.ofNullable(row.get(COUNT_ENTRIES.PLACE)),
                Optional.ofNullable(row.get(COUNT_ENTRIES.APPROVAL)),
                Optional.ofNullable(row.get(COUNT_ENTRIES.NOTE)),
                Optional.of(row.get(PEOPLE.NAME)),
                movedAs(row));
    }

    private static Optional<MovedAs> movedAs(Record row) {
        Float units = row.get(COUNT_ENTRIES.THERMAL_UNITS_C);
        return Optional.ofNullable(row.get(COUNT_ENTRIES.STAGE)).map(stage -> new MovedAs(
                MovedAs.stageOfCode(stage).orElseThrow(),
                units == null ? OptionalDouble.empty() : OptionalDouble.of(Digits.kept(units))));
    }
}
