package org.tankrounds.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.tankrounds.App;
import org.tankrounds.db.Pools;
import org.tankrounds.db.Transactions;
import org.tankrounds.demo.DemoAccess;
import org.tankrounds.demo.DemoAccess.ChapterAccess;
import org.tankrounds.demo.DemoAccess.PersonAccess;
import org.tankrounds.migrations.EmbeddedPostgres;

/**
 * The service with the whole demo in it, on a database of its own, at a clock that stands still. {@link
 * #shared()} starts once for the JVM: loading takes seconds. The demo's first chapter is looked at; whoever
 * breaks things does so in the second.
 */
public final class DemoService {
    private static DemoService shared;

    private final App app;
    private final DemoAccess access;
    private final Transactions transactions;

    private DemoService() {
        Path folder = newFolder();
        EmbeddedPostgres postgres = TestDatabase.startEmpty(folder);
        app = TestApp.bare(postgres.logins(), TestClock.atStart());
        DemoAccess loaded = app.demoLoader().load(Optional.empty(), ZoneId.of("America/New_York"));
        access = loaded.at("http://127.0.0.1:" + app.start());
        transactions = new Transactions(Pools.open(postgres.logins().application(), "tests of the demo"));
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            app.close();
            postgres.close();
            delete(folder);
        }, "stop demo"));
    }

    /** Only for tests with a browser: without one, the test that asks is skipped. */
    public static synchronized DemoService shared() {
        Chromium.shared();
        if (shared == null) {
            shared = new DemoService();
        }
        return shared;
    }

    public App app() {
        return app;
    }

    public String baseUrl() {
        return access.baseUrl();
    }

    /** For chapters beside the demo's. */
    public Transactions transactions() {
        return transactions;
    }

    /** Eight tanks in six schools. */
    public ChapterAccess first() {
        return access.chapters().get(0);
    }

    /** Three tanks in two schools. */
    public ChapterAccess second() {
        return access.chapters().get(1);
    }

    public Visitor signedIn(PersonAccess person) {
        return Visitor.of(baseUrl()).signIn(person.email(), person.password());
    }

    /** The first of that role. */
    public static PersonAccess person(ChapterAccess chapter, String role) {
        return chapter.people().stream()
                .filter(person -> person.role().equals(role)).findFirst().orElseThrow();
    }

    private static Path newFolder() {
        try {
            Files.createDirectories(Path.of("target"));
            return Files.createTempDirectory(Path.of("target").toAbsolutePath(), "demo-");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path folder) {
        try (Stream<Path> everything = Files.walk(folder)) {
            for (Path one : everything.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(one);
            }
        } catch (IOException e) {
            System.err.println("Left behind: " + folder + " (" + e.getMessage() + ")");
        }
    }
}
