package org.tankrounds.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tankrounds.testing.DemoService;
import org.tankrounds.testing.Visitor;
import org.tankrounds.words.Language;

/** Every page once more, in Spanish: for what other words can break, at the width that is hardest. */
class SpanishIT {
    private static final int NARROWEST = 320;
    private static final int HEIGHT = 844;
    @TempDir
    private static Path folder;

    private static Guests guests;

    @BeforeAll
    static void gather() {
        DemoService.shared();
        guests = new Guests(folder, Language.SPANISH);
    }

    @AfterAll
    static void leave() {
        if (guests != null) {
            guests.close();
        }
    }

    /**
     * As they open, and where they say what is wrong; what a sound step leads to is a page that opens somewhere else.
     */
    static List<PageState> states() {
        return PageStates.all().stream()
                .filter(state -> state.steps().isEmpty() || state.isRefused()).toList();
    }

    @ParameterizedTest
    @MethodSource("states")
    void page_inSpanish_canBeUsedByEverybody(PageState state) {
        Visitor visitor = guests.visit(state.guest());
        Page page = visitor.page();
        page.navigate(guests.address(state));
        state.bringAbout(page, guests.names());

        assertThat(visitor.status()).isEqualTo(state.status());
        assertThat(page.locator("html").getAttribute("lang")).isEqualTo(Language.SPANISH.tag());
        List<String> faults = faults(state, page);
        faults.addAll(visitor.complaints());
        assertThat(faults).as(state.toString()).isEmpty();
    }

    private static List<String> faults(PageState state, Page page) {
        Scanner scanner = new Scanner(page);
        List<String> faults = new ArrayList<>();
        if (state.isRefused()) {
            faults.addAll(scanner.check("failure"));
        }
        page.setViewportSize(NARROWEST, HEIGHT);
        // Here the narrow layout is looked at by all rules, which AccessibilityIT does with the wide one,
        // and with refusals.
        if (state.steps().isEmpty()) {
            faults.addAll(scanner.violationsBesideColour());
        }
        faults.addAll(scanner.check("smallTargets"));
        faults.addAll(scanner.check("overflow"));
        return faults;
    }
}
