package org.tankrounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.tankrounds.RankFiles.READINGS;
import static org.tankrounds.RankFiles.READINGS_HEADER;
import static org.tankrounds.RankFiles.TANKS;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.api.io.TempDir;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.testing.CommandRun;
import org.tankrounds.water.Analyte;

/** Two CSV files in, one ranking out. What is refused is in {@link RankRefusalsTest}. */
class RankCommandTest {
    private static final String HEADER =
            "as_of,rank,tank,chance,exposure,driver,hours_to_limit,reading_age_hours";

    @TempDir
    private Path folder;
    private RankFiles files;

    @BeforeEach
    void writeGoodFiles() throws IOException {
        files = new RankFiles(folder).tanks(TANKS).readings(READINGS);
    }

    /** Where the engine changes on purpose, the file is to be replaced by what the command prints. */
    @Test
    void committedSeason_givesTheCommittedRankingByteForByte() throws IOException {
        files.tanks(resource("tanks.csv")).readings(resource("readings.csv"))
                .written("as-of.txt", resource("as-of.txt"));
        CommandRun run = files.rank("--as-of-file", folder.resolve("as-of.txt").toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).isEqualTo(resource("ranking.csv"));
    }

    /** As in the service, where nobody has said that it is right. */
    @Test
    void unlikelyValue_countsForLittle() throws IOException {
        Instant before = Instant.parse("2027-03-09T19:00:00Z");
        Instant at = Instant.parse("2027-03-10T19:00:00Z");
        files.tanks("tank\nT1\n").readings(READINGS_HEADER
                + "T1," + before + ",ph,7.2,[pH],0.4\nT1," + at + ",ph,9.4,[pH],0.4\n");
        List<Observation> asTheServiceHasThem = List.of(Observation.of(before, Analyte.PH, 7.2, 0.2),
                new Observation(at, Analyte.PH, 9.4, 0.2, false, true));
        double chance = new Forecaster().forecast(TankFacts.of("T1").build(), asTheServiceHasThem,
                Instant.parse(RankFiles.AS_OF)).chance();
        assertThat(Double.parseDouble(files.rank().lines().get(1).split(",")[3])).isEqualTo(chance);
    }

    @Test
    void everyTank_isRankedByExposureThenChanceThenCode() throws IOException {
        files.tanks(resource("tanks.csv")).readings(resource("readings.csv"));
        CommandRun run = files.rank();
        assertThat(run.lines().get(0)).isEqualTo(HEADER);
        List<String[]> rows = run.lines().stream().skip(1).map(line -> line.split(",", -1)).toList();
        assertThat(rows).extracting(row -> row[2])
                .containsExactlyInAnyOrder("STEADY", "WARMING", "SOFT", "SILENT", "EGGS", "BARE");
        assertThat(rows).extracting(row -> row[1]).containsExactly("1", "2", "3", "4", "5", "6");
        assertThat(rows).extracting(row -> -Double.parseDouble(row[4])).isSorted();
        assertThat(rows).allSatisfy(row -> {
            assertThat(row[0]).isEqualTo("2027-03-10T20:00:00Z");
            assertThat(Double.parseDouble(row[3])).isBetween(0.0, 1.0);
            assertThat(row[5]).isIn("temperature", "un_ionised_ammonia", "nitrite", "dissolved_oxygen", "ph",
                    "chlorine", "deaths", "silence");
        });
        assertThat(rows.get(5)[2]).as("last").isIn("STEADY", "EGGS");
        assertThat(row(rows, "BARE")[7]).as("age without a reading").isEmpty();
        assertThat(row(rows, "SOFT")[5]).isEqualTo("nitrite");
        assertThat(row(rows, "SOFT")[6]).as("met now").isEqualTo("0");
        assertThat(row(rows, "WARMING")[5]).isEqualTo("temperature");
        assertThat(row(rows, "SILENT")[5]).isEqualTo("silence");
        assertThat(row(rows, "SILENT")[7]).isEqualTo("265.0");
    }

