package org.tankrounds.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tankrounds.config.CommandException;
import org.tankrounds.demo.DemoAccess.ChapterAccess;
import org.tankrounds.demo.DemoAccess.PersonAccess;
import org.tankrounds.demo.DemoAccess.SeasonAccess;
import org.tankrounds.demo.DemoAccess.TankAccess;

class DemoDirectoryTest {
    @TempDir
    private Path temp;

    @Test
    void folderOfSomebodyElse_isRefusedAndLeftAlone() throws IOException {
        Path thesis = Files.writeString(temp.resolve("thesis.txt"), "years of work");
        assertThatThrownBy(() -> DemoDirectory.open(temp))
                .isInstanceOfSatisfying(CommandException.class, e -> assertThat(e.exitCode()).isEqualTo(2))
                .hasMessageContaining("--data");
        assertThat(thesis).hasContent("years of work");
        assertThatThrownBy(() -> DemoDirectory.open(thesis)).hasMessageContaining("is a file");
    }

    @Test
    void brokenOffStart_isNotLoaded_andEmptyingKeepsTheMarker() throws IOException {
        DemoDirectory directory = DemoDirectory.open(temp.resolve("new"));
        assertThat(directory.isLoaded()).isFalse();
        directory.setLoaded();
        Files.writeString(Files.createDirectory(directory.path().resolve("postgresql")).resolve("PG_VERSION"),
                "18");
        assertThat(directory.isEmpty()).isFalse();
        assertThat(DemoDirectory.open(directory.path()).isLoaded()).isTrue();
        directory.empty();
        assertThat(directory.isEmpty()).isTrue();
        assertThat(DemoDirectory.open(directory.path()).isLoaded()).isFalse();
    }

    @Test
    void usualFolder_isTheUsersOwn() {
        Path unwritable = Path.of("/proc/nowhere");
        assertThat(DemoDirectory.usual(Map.of("XDG_DATA_HOME", temp.toString()), unwritable, temp, "ann"))
                .isEqualTo(temp.resolve("tankrounds-demo"));
        assertThat(DemoDirectory.usual(Map.of(), temp, unwritable, "ann"))
                .isEqualTo(temp.resolve(".local/share/tankrounds-demo"));
        assertThat(DemoDirectory.usual(Map.of(), Path.of("/dev/null"), temp, "ann"))
                .isEqualTo(temp.resolve("tankrounds-demo-ann"));
    }

    @Test
    void access_isWrittenForItsOwnerAndReadBackWhole() throws IOException {
        DemoAccessFile file = new DemoAccessFile(temp);
        assertThat(file.read()).isEmpty();
        ChapterAccess chapter =
                new ChapterAccess("a", "A", List.of(new PersonAccess("p@a.example", "secret", "mentor")),
                "token", List.of(new SeasonAccess("s")), List.of(new TankAccess("t", "School", "token", null)));
        DemoAccess access = new DemoAccess("http://127.0.0.1:1", List.of(chapter, chapter));
        file.write(access);
        assertThat(file.read()).contains(access);
        Path written = temp.resolve("demo-access.json");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(written)))
                .isEqualTo("rw-------");
        Files.writeString(written, "{\"baseUrl\": \"http://1");
        assertThat(file.read()).isEmpty();
        Files.writeString(written, "{\"baseUrl\": \"http://1\", \"chapters\": [{\"code\": \"a\"}]}");
        assertThat(file.read()).isEmpty();
    }

    @Test
    void passwords_areLongAndNeverTheSame() {
        DemoPasswords passwords = new DemoPasswords();
        assertThat(passwords.next()).matches("([a-z]{6}-){3}\\d\\d").isNotEqualTo(passwords.next());
    }
}
