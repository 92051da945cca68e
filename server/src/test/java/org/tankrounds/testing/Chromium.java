package org.tankrounds.testing;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.BrowserType.LaunchPersistentContextOptions;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;

/**
 * The one real browser of the JVM: the Chromium that {@code TANKROUNDS_CHROMIUM} names. Where that is not
 * set, its tests are skipped and one line says so.
 */
public final class Chromium {
    private static final String PROGRAM = System.getenv().getOrDefault("TANKROUNDS_CHROMIUM", "");
    private static final String MISSING =
            "!!! NO BROWSER TESTS: set TANKROUNDS_CHROMIUM to a Chromium, such as /usr/bin/chromium. !!!";
    /** Root has no sandbox; the rest keeps a browser in a test from calling home or from wanting a screen. */
    private static final List<String> ARGUMENTS = List.of(
            "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-background-networking",
            "--disable-component-update", "--no-first-run");

    /** A page on a busy machine is waited for as long as somebody would who knows that it works. */
    static final double PATIENCE_MS = 30_000;

    private static boolean told;
    private static Browser shared;
    private static Playwright playwright;

    private Chromium() {}

    /** The browser, started with the first that asks; without one, the test that asks is skipped. */
    public static synchronized Browser shared() {
        if (PROGRAM.isBlank()) {
            skip();
        }
        if (shared == null) {
            shared = start();
        }
        return shared;
    }

    /** A browser of its own that finds again, when it is started anew, what it kept in its folder. */
    static BrowserContext withProfile(Path profile, String baseUrl) {
        shared();
        return playwright.chromium().launchPersistentContext(profile, new LaunchPersistentContextOptions()
                .setExecutablePath(Path.of(PROGRAM)).setArgs(ARGUMENTS).setBaseURL(baseUrl));
    }

    private static void skip() {
        if (!told) {
            told = true;
            System.err.println(MISSING);
        }
        Assumptions.abort(MISSING);
    }

    private static Browser start() {
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Runtime.getRuntime().addShutdownHook(new Thread(playwright::close, "stop browser"));
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
        return playwright.chromium().launch(
                new LaunchOptions().setExecutablePath(Path.of(PROGRAM)).setArgs(ARGUMENTS));
    }
}
