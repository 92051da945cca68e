package org.tankrounds.places;

import static org.tankrounds.db.schema.Tables.CLASSROOMS;
import static org.tankrounds.db.schema.Tables.SCHOOLS;
import static org.tankrounds.db.schema.Tables.TANKS;
import static org.tankrounds.db.schema.Tables.TANK_TEACHERS;

import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectConditionStep;
import org.jooq.impl.DSL;
import org.tankrounds.water.Digits;
import org.tankrounds.web.Caller;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Role;

/** Tanks, as far as a caller may know of them. */
public final class TankRepository {

    /** Loads and authorises in one: a tank that is not the caller's does not exist. */
    public Tank get(DSLContext tx, Caller caller, String code) {
        return find(tx, caller, code).orElseThrow(() -> new NotFoundException("tank"));
    }

    public Optional<Tank> find(DSLContext tx, Caller caller, String code) {
        return select(tx, caller).and(TANKS.CODE.eq(code)).fetchOptional(TankRepository::tank);
    }

    /** Tanks in use, by school and room. */
    public List<Tank> list(DSLContext tx, Caller caller) {
        return select(tx, caller)
                .and(TANKS.RETIRED_AT.isNull())
                .orderBy(SCHOOLS.NAME, CLASSROOMS.NAME, TANKS.TANK_ID)
                .fetch(TankRepository::tank);
    }

    /** Tanks in use and retired ones, by school and room. */
    public List<Tank> listWithRetired(DSLContext tx, int chapterId) {
        return select(tx, TANKS.CHAPTER_ID.eq(chapterId))
                .orderBy(SCHOOLS.NAME, CLASSROOMS.NAME, TANKS.TANK_ID)
                .fetch(TankRepository::tank);
    }

    /** For jobs, which act for the chapter itself. */
    public List<Tank> listOfChapter(DSLContext tx, int chapterId) {
        return select(tx, TANKS.CHAPTER_ID.eq(chapterId))
                .and(TANKS.RETIRED_AT.isNull())
                .orderBy(TANKS.TANK_ID)
                .fetch(TankRepository::tank);
    }

    /** Until this transaction ends nobody else locks these tanks. */
    public void lock(DSLContext tx, int chapterId, Collection<Integer> tankIds) {
        tx.select(TANKS.TANK_ID).from(TANKS)
                .where(TANKS.CHAPTER_ID.eq(chapterId)).and(TANKS.TANK_ID.in(tankIds))
                .orderBy(TANKS.TANK_ID)
                .forNoKeyUpdate()
                .fetch();
    }

    public Optional<Tank> findById(DSLContext tx, int chapterId, int tankId) {
        return select(tx, TANKS.CHAPTER_ID.eq(chapterId))
                .and(TANKS.TANK_ID.eq(tankId))
                .fetchOptional(TankRepository::tank);
    }

    /**
     * With which kit the class reads, so that its form opens with it next time; a tank that has another one than its
     * form opened with was changed meanwhile, and stays as it is.
     *
     * @return how many tanks that was
     */
    public int rememberKit(DSLContext tx, int chapterId, int tankId, int openedWith, int chosen) {
        return tx.update(TANKS)
                .set(TANKS.KIT_ID, chosen)
                .where(TANKS.CHAPTER_ID.eq(chapterId)).and(TANKS.TANK_ID.eq(tankId))
                .and(TANKS.KIT_ID.eq(openedWith))
                .execute();
    }

    /** The same of the scale of its thermometer. */
    public int rememberThermometer(DSLContext tx, int chapterId, int tankId, String openedWith, String chosen) {
        return tx.update(TANKS)
                .set(TANKS.THERMOMETER_UNIT, chosen)
                .where(TANKS.CHAPTER_ID.eq(chapterId)).and(TANKS.TANK_ID.eq(tankId))
                .and(TANKS.THERMOMETER_UNIT.eq(openedWith))
                .execute();
    }

    private static SelectConditionStep<Record> select(DSLContext tx, Caller caller) {
        return select(tx, TANKS.CHAPTER_ID.eq(caller.chapterId()).and(mayKnow(caller)));
    }

    private static SelectConditionStep<Record> select(DSLContext tx, Condition condition) {
        return tx.select(TANKS.asterisk())
                .select(CLASSROOMS.NAME, SCHOOLS.NAME, SCHOOLS.CODE, SCHOOLS.TIME_ZONE, SCHOOLS.ELEVATION_M)
                .from(TANKS)
                .join(CLASSROOMS).on(CLASSROOMS.CHAPTER_ID.eq(TANKS.CHAPTER_ID)
                        .and(CLASSROOMS.CLASSROOM_ID.eq(TANKS.CLASSROOM_ID)))
                .join(SCHOOLS).on(SCHOOLS.CHAPTER_ID.eq(CLASSROOMS.CHAPTER_ID)
                        .and(SCHOOLS.SCHOOL_ID.eq(CLASSROOMS.SCHOOL_ID)))
                .where(condition);
    }

    private static Condition mayKnow(Caller caller) {
        if (caller.tankId().isPresent()) {
            return TANKS.TANK_ID.eq(caller.tankId().getAsInt());
        }
        if (caller.role() == Role.TEACHER) {
            return DSL.exists(DSL.selectOne().from(TANK_TEACHERS)
                    .where(TANK_TEACHERS.CHAPTER_ID.eq(TANKS.CHAPTER_ID))
                    .and(TANK_TEACHERS.TANK_ID.eq(TANKS.TANK_ID))
                    .and(TANK_TEACHERS.PERSON_ID.eq(caller.personId().orElseThrow())));
        }
        return caller.role() == Role.ANYBODY ? DSL.falseCondition() : DSL.noCondition();
    }

    private static Tank tank(Record row) {
        Tank.Room room = new Tank.Room(
                row.get(TANKS.CLASSROOM_ID), row.get(CLASSROOMS.NAME), row.get(SCHOOLS.CODE), row.get(SCHOOLS.NAME));
        return new Tank(
                row.get(TANKS.TANK_ID),
                row.get(TANKS.CODE),
                room,
                ZoneId.of(row.get(SCHOOLS.TIME_ZONE)),
                known(row.get(SCHOOLS.ELEVATION_M)),
                row.get(TANKS.KIT_ID),
                Digits.kept(row.get(TANKS.VOLUME_L)),
                known(row.get(TANKS.CHILLER_SET_POINT_C)),
                row.get(TANKS.FILTER_KIND),
                Optional.ofNullable(row.get(TANKS.FILTER_STARTED_ON)),
                known(row.get(TANKS.FILTER_AREA_M2)),
                known(row.get(TANKS.SOURCE_ALKALINITY_MG_L)),
                known(row.get(TANKS.SOURCE_CHLORIDE_MG_L)),
                Optional.ofNullable(row.get(TANKS.SOURCE_DISINFECTANT)),
                row.get(TANKS.THERMOMETER_UNIT),
                Optional.ofNullable(row.get(TANKS.RETIRED_AT)));
    }

    private static OptionalDouble known(Float value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(Digits.kept(value));
    }
}
