package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.CLASS_CARDS;
import static org.tankrounds.db.schema.Tables.READINGS;

import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.db.schema.tables.records.ReadingsRecord;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.Squares;
import org.tankrounds.testing.TestApp;

/** A card from being made to being revoked, by those in charge of a tank and by the class that comes in with it. */
class ClassCardIT {
    private static final TestApp APP = TestApp.shared();
    private static final Pattern CODE = Pattern.compile("class=\"door-card__code\">([^<]+)<");

    private final Cast cast = Cast.add(APP.transactions(), "Class cards");
    private final String tank = "/tanks/" + cast.tankA().code();
    private final String card = tank + "/card";
    private Browserless teacher;

    @BeforeEach
    void signIn() {
        teacher = APP.signedIn(cast.teacherA());
    }

    @Test
    void aTeacher_makesACard_andTheClassReadsItsTankWithIt() {
        assertThat(teacher.get(tank).body()).contains("href=\"" + card + "\"");
        assertThat(teacher.get(card).body()).contains("No class card is in use");
        Answer print = teacher.post(card);
        assertThat(print.status()).isEqualTo(200);

        Browserless room = APP.browser();
        assertThat(room.comeIn(code(print).toLowerCase().replace("-", " ")).location()).isEqualTo(tank + "/log");
        assertThat(room.get("/").location()).isEqualTo("/card");
        assertThat(room.get("/card").location()).as("once in, it leads to the form").isEqualTo(tank + "/log");
        room.get(tank + "/log");
        Answer kept = put(room, "temperature", "52", "by", "period 3");

        assertThat(kept.location()).startsWith(tank + "?saved=");
        ReadingsRecord reading = readings().get(0);
        assertThat(reading.getChannel()).isEqualTo("card");
        assertThat(reading.getByLabel()).isEqualTo("period 3");
        assertThat(reading.getPersonId()).isNull();
        assertThat(reading.getCardId()).isEqualTo(cardInUse());
        Answer page = room.get(kept.location());
        assertThat(page.body()).contains("Saved 9:00").contains("period 3").contains("Class card")
                .doesNotContain("Look at or correct").doesNotContain("href=\"/account\"").doesNotContain("/tanks\"")
                .doesNotContain(card);
        assertThat(room.get(tank + "/log?saved=" + reading.getCode()).body()).contains("Your coordinator sees this.")
                .doesNotContain("Correct it").as("the next class is another one").doesNotContain("value=\"period 3\"");
        assertThat(teacher.get(tank + "/readings/" + reading.getCode()).body())
                .contains("By the class, with its card (period 3)");
        assertThat(teacher.get(card).body()).contains("A class card is in use").contains("by Ada Fernwhistle")
                .contains("today 9:00").doesNotContain(code(print));
    }

    @Test
    void thePrint_saysWhereItIsFor_andItsSquareIsItsAddress() {
        teacher.get(card);
        Answer print = teacher.post(card);
        String address = APP.baseUrl() + "/card/" + code(print).replace("-", "");

        assertThat(print.body()).contains("Alderwhistle School").contains("Room 12").contains("Readings of this tank")
                .contains(APP.baseUrl().replace("http://", "") + "/card").contains("No names")
                .contains("works on this machine only");
        assertThat(Squares.read(attribute(print, "viewBox"), attribute(print, " d"))).isEqualTo(address);

        Answer filledIn = APP.browser().get("/card/" + code(print).replace("-", ""));
        assertThat(filledIn.body()).contains("value=\"" + code(print) + "\"");
        assertThat(filledIn.headers().getOrDefault("set-cookie", List.of())).as("looking opens no session")
                .noneMatch(cookie -> cookie.startsWith("tkr="));
    }

    @Test
    void theSameAsAFile_isReadByWordsAndBySquare() throws Exception {
        teacher.get(card);
        Answer print = teacher.post(card);
        byte[] pdf = teacher.postForFile(card + "/paper", "code", code(print));

        try (var document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("Alderwhistle School").contains("Room 12").contains(code(print))
                    .contains("Press “Keep this reading”");
            assertThat(Squares.read(new PDFRenderer(document).renderImageWithDPI(0, 200)))
                    .isEqualTo(APP.baseUrl() + "/card/" + code(print).replace("-", ""));
        }
        assertThat(teacher.post(card + "/paper", "code", "CK7-PM4-RXW").status()).as("of another card").isEqualTo(409);
        assertThat(teacher.post(card + "/paper", "code", "").status()).isEqualTo(422);
    }

