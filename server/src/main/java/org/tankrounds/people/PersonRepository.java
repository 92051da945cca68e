package org.tankrounds.people;

import static org.tankrounds.db.schema.Tables.PEOPLE;
import static org.tankrounds.db.schema.Tables.TANK_TEACHERS;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Role;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Secrets;
import org.tankrounds.web.Speech.Chosen;
import org.tankrounds.words.Language;

/** The chapter's people and which tanks its teachers look after. */
public final class PersonRepository {
    private static final int CODE_LENGTH = 8;

    /** What may be changed about a person. */
    public record Details(String email, String name, Role role) {}

    /** @param passwordHash empty for somebody who has yet to choose one */
    public Person add(DSLContext tx, int chapterId, Details details, Optional<String> passwordHash) {
        String email = Email.normal(details.email());
        Record row = tx.insertInto(PEOPLE)
                .set(PEOPLE.CHAPTER_ID, chapterId)
                .set(PEOPLE.CODE, Secrets.code(CODE_LENGTH))
                .set(PEOPLE.EMAIL, email)
                .set(PEOPLE.EMAIL_HASH, Email.hash(email))
                .set(PEOPLE.NAME, details.name())
                .set(PEOPLE.ROLE, word(details.role()))
                .set(PEOPLE.PASSWORD_HASH, passwordHash.orElse(null))
                .returning()
                .fetchSingle();
        return person(row);
    }

    void update(DSLContext tx, int chapterId, int personId, Details details) {
        String email = Email.normal(details.email());
        tx.update(PEOPLE)
                .set(PEOPLE.EMAIL, email)
                .set(PEOPLE.EMAIL_HASH, Email.hash(email))
                .set(PEOPLE.NAME, details.name())
                .set(PEOPLE.ROLE, word(details.role()))
                .where(PEOPLE.CHAPTER_ID.eq(chapterId)).and(PEOPLE.PERSON_ID.eq(personId))
                .execute();
    }

    public void setPassword(DSLContext tx, int chapterId, int personId, String passwordHash) {
        tx.update(PEOPLE)
                .set(PEOPLE.PASSWORD_HASH, passwordHash)
                .where(PEOPLE.CHAPTER_ID.eq(chapterId)).and(PEOPLE.PERSON_ID.eq(personId))
                .execute();
    }

    void setChosen(DSLContext tx, int chapterId, int personId, Chosen chosen) {
        tx.update(PEOPLE)
                .set(PEOPLE.LANGUAGE, chosen.language().map(Language::tag).orElse(null))
                .set(PEOPLE.TEMPERATURE_UNIT, chosen.scale().unit())
                .where(PEOPLE.CHAPTER_ID.eq(chapterId)).and(PEOPLE.PERSON_ID.eq(personId))
                .execute();
    }

    void setDisabled(DSLContext tx, int chapterId, int personId, Optional<Instant> since) {
        tx.update(PEOPLE)
                .set(PEOPLE.DISABLED_AT, since.orElse(null))
                .where(PEOPLE.CHAPTER_ID.eq(chapterId)).and(PEOPLE.PERSON_ID.eq(personId))
                .execute();
    }

    public Person get(DSLContext tx, int chapterId, String code) {
        return tx.selectFrom(PEOPLE)
                .where(PEOPLE.CHAPTER_ID.eq(chapterId)).and(PEOPLE.CODE.eq(code))
                .fetchOptional(PersonRepository::person)
                .orElseThrow(() -> new NotFoundException("person"));
    }

    public Person get(DSLContext tx, int chapterId, int personId) {
        return tx.selectFrom(PEOPLE)
                .where(PEOPLE.CHAPTER_ID.eq(chapterId)).and(PEOPLE.PERSON_ID.eq(personId))
                .fetchSingle(PersonRepository::person);
    }

    public Optional<Person> findByEmail(DSLContext tx, int chapterId, String email) {
        return tx.selectFrom(PEOPLE)
                .where(PEOPLE.CHAPTER_ID.eq(chapterId)).and(PEOPLE.EMAIL.eq(Email.normal(email)))
                .fetchOptional(PersonRepository::person);
    }

