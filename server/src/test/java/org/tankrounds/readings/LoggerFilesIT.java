package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.LOGGER_FILES;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;
import static org.tankrounds.db.schema.Tables.READINGS;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** From the file of a logger to the readings of a tank, and back. Each test has a chapter of its own. */
class LoggerFilesIT {
    private static final TestApp APP = TestApp.shared();
    private static final int SIXTY_MEGABYTES = 60_000_000;
    private static final String THREE =
            "time utc,temp c\n2026-01-12 10:00,11.2\n2026-01-12 10:05,11.3\n2026-01-12 10:10,11.4\n";

    private final Cast cast = Cast.add(APP.transactions(), "Loggers");
    private final String files = "/tanks/" + cast.tankA().code() + "/files";
    private final Browserless teacher = APP.signedIn(cast.teacherA());

    @Test
    void aPlainFile_isLookedAt_kept_andTakenBack() {
        String file = send(resource("commas-utc.csv"));
        Answer looked = teacher.get(file);
        assertThat(looked.body()).contains("12 new readings in january.csv", "5 Jan 2026, 8:00",
                "about every 5 minutes", "Keep these 12 readings");
        assertThat(measuredAt()).isEmpty();

        assertThat(keep(file).status()).isEqualTo(303);
        assertThat(teacher.get(file).body()).contains("Kept: 12 readings from january.csv");
        assertThat(measuredAt()).hasSize(12).startsWith(Instant.parse("2026-01-05T13:00:00Z"));

        assertThat(teacher.post(file + "/taken-back").status()).isEqualTo(303);
        assertThat(teacher.get(file).body()).contains("Taken back: january.csv").doesNotContain("Take this file back");
        assertThat(measuredAt()).isEmpty();
        assertThat(teacher.post(file + "/taken-back").status()).isEqualTo(303);
        assertThat(teacher.get("/tanks/" + cast.tankA().code()).body()).contains("Nothing has been read yet.");
    }

    @Test
    void theSameFileAgain_addsNothing_andALongerOne_onlyWhatIsNew() {
        keep(send(THREE));
        assertThat(teacher.get(send(THREE)).body()).contains("Nothing new in january.csv", "Stored before")
                .doesNotContain("Keep these");

        String longer = send(THREE + "2026-01-12 10:15,11.5\n");
        assertThat(teacher.get(longer).body()).contains("1 new reading in january.csv");
        keep(longer);
        assertThat(measuredAt()).hasSize(4);
    }

    @Test
    void theSameInFahrenheit_isNothingNew() {
        keep(send(THREE));
        String other = "time utc,temp f\n2026-01-12 10:00,52.2\n2026-01-12 10:05,52.3\n2026-01-12 10:10,52.5\n";

        assertThat(teacher.get(send(other)).body()).contains("Nothing new in january.csv");
    }

    @Test
    void anotherValueForTheSameTime_isListed_andStoredOnlyWhenChosen() {
        keep(send(THREE));
        String file = send(THREE.replace("11.3", "11.8"));
        Answer looked = teacher.get(file);
        assertThat(looked.body()).contains("Another value is stored for the same time", "temperature 11.3 °C",
                "temperature 11.8 °C", "Nothing new in");

        teacher.post(file, "act", "look", "conflicts", "file");
        assertThat(teacher.get(file).body()).contains("1 new reading in january.csv");
        keep(file, "conflicts", "file");
        assertThat(temperatures()).containsExactly(11.2f, 11.8f, 11.4f);

        teacher.post(file + "/taken-back");
        assertThat(temperatures()).containsExactly(11.2f, 11.3f, 11.4f);
    }

    @Test
    void whatTheFileDoesNotSay_isAsked_andKeptOnlyAsItWasShown() {
        String file = send(resource("nothing-says-itself.csv"));
        assertThat(teacher.get(file).body()).contains("3 questions before january.csv can be kept",
                "Order of day and month", "Clock of the logger", "Temperature of the water")
                .doesNotContain("Keep these");
        assertThat(keep(file).status()).isEqualTo(422);

        String[] answers = {"order", "dmy", "zone", "school", "temperature", "1", "temperature_unit", "[degF]"};
        assertThat(teacher.post(file, with(answers, "act", "keep", "shown", "0")).status()).isEqualTo(409);
        assertThat(measuredAt()).isEmpty();
        // The third of February is still to come: it is January.
        assertThat(teacher.get(file).body()).contains("No reading could be taken from january.csv",
                "8 rows lie in the future");
    }

