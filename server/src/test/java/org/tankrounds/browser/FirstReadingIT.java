package org.tankrounds.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.NavigateOptions;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.WaitUntilState;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.DemoService;
import org.tankrounds.testing.Visitor;

/** Four minutes between two lessons: what a full reading asks of somebody who has never seen the form. */
class FirstReadingIT {
    private static final int MOST_ACTS = 12;
    private static final double MOST_SECONDS = 60;
    private static final int MOST_BYTES = 150_000;
    private static final int MOST_SCRIPT_BYTES = 30_000;

    /**
     * Counts what hands do, and adds the time that it takes by the keystroke-level model (Card, Moran and Newell 1980,
     * Communications of the ACM 23: 396–410; times from memory): of somebody who hunts for each key, and has to think
     * before each act.
     */
    private static final class Hands {
        private static final double THINK_S = 1.35;
        private static final double POINT_S = 1.10;
        private static final double CLICK_S = 0.20;
        private static final double TO_THE_KEYS_S = 0.40;
        private static final double HUNTED_KEY_S = 1.20;

        private final Page page;
        private int acts;
        private double seconds;

        Hands(Page page) {
            this.page = page;
        }

        void click(Locator what) {
            what.click();
            acts++;
            seconds += THINK_S + POINT_S + CLICK_S;
        }

        void type(String text) {
            page.keyboard().type(text);
            acts++;
            seconds += THINK_S + 2 * TO_THE_KEYS_S + text.length() * HUNTED_KEY_S;
        }
    }

    @Test
    void fullReading_takesTwelveActs_andLessThanAMinute() {
        DemoService demo = DemoService.shared();
        try (Visitor teacher = demo.signedIn(DemoService.person(demo.second(), "teacher"))) {
            Page page = openForm(teacher);
            Hands hands = new Hands(page);

            hands.click(page.getByLabel("Temperature"));
            hands.type("11.5");
            hands.click(page.getByLabel("Fish found dead"));
            hands.type("0");
            hands.click(page.getByLabel("Feed given"));
            hands.type("2");
            hands.click(step(page, "pH", "7.2"));
            hands.click(step(page, "Ammonia", "0.2"));
            hands.click(step(page, "Nitrite", "0.1"));
            hands.click(step(page, "Nitrate", "10"));
            hands.click(page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Keep this reading")));

            assertThat(page.locator(".done")).containsText("Saved 9:00");
            assertThat(page.locator(".tank__log tbody tr").first().innerText())
                    .contains("11.5 °C", "pH 7.2", "ammonia 0.2", "nitrite 0.1", "nitrate 10", "found dead 0", "2 g");
            assertThat(hands.acts).isLessThanOrEqualTo(MOST_ACTS);
            assertThat(hands.seconds).isLessThan(MOST_SECONDS);
        }
    }

    /** As it comes over the school's Wi-Fi the first time: page, styles, scripts and pictures. */
    @Test
    void form_isSmallEnoughForBadWiFi() {
        DemoService demo = DemoService.shared();
        try (Visitor teacher = demo.signedIn(DemoService.person(demo.second(), "teacher"))) {
            Page page = openForm(teacher);
            page.context().newCDPSession(page).send("Network.clearBrowserCache");
            List<Response> loaded = new ArrayList<>();
            page.onResponse(loaded::add);
            page.navigate(page.url(), new NavigateOptions().setWaitUntil(WaitUntilState.NETWORKIDLE));

            assertThat(loaded.stream().mapToInt(one -> one.request().sizes().responseBodySize).sum())
                    .isBetween(1_000, MOST_BYTES);
            assertThat(loaded.stream().filter(one -> one.request().resourceType().equals("script"))
                    .mapToInt(one -> one.body().length).sum()).isBetween(1_000, MOST_SCRIPT_BYTES);
        }
    }

    private static Page openForm(Visitor teacher) {
        Page page = teacher.page();
        page.navigate("/tanks");
        if (!page.url().matches(".*/tanks/\\w+")) {
            page.locator(".my-tanks__answer a").first().click();
        }
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Put in a reading")).click();
        assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                .hasText("Today’s reading");
        return page;
    }

    private static Locator step(Page page, String card, String step) {
        return page.getByRole(AriaRole.GROUP, new Page.GetByRoleOptions().setName(Pattern.compile("^" + card)))
                .getByLabel(step, new Locator.GetByLabelOptions().setExact(true));
    }
}
