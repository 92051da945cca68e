package org.tankrounds.browser;

/** Who looks at a page. */
enum Guest {
    /** Has not signed in. */
    NOBODY,
    /** The same, where the service has just been started for the first time. */
    FIRST,
    /** Of the demo's chapter, in the middle of its season. */
    COORDINATOR,
    MENTOR,
    TEACHER,
    /** Has come in with the card of one of the demo's tanks. */
    CLASS,
    /** Coordinator of a chapter with two tanks that nobody has read yet. */
    BEGINNER,
    /** Coordinator of a chapter that has been set up, and no more. */
    NEWCOMER,
    /** Teacher there, without a tank. */
    NEW_TEACHER;

    boolean signsIn() {
        return this != NOBODY && this != FIRST;
    }
}
