package org.tankrounds.readings;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.tankrounds.readings.DeviceSorting.Conflict;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.readings.files.LoggerFaults;
import org.tankrounds.water.UnitForm;

/**
 * What a probe is told of its pack.
 *
 * @param repeated how many values were there already
 * @param conflicts values that differ from what is stored for the same time; they are not stored
 */
record SenmlAnswer(
        String tank, List<Reading> stored, int repeated, List<Conflict> conflicts, List<Aside> aside) {
    private static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(true);
    private static final int LONGEST_TEXT = 40;

    /** A value that is not taken. */
    record Aside(String at, String value, String reason) {

        static Aside text(String at, String text) {
            return new Aside(at, text.substring(0, Math.min(LONGEST_TEXT, text.length())), "This is no number.");
        }

        /** Empty for a value that can be one. */
        static Optional<Aside> of(GivenValue given) {
            return LoggerFaults.of(given.analyte(), new UnitForm(given.unit(), ""), given.value())
                    .map(why -> aside(given, FileWording.whyInEnglish(why)));
        }

        /** One pack that says the same thing twice of one time, or two things. */
        static Optional<Aside> unlessNew(GivenValue given, List<GivenValue> beside) {
            return beside.stream().filter(other -> other.analyte() == given.analyte()).findFirst()
                    .map(other -> aside(given, other.value().compareTo(given.value()) == 0
                            ? "The pack has this value for the same time already."
                            : "The pack has another value for the same time."));
        }

        private static Aside aside(GivenValue given, String reason) {
            return new Aside(given.at(), given.value().toPlainString(), reason);
        }
    }

    ObjectNode json() {
        ObjectNode node = NODES.objectNode();
        node.put("tank", tank);
        ArrayNode readings = node.putArray("stored");
        stored.forEach(reading -> readings.addObject().put("id", reading.code())
                .put("measuredAt", reading.measuredAt().toString()));
        node.put("alreadyStored", repeated);
        ArrayNode setAside = node.putArray("setAside");
        aside.forEach(one -> setAside.addObject().put("pointer", one.at()).put("value", one.value())
                .put("reason", one.reason()));
        ArrayNode other = node.putArray("conflicts");
        conflicts.forEach(one -> other.addObject().put("pointer", one.given().at())
                .put("measuredAt", one.at().toString()).put("analyte", one.given().analyte().code())
                .put("value", one.given().value()).put("stored", one.stored().value())
                .put("storedUnit", one.stored().form().unit()));
        return node;
    }
}
