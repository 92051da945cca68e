package org.tankrounds.readings;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.readings.NdjsonLines.Line;
import org.tankrounds.web.RefusedException;

/**
 * One line of a batch that could be read: where it goes, under which key, and what was found wrong with it so far.
 *
 * @param tankCode empty where it was missing, which is among the faults
 * @param key empty likewise
 */
record BatchLine(
        int number, Optional<String> tankCode, Optional<String> key, byte[] fingerprint, GivenReading given,
        Faults faults) {

    private static final Set<String> ADDRESS = Set.of("tank", "key");
    private static final int LONGEST_TANK_CODE = 100;

    /** @throws RefusedException 400 or 413 where it is no JSON */
    static BatchLine read(Line line) {
        byte[] bytes = line.bytes().orElseThrow(() -> RefusedException.of(413,
                "A line has at most 64 KB (" + NdjsonLines.LONGEST_LINE_BYTES + " bytes)."));
        JsonNode body = JsonText.read(bytes);
        Faults faults = new Faults();
        Optional<String> tank = tankCode(body.path("tank"), faults);
        Optional<String> key = key(body.path("key"), faults);
        GivenReading given = ReadingParser.parse(body, ADDRESS, faults);
        return new BatchLine(line.number(), tank, key, Fingerprint.without(body, ADDRESS), given, faults);
    }

    private static Optional<String> tankCode(JsonNode node, Faults faults) {
        String code = node.isTextual() ? node.textValue() : "";
        boolean possible = !code.isEmpty() && code.length() <= LONGEST_TANK_CODE && code.indexOf('\0') < 0;
        if (!possible) {
            faults.add("/tank", "tank is the code of one of the chapter's tanks.");
        }
        return possible ? Optional.of(code) : Optional.empty();
    }

    private static Optional<String> key(JsonNode node, Faults faults) {
        String key = node.isTextual() ? node.textValue().strip() : "";
        if (!IdempotencyKey.isKey(key)) {
            faults.add("/key", "key is a text of 1 to 255 printable ASCII characters that you never use for another"
                    + " reading of this tank.");
            return Optional.empty();
        }
        return Optional.of(key);
    }
}
