package org.tankrounds.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.demo.DemoAccess.PersonAccess;
import org.tankrounds.testing.DemoService;
import org.tankrounds.testing.Visitor;

/** What is printed by the browser's own command, and a month that is typed in with the keyboard. */
class PaperIT {
    private static final String PASTE = """
            (box, text) => {
              const data = new DataTransfer();
              data.setData("text/plain", text);
              box.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }));
            }
            """;

    private final DemoService demo = DemoService.shared();
    private final String tank = "/tanks/" + demo.second().tanks().get(0).code();
    private Visitor visitor;

    @AfterEach
    void leave() {
        visitor.close();
    }

    @ParameterizedTest
    @CsvSource({"Letter, sheet?month=2026-01", "A4, sheet?month=2026-01", "Letter, what-to-do", "A4, what-to-do"})
    void sheets_printOnOnePage_withTheSameRows(String size, String sheet) throws IOException {
        Page page = teacher(Visitor.of(demo.baseUrl()), "/" + sheet);
        List<String> rows = page.locator("article tbody tr").allInnerTexts().stream().map(PaperIT::closed).toList();

        try (PDDocument paper = Loader.loadPDF(page.pdf(new Page.PdfOptions().setFormat(size)))) {
            assertThat(paper.getNumberOfPages()).isEqualTo(1);
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            assertThat(rows).hasSizeGreaterThan(5);
            assertThat(stripper.getText(paper).lines().map(PaperIT::closed).toList()).containsAll(rows);
        }
    }

    @Test
    void enterGoesDown_andABlockOfASpreadsheetSpreads() {
        Page page = teacher(Visitor.of(demo.baseUrl()), "/month?month=2025-12");
        page.locator("#d01_temperature").fill("52");
        page.keyboard().press("Enter");
        assertThat(page.locator("#d02_temperature")).isFocused();
        page.keyboard().press("Shift+Enter");
        assertThat(page.locator("#d01_temperature")).isFocused();

        page.locator("#d03_temperature").evaluate(PASTE, "51\t0\t2.5\n\n52.5\t1\t\n");
        assertThat(page.locator("#d03_feed")).hasValue("2.5");
        assertThat(page.locator("#d05_deaths")).hasValue("1");
        assertThat(page.locator("[data-month-line]")).hasText("2 rows filled in.");

        page.locator("#d31_temperature").evaluate(PASTE, "51\n52\n");
        assertThat(page.locator("#d31_temperature")).hasValue("51");
        assertThat(page.locator("[data-month-line]")).containsText("1 row did not fit");
    }

    @Test
    void withoutAConnection_nothingIsSentAndNothingIsLost() {
        Page page = teacher(Visitor.of(demo.baseUrl()), "/month?month=2025-12");
        page.locator("#d06_temperature").fill("52");
        page.context().setOffline(true);
        keep(page).click();
        assertThat(page.locator("[data-month-line]")).containsText("nothing was sent, and everything is still here");
        assertThat(page.locator("#d06_temperature")).hasValue("52");

        page.context().setOffline(false);
        keep(page).click();
        assertThat(page.locator(".done")).containsText("1 reading is stored.");
    }

    @Test
    void withoutScripts_aMonthIsTakenAllTheSame() {
        Page page = teacher(Visitor.withoutScripts(demo.baseUrl()), "/month?month=2025-12");
        page.locator("#d08_temperature").fill("fifty");
        page.locator("#d09_temperature").fill("51");
        keep(page).click();
        assertThat(page.locator(".error-summary")).containsText("Mon 8: Temperature: “fifty” cannot be read");

        page.locator("#d08_temperature").fill("50");
        keep(page).click();
        assertThat(page.locator(".done")).containsText("2 readings are stored.");
    }

    private static Locator keep(Page page) {
        return page.getByText("Keep these readings");
    }

    private Page teacher(Visitor atTheLaptop, String sheet) {
        PersonAccess teacher = DemoService.person(demo.second(), "teacher");
        visitor = atTheLaptop.signIn(teacher.email(), teacher.password());
        visitor.page().navigate(tank + sheet);
        return visitor.page();
    }

    /** Letters are set apart as the printer likes. */
    private static String closed(String text) {
        return text.replaceAll("[\\s\u00a0]+", "");
    }
}
