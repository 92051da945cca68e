package org.tankrounds.summary;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.people.Chapter;
import org.tankrounds.people.ChapterRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.Reading;
import org.tankrounds.readings.ReadingRepository;
import org.tankrounds.readings.ReadingTallies;
import org.tankrounds.readings.ReadingTally;
import org.tankrounds.release.ReleaseDay;
import org.tankrounds.season.CountEntry;
import org.tankrounds.season.CountRepository;
import org.tankrounds.season.Lot;
import org.tankrounds.season.Season;
import org.tankrounds.season.SeasonReads;
import org.tankrounds.summary.SeasonSummary.Heading;
import org.tankrounds.summary.SeasonSummary.Level;
import org.tankrounds.summary.SeasonSummary.Row;
import org.tankrounds.tasks.TaskRepository;
import org.tankrounds.visits.VisitRepository;
import org.tankrounds.web.NotFoundException;

/** Gathers a season's rows and makes the summary of them. */
public final class SummaryReads {
    private final ChapterRepository chapters;
    private final SeasonReads reads;
    private final ReadingTallies tallies;
    private final ReadingRepository readings;
    private final TaskRepository tasks;
    private final VisitRepository visits;
    private final WatersideReads waterside;
    private final Clock clock;

    public SummaryReads(ChapterRepository chapters, SeasonReads reads, ReadingTallies tallies,
            ReadingRepository readings, TaskRepository tasks, VisitRepository visits, WatersideReads waterside,
            Clock clock) {
        this.chapters = chapters;
        this.reads = reads;
        this.tallies = tallies;
        this.readings = readings;
        this.tasks = tasks;
        this.visits = visits;
        this.waterside = waterside;
        this.clock = clock;
    }

    Optional<Season> find(DSLContext tx, int chapterId, String seasonCode) {
        return reads.seasons().find(tx, chapterId, seasonCode);
    }

    /** @throws NotFoundException where the season has no such tank with something to tell */
    TankEvidence get(DSLContext tx, int chapterId, Season season, String tankCode) {
        List<TankEvidence> found = new ArrayList<>();
        each(tx, chapterId, season, tank -> tank.code().equals(tankCode), found::add);
        return found.stream().findFirst().orElseThrow(() -> new NotFoundException("tank"));
    }

    SortedMap<LocalDate, ReadingTally> readingDays(DSLContext tx, int chapterId, Season season, Tank tank) {
        return tallies.byDay(tx, chapterId, tank.tankId(), season.from(tank.zone()), season.until(tank.zone()),
                tank.zone());
    }

    List<Reading> readings(DSLContext tx, int chapterId, Tank tank, LocalDate day) {
        return readings.listBetween(tx, chapterId, tank.tankId(), day.atStartOfDay(tank.zone()).toInstant(),
                day.plusDays(1).atStartOfDay(tank.zone()).toInstant());
    }

    /** By their numbers inside the database, retired ones too. */
    Map<Integer, Tank> tanks(DSLContext tx, int chapterId) {
        return reads.tanks().listWithRetired(tx, chapterId).stream()
                .collect(Collectors.toMap(Tank::tankId, Function.identity()));
    }

    Heading heading(DSLContext tx, int chapterId, Season season) {
        Chapter chapter = chapters.get(tx, chapterId);
        return new Heading(chapter.code(), chapter.name(), season.code(), season.name(), season.details().startsOn(),
                season.details().endsOn(), chapter.zone());
    }

    /** Of the chapter's streams, the oldest first. */
    List<StreamLook> looks(DSLContext tx, int chapterId, Season season) {
        return waterside.looks(tx, chapterId, season, chapters.get(tx, chapterId).zone());
    }

    /** In the order in which it happened. */
    List<CountEntry> entries(DSLContext tx, int chapterId, Season season) {
        return reads.counts().list(tx, chapterId, season.seasonId());
    }

    Season season(DSLContext tx, int chapterId, int seasonId) {
        return reads.seasons().list(tx, chapterId).stream().filter(season -> season.seasonId() == seasonId).findFirst()
                .orElseThrow(() -> new NotFoundException("season"));
    }

