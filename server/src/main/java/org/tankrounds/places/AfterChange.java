package org.tankrounds.places;

/** Told after a change to a place or a lot is durable, so that the forecasts follow at once; must not throw. */
@FunctionalInterface
public interface AfterChange {
    void changed(int chapterId);
}
