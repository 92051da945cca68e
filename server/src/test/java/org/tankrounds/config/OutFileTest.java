package org.tankrounds.config;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the operator finds after a command that writes a file, well or not. */
class OutFileTest {
    @TempDir
    private Path folder;

    @Test
    void written_isThereWithItsPermissionsAndNothingBeside() throws IOException {
        Path file = folder.resolve("summary.csv");
        write(file, "new");

        assertThat(file).hasContent("new");
        assertThat(Files.getPosixFilePermissions(file)).hasSize(4);
        assertThat(folder.toFile().list()).containsExactly("summary.csv");
    }

    @Test
    void failedOnTheWay_leavesTheOlderFileAndSaysWhy() throws IOException {
        Path file = Files.writeString(folder.resolve("summary.csv"), "old");

        assertThatThrownBy(() -> new OutFile(file, "rw-r--r--").write(out -> {
            out.write(1);
            throw new IOException("No space left on device");
        })).hasMessage(file + " could not be written: No space left on device.")
                .isInstanceOfSatisfying(CommandException.class, e -> assertThat(e.exitCode()).isEqualTo(1));
        assertThat(file).hasContent("old");
        assertThat(folder.toFile().list()).containsExactly("summary.csv");
    }

    @Test
    void fullDevice_isAFailureAndStaysADevice() {
        Path full = Path.of("/dev/full");

        assertThatThrownBy(() -> write(full, "new"))
                .hasMessageContaining("/dev/full could not be written: No space")
                .isInstanceOfSatisfying(CommandException.class, e -> assertThat(e.exitCode()).isEqualTo(1));
        assertThat(Files.isRegularFile(full)).isFalse();
    }

    @Test
    void placeThatCannotBe_isRefusedAsAWrongCall() {
        for (Path place : new Path[] {folder, folder.resolve("none/summary.csv"), Path.of("/")}) {
            assertThatThrownBy(() -> write(place, "new"))
                    .hasMessage("--out is " + place + "; a file in a folder that exists is accepted.")
                    .isInstanceOfSatisfying(CommandException.class,
                            e -> assertThat(e.exitCode()).isEqualTo(2));
        }
    }

    private static void write(Path place, String text) {
        new OutFile(place, "rw-r--r--").write(out -> {
            out.write(text.getBytes(StandardCharsets.UTF_8));
            return null;
        });
    }
}
