package org.tankrounds.summary;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.LotEdits;
import org.tankrounds.season.SeasonRepository;
import org.tankrounds.season.SeenOn;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.Cast.TankOfCast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;

/** What was frozen stays as it was, to the byte; what is otherwise since is told figure by figure. */
final class FreezeIT {
    private static final TestApp APP = TestApp.shared();
    private static final List<String> ENDINGS = List.of("json", "csv", "xlsx", "pdf", "zip");
    private static final Pattern FILE = Pattern.compile(
            "href=\"(/season/[^\"]*\\?version=[^\"]*)\"[^>]*>[^<]*</a></th>\\s*<td"
                    + " class=\"code hash\">([0-9a-f]{64})</td>");

    private final Cast cast = Cast.add(APP.transactions(), "Freezers of seasons");
    private final Browserless coordinator = APP.signedIn(cast.coordinator());
    private final String summary = "/season/" + cast.season() + "/summary";

    @BeforeEach
    void aSeason() {
        read("2025-11-10T12:00:00Z", "\"analyte\": \"deaths\", \"value\": 12, \"unit\": \"1\"");
        read("2025-12-11T12:00:00Z",
                "\"analyte\": \"temperature\", \"value\": 52.3, \"unit\": \"[degF]\", \"step\": 1");
        read("2026-01-07T12:00:00Z",
                "\"analyte\": \"nitrite\", \"value\": 0, \"unit\": \"mg/L\", \"as\": \"NO2\", \"step\": 0.2");
        read("2026-01-08T12:00:00Z",
                "\"analyte\": \"total_ammonia\", \"value\": 0.5, \"unit\": \"mg/L\", \"as\": \"NH3\"");
        read("2026-01-08T13:00:00Z", "\"analyte\": \"water_change\", \"value\": 30, \"unit\": \"%\"");
        write("released", "fish", "60", "place", "=Lower, \"bridge\"", "approval", "'P-8", "day", "2026-01-09");
    }

    @Test
    void whatIsStillOpen_isSaid_andItIsAskedOnce() {
        Answer page = coordinator.get(summary + "/freeze");
        assertThat(text(page)).contains("Freeze the summary of 2025-26 as version 1").contains("Nothing is locked")
                .contains("The season runs until 30 Jun 2026.").contains("128 fish are still alive by count.")
                .contains("You can freeze it nonetheless");
        assertThat(text(coordinator.get(summary))).doesNotContain("Frozen versions");
    }

    @Test
    void eggsThatAreToCome_areInNoFigure_andAreSaid() {
        APP.transactions().inChapter(cast.chapterId(), tx -> {
            int season = new SeasonRepository().get(tx, cast.chapterId(), cast.season()).seasonId();
            new LotEdits(new DirtyTanks()).add(tx, cast.chapterId(), season, cast.tankA().tankId(),
                    new LotEdits.Details(100, TestClock.START.plus(Duration.ofDays(20)), OptionalDouble.of(200),
                            Optional.empty(), Optional.empty(), SeenOn.NOTHING, CountMethod.WEIGHED, 5),
                    TestClock.START);
            return null;
        });
        assertThat(text(coordinator.get(summary))).contains("of 200").doesNotContain("of 300");
        assertThat(text(coordinator.get(summary + "/freeze")))
                .contains("100 eggs are still to come; they are in no figure.");
        Packages.Package read = Packages.read(api(".zip", 200));
        assertThat(read.table("lots")).hasSize(1);
        assertThat(read.table("summary").get(0).getField("eggs_received")).isEqualTo("200");
    }

