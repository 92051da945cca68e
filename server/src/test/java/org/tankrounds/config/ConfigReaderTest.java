package org.tankrounds.config;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConfigReaderTest {

    @Test
    void nothingSet_listensOnThisMachineOnly_withADatabaseOfItsOwn() {
        Config config = ConfigReader.read(Map.of());

        assertThat(config.host()).isEqualTo("127.0.0.1");
        assertThat(config.port()).isEqualTo(8080);
        assertThat(config.database()).isEmpty();
        assertThat(config.baseUrl()).isEmpty();
        assertThat(config.secure()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "TANKROUNDS_PROT,         8081,                     a typing error",
        "TANKROUNDS_PORT,         eighty,                   a number from 0",
        "TANKROUNDS_PORT,         70000,                    a number from 0",
        "TANKROUNDS_LOG,          xml,                      text or json",
        "TANKROUNDS_BASE_URL,     http://tanks.example.org, https://",
        "TANKROUNDS_BASE_URL,     tanks.example.org,        https://",
        "TANKROUNDS_DATABASE_URL, mysql://db/tankrounds,    jdbc:postgresql:",
        "TANKROUNDS_OFFLINE,            sometimes,          on or off is accepted",
        "TANKROUNDS_METRICS_TOKEN_FILE, /no/such/file,      cannot be read",
    })
    void whatCannotBeUsed_isNamed_withWhatIsAccepted(String variable, String value, String accepted) {
        assertThatThrownBy(() -> ConfigReader.read(Map.of(variable, value)))
                .isInstanceOf(ConfigException.class).hasMessageContaining(variable)
                .hasMessageContaining(accepted);
    }

    @Test
    void allFaults_areToldAtOnce() {
        assertThatThrownBy(() -> ConfigReader.read(Map.of("TANKROUNDS_PORT", "x", "TANKROUNDS_LOG", "y")))
                .hasMessageContaining("TANKROUNDS_PORT").hasMessageContaining("TANKROUNDS_LOG");
    }

    @Test
    void aSecret_mayComeFromAFile(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("password"), "crayfish\n");

        Config config = ConfigReader.read(Map.of(
                "TANKROUNDS_DATABASE_URL", "jdbc:postgresql://db/tankrounds",
                "TANKROUNDS_DATABASE_PASSWORD_FILE", file.toString()));

        assertThat(config.database().orElseThrow().password()).isEqualTo("crayfish");
    }

    @Test
    void anHttpsAddress_makesCookiesInsistOnIt() {
        Config config = ConfigReader.read(Map.of("TANKROUNDS_BASE_URL", "https://tanks.example.org"));

        assertThat(config.baseUrl()).contains(URI.create("https://tanks.example.org"));
        assertThat(config.secure()).isTrue();
    }
}
