package org.tankrounds.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tankrounds.App;
import org.tankrounds.demo.DemoAccess.PersonAccess;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.DemoService;
import org.tankrounds.testing.TestClock;
import org.tankrounds.testing.Visitor;

/** Follows every link to one page of each kind and presses every button there, forms sent as they stand. */
class PressEverythingIT {
    private static final String LINKS = """
            () => [...document.querySelectorAll("a[href]")].map(link => new URL(link.href))
              .filter(url => url.origin === location.origin && url.hash === "")
              .map(url => url.pathname + url.search)
            """;
    /** Opened by links that are printed, not by pages. */
    private static final Set<String> BY_LINK_ONLY = Set.of("/set-up/{link}", "/invitations/{link}");

    private final DemoService demo = DemoService.shared();
    private final Set<String> sentTo = new HashSet<>();

    /** The coordinator last: what others need would be switched off by then. */
    @Test
    void everyButton_isAnsweredAndSaysNothingOnTheConsole() {
        List<String> complaints = new ArrayList<>(comeInWithANewPrint());
        sendAFile();
        countAgain();
        driveEggs();
        handOver();
        seeAndVisit();
        putInAPastSeason();
        for (String role : List.of("teacher", "mentor", "coordinator")) {
            complaints.addAll(pressAll(DemoService.person(demo.second(), role)));
        }
        assertThat(complaints).isEmpty();
        assertThat(formRoutes()).as("where forms of pages go").isSubsetOf(sentTo);
    }

    private List<String> pressAll(PersonAccess person) {
        try (Visitor visitor = Visitor.of(demo.baseUrl())) {
            noteForms(visitor);
            visitor.signIn(person.email(), person.password());
            Set<String> seen = new HashSet<>();
            Deque<String> ahead = new ArrayDeque<>(List.of("/"));
            while (!ahead.isEmpty()) {
                String address = ahead.poll();
                if (isPage(address) && seen.add(kind(address).orElse(address))) {
                    visitor.page().navigate(address);
                    ahead.addAll(links(visitor.page()));
                    pressEachButton(visitor.page(), address);
                }
            }
            visitor.press("sign out");
            visitor.page().waitForURL(demo.baseUrl() + "/sign-in");
            return visitor.complaints();
        }
    }

    /** A print comes as an answer and is gone when its page is left: no link leads there. */
    private List<String> comeInWithANewPrint() {
        PersonAccess teacher = DemoService.person(demo.second(), "teacher");
        try (Visitor visitor = Visitor.of(demo.baseUrl())) {
            noteForms(visitor);
            visitor.signIn(teacher.email(), teacher.password());
            visitor.page().navigate("/tanks/" + demo.second().tanks().get(0).code() + "/card");
            visitor.press("Make a new card and print it");
            // A service's first paper takes a while.
            visitor.page().waitForDownload(new Page.WaitForDownloadOptions().setTimeout(30_000),
                    () -> visitor.page().getByText("Save as PDF")
                            .click(new Locator.ClickOptions().setNoWaitAfter(true)));
            String code = visitor.page().locator(".door-card__code").innerText();
            visitor.press("sign out");
            visitor.page().waitForURL(demo.baseUrl() + "/sign-in");
            visitor.page().navigate("/card/" + code);
            visitor.page().getByText("Español").click();
            visitor.page().getByText("English").click();
            visitor.press("Open our tank");
            assertThat(visitor.page().url()).endsWith("/log");
            return visitor.complaints();
        }
    }

    /** A file has to be chosen, which no button does. */
    private void sendAFile() {
        PersonAccess teacher = DemoService.person(demo.second(), "teacher");
        Browserless browser = new Browserless(demo.baseUrl());
        browser.signIn(teacher.email(), teacher.password());
        String files = "/tanks/" + demo.second().tanks().get(0).code() + "/files";
        browser.get(files);
        assertThat(browser.upload(files, "january.csv", PageStates.clearFile().getBytes(StandardCharsets.UTF_8))
                .status()).isEqualTo(303);
    }

    /** What was written down can be taken back. */
    private void countAgain() {
        PersonAccess coordinator = DemoService.person(demo.second(), "coordinator");
        Browserless browser = new Browserless(demo.baseUrl());
        browser.signIn(coordinator.email(), coordinator.password());
        String count = "/season/" + demo.second().seasons().get(0).code() + "/tanks/"
                + demo.second().tanks().get(0).code() + "/count";
        browser.get(count + "/hatched");
        assertThat(browser.post(count + "/hatched", "fish", "90", "method", "one_by_one", "day",
                LocalDate.ofInstant(TestClock.START, ZoneOffset.UTC).toString()).status()).isEqualTo(303);
    }

