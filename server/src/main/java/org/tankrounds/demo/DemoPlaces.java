package org.tankrounds.demo;

import static org.tankrounds.db.schema.Tables.CHAPTERS;
import static org.tankrounds.db.schema.Tables.LOTS;
import static org.tankrounds.db.schema.Tables.SEASONS;

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
import org.jooq.DSLContext;
import org.tankrounds.people.Chapter;
import org.tankrounds.people.ChapterRepository;
import org.tankrounds.people.Person;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.places.ClassroomRepository;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.PublicCode;
import org.tankrounds.places.School;
import org.tankrounds.places.SchoolRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankEdits;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Role;

/** Writes an invented chapter's people, places, season and eggs, in one transaction. */
final class DemoPlaces {

    /** A tank as it is in the database, and the story that it has. */
    record Written(DemoTank tank, double elevationM, int tankId, String code) {}

    /** What the readings need to know. */
    record WrittenChapter(Chapter chapter, Kit kit, List<Written> tanks) {}

    private final ChapterRepository chapters;
    private final PersonRepository people;
    private final SchoolRepository schools;
    private final ClassroomRepository classrooms;
    private final KitRepository kits;
    private final TankRepository tanks;
    private final TankEdits tankEdits;

    DemoPlaces(ChapterRepository chapters, PersonRepository people, SchoolRepository schools,
            ClassroomRepository classrooms, KitRepository kits, TankRepository tanks, TankEdits tankEdits) {
        this.chapters = chapters;
        this.people = people;
        this.schools = schools;
        this.classrooms = classrooms;
        this.kits = kits;
        this.tanks = tanks;
        this.tankEdits = tankEdits;
    }

    WrittenChapter write(DSLContext tx, DemoChapter demo, ZoneId zone, Instant now) {
        Chapter chapter = chapters.add(tx, demo.code(), demo.name(), zone);
        rememberStoryDay(tx, chapter.chapterId(), now);
        Kit kit = kits.addGeneric(tx, chapter.chapterId());
        List<Written> written = new ArrayList<>();
        for (DemoSchool school : demo.schools()) {
            written.addAll(school(tx, chapter, kit, school, now));
        }
        addPeople(tx, chapter.chapterId(), demo, written);
        addSeason(tx, chapter, written, now);
        return new WrittenChapter(chapter, kit, written);
    }

    /** From which {@link StoryMove} knows how old the story is; it moves with it, in the same transaction. */
    private static void rememberStoryDay(DSLContext tx, int chapterId, Instant now) {
        tx.update(CHAPTERS).set(CHAPTERS.CREATED_AT, now).where(CHAPTERS.CHAPTER_ID.eq(chapterId)).execute();
    }

    private List<Written> school(DSLContext tx, Chapter chapter, Kit kit, DemoSchool demo, Instant now) {
        School school = schools.add(tx, chapter.chapterId(), new School.Details(demo.name(), Optional.of(demo.place()),
                OptionalDouble.of(demo.elevationM()), chapter.zone()));
        List<Written> written = new ArrayList<>();
        for (DemoTank tank : demo.tanks()) {
            int classroomId = classrooms.add(tx, chapter.chapterId(), school.schoolId(), tank.classroom());
            String code = tankEdits.add(tx, chapter.chapterId(),
                    details(tank, classroomId, kit.kitId(), chapter.zone(), now), now);
            written.add(new Written(tank, demo.elevationM(), tankId(tx, chapter.chapterId(), code), code));
        }
        return written;
    }

    private static TankEdits.Details details(DemoTank tank, int classroomId, int kitId, ZoneId zone, Instant now) {
        LocalDate filterStartedOn = new SchoolDays(tank, zone, now).filterStartedOn();
        return new TankEdits.Details(classroomId, kitId, tank.equipment().volumeL(),
                OptionalDouble.of(tank.equipment().setPointC()), tank.equipment().filterKind(),
                Optional.of(filterStartedOn), OptionalDouble.of(tank.water().alkalinityMgPerL()),
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
            String email = demo.teachers().get(tank.tank().teacher()).email();
            tanksOf.computeIfAbsent(email, none -> new ArrayList<>()).add(tank.tankId());
        }
        for (DemoPerson person : demo.people()) {
            Person added = people.add(tx, chapterId, new PersonRepository.Details(
                    person.email(), person.name(), Role.valueOf(person.role().toUpperCase(Locale.ROOT))),
                    Optional.empty());
            people.setTanks(tx, chapterId, added.personId(), tanksOf.getOrDefault(person.email(), List.of()));
        }
    }

    private static void addSeason(DSLContext tx, Chapter chapter, List<Written> written, Instant now) {
        LocalDate today = now.atZone(chapter.zone()).toLocalDate();
        LocalDate starts = today.minusDays(75);
        LocalDate ends = today.plusDays(150);
        String name = starts.getYear() == ends.getYear() ? Integer.toString(starts.getYear())
                : starts.getYear() + "-" + ends.getYear() % 100;
        String code = PublicCode.firstFree(candidate -> tx.insertInto(SEASONS)
                .set(SEASONS.CHAPTER_ID, chapter.chapterId())
                .set(SEASONS.CODE, candidate)
                .set(SEASONS.NAME, name)
                .set(SEASONS.STARTS_ON, starts)
                .set(SEASONS.ENDS_ON, ends)
                .onConflict(SEASONS.CHAPTER_ID, SEASONS.CODE).doNothing()
                .execute());
        int seasonId = tx.select(SEASONS.SEASON_ID).from(SEASONS)
                .where(SEASONS.CHAPTER_ID.eq(chapter.chapterId())).and(SEASONS.CODE.eq(code))
                .fetchSingle(SEASONS.SEASON_ID);
        for (Written tank : written) {
            tx.insertInto(LOTS)
                    .set(LOTS.CHAPTER_ID, chapter.chapterId())
                    .set(LOTS.SEASON_ID, seasonId)
                    .set(LOTS.TANK_ID, tank.tankId())
                    .set(LOTS.EGGS, tank.tank().eggs().count())
                    .set(LOTS.RECEIVED_AT, new SchoolDays(tank.tank(), chapter.zone(), now).eggsReceivedAt())
                    .set(LOTS.THERMAL_UNITS_C, (float) tank.tank().eggs().thermalUnitsC())
                    .set(LOTS.SUPPLIER, "Harrowfen egg house")
                    .set(LOTS.CERTIFICATE, "HF-" + tank.tank().eggs().count() + "-" + tank.tankId())
                    .execute();
        }
    }
}
