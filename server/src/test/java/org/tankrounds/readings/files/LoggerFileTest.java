package org.tankrounds.readings.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.readings.files.LoggerFile.Here;
import org.tankrounds.readings.files.SetAside.Why;
import org.tankrounds.readings.files.UnreadableFileException.Trouble;
import org.tankrounds.water.Analyte;

/** Files as loggers write them. All are made up. */
class LoggerFileTest {
    private static final ZoneId SCHOOL = ZoneId.of("America/New_York");
    private static final Here HERE = new Here(SCHOOL, Instant.parse("2026-02-15T12:00:00Z"));

    @Test
    void commasAndUtc_needNoQuestion() {
        LoggerFile file = resource("commas-utc.csv", Map.of());

        assertThat(file.understanding().questions()).isEmpty();
        assertThat(file.lines()).hasSize(12);
        assertThat(file.lines().get(0).at()).isEqualTo("2026-01-05T13:00:00Z");
        assertThat(temperatures(file)).startsWith("11.31", "11.31", "11.37");
        assertThat(file.understanding().taken()).containsOnlyKeys(Analyte.TEMPERATURE);
    }

    @Test
    void daysAlone_areAskedAbout_andTakenForNoon() {
        String text = "date,temp c\n2026-01-05,11.1\n2026-01-06,11.2\n2026-01-07,11.3\n";
        assertThat(text(text, Map.of()).understanding().questions()).contains(Choices.TIME);

        LoggerFile file = text(text, Map.of(Choices.TIME, "0", Choices.ZONE, "school"));
        assertThat(file.understanding().questions()).isEmpty();
        // Noon in January is five hours before UTC there.
        assertThat(file.lines()).hasSize(3);
        assertThat(file.lines().get(0).at()).isEqualTo("2026-01-05T17:00:00Z");
    }

    /** Day 46027 since the end of 1899 is 5 January 2026, reckoned by any spreadsheet. */
    @Test
    void countedDaysUnderAnyName_areAskedAbout() {
        String text = "when;temp c\n46027,500000;11,1\n46027,520833;11,2\n46027,541667;11,3\n";
        assertThat(text(text, Map.of()).understanding().questions()).contains(Choices.TIME);

        LoggerFile file = text(text, Map.of(Choices.TIME, "0", Choices.ZONE, "utc"));
        assertThat(file.lines()).hasSize(3);
        assertThat(file.lines().get(0).at()).isEqualTo("2026-01-05T12:00:00Z");
    }

    @Test
    void oneTimeInAllRows_isAskedAbout_andRowsWithoutATimeAreCounted() {
        String text = "time (UTC),temp c\n" + "2026-01-05 10:00,11.1\n".repeat(5) + ",11.2\n";
        assertThat(text(text, Map.of()).understanding().questions()).containsExactly(Choices.TIME);

        LoggerFile file = text(text, Map.of(Choices.TIME, "0"));
        assertThat(file.lines()).hasSize(1);
        assertThat(file.repeated()).isEqualTo(4);
        assertThat(file.timeless()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"TBTTTT, 1", "BBBTTT, 3", "TTBTBB, 3", "TBTBTB, 3", "BTTBTB, 3"})
    void rowsWhoseTimeIsBlank_areToldOf_whereverTheyStand(String rows, int timeless) {
        StringBuilder text = new StringBuilder("Made by;logger 7\nDownloaded;2026-02-01 09:00\ntime (UTC);temp c\n");
        for (int i = 0; i < rows.length(); i++) {
            text.append(rows.charAt(i) == 'T' ? "2026-01-05 1" + i + ":00" : "").append(";11.").append(i + 1)
                    .append('\n');
        }

        LoggerFile file = text(text.toString(), Map.of(Choices.TIME, "0"));
        assertThat(file.timeless()).isEqualTo(timeless);
        assertThat(file.lines()).hasSize(rows.length() - timeless);
    }

