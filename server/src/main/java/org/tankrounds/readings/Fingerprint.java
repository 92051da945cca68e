package org.tankrounds.readings;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tankrounds.web.Secrets;

/**
 * What two posts have in common when they say the same: white space, the order of names and trailing zeros do not
 * count, everything else does.
 */
final class Fingerprint {
    private Fingerprint() {}

    static byte[] of(JsonNode body) {
        return without(body, Set.of());
    }

    /** @param names at the top level that say where the reading goes and not what it is */
    static byte[] without(JsonNode body, Set<String> names) {
        StringBuilder text = new StringBuilder(512);
        write(body, names, text);
        return Secrets.sha256(text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static void write(JsonNode node, Set<String> without, StringBuilder text) {
        if (node.isObject()) {
            TreeMap<String, JsonNode> sorted = new TreeMap<>();
            for (Map.Entry<String, JsonNode> field : node.properties()) {
                if (!without.contains(field.getKey())) {
                    sorted.put(field.getKey(), field.getValue());
                }
            }
            text.append('{');
            sorted.forEach((name, value) -> {
                text.append(name.length()).append(':').append(name);
                write(value, Set.of(), text);
            });
            text.append('}');
        } else if (node.isArray()) {
            text.append('[');
            for (Iterator<JsonNode> items = node.elements(); items.hasNext(); ) {
                write(items.next(), Set.of(), text);
                text.append(',');
            }
            text.append(']');
        } else if (node.isNumber()) {
            text.append(number(node.decimalValue()));
        } else if (node.isTextual()) {
            text.append('"').append(node.textValue().length()).append(':').append(node.textValue());
        } else {
            text.append(node.asText());
        }
    }

    /** One that is refused later stays as it is: its exponent may have no room for the zeros. */
    private static BigDecimal number(BigDecimal number) {
        return ReadingParser.isWritable(number) ? number.stripTrailingZeros() : number;
    }
}
