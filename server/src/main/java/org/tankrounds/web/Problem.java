package org.tankrounds.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/** Problem details as RFC 9457 lays them out; {@code errors} is an extension of ours. */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Problem(
        String type, String title, int status, String detail, String instance, List<Entry> errors) {

    public static final String MEDIA_TYPE = "application/problem+json";

    /** @param pointer JSON pointer (RFC 6901) to the field */
    public record Entry(String pointer, String detail) {}

    public static Problem of(int status, String title, String detail, String instance, List<FieldError> errors) {
        return new Problem("about:blank", title, status, detail, instance,
                errors.stream().map(error -> new Entry(error.field(), error.message())).toList());
    }
}
