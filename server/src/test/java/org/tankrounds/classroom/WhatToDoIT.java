package org.tankrounds.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.TANKS;

import java.io.IOException;
import java.util.Arrays;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** What to do if, for the wall beside a tank of 200 L that is held at 11 °C, in °F. */
final class WhatToDoIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "What to do if");
    private final String sheet = "/tanks/" + cast.tankA().code() + "/what-to-do";
    private final Browserless teacher = APP.signedIn(cast.teacherA());

    /**
     * Worked outside this project (Python), Newton's law of cooling and melting ice: 200 L, room 21 °C, bare glass
     * 18.65 W/K with 15 W of the pump, foamed 5.219 W/K: from 11 to 13 °C in 2.6 and 9.9 h, to 18 °C in 13.0 and
     * 53.6 h; half a day of ice takes 18.9 and 8.0 kg; 4 °F take 4.6 kg down to 17 °C. 200 L are 53 US gallons
     * (NIST SP 811).
     */
    @Test
    void theSheet_tellsThisTanksAmounts() {
        String text = text(teacher.get(sheet).body());

        assertThat(text).contains("Alderwhistle School, Room 12", "200 L (53 US gal) of water")
                .contains("from 52 °F to there", "55 °F 2 hours 9 hours 19 kg", "64 °F 13 hours 53 hours 8 kg")
                .contains("each 4 °F takes 4.6 kg. Never more than 10 kg at once", "nine tenths full: 5")
                .contains("A quarter of the water is 50 L (13 US gal), buckets of 10 L: 5.",
                        "Half is 100 L (26 US gal), buckets: 10; never more at once.")
                .contains("No feed in water of 68 °F or more.")
                // One in twenty or ten, and one in ten, of 200 eggs: common practice, no source.
                .contains("Of about 200 now in the tank, 10 or more within a day are many; at 20 somebody has to come")
                .contains("a licensed vet and the school’s own rules outrank this sheet");
    }

    @Test
    void paper_saysTheSame_onOnePage_inBothLanguages() throws IOException {
        assertThat(words(teacher.getFile(sheet + ".pdf"))).contains("What to do if", "55 °F 2 hours 9 hours 19 kg",
                "each 4 °F takes 4.6 kg", "buckets of 10 L: 5", "Many are dead", "The agency’s fish health contact",
                "outrank this sheet");

        Browserless room = APP.browser();
        room.header("Accept-Language", "es");
        room.comeIn(APP.newCard(cast, cast.tankA()));
        assertThat(words(room.getFile(sheet + ".pdf")))
                .contains("Qué hacer si", "cubetas de 10 L: 5", "Hay muchos muertos");
    }

    @Test
    void everySentenceOfThePage_isOnThePaper() throws IOException {
        String paper = words(teacher.getFile(sheet + ".pdf")).replace(" ", "");
        String page = teacher.get(sheet).body().replaceAll("(?s).*todo-sheet__warmth|</article>.*", "");
        assertThat(Arrays.stream(page.replaceAll("(?s)<[^>]*>", "\n").split("\n")).map(String::strip)
                .filter(sentence -> sentence.endsWith("."))).hasSizeGreaterThan(20)
                .map(sentence -> sentence.replace("&#39;", "'").replaceAll("[\\s\u00a0]", ""))
                .allSatisfy(sentence -> assertThat(paper).contains(sentence));
    }

    @Test
    void noPersonsName_isOnTheSheet() {
        assertThat(text(teacher.get(sheet).body().replaceAll("(?s).*<article|</article>.*", "")))
                .doesNotContain("Weirthimble", "Fernwhistle", "Rifflequill");
    }

    @Test
    void theThermometersScale_isTheSheets() {
        APP.transactions().inChapter(cast.chapterId(), tx -> tx.update(TANKS).set(TANKS.THERMOMETER_UNIT, "Cel")
                .where(TANKS.TANK_ID.eq(cast.tankA().tankId())).execute());

        assertThat(text(teacher.get(sheet).body())).doesNotContain("°F")
                .contains("from 11 °C to there", "13 °C 2 hours", "each 2 °C takes 4.1 kg");
    }

    @Test
    void aTankWithoutACount_isToldInShares() {
        Browserless other = APP.signedIn(cast.teacherB());

        assertThat(text(other.get("/tanks/" + cast.tankB().code() + "/what-to-do").body()))
                .contains("One in twenty within a day, or ten, are many; at one in ten somebody has to come today.");
    }

    private static String words(byte[] pdf) throws IOException {
        try (PDDocument paper = Loader.loadPDF(pdf)) {
            assertThat(paper.getNumberOfPages()).isEqualTo(1);
            return new PDFTextStripper().getText(paper).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    private static String text(String html) {
        return html.replaceAll("(?s)<script.*?</script>|<[^>]+>", " ").replaceAll("[\\s\u00a0]+", " ").strip();
    }
}
