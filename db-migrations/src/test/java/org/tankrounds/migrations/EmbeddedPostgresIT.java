package org.tankrounds.migrations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The server that comes along, with real processes that are really killed. */
class EmbeddedPostgresIT {

    @TempDir
    Path folder;

    private Path data;

    @BeforeEach
    void nameTheDataDirectory() {
        data = folder.resolve("a chapter's data");
    }

    @Test
    void keepsTheDataFromOneStartToTheNext() throws Exception {
        try (EmbeddedPostgres postgres = Servers.start(data)) {
            noteReading(postgres, 1);
        }
        try (EmbeddedPostgres postgres = Servers.start(data)) {
            assertThat(readings(postgres)).isEqualTo("1");
        }
    }

    @Test
    void isDurableAndListensOnTheLoopbackInterfaceOnly() throws Exception {
        try (EmbeddedPostgres postgres = Servers.start(data)) {
            Login login = postgres.logins().application();
            assertThat(Servers.ask(login, "SHOW fsync")).isEqualTo("on");
            assertThat(Servers.ask(login, "SHOW data_checksums")).isEqualTo("on");
            assertThat(Servers.ask(login, "SHOW listen_addresses")).isEqualTo("127.0.0.1");
            assertThat(Servers.ask(postgres.superuser(), "SHOW unix_socket_directories"))
                    .isEmpty();
            assertThat(Servers.answers(new Login(login.url(), login.user(), "wrong"))).isFalse();
        }
        assertThat(Files.getPosixFilePermissions(data.resolve("database-passwords.properties")))
                .isEqualTo(PosixFilePermissions.fromString("rw-------"));
    }

    @Test
    void healsItselfOnTheSameAddressWhenTheServerIsKilled() throws Exception {
        try (EmbeddedPostgres postgres = Servers.start(data)) {
            postgres.keepAlive();
            noteReading(postgres, 1);
            for (int death = 0; death < 2; death++) {
                long killed = postgres.pid();
                Servers.kill(killed);
                assertThat(Waiting.until(Servers.PATIENCE, () -> postgres.pid() != killed
                        && Servers.answers(postgres.logins().owner()))).isTrue();
            }
            assertThat(readings(postgres)).isEqualTo("1");
        }
    }

    @Test
    void isStartedAgainOnRequestOnlyWhenDead() throws Exception {
        try (EmbeddedPostgres postgres = Servers.start(data)) {
            assertThat(postgres.restartIfDead()).isFalse();
            noteReading(postgres, 1);
            Servers.kill(postgres.pid());
            assertThat(Waiting.until(Servers.PATIENCE, postgres::restartIfDead)).isTrue();
            assertThat(readings(postgres)).isEqualTo("1");
        }
    }

    @Test
    void refusesASecondStartInTheSameProcessAndKeepsServing() throws Exception {
        try (EmbeddedPostgres postgres = Servers.start(data)) {
            assertThatThrownBy(() -> Servers.start(data)).isInstanceOf(DataDirectoryInUseException.class);
            assertThat(Servers.answers(postgres.logins().owner())).isTrue();
        }
    }

    @Test
    void refusesASecondStartNamingTheProcessThatHoldsTheDirectory() throws Exception {
        Process holder = Servers.startElsewhere(data);
        try {
            Servers.awaitServer(holder);
            assertThatThrownBy(() -> Servers.start(data))
                    .isInstanceOf(DataDirectoryInUseException.class)
                    .hasMessageContaining("in use by another Tankrounds (process " + holder.pid() + ")");
        } finally {
            holder.getOutputStream().close();
            holder.waitFor();
        }
    }

    @Test
    void startsAfterTheJvmWasKilledAndStopsTheServerLeftRunning() throws Exception {
        try (EmbeddedPostgres postgres = Servers.start(data)) {
            noteReading(postgres, 1);
        }
        Process holder = Servers.startElsewhere(data);
        long orphan = Servers.awaitServer(holder);
        Servers.kill(holder);
        assertThat(ProcessHandle.of(orphan).map(ProcessHandle::isAlive).orElse(false)).isTrue();

        try (EmbeddedPostgres postgres = Servers.start(data)) {
            assertThat(readings(postgres)).isEqualTo("1");
            assertThat(postgres.pid()).isNotEqualTo(orphan);
        }
    }

    @Test
    void startsAfterJvmAndServerWereKilledTogether() throws Exception {
        Process holder = Servers.startElsewhere(data);
        long orphan = Servers.awaitServer(holder);
        Servers.kill(holder);
        Servers.kill(orphan);

        try (EmbeddedPostgres postgres = Servers.start(data)) {
            assertThat(Servers.answers(postgres.logins().application())).isTrue();
        }
    }

    /** After a container restart process ids are dealt out again: the old number may be anybody's. */
    @Test
    void startsWhenTheStalePidFileNamesAnotherLivingProcess() throws Exception {
        try (EmbeddedPostgres postgres = Servers.start(data)) {
            noteReading(postgres, 1);
        }
        Files.writeString(data.resolve("postgresql/postmaster.pid"),
                ProcessHandle.current().pid() + "\n" + data.resolve("postgresql") + "\n1\n1\n");

        try (EmbeddedPostgres postgres = Servers.start(data)) {
            assertThat(readings(postgres)).isEqualTo("1");
        }
    }

    @Test
    void startsAfterTheVeryFirstStartWasCutOff() throws Exception {
        Servers.start(folder.resolve("unpacks the programs")).close();
        Process holder = Servers.startElsewhere(data);
        assertThat(Waiting.until(Servers.PATIENCE, () -> Servers.contains(data, "unfinished-"))).isTrue();
        Servers.kill(holder);

        try (EmbeddedPostgres postgres = Servers.start(data)) {
            assertThat(Servers.answers(postgres.logins().application())).isTrue();
        }
        Servers.start(data).close();
        assertThat(Servers.contains(data, "unfinished-")).isFalse();
    }

    @Test
    void runsForRootBelowAFolderThatOthersMayEnterAndBelowOneTheyMayNot() throws Exception {
        assumeTrue(Folders.owner(Path.of("/proc/self")) == 0, "only root has this trouble");
        for (String permissions : new String[] {"rwxr-xr-x", "rwx------", "rwxr-xr-x"}) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString(permissions));
            try (EmbeddedPostgres postgres = Servers.start(data)) {
                noteReading(postgres, 1);
            }
        }
    }

    private static void noteReading(EmbeddedPostgres postgres, int number) throws Exception {
        Servers.execute(postgres.logins().owner(),
                "CREATE TABLE IF NOT EXISTS notes (number int PRIMARY KEY)",
                "INSERT INTO notes VALUES (" + number + ") ON CONFLICT DO NOTHING");
    }

    private static String readings(EmbeddedPostgres postgres) throws Exception {
        return Servers.ask(postgres.logins().owner(), "SELECT string_agg(number::text, ',') FROM notes");
    }
}
