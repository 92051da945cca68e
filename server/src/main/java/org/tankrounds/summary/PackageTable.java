package org.tankrounds.summary;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tankrounds.web.FormulaGuard;

/**
 * One table of the data package: CSV (RFC 4180) of UTF-8, and what describes it (Table Schema 2.0).
 *
 * <p>A spreadsheet takes some text for formulas, so an apostrophe goes before that, and before text that begins with
 * one; taking away the first apostrophe of a text gives every text back.
 */
final class PackageTable {
    static final String GUARD = "Where it begins with an apostrophe, take that one away: it keeps spreadsheets"
            + " from taking text for formulas.";
    private static final String END = "\r\n";

    /** @param required whether no row may lack it */
    private record Field(String name, String type, String description, boolean required) {}

    private record Reference(String field, String table, String of) {}

    private final String name;
    private final String title;
    private final List<Field> fields = new ArrayList<>();
    private final List<Reference> references = new ArrayList<>();
    private List<String> key = List.of();
    private final MessageDigest sha256 = sha256();
    private OutputStream out = new ByteArrayOutputStream();
    private long bytes;
    private long rows;

    PackageTable(String name, String title) {
        this.name = name;
        this.title = title;
    }

    PackageTable field(String name, String type, String description) {
        fields.add(new Field(name, type, type.equals("string") && !isCode(name) ? (description + " " + GUARD).strip()
                : description, false));
        return this;
    }

    PackageTable required(String name, String type, String description) {
        fields.add(new Field(name, type, description, true));
        return this;
    }

    PackageTable key(String... fields) {
        key = List.of(fields);
        return this;
    }

    PackageTable refers(String field, String table, String of) {
        references.add(new Reference(field, table, of));
        return this;
    }

    String path() {
        return name + ".csv";
    }

    /** From here on the rows go there rather than into memory. */
    PackageTable into(OutputStream stream) {
        out = stream;
        return this;
    }

    PackageTable head() {
        write(String.join(",", fields.stream().map(Field::name).toList()) + END);
        return this;
    }

    /** @param cells null for none, text, numbers, days, times or whether */
    void row(Object... cells) {
        if (cells.length != fields.size()) {
            throw new IllegalArgumentException(name + " has " + fields.size() + " fields, not " + cells.length);
        }
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.length; i++) {
            if (i > 0) {
                line.append(',');
            }
            line.append(quoted(text(cells[i])));
        }
        write(line.append(END).toString());
        rows++;
    }

    void copyTo(OutputStream stream) throws IOException {
        ((ByteArrayOutputStream) out).writeTo(stream);
    }

    /** As a resource of the package; asked for when all rows are written. */
    Map<String, Object> described() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://datapackage.org/profiles/2.0/tableschema.json");
        schema.put("fields", fields.stream().map(PackageTable::described).toList());
        schema.put("missingValues", List.of(""));
        if (!key.isEmpty()) {
            schema.put("primaryKey", key);
        }
        if (!references.isEmpty()) {
            schema.put("foreignKeys", references.stream().map(one -> Map.of("fields", List.of(one.field()),
                    "reference", ordered("resource", one.table(), "fields", List.of(one.of())))).toList());
        }
        return ordered("$schema", "https://datapackage.org/profiles/2.0/dataresource.json", "name", name,
                "type", "table", "title", title, "path", path(), "format", "csv", "mediatype", "text/csv",
                "encoding", "utf-8",
                "dialect", ordered("$schema", "https://datapackage.org/profiles/2.0/tabledialect.json",
                        "delimiter", ",", "lineTerminator", END, "quoteChar", "\"", "doubleQuote", true,
                        "header", true),
                "rows", rows, "bytes", bytes, "hash", "sha256:" + HexFormat.of().formatHex(sha256.digest()),
                "schema", schema);
    }

    private static Map<String, Object> described(Field field) {
        Map<String, Object> described = ordered("name", field.name(), "type", field.type());
        if (!field.description().isEmpty()) {
            described.put("description", field.description());
        }
        if (field.required()) {
            described.put("constraints", Map.of("required", true));
        }
        return described;
    }

    static Map<String, Object> ordered(Object... namesAndValues) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            object.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return object;
    }

    /** Made here, so that no person's text is in it. */
    private static boolean isCode(String field) {
        return List.of("level", "school_code", "tank", "to_tank", "kind", "counted_how", "stage", "cause", "act",
                "reading", "analyte", "characteristic_name", "method_speciation", "unit", "ucum_unit",
                "detection_condition", "detection_limit_unit", "came_by", "series", "verdict", "time_zone")
                .contains(field)
                || field.endsWith("_tank");
    }

    private static String text(Object cell) {
        if (cell == null) {
            return "";
        }
        if (cell instanceof String text) {
            return guarded(text);
        }
        if (cell instanceof BigDecimal number) {
            return number.toPlainString();
        }
        if (cell instanceof Double number) {
            BigDecimal plain = BigDecimal.valueOf(number).stripTrailingZeros();
            return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
        }
        return cell.toString();
    }

    static String guarded(String text) {
        String guarded = FormulaGuard.guard(text);
        return guarded.equals(text) && text.startsWith("'") ? "'" + text : guarded;
    }

    private static String quoted(String text) {
        boolean plain = true;
        for (int i = 0; plain && i < text.length(); i++) {
            char sign = text.charAt(i);
            plain = sign != ',' && sign != '"' && sign != '\n' && sign != '\r';
        }
        boolean edged = !text.isEmpty() && (text.charAt(0) == ' ' || text.charAt(text.length() - 1) == ' ');
        return plain && !edged ? text : '"' + text.replace("\"", "\"\"") + '"';
    }

    private void write(String text) {
        byte[] encoded = text.getBytes(StandardCharsets.UTF_8);
        sha256.update(encoded);
        bytes += encoded.length;
        try {
            out.write(encoded);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
