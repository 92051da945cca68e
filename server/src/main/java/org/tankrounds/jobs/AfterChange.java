package org.tankrounds.jobs;

/** Told after a reading, a place or a lot has changed durably, so that the forecasts follow at once; must not throw. */
@FunctionalInterface
public interface AfterChange {
    void changed(int chapterId);
}