    @Test
    void aFileOfDaysAlone_isAskedAbout_andKeptAtNoon() {
        String file = send("date,temp c\n2026-01-10,11.1\n2026-01-11,11.2\n2026-01-12,11.3\n");
        assertThat(teacher.get(file).body()).contains("1 question before january.csv can be kept")
                .contains("date: a day without a time, taken for noon").doesNotContain("Nothing new");

        String[] answers = {"time", "0", "zone", "school", "temperature_unit", "Cel"};
        teacher.post(file, with(answers, "act", "look"));
        assertThat(teacher.get(file).body()).contains("3 new readings in january.csv", "each counts as read at noon");
    }

    @Test
    void rowsThatNobodyCouldRead_areNotCalledNothingNew() {
        String four = THREE + "2026-01-12 10:15,11.4\n";
        keep(send(four));
        String more = send(four + "soon,11.3\n");
        assertThat(teacher.get(more).body())
                .contains("Nothing new in january.csv among what could be read; 1 row could not")
                .contains("1 row has no date and time that can be read. It is set aside.");
    }

    @Test
    void aFileOfTheSameLogger_isReadAsTheLastOneWas() {
        String text = "time,temp\n2026-01-12 10:00,52.2\n2026-01-12 10:05,52.3\n";
        String file = send(text);
        String[] answers = {"zone", "standard", "temperature_unit", "[degF]"};
        teacher.post(file, with(answers, "act", "look"));
        teacher.get(file);
        keep(file, answers);

        assertThat(teacher.get(send(text + "2026-01-12 10:10,52.4\n")).body()).contains("1 new reading in january.csv");
        assertThat(measuredAt()).startsWith(Instant.parse("2026-01-12T15:00:00Z"));
    }

