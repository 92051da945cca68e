package org.tankrounds.web;

import org.tankrounds.words.Saying;
import org.tankrounds.words.Words;

/**
 * One thing that is wrong with what was sent.
 *
 * @param field JSON pointer into a body, a slash and the name of a parameter or header, or the name of a form's field
 * @param saying a sentence that says what is allowed
 */
public record FieldError(String field, Saying saying) {

    /** For scripts, which read English. */
    public FieldError(String field, String message) {
        this(field, Saying.asIs(message));
    }

    /** As scripts read it. */
    public String message() {
        return Words.english().say(saying);
    }
}
