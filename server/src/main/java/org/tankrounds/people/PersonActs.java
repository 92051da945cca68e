package org.tankrounds.people;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.people.PersonRepository.Details;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Role;
import org.tankrounds.words.Saying;

/** What a coordinator does to a person, each in the transaction given. There is always a coordinator left. */
public final class PersonActs {
    private static final Logger LOG = LoggerFactory.getLogger(PersonActs.class);

    private final PersonRepository people;
    private final Sessions sessions;
    private final Invitations invitations;
    private final Clock clock;

    public PersonActs(PersonRepository people, Sessions sessions, Invitations invitations, Clock clock) {
        this.people = people;
        this.sessions = sessions;
        this.invitations = invitations;
        this.clock = clock;
    }

    /** @return the secret of the link with which they choose a password */
    String add(DSLContext tx, int chapterId, Details details, List<Integer> tankIds) {
        Person person = people.add(tx, chapterId, details, Optional.empty());
        people.setTanks(tx, chapterId, person.personId(), tanksFor(details.role(), tankIds));
        LOG.info("person {} of chapter {} was added as {}", person.personId(), chapterId, details.role());
        return invitations.issue(tx, chapterId, person.personId());
    }

    void update(DSLContext tx, int chapterId, Person person, Details details, List<Integer> tankIds) {
        if (details.role() != person.role()) {
            keepACoordinator(tx, chapterId, person);
            sessions.endAll(tx, chapterId, person.personId());
            LOG.info("person {} of chapter {} became {}", person.personId(), chapterId, details.role());
        }
        people.update(tx, chapterId, person.personId(), details);
        people.setTanks(tx, chapterId, person.personId(), tanksFor(details.role(), tankIds));
    }

    String invite(DSLContext tx, int chapterId, Person person) {
        if (!person.enabled()) {
            throw RefusedException.of(422, Saying.of("people.letInFirst"));
        }
        LOG.info("person {} of chapter {} got a new link", person.personId(), chapterId);
        return invitations.issue(tx, chapterId, person.personId());
    }

    /** Signs them out everywhere at once. */
    void disable(DSLContext tx, int chapterId, Person person) {
        keepACoordinator(tx, chapterId, person);
        people.setDisabled(tx, chapterId, person.personId(), Optional.of(clock.instant()));
        invitations.voidAll(tx, chapterId, person.personId(), clock.instant());
        sessions.endAll(tx, chapterId, person.personId());
        LOG.info("person {} of chapter {} was disabled", person.personId(), chapterId);
    }

    void enable(DSLContext tx, int chapterId, Person person) {
        people.setDisabled(tx, chapterId, person.personId(), Optional.empty());
        LOG.info("person {} of chapter {} was enabled", person.personId(), chapterId);
    }

    private void keepACoordinator(DSLContext tx, int chapterId, Person person) {
        boolean coordinator = person.role() == Role.COORDINATOR && person.enabled();
        if (coordinator && people.countCoordinators(tx, chapterId) <= 1) {
            throw RefusedException.of(422, Saying.of("people.lastCoordinator"));
        }
    }

    private static List<Integer> tanksFor(Role role, List<Integer> tankIds) {
        return role == Role.TEACHER ? tankIds : List.of();
    }
}