    /** By name. */
    public List<Person> list(DSLContext tx, int chapterId) {
        return tx.selectFrom(PEOPLE)
                .where(PEOPLE.CHAPTER_ID.eq(chapterId))
                .orderBy(PEOPLE.NAME, PEOPLE.PERSON_ID)
                .fetch(PersonRepository::person);
    }

    /** Locks them, so that two coordinators cannot disable each other at the same moment. */
    int countCoordinators(DSLContext tx, int chapterId) {
        return tx.select(PEOPLE.PERSON_ID).from(PEOPLE)
                .where(PEOPLE.CHAPTER_ID.eq(chapterId))
                .and(PEOPLE.ROLE.eq(word(Role.COORDINATOR)))
                .and(PEOPLE.DISABLED_AT.isNull())
                .orderBy(PEOPLE.PERSON_ID)
                .forUpdate()
                .fetch().size();
    }

    Optional<String> passwordHash(DSLContext tx, int chapterId, int personId) {
        return tx.select(PEOPLE.PASSWORD_HASH).from(PEOPLE)
                .where(PEOPLE.CHAPTER_ID.eq(chapterId)).and(PEOPLE.PERSON_ID.eq(personId))
                .fetchOptional(PEOPLE.PASSWORD_HASH);
    }

    /** Replaces the tanks that a teacher looks after; the tanks must be the chapter's. */
    public void setTanks(DSLContext tx, int chapterId, int personId, Collection<Integer> tankIds) {
        tx.deleteFrom(TANK_TEACHERS)
                .where(TANK_TEACHERS.CHAPTER_ID.eq(chapterId)).and(TANK_TEACHERS.PERSON_ID.eq(personId))
                .execute();
        for (int tankId : tankIds) {
            tx.insertInto(TANK_TEACHERS)
                    .set(TANK_TEACHERS.CHAPTER_ID, chapterId)
                    .set(TANK_TEACHERS.TANK_ID, tankId)
                    .set(TANK_TEACHERS.PERSON_ID, personId)
                    .execute();
        }
    }

    List<Integer> tankIds(DSLContext tx, int chapterId, int personId) {
        return tx.select(TANK_TEACHERS.TANK_ID).from(TANK_TEACHERS)
                .where(TANK_TEACHERS.CHAPTER_ID.eq(chapterId)).and(TANK_TEACHERS.PERSON_ID.eq(personId))
                .orderBy(TANK_TEACHERS.TANK_ID)
                .fetch(TANK_TEACHERS.TANK_ID);
    }

    /** Tank ids by person id. */
    Map<Integer, List<Integer>> tanksOfTeachers(DSLContext tx, int chapterId) {
        return tx.select(TANK_TEACHERS.PERSON_ID, TANK_TEACHERS.TANK_ID).from(TANK_TEACHERS)
                .where(TANK_TEACHERS.CHAPTER_ID.eq(chapterId))
                .orderBy(TANK_TEACHERS.TANK_ID)
                .fetchGroups(TANK_TEACHERS.PERSON_ID, TANK_TEACHERS.TANK_ID);
    }

    static Chosen chosen(Record row) {
        return new Chosen(Optional.ofNullable(row.get(PEOPLE.LANGUAGE)).flatMap(Language::ofTag),
                Scale.ofUnit(row.get(PEOPLE.TEMPERATURE_UNIT)));
    }

    static Role role(String word) {
        return Role.valueOf(word.toUpperCase(Locale.ROOT));
    }

    static String word(Role role) {
        return role.name().toLowerCase(Locale.ROOT);
    }

    private static Person person(Record row) {
        return new Person(
                row.get(PEOPLE.PERSON_ID),
                row.get(PEOPLE.CODE),
                row.get(PEOPLE.EMAIL),
                row.get(PEOPLE.NAME),
                role(row.get(PEOPLE.ROLE)),
                row.get(PEOPLE.PASSWORD_HASH) != null,
                Optional.ofNullable(row.get(PEOPLE.DISABLED_AT)));
    }
}
