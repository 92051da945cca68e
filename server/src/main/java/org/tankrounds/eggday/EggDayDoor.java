package org.tankrounds.eggday;

import static org.tankrounds.db.schema.Tables.EGG_RUNS;
import static org.tankrounds.db.schema.Tables.EGG_STOPS;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record3;
import org.jooq.impl.DSL;
import org.tankrounds.places.Tank;
import org.tankrounds.season.Season;
import org.tankrounds.season.SeasonRepository;

/** Where those who drive, and those who receive, find the egg day that is near, without a season's page. */
public final class EggDayDoor {
    private static final int DAYS_AHEAD = 14;
    /** Receipts that were signed on paper are typed in afterwards. */
    private static final int DAYS_AFTER = 2;

    private final SeasonRepository seasons;

    public EggDayDoor(SeasonRepository seasons) {
        this.seasons = seasons;
    }

    /** @param to address of its page */
    public record Door(LocalDate day, String to) {}

    /** To the nearest, today or to come; else to the one that has just been. */
    public Optional<Door> find(DSLContext tx, int chapterId, LocalDate today) {
        return find(tx, chapterId, today, DSL.noCondition());
    }

    /** To the stop of the nearest that brings eggs to a tank. */
    public Optional<Door> findAt(DSLContext tx, int chapterId, Tank tank, LocalDate today) {
        return find(tx, chapterId, today, DSL.exists(DSL.selectOne().from(EGG_STOPS)
                .where(EGG_STOPS.CHAPTER_ID.eq(EGG_RUNS.CHAPTER_ID)).and(EGG_STOPS.RUN_ID.eq(EGG_RUNS.RUN_ID))
                .and(EGG_STOPS.TANK_ID.eq(tank.tankId())).and(EGG_STOPS.DROPPED_AT.isNull())))
                .map(door -> new Door(door.day(), door.to() + "/tanks/" + tank.code()));
    }

    private Optional<Door> find(DSLContext tx, int chapterId, LocalDate today, Condition which) {
        List<Record3<Integer, Integer, LocalDate>> near = tx.select(EGG_RUNS.RUN_ID, EGG_RUNS.SEASON_ID, EGG_RUNS.DAY)
                .from(EGG_RUNS)
                .where(EGG_RUNS.CHAPTER_ID.eq(chapterId)).and(EGG_RUNS.CALLED_OFF_AT.isNull()).and(which)
                .and(EGG_RUNS.DAY.between(today.minusDays(DAYS_AFTER), today.plusDays(DAYS_AHEAD)))
                .orderBy(EGG_RUNS.DAY, EGG_RUNS.STARTS_AT, EGG_RUNS.RUN_ID)
                .fetch();
        return near.stream().filter(row -> !row.value3().isBefore(today)).findFirst()
                .or(() -> near.stream().reduce((first, next) -> next))
                .map(row -> new Door(row.value3(),
                        EggRun.addressOf(code(tx, chapterId, row.value2())) + "/" + row.value1()));
    }

    private String code(DSLContext tx, int chapterId, int seasonId) {
        return seasons.list(tx, chapterId).stream().filter(season -> season.seasonId() == seasonId)
                .map(Season::code).findFirst().orElseThrow();
    }
}
