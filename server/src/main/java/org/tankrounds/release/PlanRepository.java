package org.tankrounds.release;

import static org.tankrounds.db.schema.Tables.PEOPLE;
import static org.tankrounds.db.schema.Tables.RELEASE_PLANS;
import static org.tankrounds.db.schema.Tables.RELEASE_PLAN_CHECKS;
import static org.tankrounds.db.schema.Tables.RELEASE_PLAN_TANKS;

import java.time.Instant;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.TableField;
import org.tankrounds.water.Digits;
import org.tankrounds.web.NotFoundException;

/** Plans of releases, with what was looked at before each. */
public final class PlanRepository {
    private static final Map<Duty, TableField<?, String>> DUTIES = new EnumMap<>(Map.of(
            Duty.LEAD, RELEASE_PLANS.LEAD_BY, Duty.COUNT, RELEASE_PLANS.COUNT_BY, Duty.DRIVE, RELEASE_PLANS.DRIVE_BY,
            Duty.MEASURE, RELEASE_PLANS.MEASURE_BY, Duty.HELP, RELEASE_PLANS.HELP_BY));

    /** Those called off too; the latest first. */
    public List<ReleasePlan> list(DSLContext tx, int chapterId) {
        return read(tx, chapterId, RELEASE_PLANS.CHAPTER_ID.eq(chapterId));
    }

    /** @param planId as an address names it */
    public ReleasePlan get(DSLContext tx, int chapterId, OptionalInt planId) {
        return read(tx, chapterId, numbered(chapterId, planId.orElse(0))).stream().findFirst()
                .orElseThrow(() -> new NotFoundException("plan"));
    }

    /** Nobody else plans, or releases by a plan, in this chapter until the transaction ends. */
    void lock(DSLContext tx, int chapterId) {
        tx.fetch("SELECT pg_advisory_xact_lock(hashtext('release_plans'), ?)", chapterId);
    }

    /** The plan that a form was stored as, called off or not. */
    Optional<Integer> writtenBy(DSLContext tx, int chapterId, UUID submissionId) {
        return tx.select(RELEASE_PLANS.PLAN_ID).from(RELEASE_PLANS)
                .where(RELEASE_PLANS.CHAPTER_ID.eq(chapterId)).and(RELEASE_PLANS.SUBMISSION_ID.eq(submissionId))
                .fetchOptional(RELEASE_PLANS.PLAN_ID);
    }

    /** @return the number that the database gave it */
    public int add(DSLContext tx, int chapterId, UUID submissionId, ReleasePlan plan, int personId, Instant now) {
        int planId = tx.insertInto(RELEASE_PLANS)
                .set(columns(plan))
                .set(RELEASE_PLANS.CHAPTER_ID, chapterId)
                .set(RELEASE_PLANS.SUBMISSION_ID, submissionId)
                .set(RELEASE_PLANS.PLANNED_BY, personId)
                .set(RELEASE_PLANS.PLANNED_AT, now)
                .returning(RELEASE_PLANS.PLAN_ID)
                .fetchSingle(RELEASE_PLANS.PLAN_ID);
        putLoads(tx, chapterId, planId, plan.details().loads());
        return planId;
    }

    void update(DSLContext tx, int chapterId, int planId, ReleasePlan plan) {
        tx.update(RELEASE_PLANS).set(columns(plan)).where(numbered(chapterId, planId)).execute();
        tx.deleteFrom(RELEASE_PLAN_TANKS).where(RELEASE_PLAN_TANKS.CHAPTER_ID.eq(chapterId))
                .and(RELEASE_PLAN_TANKS.PLAN_ID.eq(planId)).execute();
        putLoads(tx, chapterId, planId, plan.details().loads());
    }

    /** One that was called off before stays as it was. */
    void drop(DSLContext tx, int chapterId, int planId, int personId, Instant now) {
        tx.update(RELEASE_PLANS)
                .set(RELEASE_PLANS.DROPPED_BY, personId)
                .set(RELEASE_PLANS.DROPPED_AT, now)
                .where(numbered(chapterId, planId)).and(RELEASE_PLANS.DROPPED_AT.isNull())
                .execute();
    }

