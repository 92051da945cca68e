package org.tankrounds.summary;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Reads a data package by its descriptor alone, as the standard says (datapackage.org, 2.0), and tells what is amiss.
 */
final class Packages {
    private Packages() {}

    /** @param tables by name, each cell as it stands in the file */
    record Package(JsonNode descriptor, Map<String, List<NamedCsvRecord>> tables, List<String> faults) {
        List<NamedCsvRecord> table(String name) {
            return tables.get(name);
        }
    }

    static Package read(byte[] zip) {
        Map<String, byte[]> files = unzip(zip);
        try {
            JsonNode descriptor = new ObjectMapper().readTree(files.remove("datapackage.json"));
            Package read = new Package(descriptor, new LinkedHashMap<>(), new ArrayList<>());
            descriptor.path("resources").forEach(resource -> {
                byte[] file = files.remove(resource.path("path").asText());
                read.tables().put(resource.path("name").asText(), CsvReader.builder()
                        .ofNamedCsvRecord(new String(file, StandardCharsets.UTF_8)).stream().toList());
                check(read, resource, file);
            });
            descriptor.path("resources").forEach(resource -> references(read, resource));
            files.keySet().forEach(name -> read.faults().add(name + " is not described"));
            return read;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Map<String, byte[]> unzip(byte[] zip) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }

    private static void check(Package read, JsonNode resource, byte[] file) {
        String name = resource.path("name").asText();
        List<NamedCsvRecord> rows = read.table(name);
        fault(read, resource.path("bytes").asLong() != file.length, name + ": bytes");
        fault(read, !resource.path("hash").asText().equals("sha256:" + sha256(file)), name + ": hash");
        fault(read, resource.path("rows").asLong() != rows.size(), name + ": rows");
        JsonNode fields = resource.at("/schema/fields");
        List<String> names = new ArrayList<>();
        fields.forEach(field -> names.add(field.path("name").asText()));
        String header = new String(file, StandardCharsets.UTF_8).lines().findFirst().orElse("");
        fault(read, !header.equals(String.join(",", names)), name + ": header is not that of the schema");
        Set<List<String>> keys = new HashSet<>();
        for (NamedCsvRecord row : rows) {
            fields.forEach(field -> cell(read, name, field, row.getField(field.path("name").asText())));
            List<String> key = new ArrayList<>();
            resource.at("/schema/primaryKey").forEach(part -> key.add(row.getField(part.asText())));
            fault(read, !key.isEmpty() && !keys.add(key), name + ": key " + key + " is there twice");
        }
    }

    private static void cell(Package read, String table, JsonNode field, String cell) {
        String where = table + "." + field.path("name").asText() + ": " + cell;
        if (cell.isEmpty()) {
            fault(read, field.at("/constraints/required").asBoolean(), where + " is required");
            return;
        }
        try {
            switch (field.path("type").asText()) {
                case "string" -> { }
                case "integer" -> Long.parseLong(cell);
                case "number" -> new BigDecimal(cell);
                case "date" -> LocalDate.parse(cell);
                case "datetime" -> Instant.parse(cell);
                case "boolean" -> fault(read, !Set.of("true", "false").contains(cell), where);
                default -> read.faults().add(where + " has an unknown type");
            }
        } catch (RuntimeException e) {
            read.faults().add(where + " is no " + field.path("type").asText());
        }
    }

    private static void references(Package read, JsonNode resource) {
        resource.at("/schema/foreignKeys").forEach(key -> {
            String own = key.at("/fields/0").asText();
            String other = key.at("/reference/fields/0").asText();
            Set<String> there = new HashSet<>();
            read.table(key.at("/reference/resource").asText()).forEach(row -> there.add(row.getField(other)));
            read.table(resource.path("name").asText()).stream().map(row -> row.getField(own))
                    .filter(cell -> !cell.isEmpty() && !there.contains(cell))
                    .forEach(cell -> read.faults()
                            .add(resource.path("name").asText() + "." + own + " refers to no " + cell));
        });
    }

    private static void fault(Package read, boolean wrong, String what) {
        if (wrong) {
            read.faults().add(what);
        }
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
