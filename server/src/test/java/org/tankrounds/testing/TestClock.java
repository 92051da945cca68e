package org.tankrounds.testing;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

/** Stands still until it is moved. */
public final class TestClock extends Clock {
    /**
     * A Tuesday in the middle of a season, 9:00 in New York; behind today, so that every month has its
     * partition.
     */
    public static final Instant START = Instant.parse("2026-01-13T14:00:00Z");

    private final AtomicReference<Instant> now;

    public TestClock(Instant now) {
        this.now = new AtomicReference<>(now);
    }

    public static TestClock atStart() {
        return new TestClock(START);
    }

    public void advance(Duration by) {
        now.updateAndGet(instant -> instant.plus(by));
    }

    @Override
    public Instant instant() {
        return now.get();
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.fixed(instant(), zone);
    }
}