    @Test
    void timesOfNoDay_areNoTimes() {
        assertThatThrownBy(() -> text("time,temp c\n10:00,11.1\n10:05,11.2\n10:10,11.3\n", Map.of()))
                .extracting(thrown -> ((UnreadableFileException) thrown).trouble()).isEqualTo(Trouble.NO_TIMES);
    }

    @Test
    void semicolonsAndDecimalCommas_askForTheZoneOnly() {
        LoggerFile asked = resource("semicolons-day-first.csv", Map.of());
        LoggerFile file = resource("semicolons-day-first.csv", Map.of(Choices.ZONE, "school"));

        assertThat(asked.understanding().questions()).containsExactly(Choices.ZONE);
        assertThat(asked.lines()).isEmpty();
        assertThat(file.lines()).hasSize(7);
        // Seven in the morning in January is five hours before UTC there.
        assertThat(file.lines().get(0).at()).isEqualTo("2026-01-13T12:00:00Z");
        assertThat(temperatures(file)).startsWith("10.9").endsWith("11.4");
        assertThat(file.setAside()).containsExactly(new SetAside(10, "---", Why.NO_VALUE));
    }

    @Test
    void twelveHoursFahrenheitAndTheMonthFirst_areRead() {
        LoggerFile file = resource("bars-twelve-hours.csv", Map.of());

        assertThat(file.understanding().questions()).isEmpty();
        assertThat(file.understanding().order().value()).contains(DateOrder.MONTH_DAY);
        assertThat(file.understanding().form(Analyte.TEMPERATURE).unit()).isEqualTo("[degF]");
        // 11:30 in the evening at five hours before UTC; three rows later it is ten past midnight, at 12:00 AM.
        assertThat(file.lines().get(0).at()).isEqualTo("2025-12-31T04:30:00Z");
        assertThat(file.lines().get(3).at()).isEqualTo("2025-12-31T05:00:00Z");
        assertThat(file.setAside()).containsExactly(
                new SetAside(6, "185.0", Why.POWER_ON), new SetAside(8, "-196.6", Why.DISCONNECTED));
    }

    @Test
    void secondsSince1970_andASensorsWordsForNothing_areKnown() {
        LoggerFile asked = resource("tabs-epoch.tsv", Map.of());
        LoggerFile file = resource("tabs-epoch.tsv",
                Map.of(Choices.TEMPERATURE, "1", Choices.TEMPERATURE_UNIT, "Cel"));

        assertThat(asked.understanding().questions()).containsExactly(Choices.TEMPERATURE);
        assertThat(temperatures(file)).containsExactly("11.2", "11.2", "11.3", "11.4", "11.4", "11.5");
        assertThat(file.lines().get(0).at()).isEqualTo("2026-01-05T14:05:00Z");
        assertThat(file.setAside()).extracting(SetAside::why).containsExactly(
                Why.POWER_ON, Why.NO_VALUE, Why.NO_TIME, Why.DISCONNECTED, Why.NO_VALUE);
    }

    @Test
    void newestFirstWithOffsets_comesOutOldestFirst_withAllThatWasMeasured() {
        LoggerFile file = resource("newest-first-three-things.csv", Map.of());

        assertThat(file.understanding().questions()).isEmpty();
        assertThat(file.lines()).hasSize(10).isSortedAccordingTo(java.util.Comparator.comparing(LoggedLine::at));
        assertThat(file.lines().get(0)).isEqualTo(new LoggedLine(11, Instant.parse("2026-01-10T17:00:00Z"), Map.of(
                Analyte.TEMPERATURE, new BigDecimal("11.0"), Analyte.PH, new BigDecimal("7.2"),
                Analyte.DISSOLVED_OXYGEN, new BigDecimal("9.80"))));
    }

