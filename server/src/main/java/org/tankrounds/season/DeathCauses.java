package org.tankrounds.season;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The dead by what they are put down to, of one tank or of several together.
 *
 * @param dead without those of days that nobody spoke of
 */
public record DeathCauses(Map<DeathCause, Integer> dead) {
    public static final DeathCauses NONE = new DeathCauses(Map.of());

    /**
     * @param lines of a tank's account
     * @param byDay what somebody said of a day
     * @param zone on whose calendar a day is one
     */
    public static DeathCauses of(List<Account.Line> lines, Map<LocalDate, DeathCause> byDay, ZoneId zone) {
        Map<DeathCause, Integer> dead = new EnumMap<>(DeathCause.class);
        lines.stream().filter(line -> line.what() == Account.What.DIED && line.fish() > 0)
                .forEach(line -> Optional.ofNullable(byDay.get(line.at().atZone(zone).toLocalDate()))
                        .ifPresent(cause -> dead.merge(cause, line.fish(), Integer::sum)));
        return new DeathCauses(dead);
    }

    public int of(DeathCause cause) {
        return dead.getOrDefault(cause, 0);
    }

    public DeathCauses plus(DeathCauses other) {
        Map<DeathCause, Integer> sum = new EnumMap<>(DeathCause.class);
        sum.putAll(dead);
        other.dead.forEach((cause, fish) -> sum.merge(cause, fish, Integer::sum));
        return new DeathCauses(sum);
    }
}
