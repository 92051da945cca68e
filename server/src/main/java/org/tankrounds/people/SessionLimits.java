package org.tankrounds.people;

import java.time.Duration;
import org.tankrounds.web.Role;

/** How long a browser stays signed in. Teachers work on shared laptops. */
record SessionLimits(Duration idle, Duration atMost) {
    private static final SessionLimits TEACHER = new SessionLimits(Duration.ofMinutes(30), Duration.ofHours(12));
    private static final SessionLimits VOLUNTEER = new SessionLimits(Duration.ofHours(12), Duration.ofDays(7));

    static SessionLimits of(Role role) {
        return role == Role.TEACHER ? TEACHER : VOLUNTEER;
    }
}