    @Test
    void aFrozenVersion_isTheSameBytesForGood_whateverIsCorrected() {
        String version = freeze();
        assertThat(version).isEqualTo(summary + "/versions/1");
        String page = coordinator.get(version).body();
        Map<String, String> sums = FILE.matcher(page).results()
                .collect(Collectors.toMap(one -> one.group(1).replace("&amp;", "&"), one -> one.group(2)));
        assertThat(sums).as("JSON, CSV, workbook, PDF in two languages, package").hasSize(6);
        Map<String, byte[]> first = new HashMap<>();
        ENDINGS.forEach(ending -> first.put(ending, api("." + ending + "?version=1", 200)));
        sums.forEach((address, sha256) -> {
            String ending = address.replaceAll(".*/summary\\.(\\w+).*", "$1");
            if (!address.endsWith("language=es")) {
                assertThat(Packages.sha256(first.get(ending))).as(address).isEqualTo(sha256);
            }
        });
        assertThat(text(coordinator.get(summary))).contains("As frozen in version 1.").contains("Version 1 , frozen");

        read("2025-11-11T12:00:00Z", "\"analyte\": \"deaths\", \"value\": 3, \"unit\": \"1\"");

        ENDINGS.forEach(ending -> assertThat(api("." + ending + "?version=1", 200)).as(ending)
                .isEqualTo(first.get(ending)));
        assertThat(api(".csv", 200)).isNotEqualTo(first.get("csv"));
    }

    @Test
    void aLaterCorrection_makesTheNextVersion_thatListsWhatChanged() throws IOException {
        freeze();
        read("2025-11-11T12:00:00Z", "\"analyte\": \"deaths\", \"value\": 3, \"unit\": \"1\"");
        write("released", "fish", "20", "place", "Upper weir", "day", "2026-01-12");

        assertThat(text(coordinator.get(summary))).contains("Changed since version 1:");
        assertThat(text(coordinator.get(summary + "/versions/1"))).contains("What has changed since")
                .contains("Dead as eggs 12 15").contains("Released 60 80").contains("Upper weir, –, 2026-01-12")
                .contains("Freeze the next version");

        assertThat(freeze()).endsWith("/versions/2");
        String two = text(coordinator.get(summary + "/versions/2"));
        assertThat(two).contains("What differs from version 1")
                .contains("Alderwhistle School, Room 12 (" + cast.tankA().code() + ") Dead as eggs 12 15")
                .contains("What has changed since No figure.");
        assertThat(text(coordinator.get(summary + "/versions/1"))).as("told of the last only")
                .doesNotContain("has changed since");
        try (PDDocument paper = Loader.loadPDF(api(".pdf?version=2", 200))) {
            assertThat(new PDFTextStripper().getText(paper).replaceAll("\\s+", " "))
                    .contains("Version 2, frozen 13 Jan 2026")
                    .contains("What differs from the version before").contains("Dead as eggs 12 15");
        }
        assertThat(new ObjectMapper().readTree(api(".json?version=2", 200)).at("/frozen/changes").toString())
                .contains("\"column\":\"dead_as_eggs\",\"before\":\"12\",\"now\":\"15\"");
        assertThat(Workbooks.read(api(".xlsx?version=2", 200), 5).text("C2")).isEqualTo("dead_as_eggs");
    }

    @Test
    void filesMadeAgain_fromTheSameRowsAndMoment_areTheSameBytes() {
        freeze();
        for (String ending : ENDINGS) {
            assertThat(api("." + ending, 200)).as("made now, twice: %s", ending).isEqualTo(api("." + ending, 200));
        }
        // The clock stands still; that it is frozen stands in some of the version's files, and in none of these.
        assertThat(api(".csv", 200)).isEqualTo(api(".csv?version=1", 200));
        assertThat(Packages.unzip(api(".zip", 200)).get("measurements.csv"))
                .isEqualTo(Packages.unzip(api(".zip?version=1", 200)).get("measurements.csv"));
    }

    @Test
    void aFormSentTwice_freezesOnce() {
        String form = form();
        assertThat(coordinator.post(form).location()).isEqualTo(summary + "/versions/1");
        assertThat(coordinator.post(form).location()).isEqualTo(summary + "/versions/1");
        assertThat(coordinator.get(summary + "/versions/2").status()).isEqualTo(404);
    }