    public Map<CheckLine, CheckAnswer> answers(DSLContext tx, int chapterId, int planId) {
        Map<CheckLine, CheckAnswer> answers = new EnumMap<>(CheckLine.class);
        tx.select(RELEASE_PLAN_CHECKS.fields()).select(PEOPLE.NAME)
                .from(RELEASE_PLAN_CHECKS)
                .join(PEOPLE).on(PEOPLE.CHAPTER_ID.eq(RELEASE_PLAN_CHECKS.CHAPTER_ID))
                .and(PEOPLE.PERSON_ID.eq(RELEASE_PLAN_CHECKS.ANSWERED_BY))
                .where(RELEASE_PLAN_CHECKS.CHAPTER_ID.eq(chapterId)).and(RELEASE_PLAN_CHECKS.PLAN_ID.eq(planId))
                .fetch().forEach(row -> CheckLine.ofCode(row.get(RELEASE_PLAN_CHECKS.LINE)).ifPresent(line ->
                        answers.put(line, new CheckAnswer(
                                CheckAnswer.Word.ofCode(row.get(RELEASE_PLAN_CHECKS.ANSWER)).orElseThrow(),
                                row.get(RELEASE_PLAN_CHECKS.ANSWERED_AT), row.get(PEOPLE.NAME)))));
        return answers;
    }

    public void answer(DSLContext tx, int chapterId, int planId, CheckLine line, CheckAnswer.Word word, int personId,
            Instant now) {
        tx.insertInto(RELEASE_PLAN_CHECKS)
                .set(RELEASE_PLAN_CHECKS.CHAPTER_ID, chapterId)
                .set(RELEASE_PLAN_CHECKS.PLAN_ID, planId)
                .set(RELEASE_PLAN_CHECKS.LINE, line.code())
                .set(RELEASE_PLAN_CHECKS.ANSWER, word.code())
                .set(RELEASE_PLAN_CHECKS.ANSWERED_BY, personId)
                .set(RELEASE_PLAN_CHECKS.ANSWERED_AT, now)
                .onConflict(RELEASE_PLAN_CHECKS.CHAPTER_ID, RELEASE_PLAN_CHECKS.PLAN_ID, RELEASE_PLAN_CHECKS.LINE)
                .doUpdate()
                .set(RELEASE_PLAN_CHECKS.ANSWER, word.code())
                .set(RELEASE_PLAN_CHECKS.ANSWERED_BY, personId)
                .set(RELEASE_PLAN_CHECKS.ANSWERED_AT, now)
                .execute();
    }

    private static Map<Field<?>, Object> columns(ReleasePlan plan) {
        ReleasePlan.Details details = plan.details();
        Map<Field<?>, Object> columns = new LinkedHashMap<>();
        columns.put(RELEASE_PLANS.SEASON_ID, plan.seasonId());
        columns.put(RELEASE_PLANS.APPROVAL_ID, plan.approvalId());
        columns.put(RELEASE_PLANS.STARTS_AT, details.startsAt());
        columns.put(RELEASE_PLANS.ROAD_HOURS, (float) details.roadHours());
        columns.put(RELEASE_PLANS.TANK_C, single(details.tankC()));
        columns.put(RELEASE_PLANS.STREAM_C, single(details.streamC()));
        columns.put(RELEASE_PLANS.OUTSIDE_C, single(details.outsideC()));
        columns.put(RELEASE_PLANS.OXYGEN_MG_L, single(details.oxygenMgPerL()));
        columns.put(RELEASE_PLANS.AIR_PUMPS, details.hasAir());
        columns.put(RELEASE_PLANS.CHILDREN, details.children());
        columns.put(RELEASE_PLANS.ADULTS, details.adults());
        DUTIES.forEach((duty, column) -> columns.put(column, details.duties().get(duty)));
        columns.put(RELEASE_PLANS.NOTE, details.note().orElse(null));
        return columns;
    }

