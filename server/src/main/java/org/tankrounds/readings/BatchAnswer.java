package org.tankrounds.readings;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.tankrounds.web.FieldError;
import org.tankrounds.web.RefusedException;

/**
 * What became of one line.
 *
 * @param readingCode of the reading stored, now or before; empty where the line was refused
 */
record BatchAnswer(int line, int status, Optional<String> readingCode, String title, List<FieldError> errors) {

    static BatchAnswer stored(int line, int status, String readingCode) {
        return new BatchAnswer(line, status, Optional.of(readingCode), "", List.of());
    }

    static BatchAnswer refused(int line, RefusedException refusal) {
        return new BatchAnswer(line, refusal.status(), Optional.empty(), refusal.title(), refusal.errors());
    }

    static BatchAnswer refused(int line, int status, String title) {
        return new BatchAnswer(line, status, Optional.empty(), title, List.of());
    }

    ObjectNode json() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("line", line).put("status", status);
        readingCode.ifPresentOrElse(code -> node.put("id", code), () -> node.set("problem", problem()));
        return node;
    }

    private ObjectNode problem() {
        ObjectNode problem = JsonNodeFactory.instance.objectNode();
        problem.put("type", "about:blank").put("title", title).put("status", status);
        if (!errors.isEmpty()) {
            ArrayNode entries = problem.putArray("errors");
            errors.forEach(error ->
                    entries.addObject().put("pointer", error.field()).put("detail", error.message()));
        }
        return problem;
    }
}