    @Test
    void whereNothingChanged_noVersionIsMade_andItIsSaid() {
        String first = coordinator.post(form()).location();
        assertThat(text(coordinator.get(summary + "/freeze"))).contains("No figure has changed since version 1");
        String again = coordinator.post(form()).location();
        assertThat(again).startsWith(first);
        assertThat(text(coordinator.get(again))).contains("no new one was made");
        read("2025-11-11T12:00:00Z", "\"analyte\": \"deaths\", \"value\": 3, \"unit\": \"1\"");
        assertThat(coordinator.post(form()).location()).endsWith("/versions/2");
    }

    /** A figure may stay as it is while a row behind it does not: an agency would find another file under its name. */
    @Test
    void aRowBehindTheFigures_makesAVersionToo_thatNamesItsTable() {
        freeze();
        APP.transactions().inChapter(cast.chapterId(), tx -> tx.execute(
                "UPDATE tanks SET volume_l = volume_l - 8 WHERE chapter_id = ? AND tank_id = ?", cast.chapterId(),
                cast.tankA().tankId()));
        assertThat(text(coordinator.get(summary + "/freeze"))).contains("No figure has changed since version 1");
        String second = coordinator.post(form()).location();
        assertThat(second).endsWith("/versions/2");
        assertThat(text(coordinator.get(second))).contains("Rows of tanks in the data package: gone, new 1 1");
    }

