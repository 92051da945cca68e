package org.tankrounds.readings;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.water.Analyte;
import org.tankrounds.words.Saying;

/** From a JSON tree to a reading: shapes and types. Whether the values make sense is the {@link Judge}'s. */
final class ReadingParser {
    static final int MOST_VALUES = 50;
    static final int LONGEST_NOTE = 2_000;
    static final int LONGEST_BY = 80;
    // What a test can tell has three or four digits; a binary single holds seven.
    private static final int MOST_DIGITS = 15;
    private static final Set<String> READING_FIELDS = Set.of("measuredAt", "by", "values", "note");
    private static final Set<String> VALUE_FIELDS = Set.of("analyte", "value", "unit", "as", "step", "below");
    private static final String ANALYTES =
            Stream.of(Analyte.values()).map(Analyte::code).collect(Collectors.joining(", "));

    private final Set<String> fields;
    private final Faults faults;

    private ReadingParser(Set<String> fields, Faults faults) {
        this.fields = fields;
        this.faults = faults;
    }

    static GivenReading parse(JsonNode body, Faults faults) {
        return parse(body, Set.of(), faults);
    }

    /** @param further names that the top level may have besides a reading's own */
    static GivenReading parse(JsonNode body, Set<String> further, Faults faults) {
        Set<String> fields = new HashSet<>(READING_FIELDS);
        fields.addAll(further);
        return new ReadingParser(fields, faults).reading(body);
    }

    private GivenReading reading(JsonNode body) {
        if (!body.isObject()) {
            faults.add("", "A reading is one JSON object with measuredAt and values.");
            return new GivenReading(Optional.empty(), Optional.empty(), Optional.empty(), List.of());
        }
        refuseUnknown(body, "", fields, READING_FIELDS);
        return new GivenReading(measuredAt(body.get("measuredAt")),
                text(body.get("by"), "/by", LONGEST_BY, false),
                text(body.get("note"), "/note", LONGEST_NOTE, true),
                values(body.get("values")));
    }

    private Optional<Instant> measuredAt(JsonNode node) {
        Optional<Instant> time = node == null || !node.isTextual()
                ? Optional.empty() : Times.parse(node.textValue());
        if (time.isEmpty()) {
            faults.add("/measuredAt", "measuredAt is " + Times.ALLOWED + ".");
        }
        return time;
    }

    private Optional<String> text(JsonNode node, String at, int longest, boolean severalLines) {
        if (node == null) {
            return Optional.empty();
        }
        String name = at.substring(1);
        if (!node.isTextual()) {
            faults.add(at, name + " is a text of at most " + longest
                    + " characters. Leave it out where there is none.");
            return Optional.empty();
        }
        return PlainText.check(node.textValue(), Saying.asIs(name), longest, severalLines,
                sentence -> faults.add(at, sentence));
    }

    private List<GivenValue> values(JsonNode node) {
        if (node == null) {
            return List.of();
        }
        if (!node.isArray()) {
            faults.add("/values", "values is an array of at most " + MOST_VALUES + " objects.");
            return List.of();
        }
        if (node.size() > MOST_VALUES) {
            faults.add("/values", "A reading has at most " + MOST_VALUES + " values; this one has "
                    + node.size() + ".");
            return List.of();
        }
        List<GivenValue> values = new ArrayList<>();
        Set<Analyte> seen = new HashSet<>();
        for (int i = 0; i < node.size(); i++) {
            value(node.get(i), "/values/" + i, seen).ifPresent(values::add);
        }
        return values;
    }

