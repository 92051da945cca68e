package org.tankrounds.demo;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** When an invented class looks at its tank, and when it changes water. */
final class SchoolDays {
    private static final double WEEKEND_SHARE = 0.35;
    private static final LocalTime WEEKEND_AT = LocalTime.of(9, 30);
    private static final LocalTime EGGS_COME_AT = LocalTime.of(9, 0);
    /** Today and the day before are always read, weekend or not: the demo must not begin with old news. */
    private static final int READ_FOR_SURE_DAYS = 1;

    private final DemoTank tank;
    private final ZoneId zone;
    private final Instant now;
    private final LocalDate today;

    SchoolDays(DemoTank tank, ZoneId zone, Instant now) {
        this.tank = tank;
        this.zone = zone;
        this.now = now;
        this.today = now.atZone(zone).toLocalDate();
    }

    /** Eggs come on school days. */
    Instant eggsReceivedAt() {
        return schoolDayOnOrBefore(today.minusDays(tank.eggs().daysAgo())).atTime(EGGS_COME_AT).atZone(zone)
                .toInstant();
    }

    /** Filters run a fortnight before the eggs come. */
    LocalDate filterStartedOn() {
        return dayOf(eggsReceivedAt()).minusDays(14);
    }

    /** Oldest first. */
    List<Instant> readings(Random luck) {
        List<Instant> times = new ArrayList<>();
        for (LocalDate day = dayOf(eggsReceivedAt()); !day.isAfter(today); day = day.plusDays(1)) {
            int minutesLate = luck.nextInt(12);
            double drawn = luck.nextDouble();
            Instant at = day.atTime(isWeekend(day) ? WEEKEND_AT : tank.routine().at()).atZone(zone).toInstant()
                    .plus(Duration.ofMinutes(minutesLate));
            boolean reads = isForSure(day) || drawn < (isWeekend(day) ? WEEKEND_SHARE : tank.routine().readShare());
            if (reads && !at.isAfter(now) && !at.isBefore(eggsReceivedAt()) && !isSilent(day)) {
                times.add(at);
            }
        }
        return times;
    }

    /** Share of the water by the reading at which it is changed, about an hour after the look. */
    Map<Instant, Double> waterChanges(List<Instant> readings) {
        Map<Instant, Double> changes = new HashMap<>();
        LocalDate last = dayOf(eggsReceivedAt());
        for (Instant at : readings) {
            LocalDate day = dayOf(at);
            boolean stillDone = tank.story().changesStopped().isEmpty()
                    || day.isBefore(today.minusDays(tank.story().changesStopped().getAsInt()));
            if (stillDone && !isWeekend(day) && day.isBefore(today)
                    && !day.isBefore(last.plusDays(tank.routine().changeEveryDays()))) {
                changes.put(at, tank.routine().changeShare());
                last = day;
            }
        }
        return changes;
    }

    /** Every two hours over the last three weeks. */
    List<Instant> probeTimes() {
        List<Instant> times = new ArrayList<>();
        long everyS = Duration.ofHours(2).toSeconds();
        for (long at = now.getEpochSecond() / everyS * everyS; times.size() < 21 * 12; at -= everyS) {
            times.add(0, Instant.ofEpochSecond(at));
        }
        return times;
    }

    String signedBy(Instant at) {
        return isWeekend(dayOf(at)) ? "weekend check" : tank.routine().by();
    }

    LocalDate dayOf(Instant at) {
        return at.atZone(zone).toLocalDate();
    }

    boolean isRecent(Instant at) {
        return isForSure(dayOf(at));
    }

    private boolean isForSure(LocalDate day) {
        if (tank.story().silent().isPresent()) {
            return day.equals(lastHeardOf());
        }
        return !day.isBefore(today.minusDays(READ_FOR_SURE_DAYS));
    }

    private boolean isSilent(LocalDate day) {
        return tank.story().silent().isPresent() && day.isAfter(lastHeardOf());
    }

    /** A day earlier where today's hour has not come: at least that many whole days must have gone by. */
    private LocalDate lastHeardOf() {
        return today.minusDays(tank.story().silent().getAsInt() + 1L);
    }

    static LocalDate schoolDayOnOrBefore(LocalDate day) {
        LocalDate found = day;
        while (isWeekend(found)) {
            found = found.minusDays(1);
        }
        return found;
    }

    private static boolean isWeekend(LocalDate day) {
        return day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
    }
}
