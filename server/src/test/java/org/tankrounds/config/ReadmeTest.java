package org.tankrounds.config;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ReadmeTest {
    private static final Pattern ROW = Pattern.compile("^\\| `TANKROUNDS_(\\w+)` \\|.*$", Pattern.MULTILINE);

    private static String readme;

    @BeforeAll
    static void read() throws IOException {
        readme = Files.readString(Path.of("..", "README.md"));
    }

    @Test
    void itsTable_namesEveryVariableThatIsKnown_andNoOther() {
        Set<String> named = ROW.matcher(readme).results().map(row -> row.group(1))
                .collect(Collectors.toSet());

        assertThat(named).isEqualTo(ConfigReader.KNOWN);
    }

    @Test
    void itsTable_marksTheSecrets_whichMayComeFromFiles() {
        Set<String> secrets = ROW.matcher(readme).results().filter(row -> row.group().contains("(secret)"))
                .map((MatchResult row) -> row.group(1)).collect(Collectors.toSet());

        assertThat(secrets).isEqualTo(ConfigReader.SECRETS);
    }

    @Test
    void itsPictures_exist() {
        Set<Path> pictures = Pattern.compile("!\\[[^]]*]\\(([^)]+)\\)").matcher(readme).results()
                .map(picture -> Path.of("..", picture.group(1))).collect(Collectors.toSet());

        assertThat(pictures).isNotEmpty().allSatisfy(picture -> assertThat(picture).exists());
    }
}
