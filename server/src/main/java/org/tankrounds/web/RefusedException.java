package org.tankrounds.web;

import java.util.List;

/** What was sent cannot be taken; nothing of it was stored. Pages show the same sentences beside their fields. */
public final class RefusedException extends RuntimeException {
    private final int status;
    private final String title;
    private final List<FieldError> errors;

    public RefusedException(int status, String title, List<FieldError> errors) {
        super(title);
        this.status = status;
        this.title = title;
        this.errors = List.copyOf(errors);
    }

    public static RefusedException of(int status, String title) {
        return new RefusedException(status, title, List.of());
    }

    public int status() {
        return status;
    }

    public String title() {
        return title;
    }

    public List<FieldError> errors() {
        return errors;
    }
}
