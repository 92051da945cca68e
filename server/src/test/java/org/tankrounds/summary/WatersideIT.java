package org.tankrounds.summary;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.release.Approval;
import org.tankrounds.release.ApprovalRepository;
import org.tankrounds.release.Load;
import org.tankrounds.release.PlanRepository;
import org.tankrounds.release.ReleasePlan;
import org.tankrounds.release.Site;
import org.tankrounds.release.SiteRepository;
import org.tankrounds.release.Species;
import org.tankrounds.release.StreamCheck;
import org.tankrounds.release.StreamCheckRepository;
import org.tankrounds.season.SeasonRepository;
import org.tankrounds.stream.StreamGroup;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;

/** What was seen at the water goes to the agency too: with each release, and of the streams themselves. */
final class WatersideIT {
    private static final TestApp APP = TestApp.shared();
    /**
     * Seven families, 100 animals: FBI 3.65, excellent, four EPT families. Computed by the formula of Hilsenhoff 1988,
     * J. N. Am. Benthol. Soc. 7:65-68.
     */
    private static final Map<StreamGroup, Integer> WORKED = Map.of(StreamGroup.FLAT_MAYFLY, 20,
            StreamGroup.CRAWLING_MAYFLY, 15, StreamGroup.GOLDEN_STONEFLY, 8, StreamGroup.NET_CADDIS, 30,
            StreamGroup.RIFFLE_BEETLE, 10, StreamGroup.MIDGE, 12, StreamGroup.BLACK_FLY, 5);

    private final Cast cast = Cast.add(APP.transactions(), "Clerks at the water");
    private final Browserless coordinator = APP.signedIn(cast.coordinator());
    private final String summary = "/season/" + cast.season() + "/summary";
    private int site;
    private int plan;
    private int check;

