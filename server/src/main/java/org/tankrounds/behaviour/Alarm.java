package org.tankrounds.behaviour;

/** How much what was seen asks for. */
public enum Alarm {
    NONE,
    /** Look again tomorrow; two at once are worth telling. */
    WATCH,
    /** Now. */
    ACT
}
