package org.tankrounds.testing;

import static org.tankrounds.db.schema.Tables.CLASSROOMS;
import static org.tankrounds.db.schema.Tables.LOTS;
import static org.tankrounds.db.schema.Tables.SCHOOLS;
import static org.tankrounds.db.schema.Tables.SEASONS;
import static org.tankrounds.db.schema.Tables.TANKS;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.people.Chapter;
import org.tankrounds.people.ChapterRepository;
import org.tankrounds.people.PasswordHashes;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.people.PersonRepository.Details;
import org.tankrounds.people.TokenRepository;
import org.tankrounds.places.KitRepository;
import org.tankrounds.web.Role;
import org.tankrounds.web.Secrets;

/**
 * The same people and tanks in every test: two schools with a tank each, a teacher for each tank, a
 * coordinator, a mentor, a season with a lot in tank A, and tokens. Codes and addresses are new each time, so
 * that casts share a database.
 */
public record Cast(
        Chapter chapter, int kitId, String season, Member coordinator, Member mentor, Member teacherA,
        Member teacherB,
        TankOfCast tankA, TankOfCast tankB, String chapterToken) {

    /** One password for all of them: hashing costs time, and it is not what these tests are about. */
    public static final String PASSWORD = "seven wet gravel buckets";
    private static final String HASH = new PasswordHashes().hash(PASSWORD);
    private static final ZoneId ZONE = ZoneId.of("America/New_York");

    public record Member(int personId, String code, String email, String name, Role role) {}

    /** @param token opens this tank only */
    public record TankOfCast(int tankId, String code, String school, String token) {}

    public int chapterId() {
        return chapter.chapterId();
    }

    public List<Member> members() {
        return List.of(coordinator, mentor, teacherA, teacherB);
    }

    public static Cast add(Transactions transactions, String name) {
        return transactions.outside(tx -> new Maker(tx, new ChapterRepository().add(tx, name, ZONE)).make());
    }

    private record Maker(DSLContext tx, Chapter chapter) {
        Cast make() {
            int kitId = new KitRepository().addGeneric(tx, chapter.chapterId(), "Generic card").kitId();
            TankOfCast tankA = tank("Alderwhistle School", kitId);
            TankOfCast tankB = tank("Birchthimble School", kitId);
            Member teacherA = member("teacher-a", "Ada Fernwhistle", Role.TEACHER);
            Member teacherB = member("teacher-b", "Ben Mossthimble", Role.TEACHER);
            PersonRepository people = new PersonRepository();
            people.setTanks(tx, chapter.chapterId(), teacherA.personId(), List.of(tankA.tankId()));
            people.setTanks(tx, chapter.chapterId(), teacherB.personId(), List.of(tankB.tankId()));
            return new Cast(chapter, kitId, season(tankA),
                    member("coordinator", "Cora Weirthimble", Role.COORDINATOR),
                    member("mentor", "Max Rifflequill", Role.MENTOR), teacherA, teacherB, tankA, tankB,
                    token(OptionalInt.empty(), "logger of the chapter"));
        }

        private Member member(String address, String name, Role role) {
            String email = address + "@" + chapter.code() + ".example";
            int id = chapter.chapterId();
            var person = new PersonRepository()
                    .add(tx, id, new Details(email, name, role), Optional.of(HASH));
            return new Member(person.personId(), person.code(), email, name, role);
        }

        private TankOfCast tank(String school, int kitId) {
            int schoolId = tx.insertInto(SCHOOLS)
                    .set(SCHOOLS.CHAPTER_ID, chapter.chapterId())
                    .set(SCHOOLS.CODE, Secrets.code(6))
                    .set(SCHOOLS.NAME, school)
                    .set(SCHOOLS.TIME_ZONE, ZONE.getId())
                    .returning(SCHOOLS.SCHOOL_ID).fetchSingle(SCHOOLS.SCHOOL_ID);
            int classroomId = tx.insertInto(CLASSROOMS)
                    .set(CLASSROOMS.CHAPTER_ID, chapter.chapterId())
                    .set(CLASSROOMS.SCHOOL_ID, schoolId)
                    .set(CLASSROOMS.NAME, "Room 12")
                    .returning(CLASSROOMS.CLASSROOM_ID).fetchSingle(CLASSROOMS.CLASSROOM_ID);
            String code = Secrets.code(6);
            int tankId = tx.insertInto(TANKS)
                    .set(TANKS.CHAPTER_ID, chapter.chapterId())
                    .set(TANKS.CLASSROOM_ID, classroomId)
                    .set(TANKS.KIT_ID, kitId)
                    .set(TANKS.CODE, code)
                    .set(TANKS.VOLUME_L, 200f)
                    .set(TANKS.CHILLER_SET_POINT_C, 11f)
                    .returning(TANKS.TANK_ID).fetchSingle(TANKS.TANK_ID);
            return new TankOfCast(tankId, code, school, token(OptionalInt.of(tankId), "probe of " + code));
        }

        private String season(TankOfCast tank) {
            String code = Secrets.code(6);
            int seasonId = tx.insertInto(SEASONS)
                    .set(SEASONS.CHAPTER_ID, chapter.chapterId())
                    .set(SEASONS.CODE, code)
                    .set(SEASONS.NAME, "2025-26")
                    .set(SEASONS.STARTS_ON, LocalDate.parse("2025-10-01"))
                    .set(SEASONS.ENDS_ON, LocalDate.parse("2026-06-30"))
                    .returning(SEASONS.SEASON_ID).fetchSingle(SEASONS.SEASON_ID);
            tx.insertInto(LOTS)
                    .set(LOTS.CHAPTER_ID, chapter.chapterId())
                    .set(LOTS.SEASON_ID, seasonId)
                    .set(LOTS.TANK_ID, tank.tankId())
                    .set(LOTS.EGGS, 200)
                    .set(LOTS.RECEIVED_AT, Instant.parse("2025-11-04T15:00:00Z"))
                    .set(LOTS.THERMAL_UNITS_C, 180f)
                    .execute();
            return code;
        }

        private String token(OptionalInt tankId, String label) {
            return new TokenRepository().issue(tx, chapter.chapterId(), tankId, label, TestClock.START)
                    .secret();
        }
    }
}