    @Test
    void whatSaysNothingOfItself_isAsked_andNeverGuessed() {
        LoggerFile asked = resource("nothing-says-itself.csv", Map.of());
        LoggerFile file = resource("nothing-says-itself.csv", Map.of(Choices.ORDER, "dmy", Choices.ZONE, "standard",
                Choices.TEMPERATURE, "1", Choices.TEMPERATURE_UNIT, "[degF]"));
        LoggerFile other = resource("nothing-says-itself.csv", Map.of(Choices.ORDER, "mdy", Choices.ZONE, "utc",
                Choices.TEMPERATURE, "1", Choices.TEMPERATURE_UNIT, "[degF]"));

        assertThat(asked.understanding().questions())
                .containsExactly(Choices.ORDER, Choices.ZONE, Choices.TEMPERATURE);
        assertThat(file.lines().get(0).at()).isEqualTo("2026-02-03T13:00:00Z");
        // The second of March is still to come.
        assertThat(other.setAside()).hasSize(8).allMatch(one -> one.why() == Why.AHEAD);
    }

    @Test
    void theHourThatComesTwice_isReadInTheOrderOfTheRows() {
        LoggerFile file = resource("clock-put-back.csv", Map.of(Choices.ZONE, "school"));

        List<Instant> expected = IntStream.range(0, 12)
                .mapToObj(i -> Instant.parse("2025-11-02T04:00:00Z").plusSeconds(1800L * i)).toList();
        assertThat(file.lines()).extracting(LoggedLine::at).containsExactlyElementsOf(expected);
        assertThat(file.doubledHours()).isEqualTo(4);
    }

    @Test
    void theHourThatIsSkipped_isSetAside_unlessTheLoggerKeepsStandardTime() {
        String text = "time;temp c\n2025-03-09 01:30;11\n2025-03-09 02:30;11.1\n2025-03-09 03:30;11.2\n";

        LoggerFile school = text(text, Map.of(Choices.ZONE, "school"));
        LoggerFile standard = text(text, Map.of(Choices.ZONE, "standard"));

        assertThat(school.setAside()).containsExactly(new SetAside(3, "2025-03-09 02:30", Why.SKIPPED_HOUR));
        assertThat(standard.lines()).extracting(LoggedLine::at).containsExactly(Instant.parse("2025-03-09T06:30:00Z"),
                Instant.parse("2025-03-09T07:30:00Z"), Instant.parse("2025-03-09T08:30:00Z"));
    }

    @Test
    void timesThatCannotBe_areSetAside_withTheirLines() {
        LoggerFile file = text("time utc,temp c\n2026-02-29 10:00,11\n1970-01-01 00:05,11\n2027-02-01 10:00,11\n"
                + "2026-02-01 25:00,11\n2026-02-01 10:00,11\n2026-02-01 10:05,-3\n2026-02-01 10:10,-40\n"
                + "2026-02-01 10:15,warm\n", Map.of());

        assertThat(file.setAside()).containsExactly(
                new SetAside(2, "2026-02-29 10:00", Why.NO_SUCH_DAY),
                new SetAside(3, "1970-01-01 00:05", Why.CLOCK_NOT_SET),
                new SetAside(4, "2027-02-01 10:00", Why.AHEAD), new SetAside(5, "2026-02-01 25:00", Why.NO_TIME),
                new SetAside(8, "-40", Why.IMPOSSIBLE), new SetAside(9, "warm", Why.NOT_A_NUMBER));
        assertThat(temperatures(file)).containsExactly("11", "-3");
    }

    @Test
    void whatStandsTwice_countsOnce_andWhatContradictsItself_isTold() {
        LoggerFile file = text("time utc,temp c\n2026-02-01 10:00,11\n2026-02-01 10:00,11.0\n2026-02-01 10:05,11.1\n"
                + "2026-02-01 10:05,12.1\n", Map.of());

        assertThat(temperatures(file)).containsExactly("11", "11.1");
        assertThat(file.repeated()).isEqualTo(1);
        assertThat(file.setAside()).containsExactly(new SetAside(5, "12.1", Why.CONTRADICTED));
    }

