package org.tankrounds.readings;

import java.util.ArrayList;
import java.util.List;
import org.tankrounds.web.FieldError;
import org.tankrounds.web.RefusedException;
import org.tankrounds.words.Saying;

/** Everything that is wrong with one submission, so that all of it is said at once. */
final class Faults {
    static final Saying TITLE = Saying.of("readings.cannotBeTaken");
    private static final int MOST = 100;

    private final List<FieldError> errors = new ArrayList<>();

    /** @param sentence for scripts, which read English */
    void add(String at, String sentence) {
        add(at, Saying.asIs(sentence));
    }

    void add(String at, Saying sentence) {
        if (errors.size() < MOST) {
            errors.add(new FieldError(at, sentence));
        }
    }

    boolean none() {
        return errors.isEmpty();
    }

    List<FieldError> errors() {
        return List.copyOf(errors);
    }

    void refuse() {
        if (!errors.isEmpty()) {
            throw new RefusedException(422, TITLE, errors);
        }
    }
}
