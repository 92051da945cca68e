package org.tankrounds;

import java.net.URI;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tankrounds.config.Config;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The real service. */
@Command(name = "serve", mixinStandardHelpOptions = true, description = "Runs the service.")
final class ServeCommand implements Callable<Integer> {
    @Mixin
    private PortOption port;

    @Mixin
    private DataOption data;

    @Override
    public Integer call() throws InterruptedException {
        Config config = port.settled(data.configured());
        try (OrderlyStop stop = new OrderlyStop()) {
            Database database = stop.closing(Database.open(config));
            App app = stop.closing(new App(config, Clock.systemUTC(), database.logins()));
            Optional<String> setUpPath = app.setUpPath();
            String address = "http://" + config.host() + ":" + app.start();
            System.out.println("Tankrounds listens on " + address);
            setUpPath.ifPresent(path ->
                    tellSetUpLink(config.baseUrl().map(URI::toString).orElse(address) + path));
            stop.await();
        }
        return 0;
    }

    private static void tellSetUpLink(String link) {
        System.out.println("There is no chapter yet. Set up the first one within a day at " + link);
    }
}
