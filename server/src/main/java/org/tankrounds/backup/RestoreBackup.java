package org.tankrounds.backup;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.tankrounds.backup.Manifest.TableEntry;
import org.tankrounds.config.CommandException;
import org.tankrounds.migrations.Login;
import org.tankrounds.migrations.Migrations;

/**
 * A backup's rows into an empty database: all of them, proven equal, or none. An older backup meets the
 * schema that it was taken from; the next start of the service brings it up to date like any other database.
 */
public final class RestoreBackup {
    private static final String NOTHING = " Nothing was restored.";
    private static final String IDENTITIES = """
            SELECT quote_ident(c.relname), quote_ident(a.attname), \
            pg_get_serial_sequence(quote_ident(c.relname), a.attname)
            FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid
            WHERE c.relnamespace = 'public'::regnamespace AND a.attidentity <> '' AND NOT c.relispartition""";

    private final ZipFile file;
    private final Manifest manifest;

    private RestoreBackup(ZipFile file, Manifest manifest) {
        this.file = file;
        this.manifest = manifest;
    }

    /** Looks at the file before the database is touched. */
    public static Manifest inspect(Path in) throws IOException {
        try (ZipFile file = open(in)) {
            return manifestOf(file);
        }
    }

    /** @param owner of the tables; the service must not be running */
    public static Manifest restore(Path in, Login owner) throws SQLException, IOException {
        try (ZipFile file = open(in)) {
            RestoreBackup restore = new RestoreBackup(file, manifestOf(file));
            restore.into(owner);
            return restore.manifest;
        }
    }

    private static ZipFile open(Path in) throws IOException {
        try {
            return new ZipFile(in.toFile());
        } catch (ZipException e) {
            throw CommandException.failed(in + " is not a whole backup of Tankrounds." + NOTHING);
        }
    }

    private static Manifest manifestOf(ZipFile file) throws IOException {
        ZipEntry entry = file.getEntry(Manifest.FILE);
        if (entry == null) {
            throw CommandException.failed(file.getName() + " is not a backup of Tankrounds." + NOTHING);
        }
        Manifest manifest = Manifest.parse(file.getInputStream(entry).readAllBytes());
        if (manifest.schemaVersion() > Migrations.expectedVersion()) {
            throw CommandException.failed("The backup is of schema version " + manifest.schemaVersion()
                    + ", this Tankrounds knows up to " + Migrations.expectedVersion() + ": use a newer one." + NOTHING);
        }
        return manifest;
    }

    private void into(Login owner) throws SQLException, IOException {
        try (Connection connection = owner.open()) {
            refuseIfServed(connection);
            refuseIfNewer(connection);
            Migrations.migrate(owner, manifest.schemaVersion());
            connection.setAutoCommit(false);
            run(connection, TableRows.SETTINGS);
            run(connection, "SELECT ensure_measurement_months(now() + interval '3 months')");
            fill(connection);
            connection.commit();
        }
    }

    private void fill(Connection connection) throws SQLException, IOException {
        Map<String, TableRows> tables = TableCatalogue.read(connection).stream()
                .collect(Collectors.toMap(TableRows::name, Function.identity()));
        for (String table : tables.keySet()) {
            run(connection, "ALTER TABLE " + TableRows.quoted(table) + " NO FORCE ROW LEVEL SECURITY");
        }
        refuseIfUsed(connection);
        run(connection, "TRUNCATE setup_links, " + String.join(", ", TableCatalogue.LEFT_OUT));
        for (TableEntry entry : manifest.tables()) {
            fill(connection, table(tables, entry), entry);
        }
        setIdentities(connection);
        for (TableEntry entry : manifest.tables()) {
            prove(connection, table(tables, entry), entry);
        }
        for (String table : tables.keySet()) {
            run(connection, "ALTER TABLE " + TableRows.quoted(table) + " FORCE ROW LEVEL SECURITY");
        }
    }

    /** The table as the database has it, not as the file claims. */
    private static TableRows table(Map<String, TableRows> tables, TableEntry entry) {
        TableRows table = tables.get(entry.name());
        if (table == null || !List.copyOf(table.columns()).equals(entry.columns())) {
            throw CommandException.failed("The backup's table " + entry.name() + " does not fit its schema version."
                    + NOTHING);
        }
        return table;
    }

    private void fill(Connection connection, TableRows table, TableEntry entry) throws SQLException, IOException {
        ZipEntry rows = file.getEntry(entry.file());
        if (rows == null) {
            throw damaged(entry);
        }
        try (InputStream in = new BufferedInputStream(file.getInputStream(rows), 1 << 16)) {
            table.readFrom(in, connection);
        } catch (ZipException e) {
            throw damaged(entry);
        } catch (SQLException e) {
            if (isAboutTheRows(e)) {
                throw damaged(entry);
            }
            throw e;
        }
    }

    /** SQLSTATE classes 22, data that cannot be read, and 23, data that breaks a rule. */
    private static boolean isAboutTheRows(SQLException e) {
        return e.getSQLState() != null && e.getSQLState().matches("2[23].*");
    }

    /** Read again from the database: what is there now is what was there then. */
    private static void prove(Connection connection, TableRows table, TableEntry entry)
            throws SQLException, IOException {
        if (!table.writeTo(OutputStream.nullOutputStream(), connection).equals(entry)) {
            throw damaged(entry);
        }
    }

    private static CommandException damaged(TableEntry entry) {
        return CommandException.failed("The backup is damaged: its table " + entry.name()
                + " is not what the manifest says. Use another backup." + NOTHING);
    }

    private static void setIdentities(Connection connection) throws SQLException {
        try (Statement sql = connection.createStatement(); ResultSet row = sql.executeQuery(IDENTITIES)) {
            while (row.next()) {
                run(connection, "SELECT setval('" + row.getString(3) + "', coalesce(max(" + row.getString(2)
                        + "), 1), max(" + row.getString(2) + ") IS NOT NULL) FROM " + row.getString(1));
            }
        }
    }

    private void refuseIfNewer(Connection connection) throws SQLException {
        boolean empty = !yes(connection, "SELECT to_regclass('public.chapters') IS NOT NULL");
        int applied = empty ? 0 : Migrations.appliedVersion(connection);
        if (applied > manifest.schemaVersion()) {
            throw CommandException.failed("The database has schema version " + applied + " and the backup "
                    + manifest.schemaVersion() + ": restore it into a database that was never used." + NOTHING);
        }
    }

    private static void refuseIfUsed(Connection connection) throws SQLException {
        if (yes(connection, "SELECT EXISTS (SELECT 1 FROM chapters)")) {
            throw CommandException.failed("The database has chapters already: restore into an empty one, so "
                    + "that nothing is overwritten (--data names another folder)." + NOTHING);
        }
    }

    private static void refuseIfServed(Connection connection) throws SQLException {
        if (yes(connection, "SELECT EXISTS (SELECT 1 FROM pg_stat_activity WHERE datname = current_database() "
                + "AND application_name = 'tankrounds')")) {
            throw CommandException.failed("A Tankrounds is running on this database: stop it first." + NOTHING);
        }
    }

    private static boolean yes(Connection connection, String question) throws SQLException {
        try (Statement sql = connection.createStatement(); ResultSet row = sql.executeQuery(question)) {
            row.next();
            return row.getBoolean(1);
        }
    }

    private static void run(Connection connection, String command) throws SQLException {
        try (Statement sql = connection.createStatement()) {
            sql.execute(command);
        }
    }
}
