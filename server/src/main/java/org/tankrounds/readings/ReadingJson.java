package org.tankrounds.readings;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/** A reading as the public interface shows it, and its values as the database keeps them. */
final class ReadingJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(true);

    private ReadingJson() {}

    static ObjectNode stored(Reading reading, String tankCode) {
        ObjectNode node = NODES.objectNode();
        node.put("id", reading.code());
        node.put("tank", tankCode);
        node.put("measuredAt", reading.measuredAt().toString());
        reading.by().ifPresent(by -> node.put("by", by));
        node.set("values", array(reading.values()));
        reading.note().ifPresent(note -> node.put("note", note));
        node.put("receivedAt", reading.receivedAt().toString());
        node.put("version", reading.version());
        ArrayNode flags = node.putArray("flags");
        reading.flags().forEach(flags::add);
        return node;
    }

    static String entered(List<EnteredValue> values) {
        return JsonText.writeString(array(values));
    }

    static List<EnteredValue> values(String entered) {
        List<EnteredValue> values = new ArrayList<>();
        for (JsonNode node : JsonText.readOwn(entered)) {
            values.add(new EnteredValue(
                    Analyte.ofCode(node.get("analyte").textValue()).orElseThrow(),
                    node.get("value").decimalValue(),
                    new UnitForm(node.get("unit").textValue(), node.path("as").asText("")),
                    Optional.ofNullable(node.get("step")).map(JsonNode::decimalValue),
                    node.path("below").asBoolean(false)));
        }
        return List.copyOf(values);
    }

    private static ArrayNode array(List<EnteredValue> values) {
        ArrayNode array = NODES.arrayNode();
        for (EnteredValue value : values) {
            ObjectNode node = array.addObject();
            node.put("analyte", value.analyte().code());
            node.put("value", value.value());
            node.put("unit", value.form().unit());
            if (!value.form().as().isEmpty()) {
                node.put("as", value.form().as());
            }
            value.step().ifPresent(step -> node.put("step", step));
            if (value.below()) {
                node.put("below", true);
            }
        }
        return array;
    }
}
