package org.tankrounds.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions.HasTextOptions;
import com.microsoft.playwright.options.AriaRole;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.MethodOrderer.OrderAnnotation;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.tankrounds.demo.DemoAccess.PersonAccess;
import org.tankrounds.testing.DemoService;
import org.tankrounds.testing.Visitor;

/** The main job from both ends: a class writes down bad water, and the coordinator's board says to go. */
@TestMethodOrder(OrderAnnotation.class)
class TeacherToBoardIT {
    /** What the board promises to whoever looks at it. */
    private static final double FRESH_WITHIN_MS = 2000;
    /** A service that has just started has its forecasts to make. */
    private static final double PATIENCE_MS = 20_000;
    private static final Pattern SAVED = Pattern.compile("^Saved 9:00.");

    private DemoService demo;
    private Visitor coordinator;

    @BeforeEach
    void openTheBoard() {
        demo = DemoService.shared();
        coordinator = demo.signedIn(DemoService.person(demo.first(), "coordinator"));
        assertThat(coordinator.page()).hasURL(demo.baseUrl() + "/rounds");
    }

    @AfterEach
    void close() {
        if (coordinator != null) {
            coordinator.close();
        }
    }

    @Test
    @Order(2)
    void aReadingOfBadWater_isOnTheOpenBoardWithinTwoSeconds() {
        PersonAccess teacher = teacher(2);
        try (Visitor classroom = Visitor.of(demo.baseUrl())) {
            postBadWater(classroom, teacher, FRESH_WITHIN_MS);
            assertThat(classroom.complaints()).isEmpty();
        }
        assertThat(coordinator.complaints()).isEmpty();
    }

    @Test
    @Order(1)
    void aReadingOfBadWater_arrivesWithoutScripts() {
        PersonAccess teacher = teacher(1);
        try (Visitor classroom = Visitor.withoutScripts(demo.baseUrl())) {
            postBadWater(classroom, teacher, PATIENCE_MS);
        }
    }

    /** The first one's tanks are in trouble already; those of the others can still climb. */
    private PersonAccess teacher(int which) {
        return demo.first().people().stream()
                .filter(person -> person.role().equals("teacher")).skip(which).findFirst().orElseThrow();
    }

    private void postBadWater(Visitor classroom, PersonAccess teacher, double withinMs) {
        Page page = classroom.signIn(teacher.email(), teacher.password()).page();
        assertThat(page).hasURL(demo.baseUrl() + "/tanks");
        String tank = calmest(page);
        Locator place = place(tank);
        String before = place.innerText();

        page.navigate("/tanks/" + tank + "/log");
        page.getByLabel("Temperature").fill("52");
        choose(page, "Scale", "°F");
        choose(page, "pH", "8.4");
        choose(page, "Ammonia", "10");
        page.getByLabel("Class or period").fill("period 6");
        classroom.press("Keep this reading");

        assertThat(place).not().hasText(before, new HasTextOptions().setTimeout(withinMs));
        assertThat(Integer.parseInt(place.innerText())).isLessThan(Integer.parseInt(before));
        assertThat(row(tank)).containsText("ammonia");
        assertThat(page.getByRole(AriaRole.STATUS)).containsText(SAVED);
        assertThat(page.locator(".tank__log").getByRole(AriaRole.ROW)
                .filter(new Locator.FilterOptions().setHasText("period 6"))).hasCount(1);
    }

    /** The teacher's tank that stands last on the board: it has the most room to climb. */
    private String calmest(Page page) {
        List<Object> addresses = List.copyOf((List<?>) page.locator(".my-tanks__answer a")
                .evaluateAll("links => links.map(link => link.getAttribute('href').split('/').pop())"));
        return addresses.stream().map(String::valueOf)
                .max(Comparator.comparing(tank -> Integer.valueOf(place(tank).innerText()))).orElseThrow();
    }

    private Locator row(String tank) {
        return coordinator.page().getByRole(AriaRole.ROW)
                .filter(new Locator.FilterOptions().setHas(coordinator.page().locator("#tank-" + tank)));
    }

    private Locator place(String tank) {
        return row(tank).getByRole(AriaRole.CELL).first();
    }

    private static void choose(Page page, String card, String step) {
        page.getByRole(AriaRole.GROUP, new Page.GetByRoleOptions().setName(Pattern.compile("^" + card)))
                .getByLabel(step, new Locator.GetByLabelOptions().setExact(true)).check();
    }
}
