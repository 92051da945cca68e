package org.tankrounds.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;

/** What stands behind the question mark of an address for scripts. */
public final class Parameters {
    private Parameters() {}

    /** @return what is wrong with their names: nobody should believe in a filter that was misspelt */
    public static List<FieldError> misnamed(Context ctx, SortedSet<String> known) {
        List<FieldError> errors = new ArrayList<>();
        ctx.queryParamMap().forEach((name, given) -> {
            if (!known.contains(name)) {
                errors.add(new FieldError("/" + name, "There is no such parameter; the parameters are "
                        + String.join(", ", known) + "."));
            } else if (given.size() > 1) {
                errors.add(new FieldError("/" + name, name + " occurs more than once."));
            }
        });
        return errors;
    }
}
