package org.tankrounds.summary;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.tankrounds.fish.Stage;
import org.tankrounds.readings.ReadingTally;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.DeathCauses;
import org.tankrounds.season.Ledger;
import org.tankrounds.season.Survivors;
import org.tankrounds.summary.SeasonSummary.Heading;
import org.tankrounds.summary.SeasonSummary.Level;
import org.tankrounds.summary.SeasonSummary.Row;
import org.tankrounds.summary.WithinLimit.Worst;
import org.tankrounds.tasks.TaskTally;
import org.tankrounds.web.Assets;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Language;

/** Every format is read back by other means than it was written, and says the same. */
final class SummaryFormatsTest {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final Instant MADE = Instant.parse("2026-07-01T12:00:00Z");
    private static final Clock CLOCK = Clock.fixed(MADE, ZoneOffset.UTC);

    private final SeasonSummary summary = SeasonSummary.of(
            new Heading("ch4pt3", "Clearthimble Chapter", "s34s0n", "2025-26", LocalDate.parse("2025-10-01"),
                    LocalDate.parse("2026-06-30"), ZONE),
            List.of(
                    tank("sch001", "Alderwhistle School", "Room 12", "t4nk01", 200, 30, 20, 2),
                    tank("sch001", "Alderwhistle School", "=Lab", "t4nk02", 150, 3, 0, 0),
                    tank("sch002", "Saint-Exupéry \"Annexe\"", "Room 3", "t4nk03", 100, 101, 4, 0)),
            List.of());
    private final Ledger total = summary.chapter().figures().ledger();
    private final SummaryFiles files = new SummaryFiles(null, null,
            new SummaryPaper(new Pages(new Assets(), CLOCK)::print), null, "1.2.3-test", CLOCK);

    @Test
    void theNumbersThatTheOthersAreHeldAgainst() {
        assertThat(total).isEqualTo(new Ledger(450, 0, 134, 24, 2, 0, 0, 0, 295, -5));
        assertThat(total.received()).isEqualTo(total.dead() + total.alive() + total.unexplained());
        assertThat(summary.schools().get(0).figures().ledger().received()).isEqualTo(350);
    }