    @Test
    void severalColumnsThatCouldBeMeant_areAsked() {
        String text = "logged,sent,temp 1 c,temp 2 c\n2026-02-01T10:00Z,2026-02-01T11:00Z,11,20\n"
                + "2026-02-01T10:05Z,2026-02-01T11:05Z,11,20\n";

        assertThat(text(text, Map.of()).understanding().questions())
                .containsExactly(Choices.TIME, Choices.TEMPERATURE);
        LoggerFile file = text(text, Map.of(Choices.TIME, "0", Choices.TEMPERATURE, "3"));
        assertThat(temperatures(file)).containsExactly("20", "20");
        assertThat(file.lines().get(0).at()).isEqualTo("2026-02-01T10:00:00Z");
    }

    @Test
    void bothMarksInOneColumn_areAsked() {
        String text = "time utc;temp c\n2026-02-01 10:00;11,3\n2026-02-01 10:05;11.4\n";

        assertThat(text(text, Map.of()).understanding().questions()).containsExactly(Choices.DECIMAL);
        LoggerFile file = text(text, Map.of(Choices.DECIMAL, "comma"));
        assertThat(temperatures(file)).containsExactly("11.3");
        assertThat(file.setAside()).containsExactly(new SetAside(3, "11.4", Why.NOT_A_NUMBER));
    }

    @Test
    void theTemperatureOfTheRoom_isNotTakenForTheWaters() {
        String header = "time utc,%s\n2026-02-01 10:00,21,11\n2026-02-01 10:05,21,11\n";

        LoggerFile named = text(header.formatted("Air temp C,Water temp C"), Map.of());
        assertThat(temperatures(named)).containsExactly("11", "11");
        assertThat(text("time utc,room temp c\n2026-02-01 10:00,21\n2026-02-01 10:05,21\n", Map.of())
                .understanding().questions()).containsExactly(Choices.TEMPERATURE);
    }

    @Test
    void daysCountedAsSpreadsheetsDo_areRead() {
        // 46055 is 2 February 2026: the epoch of spreadsheets is 30 December 1899 (common practice, no source)
        LoggerFile file = text("Date,Temp C\n46055.5,11\n46055.510417,11.1\n46055.520833,11.2\n",
                Map.of(Choices.ZONE, "utc"));

        assertThat(file.lines()).extracting(LoggedLine::at).containsExactly(Instant.parse("2026-02-02T12:00:00Z"),
                Instant.parse("2026-02-02T12:15:00Z"), Instant.parse("2026-02-02T12:30:00Z"));
    }

    @ParameterizedTest
    @CsvSource({
        "'', EMPTY", "'  \n \n', EMPTY", "'time,temp c\n', NO_ROWS", "'nothing, to, see\nhere, at, all\n', NO_ROWS",
        "'PK\u0003\u0004zipped', ZIP", "'%PDF-1.7', PDF", "'a\u0000b', NOT_TEXT",
        "'time,temp c\n2026-02-01 10:00,11,3\n2026-02-01 10:05,11,4\n', COMMAS_IN_NUMBERS"
    })
    void whatIsNoTable_isRefused(String text, Trouble trouble) {
        assertThatThrownBy(() -> text(text, Map.of()))
                .isInstanceOfSatisfying(UnreadableFileException.class, refusal ->
                        assertThat(refusal.trouble()).isEqualTo(trouble));
    }

    @Test
    void moreThanFiftyThousandRows_areRefused() {
        String rows = IntStream.rangeClosed(0, FileTable.MOST_ROWS)
                .mapToObj(i -> (1_760_000_000L + i * 60L) + ",11\n").collect(Collectors.joining());

        assertThatThrownBy(() -> text(rows, Map.of())).hasMessage("TOO_MANY_LINES");
    }

    private static List<String> temperatures(LoggerFile file) {
        return file.lines().stream().map(line -> line.values().get(Analyte.TEMPERATURE).toPlainString()).toList();
    }

    private static LoggerFile resource(String name, Map<String, String> said) {
        try (InputStream in = LoggerFileTest.class.getResourceAsStream("/loggers/" + name)) {
            return LoggerFile.read(in.readAllBytes(), new Choices(said), HERE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static LoggerFile text(String text, Map<String, String> said) {
        return LoggerFile.read(text.getBytes(StandardCharsets.UTF_8), new Choices(said), HERE);
    }
}
