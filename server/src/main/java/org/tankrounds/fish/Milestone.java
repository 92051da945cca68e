package org.tankrounds.fish;

/** What a lot of eggs comes to, in this order. */
public enum Milestone {
    /** Half of them show eyes. */
    EYED,
    /** Half have hatched. */
    HATCH,
    /** Half have swum up, and take feed. */
    FIRST_FEEDING
}
