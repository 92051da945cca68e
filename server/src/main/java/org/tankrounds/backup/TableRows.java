package org.tankrounds.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import org.postgresql.PGConnection;
import org.tankrounds.backup.Manifest.TableEntry;

/**
 * A table's rows out and in, as text and in the order of the primary key: so the same rows give the same bytes in every
 * database, and a restored table can be proven equal by reading it again.
 *
 * @param orderBy the primary key's columns as SQL
 */
record TableRows(String name, List<String> columns, String orderBy) {
    /** Nothing that a server's or a person's settings could change. */
    static final String SETTINGS = "SET LOCAL TimeZone = 'UTC'; SET LOCAL DateStyle = 'ISO, YMD'; "
            + "SET LOCAL IntervalStyle = 'iso_8601'; SET LOCAL bytea_output = 'hex'; SET LOCAL extra_float_digits = 1; "
            + "SET LOCAL client_encoding = 'UTF8'; SET LOCAL statement_timeout = 0; SET LOCAL row_security = off";

    TableEntry writeTo(OutputStream out, Connection connection) throws SQLException, IOException {
        MessageDigest digest = sha256();
        String copy = "COPY (SELECT " + columnList() + " FROM " + quoted(name) + " ORDER BY " + orderBy + ") TO STDOUT";
        long rows = connection.unwrap(PGConnection.class).getCopyAPI()
                .copyOut(copy, new DigestOutputStream(out, digest));
        return new TableEntry(name, columns, rows, HexFormat.of().formatHex(digest.digest()));
    }

    void readFrom(InputStream in, Connection connection) throws SQLException, IOException {
        String copy = "COPY " + quoted(name) + " (" + columnList() + ") FROM STDIN";
        connection.unwrap(PGConnection.class).getCopyAPI().copyIn(copy, in);
    }

    static String quoted(String identifier) {
        return '"' + identifier.replace("\"", "\"\"") + '"';
    }

    private String columnList() {
        return columns.stream().map(TableRows::quoted).collect(Collectors.joining(", "));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
