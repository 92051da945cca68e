package org.tankrounds.web;

import java.util.List;
import org.tankrounds.words.Saying;
import org.tankrounds.words.Words;

/** What was sent cannot be taken; nothing of it was stored. Pages show the same sentences beside their fields. */
public final class RefusedException extends RuntimeException {
    private final int status;
    private final transient Saying saying;
    private final transient List<FieldError> errors;

    public RefusedException(int status, Saying saying, List<FieldError> errors) {
        super(Words.english().say(saying));
        this.status = status;
        this.saying = saying;
        this.errors = List.copyOf(errors);
    }

    /** @param title for scripts, which read English */
    public RefusedException(int status, String title, List<FieldError> errors) {
        this(status, Saying.asIs(title), errors);
    }

    public static RefusedException of(int status, Saying saying) {
        return new RefusedException(status, saying, List.of());
    }

    /** @param title for scripts, which read English */
    public static RefusedException of(int status, String title) {
        return of(status, Saying.asIs(title));
    }

    public int status() {
        return status;
    }

    public Saying saying() {
        return saying;
    }

    /** As scripts read it. */
    public String title() {
        return getMessage();
    }

    public List<FieldError> errors() {
        return errors;
    }
}
