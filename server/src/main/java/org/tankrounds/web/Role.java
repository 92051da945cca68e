package org.tankrounds.web;

import io.javalin.security.RouteRole;

/** Who may call a route; every route names at least one. */
public enum Role implements RouteRole {
    /** Nobody is even asked who they are: health and assets answer when the database does not. */
    OPEN,
    ANYBODY,
    COORDINATOR,
    MENTOR,
    TEACHER,
    /** A class that came with the card at its tank: nobody in particular. */
    CLASS_CARD,
    TANK_TOKEN,
    CHAPTER_TOKEN;

    /** Everybody who signs in with a password. */
    public static final Role[] SIGNED_IN = {COORDINATOR, MENTOR, TEACHER};

    /** Those who put readings in, each for their own tanks. */
    public static final Role[] AT_THE_TANK = {COORDINATOR, MENTOR, TEACHER, CLASS_CARD};

    /** Those who answer for a tank: they hand out its card. */
    public static final Role[] IN_CHARGE = {COORDINATOR, TEACHER};

    /** Those who see the whole chapter. */
    public static final Role[] ROUNDS = {COORDINATOR, MENTOR};

    /** Scripts and probes. */
    public static final Role[] TOKENS = {TANK_TOKEN, CHAPTER_TOKEN};
}
