package org.tankrounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ranking as a process of its own: exit code, the two streams, and the same bytes on an odd machine. */
class RankIT {
    private static final Path INPUT = Path.of("src/test/resources/rank");
    private static final long PATIENCE_SECONDS = 60;

    @TempDir
    private Path folder;

    @Test
    void oddMachine_printsTheSameBytes() throws Exception {
        int exitCode = run(List.of("-Dfile.encoding=ISO-8859-1", "-Duser.timezone=Asia/Kolkata",
                "-Duser.language=tr", "-Duser.country=TR",
                "-Djava.util.concurrent.ForkJoinPool.common.parallelism=1"),
                "--tanks", INPUT.resolve("tanks.csv").toString(),
                "--readings", INPUT.resolve("readings.csv").toString(),
                "--as-of-file", INPUT.resolve("as-of.txt").toString());
        assertThat(exitCode).isZero();
        assertThat(folder.resolve("out")).hasSameBinaryContentAs(INPUT.resolve("ranking.csv"));
        assertThat(folder.resolve("err")).isEmptyFile();
    }

    @Test
    void badLine_exitsWith2AndPrintsNothing() throws Exception {
        Path tanks = Files.writeString(folder.resolve("tanks.csv"), "tank\nT1\nT1\n");
        int exitCode = run(List.of(), "--tanks", tanks.toString(),
                "--readings", INPUT.resolve("readings.csv").toString(),
                "--as-of", "2027-03-10T15:00:00-05:00");
        assertThat(exitCode).isEqualTo(2);
        assertThat(folder.resolve("out")).isEmptyFile();
        assertThat(folder.resolve("err")).content(StandardCharsets.UTF_8)
                .startsWith("tanks.csv, line 3, column tank: ").hasLineCount(1);
    }

    /** As on a full disk: half a ranking must never pass for a whole one. */
    @Test
    void outputThatCannotBeWritten_isAFailure() throws Exception {
        Files.createSymbolicLink(folder.resolve("out"), Path.of("/dev/full"));
        int exitCode = run(List.of(), "--tanks", INPUT.resolve("tanks.csv").toString(),
                "--readings", INPUT.resolve("readings.csv").toString(), "--as-of",
                "2027-03-10T15:00:00-05:00");
        assertThat(exitCode).isEqualTo(1);
        assertThat(folder.resolve("err")).content(StandardCharsets.UTF_8)
                .startsWith("The output could not be written").hasLineCount(1);
    }

    @Test
    void help_explainsTheCommand() throws Exception {
        assertThat(run(List.of(), "--help")).isZero();
        assertThat(folder.resolve("out")).content(StandardCharsets.UTF_8)
                .contains("--tanks", "--readings", "--as-of", "--as-of-file");
    }

    private int run(List<String> settings, String... arguments) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC", "-Xmx256m"));
        line.addAll(settings);
        line.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName(), "rank"));
        line.addAll(List.of(arguments));
        Process process = new ProcessBuilder(line)
                .redirectOutput(folder.resolve("out").toFile())
                .redirectError(folder.resolve("err").toFile()).start();
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException("still ranking after " + PATIENCE_SECONDS + " s");
        }
        return process.exitValue();
    }
}
