package org.tankrounds.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.tankrounds.backup.Manifest.TableEntry;
import org.tankrounds.config.CommandException;
import org.tankrounds.config.OutFile;
import org.tankrounds.migrations.Login;
import org.tankrounds.migrations.Migrations;

/**
 * All chapters' rows at one moment into one file, while the service goes on. The file appears only when it is
 * whole.
 */
public final class TakeBackup {
    private final Clock clock;

    public TakeBackup(Clock clock) {
        this.clock = clock;
    }

    /** @param backup sees the rows of all chapters */
    public Manifest write(Login backup, Path out) throws SQLException {
        return new OutFile(out, "rw-------").write(file -> writeWhole(backup, file));
    }

    private Manifest writeWhole(Login backup, OutputStream file) throws SQLException, IOException {
        try (Connection connection = backup.open()) {
            connection.setReadOnly(true);
            connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
            connection.setAutoCommit(false);
            try (Statement sql = connection.createStatement()) {
                sql.execute(TableRows.SETTINGS);
            }
            refuseIfBlind(connection);
            ZipOutputStream zip = new ZipOutputStream(file);
            Manifest manifest = writeTables(connection, zip);
            zip.putNextEntry(new ZipEntry(Manifest.FILE));
            zip.write(manifest.toJson());
            zip.finish();
            connection.rollback();
            return manifest;
        }
    }

    private Manifest writeTables(Connection connection, ZipOutputStream zip)
            throws SQLException, IOException {
        List<TableEntry> entries = new ArrayList<>();
        OutputStream unclosed = zip;
        for (TableRows table : TableCatalogue.read(connection)) {
            zip.putNextEntry(new ZipEntry("tables/" + table.name() + ".copy"));
            entries.add(table.writeTo(unclosed, connection));
            zip.closeEntry();
        }
        String madeAt = clock.instant().truncatedTo(ChronoUnit.SECONDS).toString();
        return new Manifest(Manifest.FORMAT, Migrations.appliedVersion(connection), madeAt, entries);
    }

    /**
     * Row-level security would hide every row from such a role, and the backup would be empty without a word.
     */
    private static void refuseIfBlind(Connection connection) throws SQLException {
        try (Statement sql = connection.createStatement();
                ResultSet row =
                        sql.executeQuery("SELECT rolbypassrls OR rolsuper FROM pg_roles"
                                + " WHERE rolname = current_user")) {
            if (!row.next() || !row.getBoolean(1)) {
                throw CommandException.failed("The role tankrounds_backup may not see the rows of all "
                        + "chapters. Have the database's administrator run: ALTER ROLE tankrounds_backup BYPASSRLS;");
            }
        }
    }
}
