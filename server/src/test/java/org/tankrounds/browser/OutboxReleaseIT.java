package org.tankrounds.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.release.Approval;
import org.tankrounds.release.ApprovalRepository;
import org.tankrounds.release.Load;
import org.tankrounds.release.PlanRepository;
import org.tankrounds.release.ReleasePlan;
import org.tankrounds.release.Site;
import org.tankrounds.release.SiteRepository;
import org.tankrounds.release.Species;
import org.tankrounds.season.CountEntry;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.CountRepository;
import org.tankrounds.season.LotEdits;
import org.tankrounds.season.Season;
import org.tankrounds.season.SeasonRepository;
import org.tankrounds.season.SeenOn;

/** At the stream there is no Wi-Fi: what was released waits on the phone, and is counted once. */
class OutboxReleaseIT extends AtADevice {
    private Season season;
    private String plan;
    private String form;

    @BeforeEach
    void plan() {
        int planId = app.transactions().inChapter(cast.chapterId(), this::plan);
        plan = "/release/plans/" + planId;
        form = plan + "/tanks/" + cast.tankA().code();
    }

    @Test
    void aReleaseWithoutWiFi_isCountedOnce_whenThereIsSome() {
        openForm();
        device.offline(true).page().reload();
        fill("12");
        assertThat(device.line()).containsText("Kept on this device (1)");
        assertThat(device.page().getByLabel("Fish released")).hasValue("");
        device.offline(false);

        device.page().waitForCondition(() -> released().size() == 1);
        assertThat(device.line()).containsText("Sent");
        assertThat(released().get(0).fish()).isEqualTo(12);
        device.page().navigate("/outbox");
        assertThat(device.page().locator("[data-sent] [data-place]"))
                .hasText("Release from Alderwhistle School, Room 12");
        assertThat(device.page().locator("[data-forms]")).containsText("Release from Alderwhistle School, Room 12");
        device.page().navigate(plan);
        assertThat(device.page().locator("h1")).hasText("Released: 12 fish at Lower bridge");
    }

    @Test
    void whatCannotBe_waitsToBePutRight_andLosesNothing() {
        openForm();
        device.offline(true).page().reload();
        device.page().getByLabel("Lengths of some").fill("44 46");
        fill("9999");
        assertThat(device.line()).containsText("Kept on this device (1)");
        device.offline(false);

        device.page().navigate("/outbox");
        device.page().getByText("Open and fix").click();
        assertThat(device.page().locator("[data-outbox-fix]"))
                .containsText("By count only 200 fish were there at that time.");
        assertThat(device.page().getByLabel("Lengths of some")).hasValue("44 46");
        assertThat(device.page().getByLabel("Fish released")).hasValue("9999");
        fill("20");
        device.page().waitForCondition(() -> released().size() == 1);
        assertThat(released().get(0).fish()).isEqualTo(20);
    }

    /** What another phone wrote down meanwhile is asked about, and nothing is counted before the answer. */
    @Test
    void whatMayBeTheSameFish_waitsForAnAnswer() {
        openForm();
        fill("12");
        device.page().waitForCondition(() -> released().size() == 1);
        device.page().navigate(form);
        device.offline(true).page().reload();
        fill("12");
        assertThat(device.line()).containsText("Kept on this device (1)");
        device.offline(false);

        device.page().navigate("/outbox");
        device.page().getByText("Open and fix").click();
        assertThat(device.page().locator("[data-outbox-fix]"))
                .containsText("If these are other fish, keep the form once more");
        device.page().locator(".log__save").click();
        device.page().waitForCondition(() -> !device.page().locator("[name=asked_entries]").inputValue().isEmpty());
        assertThat(device.page().getByLabel("Fish released")).hasValue("12");
        assertThat(released()).hasSize(1);
        device.page().locator(".log__save").click();
        device.page().waitForCondition(() -> released().size() == 2);
    }