    @Test
    void csv_hasTheSameTotals() {
        String text = new String(write(summary, SummaryFormat.CSV, Speech.PLAIN), StandardCharsets.UTF_8);
        List<NamedCsvRecord> records = CsvReader.builder().ofNamedCsvRecord(text).stream().toList();

        assertThat(text).startsWith("chapter_code,chapter,").contains("\r\n").doesNotContain("\n\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
        assertThat(records).hasSize(3 + 2 + 1);
        NamedCsvRecord last = records.get(5);
        assertThat(last.getField("level")).isEqualTo("chapter");
        assertThat(Integer.parseInt(last.getField("eggs_received"))).isEqualTo(total.received());
        assertThat(Integer.parseInt(last.getField("dead"))).isEqualTo(total.dead());
        assertThat(Integer.parseInt(last.getField("alive_by_count"))).isEqualTo(total.alive());
        assertThat(Integer.parseInt(last.getField("unexplained"))).isEqualTo(total.unexplained());
        for (String column : List.of("eggs_received", "dead", "alive_by_count", "unexplained", "readings",
                "temperature_days", "nitrite_values_not_detected")) {
            assertThat(sum(records, "tank", column)).as(column).isEqualTo(sum(records, "school", column))
                    .isEqualTo(Integer.parseInt(last.getField(column)));
        }
    }

    @Test
    void csv_guardsTextAndLeavesNumbers() {
        String text = new String(write(summary, SummaryFormat.CSV, Speech.PLAIN), StandardCharsets.UTF_8);
        List<NamedCsvRecord> records = CsvReader.builder().ofNamedCsvRecord(text).stream().toList();

        assertThat(records.get(1).getField("classroom")).isEqualTo("'=Lab");
        assertThat(records.get(2).getField("unexplained")).isEqualTo("-5");
        assertThat(records.get(2).getField("school")).isEqualTo("Saint-Exupéry \"Annexe\"");
    }

    @Test
    void json_hasTheSameTotals() throws IOException {
        JsonNode json = new ObjectMapper().readTree(write(summary, SummaryFormat.JSON, Speech.PLAIN));

        JsonNode ledger = json.at("/total/ledger");
        assertThat(ledger.get("eggsReceived").asInt()).isEqualTo(total.received());
        assertThat(ledger.get("dead").asInt()).isEqualTo(total.dead());
        assertThat(ledger.get("aliveByCount").asInt()).isEqualTo(total.alive());
        assertThat(ledger.get("unexplained").asInt()).isEqualTo(total.unexplained());
        int tanks = 0;
        for (JsonNode tank : json.get("tanks")) {
            tanks += tank.at("/ledger/dead").asInt();
        }
        assertThat(tanks).isEqualTo(total.dead());
        assertThat(json.at("/total/temperature/worst/value").asDouble()).isEqualTo(14.2);
        assertThat(json.at("/tanks/0/survival/share").decimalValue()).isEqualByComparingTo("0.74");
        assertThat(json.at("/tanks/0/survival/low").asDouble()).isEqualTo(0.675093);
        assertThat(json.at("/tanks/0/survival/high").asDouble()).isEqualTo(0.795862);
        // 148 of 200, exact: computed from Clopper & Pearson 1934, Biometrika 26:404-413.
        assertThat(json.at("/tanks/0/survival/exact/low").asDouble()).isEqualTo(0.673422);
        assertThat(json.at("/tanks/0/survival/exact/high").asDouble()).isEqualTo(0.799315);
    }

    @Test
    void sameRows_makeTheSameBytes() {
        for (SummaryFormat format : List.of(SummaryFormat.CSV, SummaryFormat.JSON)) {
            byte[] later = new SummaryFiles(null, null, null, null, "9", Clock.systemUTC())
                    .write(summary, format, Speech.PLAIN, Stamp.now(Instant.now(), "9"));
            assertThat(later).as(format.name()).isEqualTo(write(summary, format, Speech.PLAIN));
        }
    }

    @Test
    void workbook_sumsByFormula_andTheFormulasComeToTheSameTotals() {
        Workbooks.Sheet tanks = Workbooks.read(write(summary, SummaryFormat.XLSX, Speech.PLAIN), 1);

        assertThat(tanks.text("E2")).isEqualTo("t4nk01");
        assertThat(tanks.text("D3")).as("text is a typed cell, so that nothing needs a guard")
                .isEqualTo("=Lab");
        assertThat(tanks.isNumber("F2")).isTrue();
        assertThat(tanks.frozenRows()).isEqualTo(1);
        assertThat(tanks.formula(tanks.cellBelow("eggs_received", 5))).isEqualTo("SUM(F2:F4)");
        assertThat(tanks.sumAt("eggs_received", 5)).isEqualTo(total.received());
        assertThat(tanks.sumAt("dead", 5)).isEqualTo(total.dead());
        assertThat(tanks.sumAt("alive_by_count", 5)).isEqualTo(total.alive());
        assertThat(tanks.sumAt("unexplained", 5)).isEqualTo(total.unexplained());
        assertThat(tanks.sumAt("readings", 5)).isEqualTo(summary.chapter().figures().readings().posted());
    }

    /** An agency asks from where, with which certificate and how they were counted. */
    @Test
    void deliveries_standInEveryFormatForReading() throws IOException {
        JsonNode first = new ObjectMapper().readTree(write(summary, SummaryFormat.JSON, Speech.PLAIN))
                .at("/tanks/0/deliveries/0");
        assertThat(first.path("eggs").asInt()).isEqualTo(200);
        assertThat(first.path("supplier").asText()).isEqualTo("Harrowfen egg house");
        assertThat(first.path("certificate").asText()).isEqualTo("HC-7");
        assertThat(first.path("thermalUnitsC").asDouble()).isEqualTo(215);
        Workbooks.Sheet sheet = Workbooks.read(write(summary, SummaryFormat.XLSX, Speech.PLAIN), 4);
        assertThat(sheet.text(sheet.cellBelow("certificate", 2))).isEqualTo("HC-7");
        assertThat(sheet.resultAt("eggs", 5)).isEqualTo(450);
        try (PDDocument document = Loader.loadPDF(write(summary, SummaryFormat.PDF, Speech.PLAIN))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            assertThat(stripper.getText(document).replaceAll("\\s+", " ")).contains("Where the eggs came from")
                    .contains("Harrowfen egg house").contains("HC-7").contains("by weight, ±3");
        }
    }

    /** A phone's preview and a script do not reckon. */
    @Test
    void workbook_saysWhatItsFormulasComeTo() {
        byte[] workbook = write(summary, SummaryFormat.XLSX, Speech.PLAIN);
        Workbooks.Sheet tanks = Workbooks.read(workbook, 1);
        assertThat(tanks.resultAt("eggs_received", 5)).isEqualTo(tanks.sumAt("eggs_received", 5)).isEqualTo(450);
        assertThat(tanks.resultAt("unexplained", 5)).isEqualTo(total.unexplained());
        assertThat(Workbooks.read(workbook, 2).resultAt("eggs_received", 2)).isEqualTo(350);
        assertThat(Workbooks.read(workbook, 3).resultAt("fish", 4)).isEqualTo(80);
    }

    @Test
    void paper_hasTheSameTotals_andSaysWhatItIs() throws IOException {
        byte[] pdf = write(summary, SummaryFormat.PDF, Speech.PLAIN);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            String text = stripper.getText(document);

            assertThat(text).contains("Clearthimble Chapter", "2025-26", "1 Oct 2025 to 30 Jun 2026",
                    "Every egg accounted for", "Made 1 Jul 2026, 12:00 UTC by Tankrounds 1.2.3-test",
                    "Page 1 of " + document.getNumberOfPages(), "Saint-Exupéry", "Wilson");
            String all = text.lines().filter(line -> line.startsWith("All schools")).findFirst()
                    .orElseThrow();
            assertThat(all).contains("450", "134", "24", "160", "295", "-5");
            assertThat(document.getPage(0).getMediaBox().getWidth()).as("A4's width, in points")
                    .isBetween(594f, 597f);
            assertThat(document.getPage(0).getMediaBox().getHeight()).as("Letter's height")
                    .isBetween(789f, 793f);
        }
    }

