package org.tankrounds.summary;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What is otherwise in one summary than in another, figure by figure, read from what scripts read. Sums of tanks are
 * not told again, nor are columns that the older one does not have yet.
 */
final class SummaryChanges {
    static final String RELEASED = "released_at";
    static final String DELIVERED = "delivered";
    static final String LOOKED = "stream_check";
    static final String TANK = "tank";
    /** What the season is called stands in every row, and is told once. */
    private static final Set<String> OF_HEADING = Set.of("chapter_code", "chapter", "season_code", "season");
    private static final Map<String, String> HEADING = ordered("chapter", "/chapter/name", "season", "/season/name",
            "starts_on", "/season/startsOn", "ends_on", "/season/endsOn");
    private static final Map<String, String> LISTS = ordered(RELEASED, "/total/releases", DELIVERED,
            "/total/deliveries", LOOKED, "/streamChecks");
    /** A number inside the database says nothing to a reader; the tank says which school. */
    private static final Set<String> UNTOLD = Set.of("check", "schoolCode");
    private static final ObjectMapper JSON = new ObjectMapper();

    private SummaryChanges() {}

    /** @param derived columns that hang on others only, so that their change says nothing more */
    static List<Change> between(Saved before, Saved now, Predicate<String> derived) {
        List<Change> changes = new ArrayList<>();
        Map<String, NamedCsvRecord> old = before.tanks();
        JsonNode oldJson = before.read();
        JsonNode json = now.read();
        changes.addAll(heading(oldJson, json));
        now.tanks().forEach((tank, row) -> {
            NamedCsvRecord then = old.remove(tank);
            changes.addAll(then == null ? List.of(new Change(tank, place(row), TANK, "", tank))
                    : columns(then, row, derived));
        });
        old.forEach((tank, row) -> changes.add(new Change(tank, place(row), TANK, tank, "")));
        LISTS.forEach((column, at) -> changes.addAll(lists(column, oldJson.at(at), json.at(at))));
        return changes;
    }

    private static List<Change> heading(JsonNode then, JsonNode now) {
        List<Change> changes = new ArrayList<>();
        HEADING.forEach((column, at) -> {
            if (!then.at(at).equals(now.at(at))) {
                changes.add(new Change("", "", column, then.at(at).asText(), now.at(at).asText()));
            }
        });
        return changes;
    }

    private static List<Change> columns(NamedCsvRecord then, NamedCsvRecord now, Predicate<String> derived) {
        List<Change> changes = new ArrayList<>();
        for (String column : now.getHeader()) {
            String before = then.findField(column).orElse(null);
            if (!OF_HEADING.contains(column) && before != null && !before.equals(now.getField(column))
                    && !derived.test(column)) {
                changes.add(new Change(now.getField(TANK), place(now), column, before, now.getField(column)));
            }
        }
        return changes;
    }

    /** An older version that does not have the list yet tells nothing of it. */
    private static List<Change> lists(String column, JsonNode then, JsonNode now) {
        if (then.isMissingNode()) {
            return List.of();
        }
        Set<String> known = new LinkedHashSet<>();
        (then.isEmpty() ? now : then).forEach(one -> one.fieldNames().forEachRemaining(known::add));
        List<String> gone = texts(then, known);
        List<String> come = texts(now, known);
        List<String> before = List.copyOf(gone);
        come.forEach(gone::remove);
        before.forEach(come::remove);
        List<Change> changes = new ArrayList<>();
        gone.forEach(one -> changes.add(new Change("", "", column, one, "")));
        come.forEach(one -> changes.add(new Change("", "", column, "", one)));
        return changes;
    }

    private static List<String> texts(JsonNode list, Set<String> names) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(names.stream().filter(name -> !UNTOLD.contains(name))
                .map(name -> text(one.path(name))).collect(Collectors.joining(", "))));
        return texts;
    }

    /** Of what has parts, each with its name. */
    private static String text(JsonNode value) {
        if (value.isArray()) {
            List<String> parts = new ArrayList<>();
            value.forEach(part -> parts.add(text(part)));
            return String.join(" ", parts);
        }
        if (value.isObject()) {
            return value.properties().stream().map(part -> part.getKey() + " " + text(part.getValue()))
                    .collect(Collectors.joining(" "));
        }
        return value.isNull() || value.isMissingNode() ? "–" : value.asText();
    }

    private static Map<String, String> ordered(String... keysAndValues) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put(keysAndValues[i], keysAndValues[i + 1]);
        }
        return map;
    }

    /** As a version itself tells what differs from the one before. */
    static List<Change> toldBy(byte[] json) {
        List<Change> changes = new ArrayList<>();
        new Saved(new byte[0], json).read().at("/frozen/changes").forEach(one -> changes.add(new Change(
                one.path("tank").asText(""), one.path("place").asText(""), one.path("column").asText(),
                one.path("before").asText(""), one.path("now").asText(""))));
        return changes;
    }

    private static String place(NamedCsvRecord row) {
        return row.getField("school") + ", " + row.getField("classroom");
    }

    /** A summary as scripts read it. */
    record Saved(byte[] csv, byte[] json) {
        static Saved of(SeasonSummary summary) {
            return new Saved(SummaryCsv.write(summary), SummaryJson.write(summary));
        }

        private Map<String, NamedCsvRecord> tanks() {
            return CsvReader.builder().ofNamedCsvRecord(new String(csv, StandardCharsets.UTF_8)).stream()
                    .filter(row -> row.getField("level").equals("tank"))
                    .collect(Collectors.toMap(row -> row.getField(TANK), row -> row, (one, other) -> one,
                            LinkedHashMap::new));
        }

        JsonNode read() {
            try {
                return JSON.readTree(json);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
