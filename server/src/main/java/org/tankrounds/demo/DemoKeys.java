package org.tankrounds.demo;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.demo.DemoAccess.ChapterAccess;
import org.tankrounds.demo.DemoAccess.PersonAccess;
import org.tankrounds.demo.DemoAccess.SeasonAccess;
import org.tankrounds.demo.DemoAccess.TankAccess;
import org.tankrounds.people.Chapter;
import org.tankrounds.people.ClassCards;
import org.tankrounds.people.PasswordHashes;
import org.tankrounds.people.Person;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.people.TokenRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.season.SeasonRepository;

/** Makes the sign-ins and tokens of a demo, and those of a demo whose file was lost anew. */
final class DemoKeys {
    private static final String LABEL = "demo";

    private final PersonRepository people;
    private final PasswordHashes passwords;
    private final TokenRepository tokens;
    private final ClassCards cards;
    private final TankRepository tanks;
    private final SeasonRepository seasons;
    private final Clock clock;
    private final DemoPasswords generator = new DemoPasswords();

    DemoKeys(PersonRepository people, PasswordHashes passwords, TokenRepository tokens, ClassCards cards,
            TankRepository tanks, SeasonRepository seasons, Clock clock) {
        this.people = people;
        this.passwords = passwords;
        this.tokens = tokens;
        this.cards = cards;
        this.tanks = tanks;
        this.seasons = seasons;
        this.clock = clock;
    }

    /** A password by address; hashing is slow by design, so all are hashed side by side. */
    record Hashed(String password, String hash) {}

    Map<String, Hashed> passwordsFor(DemoChapter demo) {
        return demo.people().parallelStream().map(DemoPerson::email).collect(Collectors.toMap(email -> email, email -> {
            String password = generator.next();
            return new Hashed(password, passwords.hash(password));
        }));
    }

    ChapterAccess issue(DSLContext tx, Chapter chapter, DemoChapter demo, Map<String, Hashed> hashed) {
        revokeOld(tx, chapter.chapterId());
        return new ChapterAccess(chapter.code(), chapter.name(), signIns(tx, chapter, demo, hashed),
                token(tx, chapter, OptionalInt.empty()), seasons(tx, chapter), tankTokens(tx, chapter));
    }

    private void revokeOld(DSLContext tx, int chapterId) {
        tokens.list(tx, chapterId).stream()
                .filter(token -> token.label().equals(LABEL) && token.revokedAt().isEmpty())
                .forEach(token -> tokens.revoke(tx, chapterId, token.tokenId(), clock.instant()));
    }

    private List<PersonAccess> signIns(
            DSLContext tx, Chapter chapter, DemoChapter demo, Map<String, Hashed> hashed) {
        Map<String, PersonAccess> signIns = new LinkedHashMap<>();
        for (DemoPerson person : demo.people()) {
            people.findByEmail(tx, chapter.chapterId(), person.email()).ifPresent(found -> {
                signIns.put(person.email(), signIn(tx, chapter, found, person.role(), hashed.get(person.email())));
            });
        }
        return new ArrayList<>(signIns.values());
    }

    private PersonAccess signIn(DSLContext tx, Chapter chapter, Person person, String role, Hashed hashed) {
        people.setPassword(tx, chapter.chapterId(), person.personId(), hashed.hash());
        return new PersonAccess(person.email(), hashed.password(), role);
    }

    private List<SeasonAccess> seasons(DSLContext tx, Chapter chapter) {
        return seasons.list(tx, chapter.chapterId()).stream().map(season -> new SeasonAccess(season.code())).toList();
    }

    /** One tank of each chapter has a class card too. */
    private List<TankAccess> tankTokens(DSLContext tx, Chapter chapter) {
        List<TankAccess> keys = new ArrayList<>();
        for (Tank tank : tanks.listOfChapter(tx, chapter.chapterId())) {
            String card = keys.isEmpty() ? cards.makeAnew(tx, chapter.chapterId(), tank) : null;
            keys.add(new TankAccess(tank.code(), tank.school(),
                    token(tx, chapter, OptionalInt.of(tank.tankId())), card));
        }
        return keys;
    }

    private String token(DSLContext tx, Chapter chapter, OptionalInt tankId) {
        return tokens.issue(tx, chapter.chapterId(), tankId, LABEL, clock.instant()).secret();
    }
}