    @Test
    void stages_spellsReleasesAndActions_standInEveryFormat() throws IOException {
        List<NamedCsvRecord> records = CsvReader.builder().ofNamedCsvRecord(new String(
                write(summary, SummaryFormat.CSV, Speech.PLAIN), StandardCharsets.UTF_8)).stream().toList();
        NamedCsvRecord last = records.get(5);
        assertThat(last.getField("egg_stage_began")).isEqualTo("450");
        assertThat(last.getField("egg_stage_survived")).isEqualTo("317");
        assertThat(last.getField("egg_stage_counts_off_by_95")).as("the three counts are off by chance of their own")
                .isEqualTo("18");
        assertThat(last.getField("longest_temperature_spell_from")).isEqualTo("2026-02-01");
        assertThat(last.getField("longest_temperature_spell_days_read")).isEqualTo("3");
        assertThat(last.getField("tasks_asked")).isEqualTo("9");
        assertThat(last.getField("visits")).isEqualTo("15");

        JsonNode json = new ObjectMapper().readTree(write(summary, SummaryFormat.JSON, Speech.PLAIN));
        assertThat(json.at("/total/survivalByStage/egg/share").asDouble()).isEqualTo(0.704444);
        assertThat(json.at("/total/survivalByStage/feeding").isNull()).isTrue();
        assertThat(json.at("/total/releases/1/approval").asText()).isEqualTo("P-8");
        assertThat(json.at("/total/releases/0/tankTemperatureC").asDouble()).isEqualTo(12.14);
        assertThat(json.at("/tanks/0/temperature/longestSpell/until").asText()).isEqualTo("2026-02-04");

        Workbooks.Sheet releases = Workbooks.read(write(summary, SummaryFormat.XLSX, Speech.PLAIN), 3);
        assertThat(releases.text("A2")).isEqualTo("Lower bridge");
        assertThat(releases.isNumber("C2")).as("a day is a typed cell").isTrue();
        assertThat(releases.sumAt("fish", 4)).isEqualTo(80);
        assertThat(releases.frozenRows()).isEqualTo(1);

        try (PDDocument document = Loader.loadPDF(write(summary, SummaryFormat.PDF, Speech.PLAIN))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            String text = stripper.getText(document).replaceAll("\\s+", " ");
            assertThat(text).contains("Lower bridge, approval P-8", "317 of 450", "counts ±18", "3 of 4",
                    "For the chapter: name and office", "Received for the agency", "It is no permit");
        }
    }

