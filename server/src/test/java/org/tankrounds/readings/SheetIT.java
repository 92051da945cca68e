package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.TANKS;

import java.io.IOException;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.KitScale;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/** A month of a tank's log to be filled in by hand, on the page and on paper. */
final class SheetIT {
    private static final TestApp APP = TestApp.shared();
    private static final Pattern ROW = Pattern.compile("<tr[^>]*>\\s*<th scope=\"row\">(.*?)</tr>", Pattern.DOTALL);
    /** A4's width and Letter's, A4's height and Letter's: what fits both lying down, in points. */
    private static final float WIDTH = 279 / 25.4f * 72;
    private static final float HEIGHT = 210 / 25.4f * 72;

    private final Cast cast = Cast.add(APP.transactions(), "Sheets");
    private final String tank = "/tanks/" + cast.tankA().code();
    private final Browserless teacher = APP.signedIn(cast.teacherA());

    @Test
    void theSheet_hasARowForEachDay_andTheCardsStepsToRing() {
        String body = teacher.get(tank + "/sheet?month=2026-02").body();

        assertThat(rows(body)).hasSize(28).startsWith("Sun 1 6.0 6.3 6.6 6.9 7.2 7.5 7.8 8.1 8.4 0 0.2 0.5 1 2 5 10"
                + " 0 0.1 0.3 0.6 1 3 6 0 5 10 25 50 100").last().asString().startsWith("Sat 28 6.0");
        assertThat(text(body)).contains("Alderwhistle School, Room 12 · February 2026", "Temperature °F",
                "Ammonia mg/L as N", "Nitrite mg/L as NO₂", "January 2026", "March 2026", "no names");
        assertThat(body.split("sheet__weekend")).as("four weekends").hasSize(1 + 8);
        assertThat(teacher.get(tank + "/sheet").body()).as("the month that it is").contains("January 2026")
                .contains("sheet.pdf?month=2026-01");
    }

    @Test
    void paper_hasTheSameRows_onOnePage_largeEnoughToRead() throws IOException {
        List<String> shown = rows(teacher.get(tank + "/sheet?month=2026-12").body());

        try (PDDocument paper = Loader.loadPDF(teacher.getFile(tank + "/sheet.pdf?month=2026-12"))) {
            assertThat(paper.getNumberOfPages()).isEqualTo(1);
            assertThat(paper.getPage(0).getMediaBox().getWidth()).isBetween(WIDTH - 2, WIDTH + 2);
            assertThat(paper.getPage(0).getMediaBox().getHeight()).isBetween(HEIGHT - 2, HEIGHT + 2);
            Sizes stripper = new Sizes();
            List<String> lines = stripper.getText(paper).lines().map(String::strip).toList();
            assertThat(shown).hasSize(31);
            assertThat(lines).containsAll(shown);
            assertThat(stripper.smallest).as("points").isGreaterThanOrEqualTo(7);
            assertThat(String.join(" ", lines)).contains("Alderwhistle School, Room 12 · December 2026", "mg/L as NO₂",
                    "unplug before reaching in");
        }
    }

    @Test
    void inSpanish_weekdaysAndWordsAreSpanish() {
        Browserless class1 = APP.browser();
        class1.header("Accept-Language", "es");
        class1.comeIn(APP.newCard(cast, cast.tankA()));

        String body = class1.get(tank + "/sheet?month=2026-12").body();

        assertThat(rows(body)).first().asString().startsWith("mar 1 6.0");
        assertThat(text(body)).contains("diciembre de 2026", "Temperatura", "Agua cambiada", "sin nombres")
                .doesNotContain("Anotar una hoja");
    }

    @Test
    void aCardThatIsTooLong_isWrittenByHand_andStillFitsOnePage() throws IOException {
        use(new KitScale(Analyte.PH, UnitForm.of("[pH]"), steps(30, 0.1)),
                new KitScale(Analyte.TOTAL_AMMONIA, new UnitForm("mg/L", "N"), List.of(0.0, 0.25, 0.5)),
                new KitScale(Analyte.ALKALINITY, new UnitForm("mg/L", "CaCO3"), steps(30, 12.5)),
                new KitScale(Analyte.HARDNESS, new UnitForm("mg/L", "CaCO3"), steps(30, 12.5)),
                new KitScale(Analyte.DISSOLVED_OXYGEN, UnitForm.of("mg/L"), steps(30, 0.25)),
                new KitScale(Analyte.CHLORIDE, UnitForm.of("mg/L"), steps(8, 5)),
                new KitScale(Analyte.CHLORINE, UnitForm.of("mg/L"), steps(9, 0.125)));

        String body = teacher.get(tank + "/sheet?month=2026-12").body();

        assertThat(rows(body)).as("what is short is ringed").first().asString().startsWith("Tue 1 0 0.25 0.5");
        assertThat(text(body)).contains("pH 0.0 · 0.1 … 2.9", "Alkalinity mg/L as CaCO₃: 0 · 12.5 … 362.5");
        try (PDDocument paper = Loader.loadPDF(teacher.getFile(tank + "/sheet.pdf?month=2026-12"))) {
            assertThat(paper.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(paper)).contains("Thu 31", "reaching in");
        }
    }

    @Test
    void aMonthThatIsNone_isToldHowToWrite() {
        for (String month : List.of("2026-13", "december", "1999-12", "2101-01", "")) {
            Browserless.Answer answer = teacher.get(tank + "/sheet?month=" + month);
            assertThat(answer.status()).isEqualTo(400);
            assertThat(answer.body()).contains("Write year and month, such as 2026-12.");
        }
    }

    private void use(KitScale... scales) {
        APP.transactions().inChapter(cast.chapterId(), tx -> tx.update(TANKS)
                .set(TANKS.KIT_ID, new KitRepository().add(tx, cast.chapterId(), "Long", List.of(scales)).kitId())
                .where(TANKS.TANK_ID.eq(cast.tankA().tankId())).execute());
    }

    private static List<Double> steps(int many, double apart) {
        return IntStream.range(0, many).mapToObj(i -> Math.round(i * apart * 1000) / 1000.0).toList();
    }

    private static List<String> rows(String body) {
        return ROW.matcher(body).results().map(MatchResult::group).map(SheetIT::text).collect(Collectors.toList());
    }

    private static String text(String html) {
        return html.replaceAll("(?s)<script.*?</script>|<[^>]+>", " ").replaceAll("\\s+", " ").strip();
    }

    /** Notes how small the smallest letters are. */
    private static final class Sizes extends PDFTextStripper {
        private float smallest = Float.MAX_VALUE;

        private Sizes() {
            setSortByPosition(true);
        }

        @Override
        protected void processTextPosition(TextPosition text) {
            smallest = Math.min(smallest, text.getFontSizeInPt());
            super.processTextPosition(text);
        }
    }
}