    /** Only the second answer is seen; what the first made would open for good, unknown to anybody. */
    @Test
    void aLinkFormSentTwice_leavesOneLinkOpen() {
        String version = freeze();
        String submission = find(coordinator.get(version).body(), "name=\"submission_id\" value=\"([^\"]*)\"");
        List<String> links = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            Answer made = coordinator.post(version + "/links", "reader", "State office", "days", "30", "submission_id",
                    submission);
            links.add(find(made.body(), "(/handed-over/[\\w-]+)"));
        }
        assertThat(APP.browser().get(links.get(0)).status()).isEqualTo(404);
        assertThat(APP.browser().get(links.get(1)).status()).isEqualTo(200);
    }

    @Test
    void aVersionThatIsNotThere_isNotFound_andOneThatIsNone_isRefused() {
        api(".csv?version=1", 404);
        api(".csv?version=first", 400);
        api(".csv?version=0", 400);
        assertThat(coordinator.get(summary + "/versions/first").status()).isEqualTo(404);
    }

    @Test
    void thePackage_isWhatItsDescriptorSays_andHasTheRowsBehindTheFigures() {
        freeze();
        Packages.Package read = Packages.read(api(".zip?version=1", 200));

        assertThat(read.faults()).isEmpty();
        assertThat(read.descriptor().path("$schema").asText())
                .isEqualTo("https://datapackage.org/profiles/2.0/datapackage.json");
        assertThat(read.descriptor().path("created").asText()).isEqualTo("2026-01-13T14:00:00Z");
        assertThat(read.descriptor().path("version").asText()).isEqualTo("1");
        assertThat(read.tables().keySet()).containsExactlyInAnyOrder("tanks", "lots", "count_entries", "deaths",
                "releases", "release_lengths", "stream_checks", "stream_animals", "acts", "limit_days", "summary",
                "measurements");

        NamedCsvRecord temperature = measured(read, "temperature");
        assertThat(temperature.getField("characteristic_name")).isEqualTo("Temperature, water");
        assertThat(temperature.getField("unit")).isEqualTo("deg C");
        assertThat(temperature.getField("ucum_unit")).isEqualTo("Cel");
        assertThat(Double.parseDouble(temperature.getField("value"))).isBetween(11.27, 11.28);
        NamedCsvRecord ammonia = measured(read, "total_ammonia");
        assertThat(ammonia.getField("method_speciation")).isEqualTo("as N");
        assertThat(Double.parseDouble(ammonia.getField("value"))).as("0.5 as NH3").isBetween(0.4112, 0.4113);
        NamedCsvRecord nitrite = measured(read, "nitrite");
        assertThat(nitrite.getField("value")).as("not detected is not zero").isEmpty();
        assertThat(nitrite.getField("detection_condition")).isEqualTo("Not Detected");
        assertThat(Double.parseDouble(nitrite.getField("detection_limit"))).as("half of 0.2 as NO2")
                .isBetween(0.0304, 0.0305);
        assertThat(read.table("acts").get(0).getField("ucum_unit")).isEqualTo("%");

        NamedCsvRecord release = read.table("releases").get(0);
        assertThat(release.getField("site")).as("a spreadsheet takes it for no formula")
                .isEqualTo("'=Lower, \"bridge\"");
        assertThat(release.getField("approval")).as("and one apostrophe less gives every text back").isEqualTo("''P-8");
        assertThat(read.table("deaths").stream().mapToInt(row -> Integer.parseInt(row.getField("dead"))).sum())
                .isEqualTo(Integer.parseInt(read.table("summary").get(0).getField("dead")));
        assertThat(read.table("limit_days").stream().filter(row -> row.getField("series").equals("nitrite")).count())
                .isEqualTo(Long.parseLong(read.table("summary").get(0).getField("nitrite_days")));
    }

    /** By it the stages' figures can be made again: which of them the moved ones joined. */
    @Test
    void thePackage_saysAtWhatStageFishMoved() {
        write("moved", "fish", "20", "to", cast.tankB().code(), "day", "2025-11-12", "stage", "egg");
        Packages.Package read = Packages.read(api(".zip", 200));

        assertThat(read.faults()).isEmpty();
        NamedCsvRecord moved = entry(read, "moved");
        assertThat(moved.getField("stage")).isEqualTo("egg");
        assertThat(Double.parseDouble(moved.getField("thermal_units_deg_c_days"))).isPositive();
        NamedCsvRecord released = entry(read, "released");
        assertThat(released.getField("stage")).isEmpty();
        assertThat(released.getField("thermal_units_deg_c_days")).isEmpty();

        SummarySum sum = new SummarySum();
        sum.add("own.csv", api(".csv", 200));
        assertThat(sum.words()).contains("200 eggs received, 60 released");
    }

    @Test
    void aLink_letsAReaderWithoutAccountHaveOneVersion_untilItEndsOrIsWithdrawn() {
        String version = freeze();
        read("2025-11-11T12:00:00Z", "\"analyte\": \"deaths\", \"value\": 3, \"unit\": \"1\"");
        freeze();
        coordinator.get(version);
        assertThat(text(coordinator.post(version + "/links", "reader", " ", "days", "5000")))
                .contains("Say whom the link is for")
                .contains("Choose how long the link opens.");
        String link = link(version, "State office", "30");

        Answer read = APP.browser().get(link);
        assertThat(read.status()).isEqualTo(200);
        assertThat(text(read)).contains("Season summary 2025-26, version 1").contains("Freezers of seasons")
                .contains("This link is for State office and opens until 12 Feb 2026").contains("It is no permit");
        assertThat(APP.browser().get(link + "/csv").body()).isEqualTo(new String(api(".csv?version=1", 200)));
        assertThat(APP.browser().get(link + "/pdf-en").status()).isEqualTo(200);
        for (String nothing : List.of(link + "/measurements", link + "x", link + "/pdf", "/handed-over/no")) {
            assertThat(APP.browser().get(nothing).status()).as(nothing).isEqualTo(404);
        }
        assertThat(APP.browser().get(summary).status()).as("a link opens nothing else").isEqualTo(303);

        Answer page = coordinator.get(version);
        assertThat(text(page)).contains("State office : opens until 12 Feb 2026");
        String withdraw = Pattern.compile("action=\"([^\"]*/withdrawn)\"").matcher(page.body()).results().findFirst()
                .orElseThrow().group(1);
        assertThat(coordinator.post(withdraw).status()).isEqualTo(303);
        assertThat(APP.browser().get(link).status()).isEqualTo(404);
        assertThat(APP.browser().get(link + "/csv").status()).isEqualTo(404);
        assertThat(text(coordinator.get(version))).contains("State office : withdrawn");
    }

    @Test
    void aLink_endsByItself() {
        try (TestApp later = TestApp.start(TestClock.atStart())) {
            Cast there = later.here();
            Browserless office = later.signedIn(there.coordinator());
            String address = "/season/" + there.season() + "/summary/";
            String form = Pattern.compile("action=\"([^\"]*/freeze[^\"]*)\"")
                    .matcher(office.get(address + "freeze").body()).results()
                    .findFirst().orElseThrow().group(1);
            String version = office.post(form).location();
            office.get(version);
            String made = office.post(version + "/links", "reader", "State office", "days", "14").body();
            String link = Pattern.compile("/handed-over/[\\w-]+").matcher(made).results().findFirst()
                    .orElseThrow().group();
            assertThat(later.browser().get(link).status()).isEqualTo(200);
            later.clock().advance(Duration.ofDays(14));
            assertThat(later.browser().get(link).status()).isEqualTo(404);
        }
    }

    private String link(String version, String reader, String days) {
        coordinator.get(version);
        Answer made = coordinator.post(version + "/links", "reader", reader, "days", days);
        return Pattern.compile("/handed-over/[\\w-]+").matcher(made.body()).results().findFirst().orElseThrow().group();
    }

    private static String find(String body, String pattern) {
        return Pattern.compile(pattern).matcher(body).results().findFirst().orElseThrow().group(1);
    }

    private static NamedCsvRecord entry(Packages.Package read, String kind) {
        return read.table("count_entries").stream().filter(row -> row.getField("kind").equals(kind)).findFirst()
                .orElseThrow();
    }

    private static NamedCsvRecord measured(Packages.Package read, String analyte) {
        return read.table("measurements").stream().filter(row -> row.getField("analyte").equals(analyte)).findFirst()
                .orElseThrow();
    }

    private String freeze() {
        Answer answer = coordinator.post(form());
        assertThat(answer.status()).as(text(answer)).isEqualTo(303);
        return answer.location();
    }

    private String form() {
        return Pattern.compile("action=\"([^\"]*/summary/freeze[^\"]*)\"")
                .matcher(coordinator.get(summary + "/freeze").body())
                .results().findFirst().orElseThrow().group(1).replace("&amp;", "&");
    }

    private byte[] api(String ending, int status) {
        HttpRequest request = HttpRequest
                .newBuilder(URI.create(APP.baseUrl() + "/api/v1/seasons/" + cast.season() + "/summary" + ending))
                .header("Authorization", "Bearer " + cast.chapterToken()).build();
        try {
            HttpResponse<byte[]> response = HttpClient.newHttpClient()
                    .send(request, HttpResponse.BodyHandlers.ofByteArray());
            assertThat(response.statusCode()).as(ending).isEqualTo(status);
            return response.body();
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private void read(String at, String value) {
        TankOfCast tank = cast.tankA();
        Answer answer = APP.bearer(tank.token()).header("Idempotency-Key", "\"" + UUID.randomUUID() + "\"")
                .postJson("/api/v1/tanks/" + tank.code() + "/readings",
                        "{\"measuredAt\": \"" + at + "\", \"values\": [{" + value + "}]}");
        assertThat(answer.status()).as(answer.body()).isEqualTo(201);
    }

    private void write(String kind, String... fields) {
        String count = "/season/" + cast.season() + "/tanks/" + cast.tankA().code() + "/count";
        List<String> all = new ArrayList<>(List.of("method", "one_by_one"));
        all.addAll(List.of(fields));
        String form = Pattern.compile("action=\"([^\"]*/count/" + kind + "\\?form=[^\"]*)\"")
                .matcher(coordinator.get(count + "/" + kind).body()).results().findFirst().orElseThrow().group(1);
        Answer answer = coordinator.post(form, all.toArray(String[]::new));
        assertThat(answer.status()).as(text(answer)).isEqualTo(303);
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("<[^>]*>", " ").replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }
}
