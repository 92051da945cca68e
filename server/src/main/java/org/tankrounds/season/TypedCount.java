package org.tankrounds.season;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/**
 * A number of eggs or fish as typed into a form, with how it came about and how far it may be off.
 *
 * @param spread eggs or fish more or less, 95 %
 */
public record TypedCount(int fish, CountMethod method, int spread) {
    public static final String METHOD = "method";
    public static final String SPREAD = "spread";
    public static final int MOST = 100_000;
    private static final Map<String, Saying> LABELS =
            Map.of(METHOD, Saying.of("count.method"), SPREAD, Saying.of("count.spread"));

    public static Map<String, Saying> labels() {
        return LABELS;
    }

    /** @param fish as read already */
    public static TypedCount of(FormInput form, int fish) {
        Optional<CountMethod> method = CountMethod.ofCode(form.text(METHOD));
        if (method.isEmpty()) {
            form.refuse(METHOD, "count.method.none");
        }
        int usual = method.map(known -> known.usualSpread(fish)).orElse(0);
        return new TypedCount(fish, method.orElse(CountMethod.ONE_BY_ONE), spread(form, usual, fish));
    }

    /** Nothing is off by more than all of it. */
    private static int spread(FormInput form, int usual, int fish) {
        if (form.text(SPREAD).isEmpty()) {
            return usual;
        }
        OptionalInt typed = TypedNumber.whole(form.text(SPREAD));
        if (typed.isEmpty() || typed.getAsInt() < 0 || typed.getAsInt() > MOST) {
            form.refuse(SPREAD, "count.spread.wrong");
        } else if (fish > 0 && typed.getAsInt() > fish) {
            form.refuse(SPREAD, "count.spread.more", fish);
        }
        return typed.orElse(0);
    }

    public static List<FormField> boxes(FormInput form) {
        return List.of(
                form.choice(METHOD, "count.method", Arrays.stream(CountMethod.values()).map(method ->
                        new Option(method.code(), form.say("count.method." + method.code()))).toList()),
                form.optional(form.numberBox(SPREAD, "count.spread", "")).withHint(form.say("count.spread.hint")));
    }
}