    Season season(DSLContext tx, int chapterId, String code) {
        return reads.seasons().get(tx, chapterId, code);
    }

    SeasonSummary summary(DSLContext tx, int chapterId, Season season) {
        List<Row> rows = new ArrayList<>();
        each(tx, chapterId, season, evidence -> rows.add(row(evidence)));
        return SeasonSummary.of(heading(tx, chapterId, season), rows, looks(tx, chapterId, season));
    }

    /** One tank after the other, so that the readings of one alone are held. */
    void each(DSLContext tx, int chapterId, Season season, Consumer<TankEvidence> use) {
        each(tx, chapterId, season, tank -> true, use);
    }

    private void each(
            DSLContext tx, int chapterId, Season season, Predicate<Tank> which, Consumer<TankEvidence> use) {
        Map<Integer, List<Lot>> lots = reads.lots().listOfSeason(tx, chapterId, season.seasonId()).stream()
                .collect(Collectors.groupingBy(Lot::tankId));
        List<CountEntry> entries = reads.counts().list(tx, chapterId, season.seasonId());
        Map<Integer, ReleaseDay> atTheWater = waterside.days(tx, chapterId, season);
        Map<Integer, Integer> letGo = letGo(tx, chapterId, season, lots, entries);
        for (Tank tank : reads.tanks().listWithRetired(tx, chapterId)) {
            if (which.test(tank)) {
                evidence(tx, chapterId, season, tank, lots.getOrDefault(tank.tankId(), List.of()),
                        CountRepository.of(tank.tankId(), entries), atTheWater, letGo)
                        .ifPresent(use);
            }
        }
    }

    /** By the number of the entry; of the tanks that something was moved from, no more than their courses are held. */
    private Map<Integer, Integer> letGo(DSLContext tx, int chapterId, Season season, Map<Integer, List<Lot>> lots,
            List<CountEntry> entries) {
        Set<Integer> senders = entries.stream().filter(entry -> entry.toTankId().isPresent())
                .map(CountEntry::tankId).collect(Collectors.toSet());
        if (senders.isEmpty()) {
            return Map.of();
        }
        List<Stages.Course> courses = new ArrayList<>();
        for (Tank tank : reads.tanks().listWithRetired(tx, chapterId)) {
            if (senders.contains(tank.tankId())) {
                evidence(tx, chapterId, season, tank, lots.getOrDefault(tank.tankId(), List.of()),
                        CountRepository.of(tank.tankId(), entries), Map.of(), Map.of())
                        .flatMap(TankEvidence::course).ifPresent(courses::add);
            }
        }
        return Stages.letGo(courses);
    }

    static Row row(TankEvidence evidence) {
        Tank tank = evidence.tank();
        return new Row(Level.TANK, tank.room().schoolCode(), tank.school(), tank.classroom(), tank.code(), tank.zone(),
                evidence.figures());
    }

    /** Empty for a tank that had neither fish nor readings in the season. */
    private Optional<TankEvidence> evidence(DSLContext tx, int chapterId, Season season, Tank tank, List<Lot> lots,
            List<CountEntry> entries, Map<Integer, ReleaseDay> atTheWater, Map<Integer, Integer> letGo) {
        Instant from = season.from(tank.zone());
        Instant until = season.until(tank.zone());
        ReadingTally readings = tallies.get(tx, chapterId, tank.tankId(), from, until);
        if (lots.isEmpty() && entries.isEmpty() && readings.posted() == 0) {
            return Optional.empty();
        }
        return Optional.of(new TankEvidence(tank, lots, entries, reads.causes().list(tx, chapterId, tank.tankId()),
                tasks.listAsked(tx, chapterId, tank.tankId(), from, until),
                visits.list(tx, chapterId, tank.tankId(), from, until),
                reads.observations().list(tx, chapterId, tank.tankId(), from, until), readings, atTheWater,
                Collections.min(List.of(until, clock.instant())), letGo));
    }
}
