package org.tankrounds.testing;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Clock;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.ServiceWorkerPolicy;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;

/**
 * Somebody at a real browser, signed in or not, with cookies of their own; notes what goes wrong behind the
 * pages. To be kept within one thread.
 */
public final class Visitor implements AutoCloseable {
    /** What most schools' laptops have. */
    public static final int LAPTOP_WIDTH = 1366;
    public static final int LAPTOP_HEIGHT = 768;

    private final String baseUrl;
    private final BrowserContext context;
    private final Page page;
    private final List<String> complaints = new ArrayList<>();
    private int status;

    private Visitor(String baseUrl, NewContextOptions options) {
        this.baseUrl = baseUrl;
        context = Chromium.shared().newContext(options.setBaseURL(baseUrl).setViewportSize(LAPTOP_WIDTH, LAPTOP_HEIGHT)
                // A worker would go on after its page; it has tests of its own.
                .setServiceWorkers(ServiceWorkerPolicy.BLOCK));
        // A device whose clock is months away from the service's is doubted.
        context.clock().install(new Clock.InstallOptions().setTime(Date.from(TestClock.START)));
        context.setDefaultTimeout(Chromium.PATIENCE_MS);
        page = context.newPage();
        page.onConsoleMessage(this::hear);
        page.onPageError(error -> complaints.add("script failed: " + error));
        context.onResponse(this::judge);
        context.onRequestFailed(this::miss);
    }

    public static Visitor of(String baseUrl) {
        return new Visitor(baseUrl, new NewContextOptions());
    }

    public static Visitor withoutScripts(String baseUrl) {
        return new Visitor(baseUrl, new NewContextOptions().setJavaScriptEnabled(false));
    }

    public Page page() {
        return page;
    }

    /** Of the last page that was asked for. */
    public int status() {
        return status;
    }

    public List<Cookie> cookies() {
        return context.cookies();
    }

    /**
     * Goes on as somebody else, with nothing to complain about.
     *
     * @param cookies of somebody who has signed in before, or none
     */
    public Visitor become(List<Cookie> cookies) {
        // Beside scripts of the page before; an empty page would cost two processes, as ours share none with others'.
        page.navigate("/healthz");
        page.unrouteAll();
        emptyOutbox();
        context.clearCookies();
        context.addCookies(cookies);
        complaints.clear();
        page.setViewportSize(LAPTOP_WIDTH, LAPTOP_HEIGHT);
        return this;
    }

    private void emptyOutbox() {
        JsonObject what = new JsonObject();
        what.addProperty("origin", baseUrl);
        what.addProperty("storageTypes", "indexeddb");
        CDPSession session = context.newCDPSession(page);
        session.send("Storage.clearDataForOrigin", what);
        session.detach();
    }

    public Visitor signIn(String email, String password) {
        page.navigate("/sign-in");
        page.getByLabel("E-mail address").fill(email);
        page.getByLabel("Password").fill(password);
        press("Sign in");
        return this;
    }

    public void press(String button) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button).setExact(true)).click();
    }

    /** What the console says, blocked styles and scripts included, failed parts, answers of 500 and above. */
    public List<String> complaints() {
        return List.copyOf(complaints);
    }

    @Override
    public void close() {
        context.close();
    }

    private void hear(ConsoleMessage message) {
        // A refused form is meant to be answered with 4xx, and the console says so of the page itself, and of the
        // outbox asking before it.
        boolean refused = status >= 400 && status < 500;
        boolean ownStatus = refused && message.text().startsWith("Failed to load resource");
        boolean askedOutbox = message.location().contains("/log:") && message.text().contains("status of 422");
        boolean blockedWorker = message.text().startsWith("Service Worker registration blocked");
        // A browser looks for one beside an answer that is no page.
        boolean missedIcon = message.location().contains("/favicon.ico");
        boolean known = ownStatus || askedOutbox || blockedWorker || missedIcon;
        if (List.of("error", "warning").contains(message.type()) && !known) {
            complaints.add(message.type() + " on the console: " + message.text());
        }
    }

    private void judge(Response response) {
        boolean navigation = response.request().isNavigationRequest();
        if (navigation) {
            status = response.status();
        }
        boolean refusedReading = response.status() == 422
                && response.request().headers().containsKey("tankrounds-account");
        if (response.status() >= 500 || response.status() >= 400 && !navigation && !refusedReading) {
            complaints.add("answer " + response.status() + " from " + response.url());
        }
    }

    private void miss(Request request) {
        // A page that is left takes its last question along, and a download is no page.
        if (!request.failure().contains("ERR_ABORTED")) {
            complaints.add(request.url() + " failed: " + request.failure());
        }
    }
}
