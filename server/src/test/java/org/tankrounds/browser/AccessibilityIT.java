package org.tankrounds.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.EmulateMediaOptions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tankrounds.App;
import org.tankrounds.testing.DemoService;
import org.tankrounds.testing.Visitor;
import org.tankrounds.web.Role;

/** Every page in every state, for eyes, keyboards and readers, on laptop and phone, by day and by night. */
class AccessibilityIT {
    private static final int PHONE_WIDTH = 390;
    private static final int PHONE_HEIGHT = 844;
    /** A laptop's page at 400 %: WCAG 2.2, 1.4.10. */
    private static final int NARROWEST = 320;

    @TempDir
    private static Path folder;

    private static Guests guests;

    @BeforeAll
    static void gather() {
        DemoService.shared();
        guests = new Guests(folder);
    }

    @AfterAll
    static void leave() {
        if (guests != null) {
            guests.close();
        }
    }

    static List<PageState> states() {
        return PageStates.all();
    }

    @ParameterizedTest
    @MethodSource("states")
    void page_canBeUsedByEverybody(PageState state) {
        Visitor visitor = guests.visit(state.guest());
        visitor.page().navigate(guests.address(state));
        state.bringAbout(visitor.page(), guests.names());

        assertThat(visitor.status()).isEqualTo(state.status());
        List<String> faults = faults(state, visitor);
        faults.addAll(visitor.complaints());
        assertThat(faults).as(state.toString()).isEmpty();
    }

    @Test
    void everyPageRoute_isAmongTheStates() {
        Set<String> shown = states().stream().map(PageState::path)
                .map(path -> path.replaceAll("\\{\\w+}", "{}")).collect(Collectors.toSet());
        List<String> missing = DemoService.shared().app().routes().stream().filter(AccessibilityIT::isPage)
                .map(App.Route::path)
                .filter(path -> !shown.contains(path.replaceAll("\\{\\w+}", "{}"))).toList();
        assertThat(missing).as("page routes without a state in PageStates").isEmpty();
    }

    private static List<String> faults(PageState state, Visitor visitor) {
        Page page = visitor.page();
        Scanner scanner = new Scanner(page);
        List<String> faults = new ArrayList<>();
        if (state.isRefused()) {
            faults.addAll(scanner.check("failure"));
        }
        if (state.steps().isEmpty()) {
            faults.addAll(scanner.walk());
        }
        page.setViewportSize(Visitor.LAPTOP_WIDTH, Visitor.LAPTOP_HEIGHT);
        faults.addAll(by("laptop", state.isRefused() ? scanner.violationsBesideColour() : scanner.violations()));
        faults.addAll(by("laptop", sizes(scanner)));
        if (state.isRefused()) {
            faults.addAll(by("laptop", scanner.violationsOfColourInWhatIsSaid()));
            faults.addAll(byNight(page, scanner::violationsOfColourInWhatIsSaid));
        } else if (state.steps().isEmpty()) {
            faults.addAll(byNight(page, scanner::violationsOfColour));
        }
        page.setViewportSize(PHONE_WIDTH, PHONE_HEIGHT);
        faults.addAll(by("phone", sizes(scanner)));
        page.setViewportSize(NARROWEST, PHONE_HEIGHT);
        faults.addAll(scanner.check("overflow"));
        return faults;
    }

    /** The rules go over the narrow layout in SpanishIT. */
    private static List<String> sizes(Scanner scanner) {
        List<String> faults = new ArrayList<>(scanner.check("smallTargets"));
        faults.addAll(scanner.check("overflow"));
        return faults;
    }

    /** Colours are the same at every width, and what a sound step brings has those of the page. */
    private static List<String> byNight(Page page, Supplier<List<String>> look) {
        page.emulateMedia(new EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        List<String> faults = by("night", look.get());
        page.emulateMedia(new EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
        return faults;
    }

    private static List<String> by(String view, List<String> faults) {
        return faults.stream().map(fault -> view + ": " + fault).toList();
    }

    /** People's own, and no file that is downloaded or read by a script. */
    private static boolean isPage(App.Route route) {
        Set<String> people = Set.of(Role.ANYBODY, Role.COORDINATOR, Role.MENTOR, Role.TEACHER).stream()
                .map(Role::name).collect(Collectors.toCollection(TreeSet::new));
        return route.method().equals("GET") && !route.path().startsWith("/api/")
                && !route.path().matches(".*\\.(csv|xlsx|pdf|json|ics|zip)|/handed-over/\\{link}/.+")
                && route.roles().stream().anyMatch(role -> people.contains(role.toString()));
    }
}
