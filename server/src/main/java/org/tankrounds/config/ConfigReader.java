package org.tankrounds.config;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tankrounds.config.Config.LogFormat;
import org.tankrounds.config.Config.OutsideDatabase;

/** Reads {@code TANKROUNDS_*} from the environment; every secret may come from a file named by {@code …_FILE}. */
public final class ConfigReader {
    static final String PREFIX = "TANKROUNDS_";
    static final Set<String> SECRETS = Set.of("DATABASE_PASSWORD", "METRICS_TOKEN");
    static final Set<String> KNOWN = Set.of(
            "HOST", "PORT", "DATA", "DATABASE_URL", "DATABASE_USER", "DATABASE_PASSWORD", "BASE_URL", "LOG",
            "OFFLINE", "METRICS_TOKEN", "JAVA_OPTS", "TEST_DATABASE_URL", "CHROMIUM");

    private final Map<String, String> environment;
    private final List<String> faults = new ArrayList<>();

    private ConfigReader(Map<String, String> environment) {
        this.environment = environment;
    }

    /** @throws ConfigException naming every variable that is unknown or cannot be used, and what is accepted */
    public static Config read(Map<String, String> environment) {
        return new ConfigReader(environment).read();
    }

    private Config read() {
        refuseUnknown();
        Config config = new Config(
                text("HOST").orElse("127.0.0.1"),
                port(),
                Path.of(text("DATA").orElse("tankrounds-data")).toAbsolutePath(),
                database(),
                baseUrl(),
                logFormat(),
                offline(),
                text("METRICS_TOKEN"));
        if (!faults.isEmpty()) {
            throw new ConfigException(faults);
        }
        return config;
    }

    private void refuseUnknown() {
        for (String name : new TreeSet<>(environment.keySet())) {
            if (name.startsWith(PREFIX) && !isKnown(name.substring(PREFIX.length()))) {
                faults.add(name + " is not a variable that Tankrounds knows: look for a typing error.");
            }
        }
    }

    private static boolean isKnown(String name) {
        return KNOWN.contains(name)
                || name.endsWith("_FILE") && SECRETS.contains(name.substring(0, name.length() - "_FILE".length()));
    }

    private int port() {
        String port = text("PORT").orElse("8080");
        if (port.matches("\\d{1,5}") && Integer.parseInt(port) <= 65535) {
            return Integer.parseInt(port);
        }
        faults.add(PREFIX + "PORT is \"" + port + "\"; a number from 0 (any free port) to 65535 is accepted.");
        return 0;
    }

    private Optional<OutsideDatabase> database() {
        Optional<String> url = text("DATABASE_URL");
        if (url.isEmpty()) {
            return Optional.empty();
        }
        if (!url.get().startsWith("jdbc:postgresql:")) {
            faults.add(PREFIX + "DATABASE_URL must begin with jdbc:postgresql: and name a PostgreSQL database.");
        }
        return Optional.of(new OutsideDatabase(
                url.get(), text("DATABASE_USER").orElse(""), text("DATABASE_PASSWORD").orElse("")));
    }

    private Optional<URI> baseUrl() {
        Optional<String> text = text("BASE_URL");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            URI url = new URI(text.get());
            boolean local = Set.of("localhost", "127.0.0.1", "[::1]").contains(String.valueOf(url.getHost()));
            if (url.getHost() != null && ("https".equals(url.getScheme()) || "http".equals(url.getScheme()) && local)) {
                return Optional.of(url);
            }
        } catch (URISyntaxException e) {
            // told below, with the others
        }
        faults.add(PREFIX + "BASE_URL is \"" + text.get() + "\"; an https:// address is accepted, "
                + "http:// only for this machine itself, because sign-ins must not cross a network in the clear.");
        return Optional.empty();
    }

    private LogFormat logFormat() {
        String format = text("LOG").orElse("text");
        switch (format) {
            case "text":
                return LogFormat.TEXT;
            case "json":
                return LogFormat.JSON;
            default:
                faults.add(PREFIX + "LOG is \"" + format + "\"; text or json is accepted.");
                return LogFormat.TEXT;
        }
    }

    private boolean offline() {
        String offline = text("OFFLINE").orElse("on");
        if (!Set.of("on", "off").contains(offline)) {
            faults.add(PREFIX + "OFFLINE is \"" + offline + "\"; on or off is accepted.");
        }
        return !offline.equals("off");
    }

    private Optional<String> text(String name) {
        String value = environment.get(PREFIX + name);
        String file = environment.get(PREFIX + name + "_FILE");
        if (value == null && file != null && SECRETS.contains(name)) {
            value = readSecret(name, file);
        }
        return Optional.ofNullable(value).map(String::strip).filter(text -> !text.isEmpty());
    }

    private String readSecret(String name, String file) {
        try {
            return Files.readString(Path.of(file)).strip();
        } catch (IOException e) {
            faults.add(PREFIX + name + "_FILE names " + file + ", which cannot be read.");
            return null;
        }
    }
}
