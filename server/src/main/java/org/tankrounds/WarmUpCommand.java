package org.tankrounds;

import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.tankrounds.config.Config;
import org.tankrounds.config.ConfigReader;
import picocli.CommandLine.Command;

/**
 * Starts the service on a database that is thrown away, loads the demo, looks at some pages and stops: run
 * once after a build while Java notes which classes a start needs, so that later starts find them ready.
 */
@Command(name = "warm-up", hidden = true, description = "Prepares faster starts; run by the launcher after a build.")
final class WarmUpCommand implements Callable<Integer> {
    private static final List<String> PAGES =
            List.of("/healthz", "/readyz", "/metrics", "/sign-in", "/", "/api/v1/rounds");

    @Override
    public Integer call() throws IOException {
        Path data = Files.createTempDirectory("tankrounds-warm-up-");
        Config config = ConfigReader.read(Map.of()).withPort(0).withDataDir(data);
        try (Database database = Database.open(config);
                App app = new App(config, Clock.systemUTC(), database.logins())) {
            app.demoLoader().load(Optional.empty(), ZoneOffset.UTC);
            String address = "http://" + config.host() + ":" + app.start();
            for (String page : PAGES) {
                look(address + page);
            }
        } finally {
            delete(data);
        }
        return 0;
    }

    private static void look(String url) throws IOException {
        HttpURLConnection connection = (HttpURLConnection) URI.create(url).toURL().openConnection();
        connection.setInstanceFollowRedirects(false);
        try (InputStream body = connection.getResponseCode() < 400
                ? connection.getInputStream() : connection.getErrorStream()) {
            if (body != null) {
                body.readAllBytes();
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path path : walk.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
