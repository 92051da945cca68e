package org.tankrounds.people;

import java.util.EnumSet;
import java.util.Set;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Role;

/**
 * The only place that says who may call what. Which rows they then see is said by the repositories and, behind them,
 * by the database's own wall.
 */
final class Policy {
    enum Decision {
        ALLOW,
        /** A page that asks who it is. */
        SIGN_IN,
        /** A page that does not exist for this person. */
        NOT_FOUND,
        /** A token that opens other routes than this one. */
        FORBIDDEN,
        /** A route for scripts, called without a token that opens anything. */
        UNAUTHORISED
    }

    private static final Set<Role> EVERYBODY = EnumSet.of(Role.OPEN, Role.ANYBODY);
    private static final Set<Role> TOKENS = EnumSet.of(Role.TANK_TOKEN, Role.CHAPTER_TOKEN);

    private Policy() {}

    /** @param routeRoles what the route names; a route that names nobody lets nobody in */
    static Decision decide(Caller caller, Set<Role> routeRoles) {
        if (routeRoles.isEmpty()) {
            return Decision.NOT_FOUND;
        }
        if (routeRoles.contains(caller.role()) || routeRoles.stream().anyMatch(EVERYBODY::contains)) {
            return Decision.ALLOW;
        }
        boolean forScripts = routeRoles.stream().anyMatch(TOKENS::contains);
        if (forScripts) {
            return TOKENS.contains(caller.role()) ? Decision.FORBIDDEN : Decision.UNAUTHORISED;
        }
        return caller.role() == Role.ANYBODY ? Decision.SIGN_IN : Decision.NOT_FOUND;
    }
}
