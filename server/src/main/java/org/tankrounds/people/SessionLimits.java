package org.tankrounds.people;

import java.time.Duration;
import org.tankrounds.web.Role;

/** How long a browser stays signed in. Teachers and classes work on shared laptops. */
record SessionLimits(Duration idle, Duration atMost) {
    private static final SessionLimits TEACHER = new SessionLimits(Duration.ofMinutes(30), Duration.ofHours(12));
    private static final SessionLimits VOLUNTEER = new SessionLimits(Duration.ofHours(12), Duration.ofDays(7));

    /** From one lesson to the next but one; a card is opened anew in seconds. */
    private static final SessionLimits CLASS = new SessionLimits(Duration.ofHours(2), Duration.ofHours(12));

    static SessionLimits of(Role role) {
        return switch (role) {
            case TEACHER -> TEACHER;
            case CLASS_CARD -> CLASS;
            default -> VOLUNTEER;
        };
    }
}
