package org.tankrounds.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.EmulateMediaOptions;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ForcedColors;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.demo.DemoAccess.PersonAccess;
import org.tankrounds.testing.DemoService;
import org.tankrounds.testing.Visitor;

/** What people rely on in single pages: what fits on a screen, what prints, what works without scripts. */
class PagesIT {
    /** A laptop's 1366 by 768 less the browser's own bars. */
    private static final int PAGE_HEIGHT = 600;

    private final DemoService demo = DemoService.shared();
    private Visitor visitor;

    @AfterEach
    void close() {
        if (visitor != null) {
            visitor.close();
        }
    }

    @Test
    void board_showsEightTanksOnOneScreen() {
        Page page = coordinator();
        Locator rows = page.locator(".rounds__row");
        assertThat(rows).hasCount(8);
        BoundingBox last = rows.last().boundingBox();
        assertThat(last.y + last.height).isLessThanOrEqualTo(Visitor.LAPTOP_HEIGHT);
    }

    @Test
    void logForm_fitsWithItsButton() {
        Page page = teacher(Visitor.of(demo.baseUrl()));
        page.setViewportSize(Visitor.LAPTOP_WIDTH, PAGE_HEIGHT);
        page.locator(".my-tanks__log").first().click();
        BoundingBox button = page.locator(".log__save").boundingBox();
        assertThat(button.y + button.height).isLessThanOrEqualTo(PAGE_HEIGHT);
    }

    @Test
    void board_printsTheSameTanksInTheSameOrder() throws IOException {
        Page page = coordinator();
        List<String> onScreen = page.locator(".rounds__row .rounds__tank").allInnerTexts().stream()
                .map(text -> text.replaceAll("\\s+", " ").strip()).toList();
        assertThat(tanks(print(page))).isEqualTo(onScreen);
        page.navigate("/rounds?for=car");
        assertThat(tanks(print(page))).isEqualTo(onScreen);
    }

    @Test
    void season_isDrawnWithoutScripts() {
        Page page = teacher(Visitor.withoutScripts(demo.baseUrl()));
        page.locator(".my-tanks__answer a").first().click();
        assertThat(page.locator(".chart__picture").first()).isVisible();
        assertThat(page.locator(".chart__picture .series")).not().hasCount(0);
        assertThat(page.locator("[data-explore]")).hasCount(0);
        page.getByText("The same in numbers").click();
        assertThat(page.locator(".season__numbers table")).isVisible();
    }

    @Test
    void season_canBeExploredWithScripts() {
        Page page = teacher(Visitor.of(demo.baseUrl()));
        page.locator(".my-tanks__answer a").first().click();
        page.getByText("Explore").click();
        page.locator(".explore .u-over").first().hover();
        assertThat(page.locator(".explore .u-value").first()).not().hasText("–");
        page.getByText("Explore").click();
        assertThat(page.locator(".chart__picture").first()).isVisible();
        assertThat(visitor.complaints()).isEmpty();
    }

    @Test
    void chosenStep_standsOutInTheReadersOwnColours() throws IOException {
        Page page = teacher(Visitor.of(demo.baseUrl()));
        page.locator(".my-tanks__log").first().click();
        page.emulateMedia(new EmulateMediaOptions().setForcedColors(ForcedColors.ACTIVE));
        Locator face = page.locator("label[for=ph]");
        int before = corner(face);
        page.locator("#ph").check();
        assertThat(corner(face)).as("ground of the chosen step").isNotEqualTo(before);
    }

    private Page coordinator() {
        visitor = demo.signedIn(DemoService.person(demo.first(), "coordinator"));
        return visitor.page();
    }

    private Page teacher(Visitor atTheLaptop) {
        PersonAccess teacher = DemoService.person(demo.first(), "teacher");
        visitor = atTheLaptop.signIn(teacher.email(), teacher.password());
        return visitor.page();
    }

    private static String print(Page page) throws IOException {
        try (PDDocument paper = Loader.loadPDF(page.pdf(new Page.PdfOptions().setFormat("Letter")))) {
            return new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
        }
    }

    /** School and room as they follow each other on paper. */
    private static List<String> tanks(String paper) {
        return Pattern.compile("\\w+ School \\w+(?: \\w+)? · \\d+ L").matcher(paper).results()
                .map(MatchResult::group).toList();
    }

    private static int corner(Locator locator) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(locator.screenshot())).getRGB(6, 6);
    }
}