    @BeforeEach
    void aReleaseAndAStreamCheck() {
        APP.transactions().inChapter(cast.chapterId(), tx -> {
            site = new SiteRepository().add(tx, cast.chapterId(), new Site.Details("Lower bridge", "Quill Brook",
                    Optional.empty(), Optional.of(new Site.Point(41.25, -75.5)), OptionalDouble.of(285)));
            int approval = new ApprovalRepository().add(tx, cast.chapterId(), site, new Approval.Details("P-8",
                    "State fish agency", Species.RAINBOW_TROUT, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 5, 31),
                    400, Optional.empty(), Optional.empty()));
            int season = new SeasonRepository().get(tx, cast.chapterId(), cast.season()).seasonId();
            plan = new PlanRepository().add(tx, cast.chapterId(), UUID.randomUUID(), new ReleasePlan(0, season,
                    approval, new ReleasePlan.Details(Instant.parse("2026-01-13T15:00:00Z"), 1, OptionalDouble.of(11),
                            OptionalDouble.of(8), OptionalDouble.empty(), OptionalDouble.empty(), true, 12, 3, Map.of(),
                            Optional.empty(), List.of(new Load(cast.tankA().tankId(), 60, OptionalDouble.of(45),
                                    OptionalDouble.empty(), 2, 20))), Optional.empty()),
                    cast.coordinator().personId(), TestClock.START);
            return null;
        });
        check = look("2026-01-12T15:00:00Z", WORKED);
        look("2024-05-12T15:00:00Z", Map.of());
        String form = "/release/plans/" + plan + "/tanks/" + cast.tankA().code();
        String page = coordinator.get(form).body();
        Answer written = coordinator.post(form, "submission_id", UUID.randomUUID().toString(), "fish", "57", "method",
                "one_by_one", "lengths", "44 47 53", "box_temperature", "11", "stream_temperature", "8.2",
                "tempered_minutes", "40", "kept_small", "2", "kept_reason", "1", "note", "too round to swim",
                "temperature_scale", Pattern.compile("temperature_scale\" value=\"([^\"]*)").matcher(page).results()
                        .findFirst().orElseThrow().group(1));
        assertThat(written.status()).as(text(written)).isEqualTo(303);
    }

    @Test
    void thePage_tellsWhatWasSeen_andLeadsToIt() {
        Answer page = coordinator.get(summary);
        assertThat(text(page)).contains("2 too small; 1 kept back; box 11.0 °C, stream 8.2 °C; over 40 minutes;"
                        + " 3 measured, 48 mm on average (44 to 53); too round to swim")
                .contains("Lower bridge Quill Brook 8.4 °C; pH 7.2; 11.1 mg/L oxygen, 98 % of saturation"
                        + " 100 3.65, excellent 4");
        assertThat(page.body()).contains("href=\"/release/plans/" + plan + "\"")
                .contains("href=\"/release/sites/" + site + "/checks/" + check + "\"");
        assertThat(text(page)).as("of another year").doesNotContain("12 May 2024");
    }

    @Test
    void scripts_getTheCountsBehindTheScores() throws IOException {
        JsonNode json = new ObjectMapper().readTree(api(".json"));
        JsonNode water = json.at("/total/releases/0/atTheWater");
        assertThat(water.path("boxTemperatureC").asDouble()).isEqualTo(11);
        assertThat(water.path("lengthsMm")).extracting(JsonNode::asInt).containsExactly(44, 47, 53);
        assertThat(water.at("/keptBack/small").asInt()).isEqualTo(2);
        assertThat(json.path("streamChecks")).hasSize(1);
        JsonNode look = json.at("/streamChecks/0");
        assertThat(look.at("/familyBioticIndex/value").asDouble()).isEqualTo(3.65);
        assertThat(look.at("/familyBioticIndex/class").asText()).isEqualTo("excellent");
        assertThat(look.path("eptFamilies").asInt()).isEqualTo(4);
        assertThat(look.at("/found/net_caddis").asInt()).isEqualTo(30);
        assertThat(json.toString()).as("free text stays at home").doesNotContain("too round to swim");
    }

    @Test
    void thePackage_andTheWorkbook_haveTheSame() {
        Packages.Package read = Packages.read(api(".zip"));
        assertThat(read.faults()).isEmpty();
        NamedCsvRecord release = read.table("releases").get(0);
        assertThat(release.getField("stream_temperature_deg_c")).isEqualTo("8.2");
        assertThat(release.getField("mean_length_mm")).isEqualTo("48");
        assertThat(release.getField("kept_back_else")).isEqualTo("1");
        assertThat(read.table("release_lengths")).extracting(row -> row.getField("length_mm"))
                .allSatisfy(length -> assertThat(Double.parseDouble(length)).isBetween(44.0, 53.0)).hasSize(3);
        NamedCsvRecord look = read.table("stream_checks").get(0);
        assertThat(look.getField("family_biotic_index")).isEqualTo("3.65");
        assertThat(look.getField("latitude")).isEqualTo("41.25");
        assertThat(read.table("stream_animals").stream().mapToInt(row -> Integer.parseInt(row.getField("found"))).sum())
                .isEqualTo(Integer.parseInt(look.getField("animals"))).isEqualTo(100);

        Workbooks.Sheet releases = Workbooks.read(api(".xlsx"), 3);
        assertThat(releases.text(releases.cellBelow("site", 2))).isEqualTo("Lower bridge");
        assertThat(releases.isNumber(releases.cellBelow("mean_length_mm", 2))).isTrue();
        assertThat(releases.sumAt("fish", 3)).isEqualTo(57);
        Workbooks.Sheet looks = Workbooks.read(api(".xlsx"), 5);
        assertThat(looks.isNumber(looks.cellBelow("family_biotic_index", 2))).isTrue();
        assertThat(looks.text(looks.cellBelow("family_biotic_index_class", 2))).isEqualTo("excellent");
    }

    @Test
    void paper_hasThemToo() throws IOException {
        try (PDDocument document = Loader.loadPDF(api(".pdf"))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            assertThat(stripper.getText(document).replaceAll("\\s+", " ")).contains("2 too small")
                    .contains("The streams, as looked at").contains("3.65, excellent")
                    .contains("no assessment of a stream");
        }
    }

    @Test
    void aLookMoreThanInTheFrozenVersion_isTold() {
        String form = Pattern.compile("action=\"([^\"]*/summary/freeze[^\"]*)\"")
                .matcher(coordinator.get(summary + "/freeze").body()).results().findFirst().orElseThrow().group(1);
        String version = coordinator.post(form).location();
        assertThat(text(coordinator.get(version))).contains("What has changed since No figure.");
        APP.transactions().inChapter(cast.chapterId(), tx -> look("2026-01-13T12:00:00Z", Map.of()));
        assertThat(text(coordinator.get(version)))
                .contains("Stream check Lower bridge, Quill Brook, 2026-01-13T12:00:00Z, 2026-01-13, 8.4, 7.2, 11.1");
    }

    private int look(String at, Map<StreamGroup, Integer> found) {
        return APP.transactions().inChapter(cast.chapterId(),
                tx -> new StreamCheckRepository().add(tx, cast.chapterId(), UUID.randomUUID(),
                        new StreamCheck(0, site, Instant.parse(at), OptionalDouble.of(8.4), OptionalDouble.of(7.2),
                                OptionalDouble.of(11.1), found, Optional.empty(), Optional.empty()),
                        cast.coordinator().personId()));
    }

    private byte[] api(String ending) {
        HttpRequest request = HttpRequest.newBuilder(URI.create(APP.baseUrl() + "/api/v1/seasons/" + cast.season()
                + "/summary" + ending)).header("Authorization", "Bearer " + cast.chapterToken()).build();
        try {
            HttpResponse<byte[]> response = HttpClient.newHttpClient()
                    .send(request, HttpResponse.BodyHandlers.ofByteArray());
            assertThat(response.statusCode()).as(ending).isEqualTo(200);
            return response.body();
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("(?s)<script.*?</script>", " ").replaceAll("<[^>]*>", " ")
                .replace("&nbsp;", " ").replace("\u00a0", " ").replace("&#39;", "'").replace("&amp;", "&")
                .replaceAll("\\s+", " ");
    }
}
