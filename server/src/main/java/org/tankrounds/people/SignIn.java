package org.tankrounds.people;

import static org.tankrounds.db.schema.Tables.PEOPLE;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jooq.Record;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.db.Transactions;
import org.tankrounds.web.Role;

/** Checks an address and a password. Whether the address has an account shows neither in the answer nor in its time. */
public final class SignIn {
    private static final Logger LOG = LoggerFactory.getLogger(SignIn.class);

    sealed interface Outcome permits SignedIn, Refused, Wait {}

    /** @param secret for the cookie */
    record SignedIn(String secret, int chapterId, int personId) implements Outcome {}

    record Refused() implements Outcome {}

    record Wait(Duration left) implements Outcome {}

    private record Candidate(int chapterId, int personId, Role role, String passwordHash) {}

    private final Transactions transactions;
    private final PersonRepository people;
    private final PasswordHashes passwords;
    private final SignInThrottle throttle = new SignInThrottle();
    private final Sessions sessions;
    private final Clock clock;

    public SignIn(Transactions transactions, PersonRepository people, PasswordHashes passwords,
            Sessions sessions, Clock clock) {
        this.transactions = transactions;
        this.people = people;
        this.passwords = passwords;
        this.sessions = sessions;
        this.clock = clock;
    }

    Outcome with(String email, String password) {
        byte[] account = Email.hash(Email.normal(email));
        Optional<Duration> wait = transactions.bySecret(account, tx -> throttle.enter(tx, account, clock.instant()));
        if (wait.isPresent()) {
            LOG.warn("sign-in slowed down: too many failures for one account");
            return new Wait(wait.get());
        }
        Optional<Candidate> person = whoseIs(password, candidates(account));
        if (person.isEmpty()) {
            LOG.info("sign-in refused");
            return new Refused();
        }
        transactions.bySecret(account, tx -> {
            throttle.forget(tx, account);
            throttle.forgetOld(tx, clock.instant());
            return null;
        });
        return new SignedIn(open(person.get(), password), person.get().chapterId(), person.get().personId());
    }

    /** More than one where somebody helps in two chapters; then the password decides. */
    private List<Candidate> candidates(byte[] account) {
        return transactions.bySecret(account, tx -> tx.selectFrom(PEOPLE)
                .where(PEOPLE.EMAIL_HASH.eq(account))
                .and(PEOPLE.DISABLED_AT.isNull())
                .and(PEOPLE.PASSWORD_HASH.isNotNull())
                .orderBy(PEOPLE.CHAPTER_ID)
                .fetch(SignIn::candidate));
    }

    private Optional<Candidate> whoseIs(String password, List<Candidate> candidates) {
        if (candidates.isEmpty()) {
            passwords.matchNobody(password);
        }
        return candidates.stream()
                .filter(candidate -> passwords.matches(password, candidate.passwordHash()))
                .findFirst();
    }

    private String open(Candidate person, String password) {
        Optional<String> renewed = passwords.outdated(person.passwordHash())
                ? Optional.of(passwords.hash(password)) : Optional.empty();
        String secret = transactions.inChapter(person.chapterId(), tx -> {
            renewed.ifPresent(hash -> people.setPassword(tx, person.chapterId(), person.personId(), hash));
            return sessions.open(tx, person.chapterId(), person.personId(), person.role());
        });
        LOG.info("person {} of chapter {} signed in", person.personId(), person.chapterId());
        return secret;
    }

    private static Candidate candidate(Record row) {
        return new Candidate(row.get(PEOPLE.CHAPTER_ID), row.get(PEOPLE.PERSON_ID),
                PersonRepository.role(row.get(PEOPLE.ROLE)), row.get(PEOPLE.PASSWORD_HASH));
    }
}