    @Test
    void revoked_itOpensNothing_andWhoeverIsInIsOutAtOnce() {
        teacher.get(card);
        String code = code(teacher.post(card));
        Browserless room = APP.browser();
        room.comeIn(code);
        assertThat(room.get(tank + "/log").status()).isEqualTo(200);

        Browserless coordinator = APP.signedIn(cast.coordinator());
        coordinator.get(card);
        assertThat(coordinator.post(card + "/revoked", "card", Integer.toString(cardInUse())).location())
                .isEqualTo(card);

        assertThat(room.get(tank + "/log").location()).startsWith("/sign-in");
        assertThat(put(room, "temperature", "52").status()).as("what was typed is kept").isEqualTo(403);
        assertThat(readings()).isEmpty();
        Answer again = APP.browser().comeIn(code);
        assertThat(again.status()).isEqualTo(422);
        assertThat(again.body()).contains("opens nothing").contains("ask your teacher for a new card");
        assertThat(coordinator.get(card).body()).contains("No class card is in use")
                .contains("The last card was revoked Tue 13 Jan");
    }

    @Test
    void aNewCard_endsTheOld() {
        teacher.get(card);
        String old = code(teacher.post(card));
        Browserless room = APP.browser();
        room.comeIn(old);

        String fresh = code(teacher.post(card, "card", Integer.toString(cardInUse())));

        assertThat(fresh).isNotEqualTo(old);
        assertThat(room.get(tank).location()).startsWith("/sign-in");
        assertThat(APP.browser().comeIn(old).status()).isEqualTo(422);
        assertThat(APP.browser().comeIn(fresh).status()).isEqualTo(303);
    }

    /** As when the page with the print is loaded anew: the print in hand must stay good. */
    @Test
    void aFormSentTwice_makesOneCard() {
        teacher.get(card);
        String code = code(teacher.post(card));

        Answer again = teacher.post(card);

        assertThat(again.status()).isEqualTo(409);
        assertThat(again.body()).contains("No card was made just now").contains("A class card is in use");
        assertThat(APP.browser().comeIn(code).status()).isEqualTo(303);
    }

    @Test
    void aCardOfAnotherTank_isNotRevokedFromHere() {
        APP.newCard(cast, cast.tankB());
        int other = cardInUse();

        teacher.get(card);
        teacher.post(card + "/revoked", "card", Integer.toString(other));
        assertThat(teacher.post(card, "card", Integer.toString(other)).status()).isEqualTo(409);

        assertThat(cardInUse()).isEqualTo(other);
    }

    @Test
    void somebodyWhoIsSignedIn_isToldThatTheCardSignsThemOut() {
        String code = APP.newCard(cast, cast.tankA());
        Answer page = teacher.get("/card/" + code);
        assertThat(page.body()).contains("Ada Fernwhistle").contains("signs them out here");
        String before = teacher.cookies().get("tkr");

        assertThat(teacher.post("/card", "code", code).status()).isEqualTo(303);

        assertThat(teacher.get("/account").status()).isEqualTo(404);
        Browserless old = APP.browser();
        old.cookies().put("tkr", before);
        assertThat(old.get("/account").status()).as("the old session is over").isEqualTo(303);
    }

    @Test
    void aTeacherSignsIn_whereAClassIsIn() {
        Browserless browser = APP.browser();
        browser.comeIn(APP.newCard(cast, cast.tankA()));

        assertThat(browser.signIn(cast.teacherA()).status()).isEqualTo(303);
        assertThat(browser.get("/account").body()).contains("Ada Fernwhistle");
    }

    private Answer put(Browserless room, String... values) {
        String[] fields = Arrays.copyOf(values, values.length + 2);
        fields[values.length] = "submission_id";
        fields[values.length + 1] = UUID.randomUUID().toString();
        return room.post(tank + "/log", fields);
    }

    private static String code(Answer print) {
        Matcher code = CODE.matcher(print.body());
        assertThat(code.find()).as(print.body()).isTrue();
        return code.group(1);
    }

    private static String attribute(Answer print, String name) {
        Matcher square = Pattern.compile("door-card__(?:square|dark)\"[^>]*" + name + "=\"([^\"]+)\"")
                .matcher(print.body());
        assertThat(square.find()).isTrue();
        return square.group(1);
    }

    private List<ReadingsRecord> readings() {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.selectFrom(READINGS).fetch());
    }

    private int cardInUse() {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.select(CLASS_CARDS.CARD_ID).from(CLASS_CARDS)
                .where(CLASS_CARDS.REVOKED_AT.isNull()).fetchSingle(CLASS_CARDS.CARD_ID));
    }
}
