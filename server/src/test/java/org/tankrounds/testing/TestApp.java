package org.tankrounds.testing;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.tankrounds.App;
import org.tankrounds.config.Config;
import org.tankrounds.config.ConfigReader;
import org.tankrounds.db.Transactions;
import org.tankrounds.migrations.Logins;
import org.tankrounds.people.ClassCards;
import org.tankrounds.people.PasswordHashes;
import org.tankrounds.people.Sessions;
import org.tankrounds.places.TankRepository;

/**
 * The whole service on a free port, with two casts: {@code here}, and {@code elsewhere}, whose things nobody
 * from here may see. {@link #shared()} starts once for the JVM, since starting costs seconds; its clock
 * stands still.
 */
public final class TestApp implements AutoCloseable {
    private static TestApp shared;

    private final App app;
    private final TestClock clock;
    private final String baseUrl;

    private final Transactions transactions;
    private final Cast here;
    private final Cast elsewhere;

    private TestApp(TestDatabase database, TestClock clock, Map<String, String> environment) {
        this.clock = clock;
        this.transactions = database.transactions();
        here = Cast.add(transactions, "Clearthimble Chapter");
        elsewhere = Cast.add(transactions, "Stonewhistle Chapter");
        app = new App(config(environment), clock, database.logins());
        baseUrl = "http://127.0.0.1:" + app.start();
    }

    /** Don't move its clock and don't close it: others use it too. */
    public static synchronized TestApp shared() {
        if (shared == null) {
            shared = start(TestClock.atStart());
            Runtime.getRuntime().addShutdownHook(new Thread(shared::close, "stop test app"));
        }
        return shared;
    }

    /** One of the test's own, on the shared database, with casts of its own. */
    public static TestApp start(TestClock clock) {
        return start(clock, Map.of());
    }

    /** @param environment more of the operator's settings, such as TANKROUNDS_BASE_URL */
    public static TestApp start(TestClock clock, Map<String, String> environment) {
        return new TestApp(TestDatabase.shared(), clock, environment);
    }

    /** The service alone, on a database without any chapter. */
    public static App bare(Logins logins, TestClock clock) {
        TestDatabase.shared();
        return new App(config(Map.of()), clock, logins);
    }

    public Cast here() {
        return here;
    }

    public Cast elsewhere() {
        return elsewhere;
    }

    public TestClock clock() {
        return clock;
    }

    public Transactions transactions() {
        return transactions;
    }

    public String baseUrl() {
        return baseUrl;
    }

    /** Nobody yet. */
    public Browserless browser() {
        return new Browserless(baseUrl);
    }

    public Browserless signedIn(Cast.Member member) {
        Browserless browser = browser();
        Browserless.Answer answer = browser.signIn(member);
        if (answer.status() != 303) {
            throw new IllegalStateException("sign-in of " + member.email() + " answered " + answer.status());
        }
        return browser;
    }

    /** Takes the place of the tank's card, if it has one; the code as it is printed. */
    public String newCard(Cast cast, Cast.TankOfCast tank) {
        ClassCards cards =
                new ClassCards(transactions, new PasswordHashes(), new Sessions(transactions, clock), clock);
        return transactions.inChapter(cast.chapterId(), tx -> cards.makeAnew(tx, cast.chapterId(),
                new TankRepository().findById(tx, cast.chapterId(), tank.tankId()).orElseThrow()));
    }

    public Browserless bearer(String token) {
        return browser().bearer(token);
    }

    /** Every route that the server has, with its roles: for matrices that must not forget one. */
    public List<App.Route> routes() {
        return app.routes();
    }

    public App app() {
        return app;
    }

    @Override
    public void close() {
        app.close();
    }

    private static Config config(Map<String, String> environment) {
        return ConfigReader.read(environment).withPort(0)
                .withDataDir(Path.of("target", "test-data").toAbsolutePath());
    }
}
