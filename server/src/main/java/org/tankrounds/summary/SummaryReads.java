package org.tankrounds.summary;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Limits;
import org.tankrounds.people.Chapter;
import org.tankrounds.people.ChapterRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.ReadingTallies;
import org.tankrounds.readings.ReadingTally;
import org.tankrounds.season.Account;
import org.tankrounds.season.CountEntry;
import org.tankrounds.season.CountRepository;
import org.tankrounds.season.DeathCause;
import org.tankrounds.season.DeathCauses;
import org.tankrounds.season.Lot;
import org.tankrounds.season.LotHistory;
import org.tankrounds.season.Season;
import org.tankrounds.season.SeasonReads;
import org.tankrounds.summary.SeasonSummary.Heading;
import org.tankrounds.summary.SeasonSummary.Level;
import org.tankrounds.summary.SeasonSummary.Row;

/** Gathers a season's rows and makes the summary of them. */
public final class SummaryReads {
    private final ChapterRepository chapters;
    private final SeasonReads reads;
    private final ReadingTallies tallies;

    public SummaryReads(ChapterRepository chapters, SeasonReads reads, ReadingTallies tallies) {
        this.chapters = chapters;
        this.reads = reads;
        this.tallies = tallies;
    }

    Optional<SeasonSummary> find(DSLContext tx, int chapterId, String seasonCode) {
        return reads.seasons().find(tx, chapterId, seasonCode).map(season -> summary(tx, chapterId, season));
    }

    private SeasonSummary summary(DSLContext tx, int chapterId, Season season) {
        Chapter chapter = chapters.get(tx, chapterId);
        Map<Integer, List<Lot>> lots = reads.lots().listOfSeason(tx, chapterId, season.seasonId()).stream()
                .collect(Collectors.groupingBy(Lot::tankId));
        List<CountEntry> entries = reads.counts().list(tx, chapterId, season.seasonId());
        List<Row> rows = new ArrayList<>();
        for (Tank tank : reads.tanks().listWithRetired(tx, chapterId)) {
            row(tx, chapterId, season, tank, lots.getOrDefault(tank.tankId(), List.of()),
                    CountRepository.of(tank.tankId(), entries)).ifPresent(rows::add);
        }
        return SeasonSummary.of(new Heading(chapter.code(), chapter.name(), season.code(), season.name(),
                season.details().startsOn(), season.details().endsOn(), chapter.zone()), rows);
    }

    /** Empty for a tank that had neither fish nor readings in the season. */
    private Optional<Row> row(
            DSLContext tx, int chapterId, Season season, Tank tank, List<Lot> lots, List<CountEntry> entries) {
        Instant from = season.from(tank.zone());
        Instant until = season.until(tank.zone());
        ReadingTally readings = tallies.get(tx, chapterId, tank.tankId(), from, until);
        if (lots.isEmpty() && entries.isEmpty() && readings.posted() == 0) {
            return Optional.empty();
        }
        List<Observation> seen = reads.observations().list(tx, chapterId, tank.tankId(), from, until);
        return Optional.of(new Row(Level.TANK, tank.room().schoolCode(), tank.school(), tank.classroom(),
                tank.code(), tank.zone(), figures(tank, lots, entries,
                reads.causes().list(tx, chapterId, tank.tankId()), seen, readings, until)));
    }

    private static Figures figures(
            Tank tank, List<Lot> lots, List<CountEntry> entries, Map<LocalDate, DeathCause> causes, List<Observation> seen,
            ReadingTally readings, Instant until) {
        LotHistory history = LotHistory.of(tank, lots, seen, until);
        LimitDays days = new LimitDays(tank, history, seen, Limits.DEFAULT);
        Account account = history.account(entries);
        return new Figures(account.ledger(), account.hatched(), DeathCauses.of(account.lines(), causes, tank.zone()), readings, days.of(Series.TEMPERATURE),
                days.of(Series.UN_IONISED_AMMONIA), days.of(Series.NITRITE));
    }
}