    /** A temperature on the road and a receipt can be taken back; a day without a receipt is called off. */
    private void driveEggs() {
        PersonAccess coordinator = DemoService.person(demo.second(), "coordinator");
        Browserless browser = new Browserless(demo.baseUrl());
        browser.signIn(coordinator.email(), coordinator.password());
        String runs = "/season/" + demo.second().seasons().get(0).code() + "/egg-days";
        String today = LocalDate.ofInstant(TestClock.START, ZoneOffset.UTC).toString();
        browser.get(runs + "/new");
        // So far on that there are fish to look at and to measure.
        String run = browser.post(runs, "day", today, "starts_at", "07:30", "thermal_units", "600", "thermal_units_in",
                "Cel.d", "method", "weighed").location().replace("/stops", "");
        String shown = browser.get(run + "/stops").body()
                .replaceAll("(?s).*name=\"shown\" value=\"([^\"]*)\".*", "$1");
        List<String> tanks = List.of(demo.second().tanks().get(0).code(), demo.second().tanks().get(1).code());
        browser.post(run + "/stops", "shown", shown, "eggs-" + tanks.get(0), "100", "eggs-" + tanks.get(1), "100");
        browser.post(run + "/checks", "cooler", "8", "cooler_where", "road");
        for (String tank : tanks) {
            browser.get(run + "/tanks/" + tank);
            assertThat(browser.post(run + "/tanks/" + tank + "/receipt", "eggs", "100", "method", "weighed",
                    "received_on", today, "class_label", "period 3", "adult", "teacher").status()).isEqualTo(303);
        }
    }

    /** A link to what was frozen can be withdrawn. */
    private void handOver() {
        PersonAccess coordinator = DemoService.person(demo.second(), "coordinator");
        Browserless browser = new Browserless(demo.baseUrl());
        browser.signIn(coordinator.email(), coordinator.password());
        String form = browser.get("/season/" + demo.second().seasons().get(0).code() + "/summary/freeze").body()
                .replaceAll("(?s).*action=\"([^\"]*/summary/freeze[^\"]*)\".*", "$1");
        String version = browser.post(form).location();
        browser.get(version);
        assertThat(browser.post(version + "/links", "reader", "State office", "days", "14").status()).isEqualTo(200);
    }

    /** What was seen and who came can be taken back. */
    private void seeAndVisit() {
        PersonAccess coordinator = DemoService.person(demo.second(), "coordinator");
        Browserless browser = new Browserless(demo.baseUrl());
        browser.signIn(coordinator.email(), coordinator.password());
        String today = LocalDate.ofInstant(TestClock.START, ZoneOffset.UTC).toString();
        for (int i = 0; i < 2; i++) {
            String tank = "/tanks/" + demo.second().tanks().get(i).code();
            browser.get(tank + "/calendar");
            assertThat(browser.post(tank + "/calendar", "milestone", "hatch", "day", today, "asked_day", today)
                    .status()).isEqualTo(303);
            browser.get(tank + "/visits");
            assertThat(browser.post(tank + "/visits", "deeds", "looked", "day", today).status()).isEqualTo(303);
        }
    }

    /** So that it can be taken back. */
    private void putInAPastSeason() {
        PersonAccess coordinator = DemoService.person(demo.second(), "coordinator");
        Browserless browser = new Browserless(demo.baseUrl());
        browser.signIn(coordinator.email(), coordinator.password());
        browser.get("/years/import");
        String[] season = {"name", "Long ago", "ended_on", "2020-06-30", "sheet", "school,eggs\nThistle School,100"};
        String looked = browser.post("/years/import", season).body()
                .replaceAll("(?s).*name=\"looked\" value=\"(\\w+)\".*", "$1");
        assertThat(browser.post("/years/import", season[0], season[1], season[2], season[3], season[4], season[5],
                "looked", looked).status()).isEqualTo(303);
    }

    private void noteForms(Visitor visitor) {
        visitor.page().onRequest(request -> {
            if (request.method().equals("POST")) {
                kind(URI.create(request.url()).getPath()).ifPresent(sentTo::add);
            }
        });
    }

    /** Pressing may bring new buttons and take others away; one that counts on is the same one. */
    private static void pressEachButton(Page page, String address) {
        Set<String> pressed = new HashSet<>();
        Optional<Locator> next = nextButton(page, pressed);
        while (next.isPresent()) {
            next.get().click();
            // What a script sends in its own time is not to be cut off.
            page.waitForFunction("() => !document.querySelector('form[data-busy]')");
            page.navigate(address);
            next = nextButton(page, pressed);
        }
    }

    private static Optional<Locator> nextButton(Page page, Set<String> pressed) {
        return page.locator("main button:not([tabindex='-1'])").all().stream()
                .filter(button -> button.isVisible() && pressed.add(button.innerText().replaceAll("\\d+", "N")))
                .findFirst();
    }

    private static List<String> links(Page page) {
        return ((List<?>) page.evaluate(LINKS)).stream().map(String::valueOf).toList();
    }

    private static boolean isPage(String address) {
        return !address.matches(".*\\.(csv|xlsx|pdf|json|ics|zip)(\\?.*)?");
    }

    private Set<String> formRoutes() {
        return routes("POST").stream().map(App.Route::path).filter(path -> !BY_LINK_ONLY.contains(path))
                .collect(Collectors.toSet());
    }

    /** The most exact route that an address belongs to, with the names in its query. */
    private Optional<String> kind(String address) {
        String path = address.split("\\?")[0];
        String query = address.contains("?") ? "?" + address.split("\\?")[1].replaceAll("=[^&]*", "") : "";
        return routes("GET", "POST").stream().map(App.Route::path)
                .filter(route -> path.matches(route.replaceAll("\\{\\w+}", "[^/]+")))
                .min((a, b) -> Integer.compare(names(a), names(b)))
                .map(route -> route + query);
    }

    private static int names(String route) {
        return route.split("\\{", -1).length;
    }

    private List<App.Route> routes(String... methods) {
        return demo.app().routes().stream()
                .filter(route -> List.of(methods).contains(route.method()))
                .filter(route -> !route.path().startsWith("/api/"))
                .toList();
    }
}
