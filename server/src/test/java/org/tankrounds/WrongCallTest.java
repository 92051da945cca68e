package org.tankrounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.testing.CommandRun;

/**
 * Whoever types something that cannot be meant reads one sentence that says what can, and nothing is begun.
 */
class WrongCallTest {
    @TempDir
    private Path folder;

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "frobnicate                  | tankrounds has no command \"frobnicate\".",
        "token frobnicate            | tankrounds token has no command \"frobnicate\".",
        "serve now                   | tankrounds serve does not take \"now\".",
        "demo --colour               | tankrounds demo has no option --colour.",
        "demo --port abc             | --port is \"abc\"; a whole number is accepted.",
        "serve --port 1.5            | --port is \"1.5\"; a whole number is accepted.",
        "serve --port                | tankrounds serve needs --port N.",
        "serve --port 1 --port 2     | --port is given twice.",
        "token revoke x              | ID is \"x\"; a whole number is accepted.",
        "token revoke                | tankrounds token revoke needs ID.",
        "rank --tanks a.csv          | tankrounds rank needs --readings FILE.",
        "backup                      | tankrounds backup needs --out F.",
        "backup --out                | tankrounds backup needs --out F.",
        "demo --fresh=maybe          | --fresh is \"maybe\"; it stands alone.",
        "export                      | Say what to export: season.",
    })
    void wrongWord_isToldInOneSentence(String call, String sentence) {
        assertRefused(call.split(" "), sentence + " (--help explains this command.)");
    }

    @Test
    void noWordAtAll_listsTheCommands() {
        assertRefused(new String[0],
                "Say what to do: demo, serve, rank, token, export, combine, backup, restore, check, lab."
                + " (--help explains this command.)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo", "serve"})
    void portThatNoneCanBe_isRefusedBeforeAnythingIsMade(String command) {
        for (String port : List.of("70000", "-1")) {
            assertRefused(new String[] {command, "--port", port, "--data", folder.resolve("data").toString()},
                    "--port is " + port + "; a number from 0 (any free port) to 65535 is accepted.");
        }
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void portOfAnotherProgram_isToldBeforeAnythingIsMade() throws Exception {
        try (ServerSocket other = new ServerSocket()) {
            other.bind(new InetSocketAddress("127.0.0.1", 0));
            CommandRun run = CommandRun.of(Main.commandLine(), List.of("serve",
                    "--port", String.valueOf(other.getLocalPort()), "--data",
                    folder.resolve("data").toString()));
            assertThat(run.err()).contains("perhaps another program has it").hasLineCount(1);
            assertThat(run.exitCode()).isEqualTo(1);
        }
        assertThat(folder).isEmptyDirectory();
    }

    private static void assertRefused(String[] call, String sentence) {
        CommandRun run = CommandRun.of(Main.commandLine(), List.of(call));
        assertThat(run.err()).isEqualTo(sentence + System.lineSeparator());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
    }
}
