package org.tankrounds.backup;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.util.List;
import org.tankrounds.config.CommandException;

/**
 * What a backup says about itself, and is checked against.
 *
 * @param format version of this layout of the file
 * @param schemaVersion of the database that it was taken from
 * @param madeAt ISO 8601, UTC; for people
 * @param tables in an order in which they can be filled
 */
public record Manifest(int format, int schemaVersion, String madeAt, List<TableEntry> tables) {
    static final String FILE = "manifest.json";
    static final int FORMAT = 1;
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    /** @param sha256 of the table's rows as they lie in the file */
    public record TableEntry(String name, List<String> columns, long rows, String sha256) {
        String file() {
            return "tables/" + name + ".copy";
        }
    }

    public long rows() {
        return tables.stream().mapToLong(TableEntry::rows).sum();
    }

    byte[] toJson() {
        try {
            return JSON.writeValueAsBytes(this);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a manifest that is no JSON", e);
        }
    }

    static Manifest parse(byte[] json) {
        Manifest manifest;
        try {
            manifest = JSON.readValue(json, Manifest.class);
        } catch (IOException e) {
            throw CommandException.failed("The backup's manifest is damaged; take another backup. Nothing "
                    + "was restored.");
        }
        if (manifest.format() != FORMAT) {
            throw CommandException.failed("The backup is of format " + manifest.format()
                    + "; this Tankrounds reads format "
                    + FORMAT + ". Restore it with the version that made it. Nothing was restored.");
        }
        return manifest;
    }
}
