package org.tankrounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.RankFiles.READINGS;
import static org.tankrounds.RankFiles.READINGS_HEADER;
import static org.tankrounds.RankFiles.TANKS;
import static org.tankrounds.RankFiles.TANKS_HEADER;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.testing.CommandRun;

/**
 * One bad line refuses the whole file: a sentence with line, column and what is allowed, and nothing written.
 */
class RankRefusalsTest {
    private static final String AT = "2027-03-10T14:05:00-05:00";

    @TempDir
    private Path folder;
    private RankFiles files;

    @BeforeEach
    void writeGoodFiles() throws IOException {
        files = new RankFiles(folder).tanks(TANKS).readings(READINGS);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        // a reading's line                          | column      | what the sentence says is allowed
        "T1,@,mercury,1,mg/L,                        | analyte     | temperature, ph, total_ammonia",
        "T1,@,Temperature,11,Cel,                    | analyte     | temperature, ph, total_ammonia",
        "T1,@,,11,Cel,                               | analyte     | it is empty",
        "T1,@,temperature,11,K,                      | unit        | Cel, [degF]",
        "T1,@,temperature,11,,                       | unit        | Cel, [degF]",
        "T1,@,total_ammonia,0.5,mg/L,                | unit        | mg/L as N, mg/L as NH3, mg/L as NH4",
        "T1,@,nitrite,0.5,mg/L as NH3,               | unit        | mg/L as N, mg/L as NO2",
        "T1,@,nitrate,5,mg/L as no3,                 | unit        | mg/L as N, mg/L as NO3",
        "T1,@,ph,7.2,1,                              | unit        | [pH]",
        "T1,@,dissolved_oxygen,9,mg/L as O2,         | unit        | mg/L, %",
        "T1,@,alkalinity,80,mg/L,                    | unit        | mg/L as CaCO3, [dH]",
        "T1,@,chloride,12,mmol/L,                    | unit        | mg/L",
        "T1,@,deaths,2,fish,                         | unit        | 1",
        "T1,@,feed,2,kg,                             | unit        | g",
        "T1,@,water_change,20,L,                     | unit        | %",
        "T1,@,temperature,eleven,Cel,                | value       | is not a number",
        "T1,@,temperature,,Cel,                      | value       | it is empty",
        "T1,@,temperature,NaN,Cel,                   | value       | is not a number",
        "T1,@,temperature,Infinity,Cel,              | value       | is not a number",
        "T1,@,temperature,1e999,Cel,                 | value       | is not a number",
        "T1,@,temperature,0x1p3,Cel,                 | value       | is not a number",
        "T1,@,temperature,'\"11,3\"',Cel,            | value       | with a decimal point",
        "T1,@,ph,-1,[pH],                            | value       | allowed is 0 to 14",
        "T1,@,nitrite,-0.1,mg/L as N,                | value       | allowed is 0 to 500",
        "T1,@,total_ammonia,-1,mg/L as NH4,          | value       | allowed is 0 to 644",
        "T1,@,dissolved_oxygen,-5,%,                 | value       | allowed is 0 to 400",
        "T1,@,dissolved_oxygen,-5,mg/L,              | value       | allowed is 0 to 50",
        "T1,@,deaths,-1,1,                           | value       | allowed is 0 to 100000",
        "T1,@,deaths,1.5,1,                          | value       | is not a whole number",
        "T1,@,feed,-3,g,                             | value       | allowed is 0 to 10000",
        "T1,@,water_change,110,%,                    | value       | allowed is 0 to 100",
        "T1,@,temperature,11,Cel,-1                  | step        | allowed is 0 to 1000",
        "T1,@,temperature,11,Cel,small               | step        | is not a number",
        "T1,2027-03-10T14:05:00,temperature,11,Cel,  | measured_at | a time with its offset",
        "T1,2027-03-10,temperature,11,Cel,           | measured_at | a time with its offset",
        "T1,10/3/2027 14:05,temperature,11,Cel,      | measured_at | a time with its offset",
        "T1,2027-02-30T14:05:00Z,temperature,11,Cel, | measured_at | a time with its offset",
        "T1,,temperature,11,Cel,                     | measured_at | a time with its offset",
        "T1,1999-12-31T00:00:00Z,temperature,11,Cel, | measured_at | since then",
        "T3,@,temperature,11,Cel,                    | tank        | is not in the tanks file",
        "t1,@,temperature,11,Cel,                    | tank        | is not in the tanks file",
        "'',@,temperature,11,Cel,                    | tank        | every line names its tank",
    })
    void badReading_isRefusedByLineAndColumn(String line, String column, String allowed) throws IOException {
        String typed = line.replace("@", AT).replace("''", "").replace("'", "");
        assertRefused(files.readings(READINGS + typed + "\n").rank(),
                "readings.csv, line 4, column " + column + ": ", allowed);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "T1,,,,,,,,                  | tank                   | is there twice",
        "'',School,,,,,,,            | tank                   | every line names its tank",
        "T9,,0,,,,,,                 | volume_l               | allowed is 0.1 to 1000000",
        "T9,,many,,,,,,              | volume_l               | is not a number",
        "T9,,,1.5,,,,,               | eggs                   | is not a whole number",
        "T9,,,-1,,,,,                | eggs                   | allowed is 0 to 10000000",
        "T9,,,,yesterday,,,,         | eggs_received_at       | a time with its offset",
        "T9,,,,2026-11-05T10:00,,,,  | eggs_received_at       | a time with its offset",
        "T9,,,,,-3,,,                | thermal_units_c        | allowed is 0 to 5000",
        "T9,,,,,,-3,,                | source_alkalinity_mg_l | allowed is 0 to 100000",
        "T9,,,,,,,NaN,               | chloride_mg_l          | is not a number",
        "T9,,,,,,,,Mars/Base         | time_zone              | an IANA name",
    })
    void badTank_isRefusedByLineAndColumn(String line, String column, String allowed) throws IOException {
        assertRefused(files.tanks(TANKS + line.replace("''", "") + "\n").rank(),
                "tanks.csv, line 4, column " + column + ": ", allowed);
    }

    @Test
    void lineNumber_countsBlankLinesAndLinesInsideQuotes() throws IOException {
        assertRefused(files.readings(READINGS + "\n\nT1," + AT + ",ph,-9,[pH],\n").rank(),
                "line 6, column value", "0 to 14");
        assertRefused(files.tanks(TANKS_HEADER + "T1,\"Hillthimble\nannexe\",,,,,,,\nT1,,,,,,,,\n").rank(),
                "line 4, column tank", "twice");
    }

    @ParameterizedTest(name = "without {0}")
    @ValueSource(strings = {"tank", "measured_at", "analyte", "value", "unit"})
    void missingColumn_isNamed(String column) throws IOException {
        String header = READINGS_HEADER.replace(column + ",", "other,");
        assertRefused(files.readings(header).rank(),
                "readings.csv, line 1: the column " + column + " is missing",
                "needed are tank, measured_at, analyte, value, unit");
    }

    /** As spreadsheets save it where numbers are written with a comma. */
    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', value = {"; | semicolons", "'	' | tabs"})
    void columnsNotDividedByCommas_areRefusedWithWhatToDo(String divider, String called) throws IOException {
        assertRefused(files.readings(READINGS.replace(",", divider)).rank(),
                "readings.csv, line 1: the columns are divided by " + called,
                "save it with commas between the columns and decimal points in the numbers");
        assertRefused(files.readings(READINGS).tanks(TANKS.replace(",", divider)).rank(),
                "tanks.csv, line 1: the columns are divided by " + called, "with commas");
        assertRefused(files.tanks("tank" + divider + "eggs\nT1" + divider + "100\n").rank(),
                "tanks.csv, line 1: the columns are divided by " + called, "with commas");
    }

    @Test
    void columnTwice_isRefused() throws IOException {
        assertRefused(files.readings("tank,tank,measured_at,analyte,value,unit\n").rank(),
                "column tank is there twice", "");
    }

    @Test
    void raggedRow_isRefused() throws IOException {
        assertRefused(files.readings(READINGS + "T1," + AT + ",temperature,11,3,Cel,1\n").rank(),
                "readings.csv, line 4", "more cells than the header has columns");
        assertRefused(files.readings(READINGS + "T1," + AT + ",temperature\n").rank(),
                "readings.csv, line 4, column unit: it is empty", "Cel, [degF]");
    }

    @Test
    void emptyFile_isRefused() throws IOException {
        assertRefused(files.tanks("").rank(), "tanks.csv is empty", "its first line names the columns");
        assertRefused(files.tanks(TANKS).readings("\r\n\r\n").rank(), "readings.csv is empty", "first line");
    }

    @Test
    void openQuote_isRefused() throws IOException {
        assertRefused(files.tanks(TANKS_HEADER + "T1,\"Hillthimble,,,,,,,\n".repeat(3)).rank(), "tanks.csv", "");
    }

    @Test
    void textInAnotherEncoding_isRefused() throws IOException {
        Files.write(folder.resolve("tanks.csv"), new byte[] {'t', 'a', 'n', 'k', '\n', (byte) 0xE9, '\n'});
        assertRefused(files.rank(), "tanks.csv is not UTF-8 text", "save it as CSV UTF-8");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"2027-03-10", "2027-03-10T14:00:00", "now", "''", "2027-13-01T00:00:00Z",
        "+999999999-12-31T23:59:59Z", "1066-10-14T00:00:00Z"})
    void badAsOf_isRefusedWithWhatIsAllowed(String asOf) {
        assertRefused(files.rank("--as-of", asOf.replace("''", "")), "--as-of", "allowed");
    }

    @Test
    void badTimeInAFile_isRefusedByLine() throws IOException {
        files.written("times.txt", "2027-03-08T00:00:00Z\nsoon\n");
        assertRefused(files.rank("--as-of-file", folder.resolve("times.txt").toString()),
                "times.txt, line 2", "offset");
    }

    @Test
    void noTimeAtAll_isAskedFor() {
        assertRefused(files.rank(new String[0]), "--as-of", "--as-of-file");
    }

    @Test
    void missingFiles_areNamed() throws IOException {
        Files.delete(folder.resolve("readings.csv"));
        assertRefused(files.rank(), "There is no readable file", "readings.csv");
        assertRefused(files.readings(READINGS).rank("--as-of-file", folder.resolve("none").toString()),
                "There is no readable file", "one time a line");
    }

    @Test
    void wrongCall_isOneSentence() {
        CommandRun unknown = files.rank("--as-of", RankFiles.AS_OF, "--colour");
        assertRefused(unknown, "--colour", "--help");
        assertRefused(CommandRun.of(Main.commandLine(), List.of("rank")), "--tanks", "--help");
    }

    private static void assertRefused(CommandRun run, String where, String allowed) {
        assertThat(run.err()).contains(where).contains(allowed.strip()).hasLineCount(1);
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
    }
}
