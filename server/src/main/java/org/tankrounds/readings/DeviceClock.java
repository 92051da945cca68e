package org.tankrounds.readings;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What a device's clock said when a reading was kept on it and when it was sent. Only the time between the two is
 * believed; the moment it ends with is the service's own. Where the clock was set in between, that time is not to be
 * believed either.
 *
 * @param ahead by how much the device's clock was ahead of the service's when they last met before the reading was
 *     kept; empty where the device did not say
 */
public record DeviceClock(Instant keptAt, Instant sentAt, Optional<Duration> ahead) {
    /** Flag: the device's clock and the service's differ. */
    static final String SKEWED = "clock_skewed";
    private static final Duration NOTED = Duration.ofMinutes(2);
    private static final Duration FAR_OFF = Duration.ofHours(24);
    private static final Duration LONGEST_KEPT = Duration.ofDays(60);

    /** @param flags what is to be said about the time */
    record Taken(Instant at, List<String> flags) {}

    /** When a form that a device kept was filled in, by the service's clock; now, where no device kept it. */
    public static Instant takenAt(UnaryOperator<String> field, Instant now) {
        return of(field).map(device -> device.taken(now).at()).orElse(now);
    }

    static Optional<DeviceClock> of(LogForm form) {
        return of(form::text);
    }

    /** @return empty unless both times can be read: a page without scripts sends neither */
    private static Optional<DeviceClock> of(UnaryOperator<String> field) {
        Optional<Instant> keptAt = Times.parse(field.apply(LogForm.KEPT_AT));
        Optional<Instant> sentAt = Times.parse(field.apply(LogForm.SENT_AT));
        return keptAt.isPresent() && sentAt.isPresent() ? Optional.of(new DeviceClock(
                keptAt.get(), sentAt.get(), ahead(field.apply(LogForm.CLOCK_AHEAD)))) : Optional.empty();
    }

    private static Optional<Duration> ahead(String written) {
        return written.matches("-?\\d{1,15}")
                ? Optional.of(Duration.ofMillis(Long.parseLong(written))) : Optional.empty();
    }

    /** When the reading was taken, by the service's clock. */
    Taken taken(Instant now) {
        Duration kept = Duration.between(keptAt, sentAt);
        Duration aheadNow = Duration.between(now, sentAt);
        Duration skew = aheadNow.abs();
        Duration setBy = ahead.map(before -> aheadNow.minus(before).abs()).orElse(Duration.ZERO);
        List<String> flags = new ArrayList<>();
        if (skew.compareTo(NOTED) > 0 || setBy.compareTo(NOTED) > 0) {
            flags.add(SKEWED);
        }
        boolean setBack = kept.compareTo(NOTED.negated()) < 0;
        if (setBack || skew.compareTo(FAR_OFF) > 0 || setBy.compareTo(FAR_OFF) > 0
                || kept.compareTo(LONGEST_KEPT) > 0) {
            flags.add(Judge.TIME_DOUBTFUL);
        }
        // A clock that was set meanwhile tells nothing; then it is when the reading arrived.
        boolean tells = !kept.isNegative() && kept.compareTo(Duration.between(Judge.EARLIEST, now)) <= 0;
        return new Taken(tells ? now.minus(kept) : now, List.copyOf(flags));
    }
}
