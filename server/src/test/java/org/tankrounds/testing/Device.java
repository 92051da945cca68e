package org.tankrounds.testing;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A classroom's laptop with a worker and an outbox, on which people sign in one after the other. */
public final class Device implements AutoCloseable {
    private final BrowserContext context;
    private final Optional<Path> profile;
    private final Page page;

    private Device(BrowserContext context, Optional<Path> profile) {
        this.context = context;
        this.profile = profile;
        context.setDefaultTimeout(Chromium.PATIENCE_MS);
        page = context.pages().isEmpty() ? context.newPage() : context.pages().get(0);
    }

    public static Device at(String baseUrl) {
        return new Device(Chromium.shared().newContext(new NewContextOptions().setBaseURL(baseUrl)), Optional.empty());
    }

    /** @param profile folder in which it finds again what it kept before */
    public static Device at(String baseUrl, Path profile) {
        return new Device(Chromium.withProfile(profile, baseUrl), Optional.of(profile));
    }

    public BrowserContext context() {
        return context;
    }

    public Page page() {
        return page;
    }

    public Device signIn(Cast.Member member) {
        page.navigate("/sign-in");
        page.getByLabel("E-mail address").fill(member.email());
        page.getByLabel("Password").fill(Cast.PASSWORD);
        page.getByText("Sign in").last().click();
        page.locator("[data-sign-out]").waitFor();
        return this;
    }

    /** Opens the form and waits until it and the outbox would open without Wi-Fi too. */
    public Device openForm(Cast.TankOfCast tank) {
        page.navigate(form(tank));
        for (String path : List.of(form(tank), "/outbox")) {
            page.waitForCondition(() -> (boolean) page.evaluate(
                    "async path => Boolean(await caches.match(path))", path));
        }
        return this;
    }

    public static String form(Cast.TankOfCast tank) {
        return "/tanks/" + tank.code() + "/log";
    }

    public Device offline(boolean offline) {
        context.setOffline(offline);
        return this;
    }

    /** What the device takes for now. */
    public Device clock(Instant time) {
        context.clock().setFixedTime(Date.from(time));
        return this;
    }

    /** On the form that is open; over when the outbox has had its answer, or none. */
    public Device write(String temperatureF) {
        press(page, temperatureF);
        page.waitForFunction("() => !document.querySelector('[data-busy]')");
        return this;
    }

    /** The same without waiting for anything. */
    public static void press(Page form, String temperatureF) {
        form.getByLabel("Temperature").fill(temperatureF);
        form.locator(".log__save").click();
    }

    public Locator line() {
        return page.locator("[data-outbox-line]");
    }

    /** kill -9. */
    public void kill() {
        String folder = "--user-data-dir=" + profile.orElseThrow();
        List<ProcessHandle> processes = ProcessHandle.current().descendants()
                .filter(process -> process.info().arguments().stream().flatMap(Stream::of).anyMatch(folder::equals))
                .toList();
        if (processes.isEmpty()) {
            throw new IllegalStateException("no browser runs in " + folder);
        }
        processes.forEach(ProcessHandle::destroyForcibly);
        processes.forEach(process -> process.onExit().join());
        try {
            context.close();
        } catch (PlaywrightException gone) {
            // as it should be
        }
    }

    @Override
    public void close() {
        context.close();
    }
}
