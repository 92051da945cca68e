package org.tankrounds.readings;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.tankrounds.web.RefusedException;

/** JSON exactly as RFC 8259 has it: UTF-8, no duplicate names, no NaN, numbers with every digit kept. */
final class JsonText {
    private static final int DEEPEST = 10;
    private static final int LONGEST_NUMBER = 100;
    private static final int LONGEST_NAME = 200;

    private static final ObjectMapper MAPPER = mapper();

    private JsonText() {}

    /** @throws RefusedException 400 with what is wrong and where */
    static JsonNode read(byte[] bytes) {
        String text = decode(bytes);
        try {
            JsonNode node = MAPPER.readTree(text);
            if (node == null || node.isMissingNode()) {
                throw RefusedException.of(400, "The body is empty. Send one JSON object.");
            }
            return node;
        } catch (JsonProcessingException e) {
            throw RefusedException.of(400, "This is not well-formed JSON" + place(e) + ": " + why(e) + ".");
        } catch (NumberFormatException e) {
            // The parser lets an exponent that no number can have through as it is.
            throw RefusedException.of(400, "This is not well-formed JSON: a number has an exponent beyond all bounds.");
        }
    }

    /** For text that this service wrote itself. */
    static JsonNode readOwn(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the database holds JSON that cannot be read", e);
        }
    }

    static byte[] write(JsonNode node) {
        try {
            return MAPPER.writeValueAsBytes(node);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree can always be written", e);
        }
    }

    static String writeString(JsonNode node) {
        return new String(write(node), StandardCharsets.UTF_8);
    }

    private static String decode(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            throw RefusedException.of(400, "The body is not valid UTF-8.");
        }
    }

    private static String place(JsonProcessingException e) {
        JsonLocation at = e.getLocation();
        return at == null ? "" : " (line " + at.getLineNr() + ", column " + at.getColumnNr() + ")";
    }

    private static String why(JsonProcessingException e) {
        String message = e.getOriginalMessage();
        if (message.startsWith("Duplicate field")) {
            return "a name occurs twice in one object";
        }
        if (message.contains("nesting depth")) {
            return "it is nested more than " + DEEPEST + " deep";
        }
        if (message.startsWith("Number value length")) {
            return "a number has more than " + LONGEST_NUMBER + " digits";
        }
        if (message.startsWith("Name length")) {
            return "a name has more than " + LONGEST_NAME + " characters";
        }
        return message.contains("end-of-input") ? "it ends too early" : "unexpected text";
    }

    private static ObjectMapper mapper() {
        JsonFactory factory = JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DEEPEST)
                        .maxNumberLength(LONGEST_NUMBER)
                        .maxNameLength(LONGEST_NAME)
                        .build())
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                .build();
        return JsonMapper.builder(factory)
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
                .build();
    }
}
