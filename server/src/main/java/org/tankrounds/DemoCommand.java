package org.tankrounds;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import org.tankrounds.config.Config;
import org.tankrounds.config.ConfigReader;
import org.tankrounds.demo.DemoAccess;
import org.tankrounds.demo.DemoAccessFile;
import org.tankrounds.demo.DemoDirectory;
import org.tankrounds.demo.DemoGreeting;
import org.tankrounds.demo.StoryMove;
import org.tankrounds.migrations.DataDirectoryInUseException;
import org.tankrounds.migrations.EmbeddedPostgres;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The service with two invented chapters in it, on a database of its own. */
@Command(name = "demo", mixinStandardHelpOptions = true,
        description = "Runs the service with two invented chapters, on a database of its own.")
final class DemoCommand implements Callable<Integer> {
    @Mixin
    private PortOption port;

    @Option(names = "--data", paramLabel = "DIR", description = {
        "Folder that the demo is kept in; made where it is missing. Without it, tankrounds-demo in $XDG_DATA_HOME or in"
            + " ~/.local/share. TANKROUNDS_DATA and TANKROUNDS_DATABASE_URL do not count here: the demo never touches"
            + " real data."})
    private Path data;

    @Option(names = "--fresh", description = "Throws the demo in the folder away and begins anew.")
    private boolean fresh;

    @Override
    public Integer call() throws InterruptedException {
        Config config = port.settled(ConfigReader.read(System.getenv()));
        DemoDirectory directory = DemoDirectory.open(data == null ? usualDirectory() : data);
        if ((fresh || !directory.isLoaded()) && !directory.isEmpty()) {
            stopLeftovers(directory);
            directory.empty();
        }
        run(config.withDataDir(directory.path()), directory);
        return 0;
    }

    private static Path usualDirectory() {
        return DemoDirectory.usual(System.getenv(), Path.of(System.getProperty("user.home", "/nonexistent")),
                Path.of(System.getProperty("java.io.tmpdir")), System.getProperty("user.name", "somebody"));
    }

    /** A server whose service was killed may still run on the files that are about to be deleted. */
    private static void stopLeftovers(DemoDirectory directory) {
        try {
            EmbeddedPostgres.start(directory.path()).close();
        } catch (DataDirectoryInUseException e) {
            throw e;
        } catch (RuntimeException broken) {
            // What does not start is thrown away all the more.
        }
    }

    private void run(Config config, DemoDirectory directory) throws InterruptedException {
        Clock clock = Clock.systemUTC();
        try (OrderlyStop stop = new OrderlyStop()) {
            EmbeddedPostgres postgres = stop.closing(EmbeddedPostgres.start(config.dataDir()));
            postgres.keepAlive();
            App app = stop.closing(new App(config, clock, postgres.logins()));
            DemoAccessFile file = new DemoAccessFile(directory.path());
            long movedDays = new StoryMove(postgres.logins().owner()).toToday(clock.instant());
            DemoAccess access = app.demoLoader().load(file.read(), zone()).at("http://" + address(config));
            file.write(access);
            directory.setLoaded();
            app.start();
            PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
            DemoGreeting.print(access, directory.path(), movedDays, out);
            stop.await();
        }
    }

    private static String address(Config config) {
        String host = config.host().equals("0.0.0.0") ? "127.0.0.1" : config.host();
        return (host.contains(":") ? "[" + host + "]" : host) + ":" + config.port();
    }

    /** The demo lives by the clock of the machine; a home-made zone is none that a school could be in. */
    private static ZoneId zone() {
        ZoneId zone = ZoneId.systemDefault();
        return ZoneId.getAvailableZoneIds().contains(zone.getId()) ? zone : ZoneId.of("UTC");
    }
}
