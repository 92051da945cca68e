package org.tankrounds.demo;

import static org.tankrounds.db.schema.Tables.CHAPTERS;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.tankrounds.people.Chapter;
import org.tankrounds.people.ChapterRepository;
import org.tankrounds.people.Person;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.places.ClassroomRepository;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.School;
import org.tankrounds.places.SchoolRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankEdits;
import org.tankrounds.places.TankRepository;
import org.tankrounds.season.LotEdits;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.Season;
import org.tankrounds.season.SeasonRepository;
import org.tankrounds.season.SeenOn;
import org.tankrounds.web.Role;

/** Writes an invented chapter's people, places, season and eggs, in one transaction. */
final class DemoPlaces {

    private static final int SEASON_BEGAN_DAYS_AGO = 75;
    private static final int RELEASE_BEFORE_END_DAYS = 20;
    private static final int RELEASE_LENGTH_MM = 50;
    private static final int SEASON_ENDS_IN_DAYS = 150;

    /** A tank as it is in the database, and the life that it had. */
    record Written(DemoSimulator life, int tankId, String code) {}

    /** What the readings need to know. */
    record WrittenChapter(Chapter chapter, Kit kit, List<Written> tanks) {}

    private final ChapterRepository chapters;
    private final PersonRepository people;
    private final SchoolRepository schools;
    private final ClassroomRepository classrooms;
    private final KitRepository kits;
    private final TankRepository tanks;
    private final TankEdits tankEdits;
    private final SeasonRepository seasons;
    private final LotEdits lotEdits;

    DemoPlaces(ChapterRepository chapters, PersonRepository people, SchoolRepository schools,
            ClassroomRepository classrooms, KitRepository kits, TankRepository tanks, TankEdits tankEdits,
            SeasonRepository seasons, LotEdits lotEdits) {
        this.chapters = chapters;
        this.people = people;
        this.schools = schools;
        this.classrooms = classrooms;
        this.kits = kits;
        this.tanks = tanks;
        this.tankEdits = tankEdits;
        this.seasons = seasons;
        this.lotEdits = lotEdits;
    }

    /** @param lives the chapter's tanks, in the order of its schools */
    WrittenChapter write(DSLContext tx, DemoChapter demo, List<DemoSimulator> lives, ZoneId zone, Instant now) {
        Chapter chapter = chapters.add(tx, demo.code(), demo.name(), zone);
        rememberStoryDay(tx, chapter.chapterId(), now);
        Kit kit = kits.addGeneric(tx, chapter.chapterId(), "Generic card");
        List<Written> written = new ArrayList<>();
        for (DemoSchool school : demo.schools()) {
            List<DemoSimulator> here = lives.stream().filter(life -> school.tanks().contains(life.tank())).toList();
            written.addAll(school(tx, chapter, kit, school, here, now));
        }
        addPeople(tx, chapter.chapterId(), demo, written);
        addSeason(tx, chapter, written, now);
        return new WrittenChapter(chapter, kit, written);
    }

    /** From which {@link StoryMove} knows how old the story is; it moves with it, in the same transaction. */
    private static void rememberStoryDay(DSLContext tx, int chapterId, Instant now) {
        tx.update(CHAPTERS).set(CHAPTERS.CREATED_AT, now).where(CHAPTERS.CHAPTER_ID.eq(chapterId)).execute();
    }

    private List<Written> school(DSLContext tx, Chapter chapter, Kit kit, DemoSchool demo,
            List<DemoSimulator> lives, Instant now) {
        School school = schools.add(tx, chapter.chapterId(), new School.Details(demo.name(), Optional.of(demo.place()),
                OptionalDouble.of(demo.elevationM()), chapter.zone()));
        List<Written> written = new ArrayList<>();
        for (DemoSimulator life : lives) {
            int classroomId = classrooms.add(tx, chapter.chapterId(), school.schoolId(), life.tank().classroom());
            String code = tankEdits.add(tx, chapter.chapterId(), details(life, classroomId, kit.kitId()), now);
            written.add(new Written(life, tankId(tx, chapter.chapterId(), code), code));
        }
        return written;
    }

    private static TankEdits.Details details(DemoSimulator life, int classroomId, int kitId) {
        DemoTank tank = life.tank();
        return new TankEdits.Details(classroomId, kitId, tank.equipment().volumeL(),
                OptionalDouble.of(tank.equipment().setPointC()), tank.equipment().filterKind(),
                Optional.of(life.filterStartedOn()), OptionalDouble.empty(),
                OptionalDouble.of(tank.water().alkalinityMgPerL()),
                OptionalDouble.of(tank.water().chlorideMgPerL()), Optional.of(tank.water().disinfectant()),
                tank.equipment().thermometerUnit());
    }

    private int tankId(DSLContext tx, int chapterId, String code) {
        return tanks.listOfChapter(tx, chapterId).stream()
                .filter(tank -> tank.code().equals(code))
                .mapToInt(Tank::tankId)
                .findFirst().orElseThrow();
    }

    private void addPeople(DSLContext tx, int chapterId, DemoChapter demo, List<Written> written) {
        Map<String, List<Integer>> tanksOf = new LinkedHashMap<>();
        for (Written tank : written) {
            String email = demo.teachers().get(tank.life().tank().teacher()).email();
            tanksOf.computeIfAbsent(email, none -> new ArrayList<>()).add(tank.tankId());
        }
        for (DemoPerson person : demo.people()) {
            Person added = people.add(tx, chapterId, new PersonRepository.Details(
                    person.email(), person.name(), Role.valueOf(person.role().toUpperCase(Locale.ROOT))),
                    Optional.empty());
            people.setTanks(tx, chapterId, added.personId(), tanksOf.getOrDefault(person.email(), List.of()));
        }
    }

    private void addSeason(DSLContext tx, Chapter chapter, List<Written> written, Instant now) {
        LocalDate starts = seasonStarts(now, chapter.zone());
        LocalDate ends = now.atZone(chapter.zone()).toLocalDate().plusDays(SEASON_ENDS_IN_DAYS);
        Season season = seasons.add(tx, chapter.chapterId(), new Season.Details(
                name(starts, ends), starts, ends, Optional.of(ends.minusDays(RELEASE_BEFORE_END_DAYS)),
                OptionalInt.of(RELEASE_LENGTH_MM)));
        for (Written tank : written) {
            DemoTank.Eggs eggs = tank.life().tank().eggs();
            lotEdits.add(tx, chapter.chapterId(), season.seasonId(), tank.tankId(), new LotEdits.Details(
                    eggs.count(), tank.life().eggsReceivedAt(), OptionalDouble.of(eggs.thermalUnitsC()),
                    Optional.of("Harrowfen egg house"), Optional.of("HF-" + eggs.count() + "-" + tank.tankId()),
                    SeenOn.ofFirstFeeding(tank.life().firstFeedingOn()), CountMethod.WEIGHED,
                    CountMethod.WEIGHED.usualSpread(eggs.count())), now);
        }
    }

    /** The first day of the season that runs. */
    static LocalDate seasonStarts(Instant now, ZoneId zone) {
        return now.atZone(zone).toLocalDate().minusDays(SEASON_BEGAN_DAYS_AGO);
    }

    /** What a season of these days is called. */
    static String name(LocalDate starts, LocalDate ends) {
        return starts.getYear() == ends.getYear() ? Integer.toString(starts.getYear())
                : starts.getYear() + "-" + ends.getYear() % 100;
    }
}
