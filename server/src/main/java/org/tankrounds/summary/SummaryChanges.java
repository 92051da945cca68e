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
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What is otherwise in one summary than in another, figure by figure, read from what scripts read. Sums of tanks are
 * not told again, nor are columns that the older one does not have yet.
 */
final class SummaryChanges {
    static final String RELEASED = "released_at";
    static final String TANK = "tank";
    private static final ObjectMapper JSON = new ObjectMapper();

    private SummaryChanges() {}

    /** @param derived columns that hang on others only, so that their change says nothing more */
    static List<Change> between(Saved before, Saved now, Predicate<String> derived) {
        List<Change> changes = new ArrayList<>();
        Map<String, NamedCsvRecord> old = before.tanks();
        now.tanks().forEach((tank, row) -> {
            NamedCsvRecord then = old.remove(tank);
            changes.addAll(then == null ? List.of(new Change(tank, place(row), TANK, "", tank))
                    : columns(then, row, derived));
        });
        old.forEach((tank, row) -> changes.add(new Change(tank, place(row), TANK, tank, "")));
        changes.addAll(releases(before.releases(), now.releases()));
        return changes;
    }

    private static List<Change> columns(NamedCsvRecord then, NamedCsvRecord now, Predicate<String> derived) {
        List<Change> changes = new ArrayList<>();
        for (String column : now.getHeader()) {
            String before = then.findField(column).orElse(null);
            if (before != null && !before.equals(now.getField(column)) && !derived.test(column)) {
                changes.add(new Change(now.getField(TANK), place(now), column, before, now.getField(column)));
            }
        }
        return changes;
    }

    private static List<Change> releases(List<String> before, List<String> now) {
        List<Change> changes = new ArrayList<>();
        List<String> gone = new ArrayList<>(before);
        List<String> come = new ArrayList<>(now);
        now.forEach(gone::remove);
        before.forEach(come::remove);
        gone.forEach(release -> changes.add(new Change("", "", RELEASED, release, "")));
        come.forEach(release -> changes.add(new Change("", "", RELEASED, "", release)));
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
            try {
                List<String> releases = new ArrayList<>();
                for (JsonNode one : JSON.readTree(json).path("total").path("releases")) {
                    releases.add(String.join(", ", one.path("site").asText(), one.path("approval").asText("–"),
                            one.path("day").asText(), one.path("tank").asText(), one.path("fish").asText()));
                }
                return releases;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
