package org.tankrounds.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.release.Site;
import org.tankrounds.release.SiteRepository;
import org.tankrounds.release.StreamCheck;
import org.tankrounds.release.StreamCheckRepository;
import org.tankrounds.stream.StreamGroup;

/** A tally of animals at a stream without Wi-Fi waits on the phone, and is stored once. */
class OutboxStreamIT extends AtADevice {
    private int site;
    private String form;

    @BeforeEach
    void site() {
        site = app.transactions().inChapter(cast.chapterId(), tx -> new SiteRepository().add(tx, cast.chapterId(),
                new Site.Details("Lower bridge", "Quill Brook", Optional.empty(), Optional.empty(),
                        OptionalDouble.empty())));
        form = "/release/sites/" + site + "/checks/new";
        device.signIn(cast.teacherA()).page().navigate("/release/sites/" + site);
    }

    /** Whoever looked at the site's page has its form at hand. */
    @Test
    void aCheckWithoutWiFi_isStoredOnce_asOfWhenItWasMade() {
        awayWithTheForm();
        Instant made = Instant.now();
        device.page().getByLabel("Temperature").fill("8.4");
        device.page().getByLabel("flat-headed mayfly").fill("20");
        keep();
        assertThat(device.line()).containsText("Kept on this device (1)");
        assertThat(device.page().getByLabel("flat-headed mayfly")).hasValue("");
        device.page().navigate("/outbox");
        assertThat(device.page().locator("[data-heading]")).hasText("1 thing waits on this device");
        device.offline(false);

        device.page().waitForCondition(() -> stored().size() == 1);
        StreamCheck check = stored().get(0);
        assertThat(check.temperatureC()).hasValue(8.4);
        assertThat(check.counts()).containsEntry(StreamGroup.FLAT_MAYFLY, 20).hasSize(1);
        assertThat(Duration.between(made, check.at()).abs()).isLessThan(Duration.ofMinutes(1));
        device.page().navigate("/outbox");
        assertThat(device.page().locator("[data-sent] [data-place]")).hasText("Stream check at Lower bridge");
        assertThat(device.page().locator("[data-forms]")).containsText("Stream check at Lower bridge");
        device.page().locator("[data-sent] [data-open]").click();
        assertThat(device.page().locator("main")).containsText("8.4");
    }

    @Test
    void whatCannotBe_waitsToBePutRight_andLosesNothing() {
        awayWithTheForm();
        device.page().getByLabel("water penny").fill("7");
        device.page().getByLabel("flat-headed mayfly").fill("a few");
        keep();
        device.offline(false);

        device.page().navigate("/outbox");
        device.page().getByText("Open and fix").click();
        assertThat(device.page().locator("[data-outbox-fix]")).containsText("Give a whole number up to 10,000");
        assertThat(device.page().getByLabel("water penny")).hasValue("7");
        device.page().getByLabel("flat-headed mayfly").fill("3");
        keep();
        device.page().waitForCondition(() -> stored().size() == 1);
        assertThat(stored().get(0).counts()).containsEntry(StreamGroup.WATER_PENNY, 7)
                .containsEntry(StreamGroup.FLAT_MAYFLY, 3);
    }

    private void awayWithTheForm() {
        device.page().waitForCondition(() -> (boolean) device.page().evaluate(
                "async path => Boolean(await caches.match(path))", form));
        device.offline(true).page().navigate(form);
        assertThat(device.page().locator("h1")).hasText("Stream check at Lower bridge");
    }

    private void keep() {
        device.page().locator(".log__save").click();
        device.page().waitForFunction("() => !document.querySelector('[data-busy]')");
    }

    private List<StreamCheck> stored() {
        return app.transactions().inChapter(cast.chapterId(),
                tx -> new StreamCheckRepository().list(tx, cast.chapterId(), site));
    }
}