    @Test
    void paper_ofManyTanks_repeatsTheHeadOfItsTables() throws IOException {
        List<Row> many = new ArrayList<>();
        for (int i = 0; i < 70; i++) {
            many.add(tank("sch" + i, "School " + i, "Room " + i, "t" + i, 100, 1, 1, 1));
        }
        byte[] pdf = write(SeasonSummary.of(summary.heading(), many, List.of()), SummaryFormat.PDF, Speech.PLAIN);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isGreaterThan(4);
            PDFTextStripper second = new PDFTextStripper();
            second.setStartPage(2);
            second.setEndPage(2);
            assertThat(second.getText(document)).contains("Alive by", "Page 2 of");
        }
    }

    @Test
    void paper_printsNamesBeyondTheStandardFonts() throws IOException {
        SeasonSummary foreign = SeasonSummary.of(summary.heading(),
                List.of(tank("sch1", "Szkoła Łąkowa", "Ωμέγα ₃", "t1", 100, 1, 1, 1)), List.of());
        try (PDDocument document = Loader.loadPDF(write(foreign, SummaryFormat.PDF, Speech.PLAIN))) {
            assertThat(new PDFTextStripper().getText(document)).contains("Szkoła Łąkowa", "Ωμέγα ₃");
        }
    }

    @Test
    void onlyPaper_isInTheReadersLanguage() throws IOException {
        Speech spanish = new Speech(Language.SPANISH, Scale.CELSIUS);
        try (PDDocument document = Loader.loadPDF(write(summary, SummaryFormat.PDF, spanish))) {
            assertThat(new PDFTextStripper().getText(document)).contains("La cuenta de cada huevo")
                    .contains("peor valor 14.2, el 3 feb").contains("Página 1 de").doesNotContain("Alive by");
        }
        for (SummaryFormat format : List.of(SummaryFormat.CSV, SummaryFormat.JSON)) {
            assertThat(write(summary, format, spanish)).isEqualTo(write(summary, format, Speech.PLAIN));
        }
    }

    private byte[] write(SeasonSummary any, SummaryFormat format, Speech speech) {
        return files.write(any, format, speech, files.stamp());
    }

    private static long sum(List<NamedCsvRecord> records, String level, String column) {
        return records.stream()
                .filter(row -> row.getField("level").equals(level))
                .mapToLong(row -> Long.parseLong(row.getField(column)))
                .sum();
    }

    private static Row tank(
            String schoolCode, String school, String room, String code, int eggs, int dead, int sacFry,
            int feeding) {
        Ledger ledger = Ledger.ofReceived(eggs)
                .withDeaths(Stage.EGG, dead).withDeaths(Stage.SAC_FRY, sacFry)
                .withDeaths(Stage.FEEDING, feeding);
        Instant at = Instant.parse("2026-02-03T15:00:00Z");
        Worst worst = new Worst(14.2, 1.3, at, LocalDate.parse("2026-02-03"), code);
        Figures figures = new Figures(ledger, Survivors.of(ledger), List.of(new Delivery(LocalDate.parse("2025-11-04"),
                schoolCode, school, room, code, eggs, 3, CountMethod.WEIGHED, OptionalDouble.of(215),
                Optional.of("Harrowfen egg house"), Optional.of("HC-7"))), 0, 0, DeathCauses.NONE,
                new ReadingTally(44, 2, Optional.of(Instant.parse("2025-11-04T16:00:00Z")), Optional.of(at)),
                new WithinLimit(44, 41, 0, 50, 0, 1, Optional.of(worst),
                        Optional.of(new Spell(LocalDate.parse("2026-02-01"), LocalDate.parse("2026-02-04"), 3, worst))),
                new WithinLimit(20, 18, 2, 20, 8, 0,
                        Optional.of(new Worst(0.00428, 0.34, at, LocalDate.parse("2026-02-03"), code)),
                        Optional.empty()),
                new WithinLimit(20, 20, 0, 20, 20, 0, Optional.empty(), Optional.empty()),
                new Stages(Map.of(Stage.EGG, new StageSurvival(eggs, Math.max(0, eggs - dead), 0, 1, 100)), Map.of()),
                new TaskTally(3, 2, 1), 5, 4, releases(schoolCode, school, room, code));
        return new Row(Level.TANK, schoolCode, school, room, code, ZONE, figures);
    }

    private static List<Release> releases(String schoolCode, String school, String room, String code) {
        return code.equals("t4nk01") || code.equals("t4nk03") ? List.of(new Release(7, "Lower bridge", "P-8",
                LocalDate.parse("2026-05-12"), schoolCode, school, room, code, 40, 2, CountMethod.WEIGHED,
                OptionalDouble.of(12.14), Optional.empty())) : List.of();
    }
}
