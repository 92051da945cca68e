package org.tankrounds.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;
import static org.tankrounds.db.schema.Tables.READINGS;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import org.jooq.JSONB;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tankrounds.db.Pools;
import org.tankrounds.db.Transactions;
import org.tankrounds.migrations.EmbeddedPostgres;
import org.tankrounds.migrations.Login;
import org.tankrounds.migrations.Logins;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestClock;
import org.tankrounds.testing.TestDatabase;

/** One chapter's data out of one server and into another. */
class BackupIT {
    private static final TestDatabase SOURCE = TestDatabase.shared();

    @TempDir
    private static Path folder;

    private static EmbeddedPostgres target;

    @BeforeAll
    static void fillTheSourceAndStartATarget() {
        Cast cast = Cast.add(SOURCE.transactions(), "Chapter with a\ttab, a \\ and a “quote”");
        for (String day : new String[] {"2019-03-01", "2026-01-12", "2026-02-03"}) {
            note(cast, Instant.parse(day + "T10:00:00Z"));
        }
        target = TestDatabase.startEmpty(folder.resolve("target"));
    }

    @AfterAll
    static void stopTheTarget() {
        target.close();
    }

    @Test
    void backup_restored_hasTheSameRowsBehindTheSameWall() throws Exception {
        Path file = folder.resolve("whole.backup");
        Manifest taken = take(SOURCE.logins(), file);
        assertThat(taken.rows()).isGreaterThan(20);
        assertThat(taken.tables()).extracting(Manifest.TableEntry::name)
                .contains("chapters", "readings", "measurements", "tokens", "class_cards").doesNotContain("sessions");
        assertThat(Files.getPosixFilePermissions(file))
                .isEqualTo(PosixFilePermissions.fromString("rw-------"));

        try (EmbeddedPostgres empty = TestDatabase.startEmpty(folder.resolve("empty"))) {
            RestoreBackup.restore(file, empty.logins().owner());

            Manifest again = take(empty.logins(), folder.resolve("again.backup"));
            assertThat(again.tables()).isEqualTo(taken.tables());
            assertThat(count(empty.logins().owner(),
                    "SELECT count(*) FROM pg_class WHERE relkind IN ('r', 'p') "
                    + "AND relrowsecurity AND NOT relforcerowsecurity")).isZero();
            try (var pool = Pools.open(empty.logins().application(), "test")) {
                assertThat(Cast.add(new Transactions(pool), "A further chapter").chapterId()).isPositive();
            }
            assertThatThrownBy(() -> RestoreBackup.restore(file, empty.logins().owner()))
                    .hasMessageContaining("has chapters already");
        }
    }

    @Test
    void backupWithAChangedRow_isRefusedWhole() throws Exception {
        Path file = folder.resolve("changed.backup");
        take(SOURCE.logins(), file);
        try (FileSystem zip = FileSystems.newFileSystem(file)) {
            Path kits = zip.getPath("tables/kits.copy");
            Files.writeString(kits, Files.readString(kits).replaceFirst("\t\\p{L}", "\tX"));
        }

        assertThatThrownBy(() -> RestoreBackup.restore(file, target.logins().owner()))
                .hasMessageContaining("table kits").hasMessageContaining("Nothing was restored");
        assertThat(count(target.logins().backup(), "SELECT count(*) FROM chapters")).isZero();
    }

    @Test
    void fileThatIsNoBackup_isRefused() throws IOException {
        Path file = folder.resolve("notes.txt");
        Files.writeString(file, "eggs came on Tuesday", StandardCharsets.UTF_8);

        assertThatThrownBy(() -> RestoreBackup.inspect(file)).hasMessageContaining("not a whole backup");
    }

    /** Else row-level security would make it an empty file that looks like a backup. */
    @Test
    void backup_byARoleThatMayNotSeeAllRows_isRefused() {
        Logins logins = SOURCE.logins();
        Path file = folder.resolve("blind.backup");

        assertThatThrownBy(() -> new TakeBackup(TestClock.atStart()).write(logins.application(), file))
                .hasMessageContaining("BYPASSRLS");
        assertThat(file).doesNotExist();
    }

    private static Manifest take(Logins logins, Path file) throws SQLException, IOException {
        return new TakeBackup(TestClock.atStart()).write(logins.backup(), file);
    }

    private static long count(Login login, String query) throws SQLException {
        try (Connection connection = login.open(); Statement sql = connection.createStatement();
                ResultSet row = sql.executeQuery(query)) {
            row.next();
            return row.getLong(1);
        }
    }

    private static void note(Cast cast, Instant measuredAt) {
        SOURCE.transactions().inChapter(cast.chapterId(), tx -> {
            long reading = tx.insertInto(READINGS)
                    .set(READINGS.CHAPTER_ID, cast.chapterId())
                    .set(READINGS.TANK_ID, cast.tankA().tankId())
                    .set(READINGS.CODE, "r" + measuredAt.getEpochSecond())
                    .set(READINGS.MEASURED_AT, measuredAt)
                    .set(READINGS.RECEIVED_AT, measuredAt)
                    .set(READINGS.CHANNEL, "api")
                    .set(READINGS.ENTERED, JSONB.valueOf("[{\"analyte\": \"ph\", \"value\": 7.1}]"))
                    .set(READINGS.NOTE, "line one\nline two\t\\.")
                    .returning(READINGS.READING_ID).fetchSingle(READINGS.READING_ID);
            return tx.insertInto(MEASUREMENTS)
                    .set(MEASUREMENTS.CHAPTER_ID, cast.chapterId())
                    .set(MEASUREMENTS.TANK_ID, cast.tankA().tankId())
                    .set(MEASUREMENTS.READING_ID, reading)
                    .set(MEASUREMENTS.MEASURED_AT, measuredAt)
                    .set(MEASUREMENTS.VALUE, 7.1f)
                    .set(MEASUREMENTS.ANALYTE, "ph")
                    .execute();
        });
    }
}
