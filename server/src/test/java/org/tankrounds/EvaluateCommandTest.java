package org.tankrounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.lab.World;
import org.tankrounds.testing.CommandRun;
import org.w3c.dom.Element;

class EvaluateCommandTest {
    private static final List<String> FEW = List.of("lab", "evaluate", "--tanks", "3", "--every", "60");

    @TempDir
    private Path folder;

    @Test
    void scores_areToldForEveryWorldBesideThePlainReferences() {
        CommandRun run = run("--without", "ph");
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).contains("AUC", "Brier skill", "worst of 6", "NDCG@3 of 30", "foreseen");
        for (World world : World.NAMED) {
            for (String who : List.of("engine", "latest reading", "latest NH3", "longest silent", "points")) {
                assertThat(run.lines())
                        .anySatisfy(line -> assertThat(line).startsWith(world.name()).contains(who));
            }
        }
        assertThat(run.lines()).anySatisfy(line -> assertThat(line).startsWith("ph ").contains("±"));
    }

    @Test
    void samePlayedAgain_isTheSameToTheLetter() {
        assertThat(run("--seeds", "3,4").out()).isEqualTo(run("--seeds", "3,4").out());
    }

    @Test
    void tables_areWrittenAsTheyArePrinted() throws Exception {
        CommandRun run = run("--out", folder.resolve("new/report").toString());
        List<String> scores = Files.readAllLines(folder.resolve("new/report/scores.csv"));
        assertThat(scores.get(0)).startsWith("world,who,AUC,AUC_low,AUC_high,");
        assertThat(scores).allMatch(line -> line.split(",", -1).length == scores.get(0).split(",").length);
        double auc = Double.parseDouble(scores.get(1).split(",")[2]);
        assertThat(run.out()).contains(String.format("%.3f ±", auc));
        for (String table : List.of("gains", "reliability", "brier", "alarms", "scores-by-world")) {
            assertThat(folder.resolve("new/report/" + table + ".csv")).isNotEmptyFile();
        }
        Element plot = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(folder.resolve("new/report/reliability.svg").toFile()).getDocumentElement();
        assertThat(plot.getTagName()).isEqualTo("svg");
        assertThat(plot.getElementsByTagName("circle").getLength()).isPositive();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "--tanks 1         | --tanks is 1; 2 to 999 are accepted.",
        "--tanks many      | --tanks is \"many\"; a whole number is accepted. (--help explains this command.)",
        "--every 61        | --every is 61; 1 to 60 are accepted.",
        "--drawn -1        | --drawn is -1; 0 to 1000 are accepted.",
        "--alarm 2         | --alarm is 2.0; a chance between 0 and 1 is accepted.",
        "--alarm loud      | --alarm is \"loud\"; a number is accepted. (--help explains this command.)",
        "--seeds 1,one     | --seeds is \"one\"; a whole number is accepted. (--help explains this command.)",
        "--without moon    | There is no source \"moon\"; there are temperature, probe, ph, ammonia, nitrite,"
            + " nitrate, oxygen, events, feed, deaths, changes, stage, eggs, chloride, alkalinity, volume.",
    })
    void wrongWord_isToldInOneSentence(String call, String sentence) {
        List<String> arguments = new ArrayList<>(List.of("lab", "evaluate"));
        arguments.addAll(List.of(call.split(" ")));
        assertRefused(CommandRun.of(Main.commandLine(), arguments), sentence);
    }

    @Test
    void outThatIsAFile_isRefusedBeforeAnythingIsPlayed() throws IOException {
        Path file = Files.createFile(folder.resolve("report"));
        assertRefused(run("--out", file.toString()),
                "--out is " + file + ", which is no folder; a folder is accepted.");
    }

    private static void assertRefused(CommandRun run, String sentence) {
        assertThat(run.err()).isEqualTo(sentence + System.lineSeparator());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
    }

    private static CommandRun run(String... more) {
        List<String> arguments = new ArrayList<>(FEW);
        arguments.addAll(List.of(more));
        return CommandRun.of(Main.commandLine(), arguments);
    }
}
