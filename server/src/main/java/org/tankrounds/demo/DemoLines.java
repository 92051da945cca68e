package org.tankrounds.demo;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;

/** Readings as a script would post them in a batch. */
final class DemoLines {
    private static final ObjectMapper JSON = new ObjectMapper();

    private DemoLines() {}

    static List<byte[]> of(String tankCode, List<DemoReading> readings, ZoneId zone) {
        return readings.stream().map(reading -> line(tankCode, reading, zone)).toList();
    }

    private static byte[] line(String tankCode, DemoReading reading, ZoneId zone) {
        ObjectNode line = JSON.createObjectNode();
        line.put("tank", tankCode);
        line.put("key", "demo " + reading.by() + " " + reading.measuredAt());
        line.put("measuredAt", time(reading.measuredAt(), zone));
        line.put("by", reading.by());
        if (!reading.note().isEmpty()) {
            line.put("note", reading.note());
        }
        ArrayNode values = line.putArray("values");
        reading.values().forEach(value -> add(values, value));
        try {
            return JSON.writeValueAsBytes(line);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree can always be written", e);
        }
    }

    private static void add(ArrayNode values, DemoReading.Value value) {
        ObjectNode node = values.addObject();
        node.put("analyte", value.analyte().code());
        node.put("value", value.value());
        node.put("unit", value.form().unit());
        if (!value.form().as().isEmpty()) {
            node.put("as", value.form().as());
        }
        value.step().ifPresent(step -> node.put("step", step));
    }

    private static String time(Instant at, ZoneId zone) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at.atZone(zone).toOffsetDateTime());
    }
}