    @Test
    void twoPressesOfTheButton_storeOnce() throws Exception {
        String file = send(THREE);
        String shown = shown(teacher.get(file));
        ExecutorService hands = Executors.newFixedThreadPool(4);
        try {
            List<Future<Answer>> answers = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                answers.add(hands.submit(() -> teacher.post(file, "act", "keep", "shown", shown)));
            }
            for (Future<Answer> answer : answers) {
                assertThat(answer.get().status()).isEqualTo(303);
            }
        } finally {
            hands.shutdown();
        }
        assertThat(measuredAt()).hasSize(3);
    }

    @Test
    void aCorrectedReading_isNotSentOverAgain_andGoesWithItsFile() {
        String file = send(THREE);
        keep(file);
        String code = APP.transactions().inChapter(cast.chapterId(), tx -> tx.select(READINGS.CODE).from(READINGS)
                .where(READINGS.CHAPTER_ID.eq(cast.chapterId())).orderBy(READINGS.MEASURED_AT).limit(1)
                .fetchSingle(READINGS.CODE));
        String reading = "/tanks/" + cast.tankA().code() + "/readings/" + code;
        teacher.get(reading);
        assertThat(teacher.post(reading, "version", "1", "form_version", "2", "temperature", "12",
                "temperature_unit", "Cel", "measured_at", "2026-01-12T05:00", "reason", "held in the hand").status())
                .isEqualTo(303);

        assertThat(teacher.get(send(THREE)).body()).contains("Nothing new in january.csv");
        assertThat(teacher.get(file).body()).contains("1 reading of it was corrected since");
        teacher.post(file + "/taken-back");
        assertThat(measuredAt()).isEmpty();
    }

    @Test
    void sixtyMegabytes_areRefused_andTheHeapStaysFlat() {
        teacher.get(files);
        System.gc();
        long before = used();
        Answer answer = teacher.upload(files, "endless.csv", zeros(), SIXTY_MEGABYTES);

        assertThat(answer.status()).isEqualTo(413);
        assertThat(answer.body()).contains("A file has at most 5 MB.");
        System.gc();
        assertThat(used() - before).isLessThan(20_000_000);
        int kept = APP.transactions().inChapter(cast.chapterId(), tx -> tx.fetchCount(LOGGER_FILES));
        assertThat(kept).isZero();
    }

    @Test
    void sixtyMegabytesThatNobodyAnnounced_areRefusedToo() {
        teacher.get(files);
        Answer answer = teacher.upload(files, "endless.csv", zeros());

        assertThat(answer.status()).isEqualTo(413);
    }

    @Test
    void aWorkbookThatSaysItIsCsv_isRefused_andSaysWhatToDo() {
        teacher.get(files);
        Answer answer = teacher.upload(files, "january.csv", zipped("sheet.xml"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("This is a workbook or an archive, whatever its name says.");
    }

    @Test
    void nothingOrNoTable_isRefused_withASentence() {
        teacher.get(files);
        assertThat(teacher.upload(files, "", new byte[0]).body()).contains("Choose the file that your logger wrote.");
        assertThat(teacher.upload(files, "e.csv", new byte[0]).body()).contains("The file is empty.");
        assertThat(teacher.upload(files, "h.csv", bytes("time,temp\n")).body())
                .contains("No row of the file has a date and time");
        assertThat(teacher.post(files, "file", "x").status()).isEqualTo(422);
        Answer broken = teacher.send("POST", files, "multipart/form-data; boundary=x", bytes("--x\r\nbroken"));
        assertThat(broken.status()).isEqualTo(400);
        assertThat(teacher.send("POST", files, "multipart/form-data", bytes("--x\r\nbroken")).status()).isEqualTo(400);
    }

    @Test
    void aFormThatIsNotOurs_keepsNothing() {
        String file = send(THREE);
        Browserless stranger = APP.signedIn(cast.teacherA());
        stranger.get(files);
        assertThat(stranger.header("Sec-Fetch-Site", "cross-site").upload(files, "a.csv", bytes(THREE)).status())
                .isEqualTo(403);
        assertThat(APP.signedIn(cast.coordinator()).upload(files, "a.csv", bytes(THREE)).status()).isEqualTo(403);
        assertThat(teacher.send("POST", file, "multipart/form-data; boundary=x", bytes("--x--")).status())
                .isEqualTo(415);
    }

    @Test
    void filesOfOthersTanks_doNotExist() {
        String file = send(THREE);
        for (Browserless other : List.of(APP.signedIn(cast.teacherB()), APP.signedIn(cast.mentor()),
                APP.signedIn(APP.elsewhere().coordinator()))) {
            assertThat(other.get(file).status()).isEqualTo(404);
            other.get("/account");
            assertThat(other.upload(files, "a.csv", bytes(THREE)).status()).isEqualTo(404);
            assertThat(other.post(file, "act", "keep").status()).isEqualTo(404);
            assertThat(other.post(file + "/taken-back").status()).isEqualTo(404);
        }
        String asAnothers = "/tanks/" + cast.tankB().code() + "/files/" + file.substring(file.lastIndexOf('/') + 1);
        assertThat(APP.signedIn(cast.coordinator()).get(asAnothers).status()).isEqualTo(404);
        assertThat(teacher.get(files + "/nosuch").status()).isEqualTo(404);
    }

    private String send(String text) {
        return send(bytes(text));
    }

    private String send(byte[] content) {
        teacher.get(files);
        Answer answer = teacher.upload(files, "january.csv", content);
        assertThat(answer.status()).as(answer.body()).isEqualTo(303);
        teacher.get(answer.location());
        return answer.location();
    }

    private Answer keep(String file, String... answers) {
        return teacher.post(file, with(answers, "act", "keep", "shown", shown(teacher.get(file))));
    }

    private static String shown(Answer page) {
        return page.body().replaceAll("(?s).*name=\"shown\" value=\"([^\"]*)\".*", "$1");
    }

    private static String[] with(String[] some, String... more) {
        List<String> all = new ArrayList<>(List.of(some));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    private List<Instant> measuredAt() {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.select(MEASUREMENTS.MEASURED_AT)
                .from(MEASUREMENTS).where(MEASUREMENTS.CHAPTER_ID.eq(cast.chapterId()))
                .orderBy(MEASUREMENTS.MEASURED_AT).fetch(MEASUREMENTS.MEASURED_AT));
    }

    private List<Float> temperatures() {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.select(MEASUREMENTS.VALUE)
                .from(MEASUREMENTS).where(MEASUREMENTS.CHAPTER_ID.eq(cast.chapterId()))
                .orderBy(MEASUREMENTS.MEASURED_AT).fetch(MEASUREMENTS.VALUE));
    }

    /** Made while it is sent, so that the test holds none of it. */
    private static InputStream zeros() {
        return new InputStream() {
            private long left = SIXTY_MEGABYTES;

            @Override
            public int read() {
                return left-- > 0 ? '0' : -1;
            }
        };
    }

    private static long used() {
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static byte[] zipped(String name) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(bytes("<sheet/>"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static byte[] resource(String name) {
        try (InputStream in = LoggerFilesIT.class.getResourceAsStream("/loggers/" + name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
