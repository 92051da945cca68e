package org.tankrounds.eggday;

import static org.tankrounds.db.schema.Tables.EGG_RUNS;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.tankrounds.season.Season;
import org.tankrounds.season.SeasonRepository;

/** Where those who drive find the egg day that is near, without a season's page. */
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

    /** The nearest, today or to come; else the one that has just been. */
    public Optional<Door> find(DSLContext tx, int chapterId, LocalDate today) {
        List<Door> near = tx.select(EGG_RUNS.RUN_ID, EGG_RUNS.SEASON_ID, EGG_RUNS.DAY).from(EGG_RUNS)
                .where(EGG_RUNS.CHAPTER_ID.eq(chapterId)).and(EGG_RUNS.CALLED_OFF_AT.isNull())
                .and(EGG_RUNS.DAY.between(today.minusDays(DAYS_AFTER), today.plusDays(DAYS_AHEAD)))
                .orderBy(EGG_RUNS.DAY, EGG_RUNS.STARTS_AT, EGG_RUNS.RUN_ID)
                .fetch(row -> new Door(row.value3(),
                        EggRun.addressOf(code(tx, chapterId, row.value2())) + "/" + row.value1()));
        return near.stream().filter(door -> !door.day().isBefore(today)).findFirst()
                .or(() -> near.stream().reduce((first, next) -> next));
    }

    private String code(DSLContext tx, int chapterId, int seasonId) {
        return seasons.list(tx, chapterId).stream().filter(season -> season.seasonId() == seasonId)
                .map(Season::code).findFirst().orElseThrow();
    }
}
