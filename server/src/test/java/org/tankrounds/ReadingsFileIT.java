package org.tankrounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.CommandRun;
import org.tankrounds.testing.TestApp;

/** A class takes its own readings along. */
class ReadingsFileIT {
    private static final TestApp APP = TestApp.shared();

    @TempDir
    private Path folder;

    private final Cast cast = Cast.add(APP.transactions(), "Files of readings");
    private final String address = "/tanks/" + cast.tankA().code() + "/readings.csv";

    @Test
    void everyValue_standsAsItWasWritten_oldestFirst() {
        post("2026-01-12T14:05:00-05:00",
                "{\"analyte\": \"temperature\", \"value\": 52.3, \"unit\": \"[degF]\", \"step\": 1}", "=1+2");
        post("2026-01-11T14:05:00-05:00",
                "{\"analyte\": \"nitrite\", \"value\": 0, \"unit\": \"mg/L\", \"as\": \"NO2\"},"
                        + "{\"analyte\": \"deaths\", \"value\": 2, \"unit\": \"1\"}", "two \\\"small\\\" ones");

        Answer file = APP.signedIn(cast.teacherA()).get(address);

        assertThat(file.header("content-type")).contains("text/csv; charset=utf-8; header=present");
        assertThat(file.header("content-disposition").orElse("")).contains("attachment");
        List<String> lines = file.body().lines().toList();
        assertThat(lines.get(0)).isEqualTo(
                "\ufefftank,measured_at,analyte,value,unit,step,below,by,note,received_at,version,flags");
        assertThat(lines.get(1)).startsWith(cast.tankA().code() + ",2026-01-11T19:05:00Z,nitrite,0,mg/L as NO2,,")
                .contains("\"two \"\"small\"\" ones\"");
        assertThat(lines.get(3))
                .startsWith(cast.tankA().code() + ",2026-01-12T19:05:00Z,temperature,52.3,[degF],1,false,")
                .as("no formula for a spreadsheet").contains(",'=1+2,");
        assertThat(lines).hasSize(4);
    }

    /** The service's own file goes through the command that ranks files. */
    @Test
    void file_isReadByRank() throws IOException {
        post("2026-01-12T14:05:00Z", "{\"analyte\": \"temperature\", \"value\": 19, \"unit\": \"Cel\"}", "");
        Path readings = folder.resolve("readings.csv");
        Files.writeString(readings, APP.signedIn(cast.teacherA()).get(address).body());
        Path tanks = folder.resolve("tanks.csv");
        Files.writeString(tanks, "tank\n" + cast.tankA().code() + "\n");

        CommandRun run = CommandRun.of(Main.commandLine(), List.of("rank", "--tanks", tanks.toString(), "--readings",
                readings.toString(), "--as-of", "2026-01-12T15:00:00Z"));

        assertThat(run.err()).isEmpty();
        assertThat(run.lines().get(1)).contains(cast.tankA().code(), "temperature");
    }

    /** A class that only wrote what it saw wrote a reading too; a ranking goes by numbers and passes it over. */
    @Test
    void aReadingThatIsOnlyANote_hasALine_andRankPassesItOver() throws IOException {
        post("2026-01-11T14:05:00Z", "", "=the pump hums");
        post("2026-01-12T14:05:00Z", "{\"analyte\": \"temperature\", \"value\": 19, \"unit\": \"Cel\"}", "");
        String file = APP.signedIn(cast.teacherA()).get(address).body();

        assertThat(file.lines().toList()).hasSize(3).element(1).asString()
                .startsWith(cast.tankA().code() + ",2026-01-11T14:05:00Z,,,,,,,'=the pump hums,");
        Path readings = Files.writeString(folder.resolve("readings.csv"), file);
        Path tanks = Files.writeString(folder.resolve("tanks.csv"), "tank\n" + cast.tankA().code() + "\n");
        CommandRun run = CommandRun.of(Main.commandLine(), List.of("rank", "--tanks", tanks.toString(), "--readings",
                readings.toString(), "--as-of", "2026-01-12T15:00:00Z"));
        assertThat(run.err()).isEmpty();
    }

    private void post(String at, String values, String note) {
        Browserless probe = APP.bearer(cast.tankA().token()).header("Idempotency-Key", UUID.randomUUID().toString());
        assertThat(probe.postJson("/api/v1/tanks/" + cast.tankA().code() + "/readings", "{\"measuredAt\": \"" + at
                + "\", \"note\": \"" + note + "\", \"values\": [" + values + "]}").status()).isEqualTo(201);
    }
}
