package org.tankrounds.config;

import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What the operator decides; read once at the start by {@link ConfigReader}.
 *
 * @param host address to listen on
 * @param port port to listen on; 0 takes a free one
 * @param dataDir where the embedded database and the demo's sign-ins are kept
 * @param database an outside PostgreSQL; empty for the embedded one in {@code dataDir}
 * @param baseUrl how people reach the service; empty means http on this machine only
 * @param logFormat one line a message for people, or one JSON object a line
 * @param offline whether pages may be kept on devices; without, devices are told to forget theirs
 * @param metricsToken bearer token that {@code /metrics} asks for; empty leaves it open
 */
public record Config(
        String host,
        int port,
        Path dataDir,
        Optional<OutsideDatabase> database,
        Optional<URI> baseUrl,
        LogFormat logFormat,
        boolean offline,
        Optional<String> metricsToken) {

    public enum LogFormat {
        TEXT,
        JSON
    }

    /** A PostgreSQL that somebody else runs, reached as the owner of its database. */
    public record OutsideDatabase(String url, String user, String password) {}

    /** Whether people reach the service over TLS, so that cookies may insist on it. */
    public boolean secure() {
        return baseUrl.map(url -> "https".equals(url.getScheme())).orElse(false);
    }

    public Config withPort(int newPort) {
        return new Config(host, newPort, dataDir, database, baseUrl, logFormat, offline, metricsToken);
    }

    public Config withDataDir(Path newDataDir) {
        return new Config(host, port, newDataDir, database, baseUrl, logFormat, offline, metricsToken);
    }
}
