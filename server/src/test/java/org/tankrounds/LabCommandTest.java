package org.tankrounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.forecast.Ranking;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.World;
import org.tankrounds.testing.CommandRun;

class LabCommandTest {

    @TempDir
    private Path folder;

    /** What the scores are told of is what rank prints for the same season. */
    @Test
    void writtenSeason_isRankedAsTheLabRanksIt() throws IOException {
        run("lab", "season", "--out", folder.toString(), "--tanks", "12", "--seed", "5", "--every", "40");
        List<String> mornings = Files.readAllLines(folder.resolve("as-of.txt"));
        String morning = mornings.get(mornings.size() - 1);
        CommandRun ranked = run("rank", "--tanks", folder.resolve("tanks.csv").toString(),
                "--readings", folder.resolve("readings.csv").toString(), "--as-of", morning);
        List<Forecast> expected =
                Ranking.order(LabSeason.played(World.NAMED.get(0), 5, 12, 40).tanks().stream()
                .map(tank ->
                        new Forecaster().forecast(tank.facts(), tank.observations(), Instant.parse(morning)))
                                .toList());
        assertThat(ranked.lines().stream().skip(1).map(line -> line.split(",", -1)[2]).toList())
                .isEqualTo(expected.stream().map(Forecast::tank).toList());
        assertThat(ranked.lines().stream().skip(1).map(line -> Double.parseDouble(line.split(",", -1)[3]))
                .toList())
                .isEqualTo(expected.stream().map(Forecast::chance).toList());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "lab                            | Say what to do: evaluate, advice, learn, trust or season."
                + " (--help explains this command.)",
        "lab season                     | tankrounds lab season needs --out DIR. (--help explains this command.)",
        "lab season --out x --tanks 0   | --tanks is 0; 1 to 10000 are accepted.",
        "lab season --out pom.xml       | --out is pom.xml, which is no folder; a folder is accepted.",
        "lab learn --out x --worlds 0   | --worlds is 0; 1 to 4000 are accepted.",
        "lab trust                      | tankrounds lab trust needs --out FILE. (--help explains this command.)",
        "lab trust --out x --worlds 0   | --worlds is 0; 1 to 4000 are accepted.",
        "lab advice --drawn 2000        | --drawn is 2000; 0 to 1000 are accepted.",
        "lab learn --out src            | --out is src; a file in a folder that exists is accepted.",
    })
    void wrongWord_isToldBeforeAnythingIsPlayed(String call, String sentence) {
        CommandRun run = CommandRun.of(Main.commandLine(), List.of(call.split(" ")));
        assertThat(run.err()).isEqualTo(sentence + System.lineSeparator());
        assertThat(run.exitCode()).isEqualTo(2);
    }

    private static CommandRun run(String... arguments) {
        CommandRun run = CommandRun.of(Main.commandLine(), List.of(arguments));
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isZero();
        return run;
    }
}
