package org.tankrounds.readings;

/** Told after a reading is durable, so that the forecast follows at once; must not throw. */
@FunctionalInterface
public interface AfterStore {
    void stored(int chapterId);
}
