package org.tankrounds.demo;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import org.tankrounds.db.Transactions;
import org.tankrounds.demo.DemoAccess.ChapterAccess;
import org.tankrounds.demo.DemoPlaces.WrittenChapter;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.people.Chapter;
import org.tankrounds.people.ChapterRepository;
import org.tankrounds.people.ClassCards;
import org.tankrounds.people.PasswordHashes;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.people.TokenRepository;
import org.tankrounds.places.ClassroomRepository;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.SchoolRepository;
import org.tankrounds.places.TankEdits;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.StoreBatch;
import org.tankrounds.season.CountRepository;
import org.tankrounds.season.LotEdits;
import org.tankrounds.season.SeasonRepository;
import org.tankrounds.summary.SummaryFreezer;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Role;

/** Writes the invented chapters once, through the same code as real data, and hands out what opens them. */
public final class DemoLoader {
    /** Tanks are simulated with luck drawn from this: the same day tells the same story. */
    private static final long SEED = 20;

    private final Transactions transactions;
    private final StoreBatch storeBatch;
    private final AfterChange afterChange;
    private final Clock clock;
    private final ChapterRepository chapters = new ChapterRepository();
    private final DemoPlaces places;
    private final DemoLastSeason lastSeason;
    private final SummaryFreezer freezer;
    private final DemoClassDeeds deeds;
    private final DemoRelease release = new DemoRelease();
    private final DemoKeys keys;

    public DemoLoader(Transactions transactions, StoreBatch storeBatch, PasswordHashes passwords,
            ClassCards cards, DirtyTanks dirtyTanks, AfterChange afterChange, SummaryFreezer freezer, Clock clock) {
        this.transactions = transactions;
        this.storeBatch = storeBatch;
        this.afterChange = afterChange;
        this.clock = clock;
        PersonRepository people = new PersonRepository();
        TankRepository tanks = new TankRepository();
        SeasonRepository seasons = new SeasonRepository();
        this.places = new DemoPlaces(chapters, people, new SchoolRepository(), new ClassroomRepository(),
                new KitRepository(), tanks, new TankEdits(dirtyTanks), seasons, new LotEdits(dirtyTanks));
        this.lastSeason = new DemoLastSeason(seasons, new LotEdits(dirtyTanks), new CountRepository());
        this.freezer = freezer;
        this.deeds = new DemoClassDeeds(people);
        this.keys = new DemoKeys(people, passwords, new TokenRepository(), cards, tanks, seasons, clock);
    }

    /** Whether the chapters are there already. */
    public boolean isLoaded() {
        return DemoScenario.chapters().stream().allMatch(demo -> find(demo).isPresent());
    }

    /**
     * Writes what is missing.
     *
     * @param known what opened the demo at its last start; kept where it still fits
     * @param zone the chapters' and schools' clock
     * @return what opens it now, without an address yet
     */
    public DemoAccess load(Optional<DemoAccess> known, ZoneId zone) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
        List<ChapterAccess> access = DemoScenario.chapters().stream()
                .map(demo -> load(demo, known, zone, now)).toList();
        return new DemoAccess("", access);
    }

    private ChapterAccess load(DemoChapter demo, Optional<DemoAccess> known, ZoneId zone, Instant now) {
        Optional<Chapter> found = find(demo);
        // What was moved to today is out of date until it is forecast again.
        found.ifPresent(chapter -> afterChange.changed(chapter.chapterId()));
        Optional<ChapterAccess> opened = known.flatMap(access -> access.chapters().stream()
                .filter(chapter -> chapter.code().equals(demo.code())).findFirst());
        if (found.isPresent() && opened.isPresent()) {
            return opened.get();
        }
        CompletableFuture<Map<String, DemoKeys.Hashed>> hashed =
                CompletableFuture.supplyAsync(() -> keys.passwordsFor(demo));
        Chapter chapter = found.isPresent() ? found.get() : write(demo, zone, now);
        return transactions.inChapter(chapter.chapterId(), tx -> keys.issue(tx, chapter, demo, hashed.join()));
    }

    private Optional<Chapter> find(DemoChapter demo) {
        return chapters.find(transactions, demo.code());
    }

    private Chapter write(DemoChapter demo, ZoneId zone, Instant now) {
        List<DemoSimulator> lives = demo.schools().stream()
                .flatMap(school -> school.tanks().stream().map(tank -> new Home(tank, school.elevationM())))
                .toList().parallelStream()
                .map(home -> new DemoSimulator(home.tank(), home.elevationM(), zone, now, SEED))
                .toList();
        WrittenChapter written = transactions.outside(tx -> places.write(tx, demo, lives, zone, now));
        storeBatch.storeAll(script(written.chapter()), written.tanks().stream()
                .flatMap(tank -> DemoLines.of(tank.code(), tank.life().readings(written.kit()), zone).stream())
                .toList());
        transactions.inChapter(written.chapter().chapterId(), tx -> {
            release.write(tx, written, now);
            return deeds.write(tx, written, now);
        });
        writeLastSeason(written, zone, now);
        return written.chapter();
    }

    /** It is over, so its summary is frozen. */
    private void writeLastSeason(WrittenChapter written, ZoneId zone, Instant now) {
        LocalDate starts = DemoPlaces.seasonStarts(now, zone);
        List<DemoLastSeason.Past> tanks = lastSeason.live(written, starts, zone, SEED);
        storeBatch.storeAll(script(written.chapter()), DemoLastSeason.lines(tanks, zone));
        int chapterId = written.chapter().chapterId();
        Caller coordinator = transactions.inChapter(chapterId, tx -> deeds.coordinator(tx, written));
        String season = transactions.inChapter(chapterId, tx -> lastSeason.write(
                tx, written, tanks, starts, coordinator.personId().orElseThrow()));
        freezer.freeze(coordinator, season, UUID.randomUUID());
    }

    private record Home(DemoTank tank, double elevationM) {}

    /** The readings come in as from a script of the chapter's. */
    private static Caller script(Chapter chapter) {
        return new Caller(Role.CHAPTER_TOKEN, chapter.chapterId(), OptionalInt.empty(), OptionalInt.empty(), "",
                "demo", chapter.name(), chapter.zone(), "");
    }
}
