package org.tankrounds.browser;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;

/**
 * One way that a page can look: who sees it, at which route, and what they have done on it.
 *
 * @param route as in the list of routes, names in braces, with a query where it needs one
 * @param after what was done, in words; empty for the page as it opens
 * @param status that the last page is answered with
 */
record PageState(Guest guest, String route, String after, int status, List<Step> steps) {
    private static final String BOXES = "main form textarea, "
            + "main form input:is([type=text], [type=email], [type=password], [type=date]):not([readonly], :disabled)";

    /** No script is about to send what it asked about first. */
    private static final String AT_REST = "() => !document.querySelector('form[data-busy]')";

    private static final String WAITING = """
            async () => {
              const box = tankroundsOutbox;
              await box.remove((await box.all()).map((entry) => entry.id));
              const entry = (id) => ({ id, account: box.account, place: "Brindleford School, Room 12",
                action: location.pathname, fields: [["temperature", "fifty"]], words: "Temperature fifty °F, pH 7.2",
                kit: "", zone: "", offset: "0", keptAt: new Date().toISOString(), build: "", formVersion: "2" });
              await box.keep(entry("waits"));
              const wrong = { state: "fix", sentences: ["“fifty” cannot be read. Write one number, such as 52."] };
              await box.note(await box.keep(entry("is-wrong")), wrong);
              const sent = { state: "sent", sentAt: new Date().toISOString(), savedTo: "/tanks" };
              await box.note(await box.keep(entry("was-sent")), sent);
              await box.send();
            }
            """;

    /** Something that is done on the page. */
    interface Step {
        void on(Page page, Names names);
    }

    static PageState see(Guest guest, String route) {
        return new PageState(guest, route, "", 200, List.of());
    }

    PageState after(String what, Step... done) {
        return new PageState(guest, route, what, status, List.of(done));
    }

    PageState answered(int newStatus) {
        return new PageState(guest, route, after, newStatus, steps);
    }

    /** Whether the page says what to put right, or to wait. */
    boolean isRefused() {
        return Set.of(409, 422, 429).contains(status);
    }

    String path() {
        return route.split("\\?")[0];
    }

    /** On a page that is open at the state's address. Over when what the last step led to is there as a whole. */
    void bringAbout(Page page, Names names) {
        steps.forEach(step -> step.on(page, names));
        if (isRefused()) {
            page.locator(".error-summary:not([hidden]), .asks").first().waitFor();
        }
        page.waitForLoadState();
    }

    @Override
    public String toString() {
        return guest.name().toLowerCase() + ": " + route + (after.isEmpty() ? "" : " after " + after);
    }

    static Step fill(String label, String text) {
        return (page, names) -> page.locator("main").getByLabel(names.part(label)).first().fill(names.fillIn(text));
    }

    static Step choose(String card, String step) {
        return (page, names) -> page.locator("fieldset")
                .filter(new Locator.FilterOptions().setHasText(names.part(card))).last()
                .getByLabel(names.whole(step)).check();
    }

    static Step select(String label, String option) {
        return (page, names) -> page.locator("main").getByLabel(names.part(label)).selectOption(option);
    }

    static Step press(String button) {
        return (page, names) -> {
            page.locator("main :is(button, a, summary)")
                    .filter(new Locator.FilterOptions().setHasText(names.part(button))).first().click();
            page.waitForFunction(AT_REST);
        };
    }

    /** The form's own button, whatever it is called. */
    static Step send() {
        return (page, names) -> {
            page.locator("main form .button--main[type=submit]").last().click();
            page.waitForFunction(AT_REST);
        };
    }

    static Step chooseFile(String name, String content) {
        return (page, names) -> page.locator("main input[type=file]").setInputFiles(
                new FilePayload(name, "text/csv", content.getBytes(StandardCharsets.UTF_8)));
    }

    /** As in a browser that keeps nothing: what is sent goes at once, as without scripts. */
    static Step keepNothing() {
        return (page, names) -> page.locator("form[data-outbox]")
                .evaluate("form => form.removeAttribute('data-outbox')");
    }

    /** The outbox with one reading that waits, one that needs fixing and one that was sent; nothing answers it. */
    static Step waiting() {
        return (page, names) -> {
            page.route("**/api/ping", portal -> portal.fulfill(
                    new Route.FulfillOptions().setContentType("text/html").setBody("Welcome to the school’s Wi-Fi")));
            page.evaluate(WAITING);
        };
    }

    static Step open(String route) {
        return (page, names) -> page.navigate(names.fillIn(route));
    }

    static Step signOut() {
        return (page, names) -> {
            page.locator("[data-sign-out] button").click();
            page.locator("dialog[open]").waitFor();
        };
    }

    static Step emptyEveryBox() {
        return (page, names) -> page.locator(BOXES).all().stream()
                .filter(Locator::isVisible).forEach(Locator::clear);
    }

    /** A field that the page keeps to itself. */
    static Step set(String field, String value) {
        return (page, names) -> page.locator("main form [name=" + field + "]").last()
                .evaluate("(field, value) => { field.value = value; }", value);
    }

    /** As when nobody has touched the page for a while. */
    static Step loseTheSession() {
        return (page, names) -> {
            Cookie session = page.context().cookies().stream()
                    .filter(cookie -> cookie.name.equals("tkr")).findFirst().orElseThrow();
            session.value = "x".repeat(43);
            page.context().addCookies(List.of(session));
        };
    }

    /** The same page in a second window, where something is sent; over when the answer stands there. */
    static Step meanwhile(Step... done) {
        return (page, names) -> {
            Page other = page.context().newPage();
            other.navigate(page.url());
            other.evaluate("() => { window.unanswered = true; }");
            List.of(done).forEach(step -> step.on(other, names));
            // A window that is closed on its way to another page can keep the browser from ever answering.
            other.waitForFunction("() => !window.unanswered && document.readyState === 'complete'");
            other.close();
        };
    }
}