    /**
     * A decimal point forgotten by a class, or Celsius in a Fahrenheit column, must not cost the chapter
     * its ranking.
     */
    @ParameterizedTest
    @CsvSource({"ph, 72, [pH], 0 to 14", "temperature, 115, Cel, -10 to 100", "temperature, 11, [degF], 14 to 212",
        "chlorine, 30, mg/L, 0 to 10"})
    void valueThatCannotBe_isToldByLineAndDoesNotCount(String analyte, String value, String unit, String allowed)
            throws IOException {
        String ranking = files.rank().out();
        String line = String.join(",", "T1", RankFiles.AS_OF, analyte, value, unit, "");
        CommandRun run = files.readings(READINGS + line + "\n").rank();
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).isEqualTo(ranking);
        assertThat(run.err()).contains("line 4, column value: '" + value + "'").contains(allowed)
                .contains("does not count");
    }

    @Test
    void tiedTanks_areOrderedByCode() throws IOException {
        files.tanks("tank\nb\nc\na\n").readings(READINGS_HEADER);
        assertThat(files.rank().lines()).extracting(line -> line.split(",")[2])
                .containsExactly("tank", "a", "b", "c");
    }

    @Test
    void severalTimes_areAnsweredInTheOrderGivenUnderOneHeader() throws IOException {
        files.written("times.txt", "\uFEFF2027-03-08T00:00:00Z\r\n\r\n2027-03-07T00:00:00+01:00\r\n");
        CommandRun run = files.rank("--as-of", "2027-03-10T15:00:00-05:00", "--as-of", "2027-03-09T00:00:00Z",
                "--as-of-file", folder.resolve("times.txt").toString());
        assertThat(run.exitCode()).isZero();
        assertThat(run.lines()).hasSize(1 + 4 * 2);
        assertThat(run.lines().stream().skip(1).map(line -> line.split(",")[0]).distinct()).containsExactly(
                "2027-03-10T20:00:00Z", "2027-03-09T00:00:00Z", "2027-03-08T00:00:00Z",
                "2027-03-06T23:00:00Z");
    }

    @Test
    void severalTimes_giveWhatEachWouldAlone() {
        String later = files.rank("--as-of", "2027-03-12T00:00:00Z").out();
        CommandRun both = files.rank("--as-of", RankFiles.AS_OF, "--as-of", "2027-03-12T00:00:00Z");
        assertThat(both.out()).endsWith(later.substring(HEADER.length() + 1)).startsWith(files.rank().out());
    }

    @Test
    void orderOfLines_isOfNoAccount() throws IOException {
        files.tanks(resource("tanks.csv")).readings(resource("readings.csv"));
        String ranking = files.rank().out();
        List<String> lines = new ArrayList<>(resource("readings.csv").lines().skip(1).toList());
        for (long seed = 1; seed <= 3; seed++) {
            Collections.shuffle(lines, new Random(seed));
            assertThat(files.readings(READINGS_HEADER + String.join("\n", lines)).rank().out())
                    .as("seed %d", seed).isEqualTo(ranking);
        }
    }

    @Test
    void spreadsheetHabits_changeNothing() throws IOException {
        String plain = files.rank().out();
        String windows = "\uFEFF" + READINGS.replace("52.3", "\"52.3\"").replace("T1,", "\"T1\",")
                .replace("\n", "\r\n") + "\r\n,,,,,\r\n\r\n";
        assertThat(files.readings(windows).rank().out()).isEqualTo(plain);
        assertThat(files.tanks("\uFEFF" + TANKS.replace("\n", "\r\n") + "\r\n").rank().out())
                .isEqualTo(plain);
    }

    @Test
    void columnsInAnotherOrderOrOfOnesOwn_changeNothing() throws IOException {
        String plain = files.rank().out();
        CommandRun run = files.readings("""
                note,unit,value,analyte,measured_at,tank,step
                "cloudy, a little",[degF],52.3,temperature,2027-03-10T14:05:00-05:00,T1,1
                ,mg/L as NH3,0.5,total_ammonia,2027-03-10T19:05:00Z,T1,0.25
                """).rank();
        assertThat(run.out()).isEqualTo(plain);
    }

    @Test
    void formOfANumber_matters() throws IOException {
        String asN = READINGS.replace("0.5,mg/L as NH3", "4,mg/L as N");
        String asNh4 = READINGS.replace("0.5,mg/L as NH3", "4,mg/L as NH4");
        String sameInN = READINGS.replace("0.5,mg/L as NH3,0.25", "3.1059646,mg/L as N,0.19412279");
        assertThat(exposureOfT1(files.readings(asN))).isGreaterThan(exposureOfT1(files.readings(asNh4)));
        assertThat(exposureOfT1(files.readings(sameInN)))
                .isCloseTo(exposureOfT1(files.readings(asNh4)), withinPercentage(0.1));
    }

    @Test
    void emptyCellsAndMissingColumns_areFine() throws IOException {
        CommandRun run = files.tanks("tank,eggs,time_zone\nT1\nT2,40,")
                .readings("tank,measured_at,analyte,value,unit\n").rank();
        assertThat(run.exitCode()).isZero();
        assertThat(run.lines()).hasSize(3);
    }

    @Test
    void eggsWithATimeOrADay_areBothUnderstood() throws IOException {
        String day = files.rank().out();
        assertThat(files.tanks(TANKS.replace("2026-11-05", "2026-11-05T12:00:00-05:00")).rank().out())
                .isEqualTo(day);
    }

    private static double exposureOfT1(RankFiles files) {
        return files.rank().lines().stream().map(line -> line.split(","))
                .filter(cells -> cells[2].equals("T1"))
                .mapToDouble(cells -> Double.parseDouble(cells[4])).findFirst().orElseThrow();
    }

    private static String[] row(List<String[]> rows, String tank) {
        return rows.stream().filter(cells -> cells[2].equals(tank)).findFirst().orElseThrow();
    }

    private static String resource(String name) throws IOException {
        return Files.readString(Path.of("src/test/resources/rank", name), StandardCharsets.UTF_8);
    }
}
