package org.tankrounds.backup;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The tables that a backup carries, as the database itself lists them: a new table is carried without being told. */
final class TableCatalogue {
    /** Who is signed in and who mistyped a password: people sign in again. */
    static final Set<String> LEFT_OUT = Set.of("sessions", "sign_in_throttles");
    private static final String HISTORY = "flyway_schema_history";

    private static final String TABLES = """
            SELECT c.relname,
                   (SELECT string_agg(a.attname, ',' ORDER BY a.attnum) FROM pg_attribute a
                    WHERE a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped AND a.attgenerated = ''),
                   (SELECT string_agg(quote_ident(a.attname) || \
            CASE WHEN a.attcollation <> 0 THEN ' COLLATE "C"' ELSE '' END,
                                      ', ' ORDER BY array_position(i.indkey, a.attnum))
                    FROM pg_index i JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum = ANY (i.indkey)
                    WHERE i.indrelid = c.oid AND i.indisprimary)
            FROM pg_class c
            WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND NOT c.relispartition
            ORDER BY c.relname""";
    private static final String REFERENCES = """
            SELECT conrelid::regclass::text, confrelid::regclass::text FROM pg_constraint
            WHERE contype = 'f' AND connamespace = 'public'::regnamespace AND conrelid <> confrelid""";

    private TableCatalogue() {}

    /** In an order in which foreign keys are met while the tables are filled. */
    static List<TableRows> read(Connection connection) throws SQLException {
        Map<String, TableRows> tables = tables(connection);
        Map<String, Set<String>> needs = references(connection);
        List<TableRows> ordered = new ArrayList<>();
        Set<String> placed = new HashSet<>();
        while (placed.size() < tables.size()) {
            int before = placed.size();
            for (TableRows table : tables.values()) {
                Set<String> missing = new HashSet<>(needs.getOrDefault(table.name(), Set.of()));
                missing.retainAll(tables.keySet());
                if (!placed.contains(table.name()) && placed.containsAll(missing)) {
                    placed.add(table.name());
                    ordered.add(table);
                }
            }
            if (placed.size() == before) {
                throw new IllegalStateException("tables refer to each other in a circle: no order fills them");
            }
        }
        return ordered;
    }

    private static Map<String, TableRows> tables(Connection connection) throws SQLException {
        Map<String, TableRows> tables = new TreeMap<>();
        try (Statement sql = connection.createStatement(); ResultSet row = sql.executeQuery(TABLES)) {
            while (row.next()) {
                String name = row.getString(1);
                if (!name.equals(HISTORY) && !LEFT_OUT.contains(name)) {
                    tables.put(name, new TableRows(name, List.of(row.getString(2).split(",")), row.getString(3)));
                }
            }
        }
        return tables;
    }

    private static Map<String, Set<String>> references(Connection connection) throws SQLException {
        Map<String, Set<String>> needs = new TreeMap<>();
        try (Statement sql = connection.createStatement(); ResultSet row = sql.executeQuery(REFERENCES)) {
            while (row.next()) {
                needs.computeIfAbsent(row.getString(1), name -> new HashSet<>()).add(row.getString(2));
            }
        }
        return needs;
    }
}
