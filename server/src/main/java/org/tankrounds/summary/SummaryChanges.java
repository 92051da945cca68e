package org.tankrounds.summary;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
    private static final List<String> HEADING = List.of("chapter_code", "chapter", "season_code", "season");
    private static final ObjectMapper JSON = new ObjectMapper();

    private SummaryChanges() {}

    /** @param derived columns that hang on others only, so that their change says nothing more */
    static List<Change> between(Saved before, Saved now, Predicate<String> derived) {
        List<Change> changes = new ArrayList<>();
        Map<String, NamedCsvRecord> old = before.tanks();
        old.values().stream().findFirst().ifPresent(then -> now.tanks().values().stream().findFirst()
                .ifPresent(row -> changes.addAll(heading(then, row))));
        now.tanks().forEach((tank, row) -> {
            NamedCsvRecord then = old.remove(tank);
            changes.addAll(then == null ? List.of(new Change(tank, place(row), TANK, "", tank))
                    : columns(then, row, derived));
        });
        old.forEach((tank, row) -> changes.add(new Change(tank, place(row), TANK, tank, "")));
        changes.addAll(lists(RELEASED, before.releases(), now.releases()));
        before.deliveries().ifPresent(then ->
                changes.addAll(lists(DELIVERED, then, now.deliveries().orElse(List.of()))));
        before.looks().ifPresent(then -> changes.addAll(lists(LOOKED, then, now.looks().orElse(List.of()))));
        return changes;
    }

    private static List<Change> heading(NamedCsvRecord then, NamedCsvRecord now) {
        return HEADING.stream().filter(name -> !then.getField(name).equals(now.getField(name)))
                .map(name -> new Change("", "", name, then.getField(name), now.getField(name))).toList();
    }

    private static List<Change> columns(NamedCsvRecord then, NamedCsvRecord now, Predicate<String> derived) {
        List<Change> changes = new ArrayList<>();
        for (String column : now.getHeader()) {
            String before = then.findField(column).orElse(null);
            if (!HEADING.contains(column) && before != null && !before.equals(now.getField(column))
                    && !derived.test(column)) {
                changes.add(new Change(now.getField(TANK), place(now), column, before, now.getField(column)));
            }
        }
        return changes;
    }

    private static List<Change> lists(String column, List<String> before, List<String> now) {
        List<Change> changes = new ArrayList<>();
        List<String> gone = new ArrayList<>(before);
        List<String> come = new ArrayList<>(now);
        now.forEach(gone::remove);
        before.forEach(come::remove);
        gone.forEach(one -> changes.add(new Change("", "", column, one, "")));
        come.forEach(one -> changes.add(new Change("", "", column, "", one)));
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

        /** Site, approval, day, tank and number, as one text each. */
        private List<String> releases() {
            List<String> releases = new ArrayList<>();
            for (JsonNode one : read().path("total").path("releases")) {
                releases.add(texts(one, "site", "approval", "day", "tank", "fish"));
            }
            return releases;
        }

        /**
         * Site, day, temperature, pH, oxygen and biotic index;
         * empty where the version is older than that it tells them.
         */
        private Optional<List<String>> looks() {
            JsonNode all = read().path("streamChecks");
            if (all.isMissingNode()) {
                return Optional.empty();
            }
            List<String> looks = new ArrayList<>();
            for (JsonNode one : all) {
                looks.add(texts(one, "site", "day", "temperatureC", "ph", "oxygenMgPerL") + ", "
                        + texts(one.path("familyBioticIndex"), "value"));
            }
            return Optional.of(looks);
        }

        private static String texts(JsonNode of, String... names) {
            return Stream.of(names).map(of::path)
                    .map(value -> value.isNull() || value.isMissingNode() ? "–" : value.asText())
                    .collect(Collectors.joining(", "));
        }

        /** Apart from what says that it is frozen. */
        boolean saysAs(Saved other) {
            return Arrays.equals(csv, other.csv) && unfrozen().equals(other.unfrozen());
        }

        private JsonNode unfrozen() {
            return ((ObjectNode) read()).without("frozen");
        }

        /** Day, tank, eggs, supplier and certificate; empty where the version is older than that it tells them. */
        private Optional<List<String>> deliveries() {
            JsonNode all = read().path("total").path("deliveries");
            if (all.isMissingNode()) {
                return Optional.empty();
            }
            List<String> deliveries = new ArrayList<>();
            for (JsonNode one : all) {
                deliveries.add(texts(one, "day", "tank", "eggs", "supplier", "certificate"));
            }
            return Optional.of(deliveries);
        }

        private JsonNode read() {
            try {
                return JSON.readTree(json);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
