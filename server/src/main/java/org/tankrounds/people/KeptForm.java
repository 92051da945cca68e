package org.tankrounds.people;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.pages.HiddenField;

/**
 * What somebody had typed when their session ended or changed: it goes along through signing in, in hidden fields, and
 * is sent when they say so. Passwords are never kept.
 */
record KeptForm(String path, List<HiddenField> fields) {
    private static final String PATH = "kept_path";
    private static final String FIELD = "kept_field.";
    /** Sent later, they would put somebody else in the place of whoever is signed in by then. */
    private static final Set<String> COMING_AND_GOING = Set.of("/sign-in", "/sign-out", "/card");
    private static final int MOST_CHARACTERS = 50_000;

    /** @return empty where there is nothing to keep, or nothing that may be kept */
    static Optional<KeptForm> sent(Context ctx) {
        if (COMING_AND_GOING.contains(ctx.path())) {
            return Optional.empty();
        }
        String path = ctx.queryString() == null ? ctx.path() : ctx.path() + "?" + ctx.queryString();
        return of(path, ctx.formParamMap());
    }

    /** From the sign-in form that carried it. */
    static Optional<KeptForm> carried(Context ctx) {
        String path = ctx.formParam(PATH);
        if (path == null || LocalPath.orStart(path).equals(LocalPath.START)) {
            return Optional.empty();
        }
        List<HiddenField> fields = new ArrayList<>();
        ctx.formParamMap().forEach((name, values) -> {
            if (name.startsWith(FIELD)) {
                values.forEach(value -> fields.add(new HiddenField(name.substring(FIELD.length()), value)));
            }
        });
        return Optional.of(new KeptForm(path, fields));
    }

    /** As the sign-in form carries it. */
    List<HiddenField> carrying() {
        List<HiddenField> carrying = new ArrayList<>();
        carrying.add(new HiddenField(PATH, path));
        fields.forEach(field -> carrying.add(new HiddenField(FIELD + field.name(), field.value())));
        return carrying;
    }

    private static Optional<KeptForm> of(String path, Map<String, List<String>> form) {
        List<HiddenField> fields = new ArrayList<>();
        form.forEach((name, values) -> values.forEach(value -> fields.add(new HiddenField(name, value))));
        fields.removeIf(field -> field.name().equals(FormToken.FIELD));
        boolean secret = fields.stream().anyMatch(field -> field.name().contains("password"));
        int size = fields.stream().mapToInt(field -> field.name().length() + field.value().length()).sum();
        return secret || fields.isEmpty() || size > MOST_CHARACTERS
                ? Optional.empty() : Optional.of(new KeptForm(path, fields));
    }
}