    /** A day that is not the plan's is asked about too, and what was typed stays. */
    @Test
    void aDayThatIsNotThePlans_waitsForAnAnswer() {
        openForm();
        device.offline(true).page().reload();
        device.page().locator("details.log__more:has([name=day]) > summary").click();
        String early = LocalDate.ofInstant(Instant.now(), cast.chapter().zone()).minusDays(4).toString();
        device.page().locator("[name=day]").fill(early);
        fill("12");
        assertThat(device.line()).containsText("Kept on this device (1)");
        device.offline(false);

        device.page().navigate("/outbox");
        device.page().getByText("Open and fix").click();
        assertThat(device.page().locator("[data-outbox-fix]")).containsText("Keep once more if that is right.");
        device.page().locator(".log__save").click();
        device.page().waitForCondition(() -> !device.page().locator("[name=asked_entries]").inputValue().isEmpty());
        assertThat(device.page().getByLabel("Fish released")).hasValue("12");
        assertThat(device.page().locator("[name=day]")).hasValue(early);
        assertThat(released()).isEmpty();
        device.page().locator(".log__save").click();
        device.page().waitForCondition(() -> released().size() == 1);
    }

    /** Opening the plan while there is Wi-Fi is enough. */
    @Test
    void whoeverLookedAtThePlan_hasItsFormsAtHand() {
        device.signIn(cast.teacherA()).page().navigate(plan);
        device.page().waitForCondition(() -> (boolean) device.page().evaluate(
                "async path => Boolean(await caches.match(path))", form));
        device.offline(true).page().navigate(form);
        assertThat(device.page().locator("h1")).hasText("Release from Alderwhistle School, Room 12");
    }

    private void openForm() {
        device.signIn(cast.teacherA()).page().navigate(form);
        device.page().waitForCondition(() -> (boolean) device.page().evaluate(
                "async path => Boolean(await caches.match(path))", form));
    }

    private void fill(String fish) {
        device.page().getByLabel("Fish released").fill(fish);
        device.page().locator(".log__save").click();
        device.page().waitForFunction("() => !document.querySelector('[data-busy]')");
    }

    private List<CountEntry> released() {
        return app.transactions().inChapter(cast.chapterId(),
                tx -> new CountRepository().list(tx, cast.chapterId(), season.seasonId()));
    }

    /** In a season that runs today, with eggs of its own. */
    private int plan(DSLContext tx) {
        LocalDate today = LocalDate.ofInstant(Instant.now(), cast.chapter().zone());
        season = new SeasonRepository().add(tx, cast.chapterId(),
                new Season.Details("now", today.minusDays(100), today.plusDays(100),
                        Optional.empty(), OptionalInt.empty()));
        new LotEdits(new DirtyTanks()).add(tx, cast.chapterId(), season.seasonId(), cast.tankA().tankId(),
                new LotEdits.Details(200, today.minusDays(90).atStartOfDay(cast.chapter().zone()).toInstant(),
                        OptionalDouble.of(180), Optional.empty(), Optional.empty(), SeenOn.NOTHING,
                        CountMethod.ONE_BY_ONE, 0), Instant.now());
        int site = new SiteRepository().add(tx, cast.chapterId(), new Site.Details(
                "Lower bridge", "Quill Brook", Optional.empty(), Optional.empty(), OptionalDouble.empty()));
        int approval = new ApprovalRepository().add(tx, cast.chapterId(), site, new Approval.Details("P-8",
                "State fish agency", Species.RAINBOW_TROUT, today.minusDays(9), today.plusDays(9), 400,
                Optional.empty(), Optional.empty()));
        return new PlanRepository().add(tx, cast.chapterId(), UUID.randomUUID(), new ReleasePlan(0, season.seasonId(),
                approval, new ReleasePlan.Details(Instant.now(), 1, OptionalDouble.of(11), OptionalDouble.of(8),
                        OptionalDouble.empty(), OptionalDouble.empty(), true, 12, 3, Map.of(), Optional.empty(),
                        List.of(new Load(cast.tankA().tankId(), 60, OptionalDouble.of(45), OptionalDouble.empty(), 2,
                                20))), Optional.empty()), cast.coordinator().personId(), Instant.now());
    }
}
