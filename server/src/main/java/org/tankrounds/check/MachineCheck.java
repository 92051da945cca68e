package org.tankrounds.check;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.tankrounds.config.Config;

/** What needs no database: Java, memory, disk, addresses. */
public final class MachineCheck {
    private static final long FREE_PERCENT = 10;
    private static final long MB = 1_000_000;

    private final Config config;

    public MachineCheck(Config config) {
        this.config = config;
    }

    public List<Finding> findings() {
        return List.of(
                Finding.fine("java", System.getProperty("java.version") + " in " + System.getProperty("java.home")),
                Finding.fine("memory", "up to " + Runtime.getRuntime().maxMemory() / MB + " MB for this command; "
                        + availableMemory()),
                disk(),
                address(),
                Finding.fine("time zone", ZoneId.systemDefault() + " on this machine; readings are kept in UTC"),
                Finding.fine("mail", "not configured; nothing needs it yet"),
                Finding.fine("metrics", config.metricsToken().isPresent()
                        ? "open to who presents the token ********" : "open to everybody who reaches the service"));
    }

    private Finding disk() {
        Path folder = nearestExisting();
        try {
            FileStore store = Files.getFileStore(folder);
            long freePercent = 100 * store.getUsableSpace() / Math.max(1, store.getTotalSpace());
            String detail = String.format(Locale.ROOT, "%d %% free (%.1f GB) at %s",
                    freePercent, store.getUsableSpace() / 1e9, folder);
            return freePercent >= FREE_PERCENT ? Finding.fine("disk", detail)
                    : Finding.wrong("disk", detail + "; at least " + FREE_PERCENT + " % are needed");
        } catch (IOException e) {
            return Finding.wrong("disk", "cannot be asked at " + folder);
        }
    }

    private Path nearestExisting() {
        Path folder = config.dataDir().toAbsolutePath();
        while (Files.notExists(folder)) {
            folder = folder.getParent();
        }
        return folder;
    }

    private Finding address() {
        String listens = "listens on " + config.host() + ":" + config.port();
        return Finding.fine("address", config.baseUrl().map(URI::toString)
                .map(url -> "people use " + url + "; " + listens)
                .orElse(listens + "; TANKROUNDS_BASE_URL is not set, so sign-ins work over plain http"));
    }

    private static String availableMemory() {
        try {
            return Files.readAllLines(Path.of("/proc/meminfo")).stream()
                    .filter(line -> line.startsWith("MemAvailable:"))
                    .map(line -> Long.parseLong(line.replaceAll("\\D", "")) * 1024 / MB + " MB free on this machine")
                    .findFirst().orElse("what is free is not told here");
        } catch (IOException e) {
            return "what is free is not told here";
        }
    }
}
