package org.tankrounds.people;

import java.time.Instant;
import java.util.Optional;
import org.tankrounds.web.Role;

/**
 * An adult who signs in.
 *
 * @param email lower-case
 * @param role COORDINATOR, MENTOR or TEACHER
 * @param passwordChosen false until the first invitation was used
 * @param disabledAt from then on they cannot sign in
 */
public record Person(
        int personId, String code, String email, String name, Role role, boolean passwordChosen,
        Optional<Instant> disabledAt) {

    public boolean enabled() {
        return disabledAt.isEmpty();
    }
}