    private Optional<GivenValue> value(JsonNode node, String at, Set<Analyte> seen) {
        if (!node.isObject()) {
            faults.add(at, "A value is an object with analyte, value and unit.");
            return Optional.empty();
        }
        refuseUnknown(node, at, VALUE_FIELDS, VALUE_FIELDS);
        Optional<Analyte> analyte = analyte(node.get("analyte"), at + "/analyte", seen);
        Optional<BigDecimal> value = number(node.get("value"), at + "/value", "value");
        Optional<BigDecimal> step = step(node.get("step"), at + "/step");
        Optional<String> unit = unit(node.get("unit"), at + "/unit", analyte);
        Optional<String> as = as(node.get("as"), at + "/as", analyte);
        boolean below = below(node.get("below"), at + "/below");
        boolean readable = analyte.isPresent() && value.isPresent() && unit.isPresent()
                && (as.isPresent() || !node.has("as"));
        return readable
                ? Optional.of(new GivenValue(at, analyte.get(), value.get(), unit.get(), as, step, below, true))
                : Optional.empty();
    }

    private Optional<Analyte> analyte(JsonNode node, String at, Set<Analyte> seen) {
        Optional<Analyte> analyte = node == null || !node.isTextual()
                ? Optional.empty() : Analyte.ofCode(node.textValue());
        if (analyte.isEmpty()) {
            faults.add(at, "analyte is one of " + ANALYTES + ".");
        } else if (!seen.add(analyte.get())) {
            faults.add(at, analyte.get().code() + " occurs twice. A reading has each analyte once; send another"
                    + " reading for a second look.");
        }
        return analyte;
    }

    private Optional<String> unit(JsonNode node, String at, Optional<Analyte> analyte) {
        if (node != null && node.isTextual()) {
            return Optional.of(node.textValue());
        }
        faults.add(at, "unit is a text: " + analyte.map(Analyte::acceptedSpelling).orElse("a UCUM code") + ".");
        return Optional.empty();
    }

    private Optional<String> as(JsonNode node, String at, Optional<Analyte> analyte) {
        if (node == null) {
            return Optional.empty();
        }
        if (node.isTextual()) {
            return Optional.of(node.textValue());
        }
        faults.add(at, "as is a text that says what the number counts: N, NH3, NH4, NO2, NO3 or CaCO3.");
        return Optional.empty();
    }

    private Optional<BigDecimal> step(JsonNode node, String at) {
        if (node == null) {
            return Optional.empty();
        }
        Optional<BigDecimal> step = number(node, at, "step");
        if (step.isPresent() && step.get().signum() <= 0) {
            faults.add(at, "step is a number greater than 0. Leave it out where you do not know it.");
            return Optional.empty();
        }
        return step;
    }

    private boolean below(JsonNode node, String at) {
        if (node != null && !node.isBoolean()) {
            faults.add(at, "below is true or false.");
        }
        return node != null && node.asBoolean();
    }

    private Optional<BigDecimal> number(JsonNode node, String at, String name) {
        if (node == null || !node.isNumber()) {
            faults.add(at, name + " is a JSON number, without quotation marks.");
            return Optional.empty();
        }
        BigDecimal number = node.decimalValue();
        if (!isWritable(number)) {
            faults.add(at, name + " is a number of at most " + MOST_DIGITS + " digits before and after the point.");
            return Optional.empty();
        }
        return Optional.of(plain(number));
    }

    /** Far from what can be meant, and costly to write out: 1e999999999 would have a gigabyte of digits. */
    static boolean isWritable(BigDecimal number) {
        long before = (long) number.precision() - number.scale();
        return number.scale() <= MOST_DIGITS && before <= MOST_DIGITS && number.precision() <= 2 * MOST_DIGITS;
    }

    /** 1e2 becomes 100; 0.30 stays. */
    static BigDecimal plain(BigDecimal number) {
        return number.scale() < 0 ? number.setScale(0) : number;
    }

    private void refuseUnknown(JsonNode node, String at, Set<String> known, Set<String> named) {
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            if (!known.contains(field.getKey())) {
                String pointer = at + "/" + field.getKey().replace("~", "~0").replace("/", "~1");
                faults.add(pointer, "There is no such field here; the fields are "
                        + named.stream().sorted().collect(Collectors.joining(", ")) + ".");
            }
        }
    }
}