    private static void putLoads(DSLContext tx, int chapterId, int planId, List<Load> loads) {
        loads.forEach(load -> tx.insertInto(RELEASE_PLAN_TANKS)
                .set(RELEASE_PLAN_TANKS.CHAPTER_ID, chapterId)
                .set(RELEASE_PLAN_TANKS.PLAN_ID, planId)
                .set(RELEASE_PLAN_TANKS.TANK_ID, load.tankId())
                .set(RELEASE_PLAN_TANKS.FISH, load.fish())
                .set(RELEASE_PLAN_TANKS.MEAN_LENGTH_MM, single(load.meanLengthMm()))
                .set(RELEASE_PLAN_TANKS.MEAN_WEIGHT_G, single(load.meanWeightG()))
                .set(RELEASE_PLAN_TANKS.BOXES, load.boxes())
                .set(RELEASE_PLAN_TANKS.BOX_L, (float) load.boxL())
                .execute());
    }

    private static List<ReleasePlan> read(DSLContext tx, int chapterId, Condition which) {
        List<Record> rows = List.copyOf(tx.selectFrom(RELEASE_PLANS).where(which)
                .orderBy(RELEASE_PLANS.STARTS_AT.desc(), RELEASE_PLANS.PLAN_ID.desc()).fetch());
        Map<Integer, List<Load>> loads = tx.selectFrom(RELEASE_PLAN_TANKS)
                .where(RELEASE_PLAN_TANKS.CHAPTER_ID.eq(chapterId)).and(RELEASE_PLAN_TANKS.PLAN_ID.in(
                        rows.stream().map(row -> row.get(RELEASE_PLANS.PLAN_ID)).toList()))
                .orderBy(RELEASE_PLAN_TANKS.PLAN_ID, RELEASE_PLAN_TANKS.TANK_ID)
                .fetchGroups(RELEASE_PLAN_TANKS.PLAN_ID, PlanRepository::load);
        return rows.stream().map(row -> plan(row, loads.getOrDefault(row.get(RELEASE_PLANS.PLAN_ID), List.of())))
                .toList();
    }

    private static ReleasePlan plan(Record row, List<Load> loads) {
        Map<Duty, String> duties = new EnumMap<>(Duty.class);
        DUTIES.forEach((duty, column) -> Optional.ofNullable(row.get(column)).ifPresent(by -> duties.put(duty, by)));
        return new ReleasePlan(row.get(RELEASE_PLANS.PLAN_ID), row.get(RELEASE_PLANS.SEASON_ID),
                row.get(RELEASE_PLANS.APPROVAL_ID),
                new ReleasePlan.Details(
                        row.get(RELEASE_PLANS.STARTS_AT),
                        Digits.kept(row.get(RELEASE_PLANS.ROAD_HOURS)),
                        known(row.get(RELEASE_PLANS.TANK_C)),
                        known(row.get(RELEASE_PLANS.STREAM_C)),
                        known(row.get(RELEASE_PLANS.OUTSIDE_C)),
                        known(row.get(RELEASE_PLANS.OXYGEN_MG_L)),
                        row.get(RELEASE_PLANS.AIR_PUMPS),
                        row.get(RELEASE_PLANS.CHILDREN),
                        row.get(RELEASE_PLANS.ADULTS),
                        duties,
                        Optional.ofNullable(row.get(RELEASE_PLANS.NOTE)),
                        loads),
                Optional.ofNullable(row.get(RELEASE_PLANS.DROPPED_AT)));
    }

    private static Load load(Record row) {
        return new Load(row.get(RELEASE_PLAN_TANKS.TANK_ID), row.get(RELEASE_PLAN_TANKS.FISH),
                known(row.get(RELEASE_PLAN_TANKS.MEAN_LENGTH_MM)), known(row.get(RELEASE_PLAN_TANKS.MEAN_WEIGHT_G)),
                row.get(RELEASE_PLAN_TANKS.BOXES), Digits.kept(row.get(RELEASE_PLAN_TANKS.BOX_L)));
    }

    private static Condition numbered(int chapterId, int planId) {
        return RELEASE_PLANS.CHAPTER_ID.eq(chapterId).and(RELEASE_PLANS.PLAN_ID.eq(planId));
    }

    private static Float single(OptionalDouble value) {
        return value.isPresent() ? (float) value.getAsDouble() : null;
    }

    private static OptionalDouble known(Float value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(Digits.kept(value));
    }
}
