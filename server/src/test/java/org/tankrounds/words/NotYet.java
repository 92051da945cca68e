package org.tankrounds.words;

import java.util.Set;

/** Files whose sentences are not in messages yet. A file that is done leaves its list; none may join. */
final class NotYet {
    static final Set<String> TEMPLATES = Set.of();

    static final Set<String> CODE = Set.of();

    static final Set<String> SCRIPTS = Set.of();

    private NotYet() {}
}
