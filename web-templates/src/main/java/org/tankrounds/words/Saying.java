package org.tankrounds.words;

import java.util.List;

/**
 * A sentence before it is known in which language it is wanted.
 *
 * @param key of a message; empty for text that is the same in every language
 * @param with what stands for {0}, {1} and so on in the message; sayings among them are said in its language too
 */
public record Saying(String key, List<Object> with) {

    public static Saying of(String key, Object... with) {
        return new Saying(key, List.of(with));
    }

    /** What somebody wrote, a number with its unit, or a sentence for scripts, which read English. */
    public static Saying asIs(String text) {
        return new Saying("", List.of(text));
    }
}
