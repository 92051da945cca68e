package org.tankrounds.migrations;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/** Looks again and again until something is so or the time is up. */
final class Waiting {

    private static final long PAUSE_NANOS = Duration.ofMillis(10).toNanos();

    private Waiting() {
    }

    static boolean until(Duration patience, BooleanSupplier condition) {
        long deadline = System.nanoTime() + patience.toNanos();
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > deadline || Thread.currentThread().isInterrupted()) {
                return false;
            }
            LockSupport.parkNanos(PAUSE_NANOS);
        }
        return true;
    }
}
