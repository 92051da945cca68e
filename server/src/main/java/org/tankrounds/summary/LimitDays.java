package org.tankrounds.summary;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Limits;
import org.tankrounds.places.Tank;
import org.tankrounds.season.LotHistory;
import org.tankrounds.summary.WithinLimit.Worst;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.Analyte;

/**
 * Holds one tank's season against its limits, day by day on the school's calendar.
 *
 * <p>A value that was not detected counts as its bound: half the card's first step, or the lowest step that was
 * given. Where the bound is within the limit the value is; where it is not, or is unknown, the day stays undecided.
 * Un-ionised ammonia needs pH and temperature of the same day (the nearest in time); without them it is undecided.
 */
final class LimitDays {
    enum Verdict {
        WITHIN,
        UNDECIDED,
        BEYOND
    }

    /**
     * What all values of a day come to.
     *
     * @param verdict the worst of them: beyond, undecided, within
     * @param worst the detected value that is highest against its limit
     */
    record Day(Verdict verdict, int values, int notDetected, Optional<Worst> worst) {
        Day and(Day other) {
            return new Day(verdict.compareTo(other.verdict) > 0 ? verdict : other.verdict, values + other.values,
                    notDetected + other.notDetected, WithinLimit.worse(worst, other.worst));
        }
    }

    /** @param worst present where a number was detected and could be held against the limit */
    private record Judged(LocalDate day, Verdict verdict, boolean notDetected, Optional<Worst> worst) {}

    private final Tank tank;
    private final ZoneId zone;
    private final LotHistory lots;
    private final Limits limits;
    private final List<Observation> observations;
    private LocalDate lastDay;
    private Instant lastBegins;
    private Instant lastEnds;

    /** @param observations of the season, oldest first */
    LimitDays(Tank tank, LotHistory lots, List<Observation> observations, Limits limits) {
        this.tank = tank;
        this.zone = tank.zone();
        this.lots = lots;
        this.limits = limits;
        this.observations = observations;
    }

    WithinLimit of(Series series) {
        return within(analyte(series), days(series));
    }

    /** Each reading-day. */
    SortedMap<LocalDate, Day> days(Series series) {
        return days(analyte(series), switch (series) {
            case TEMPERATURE -> this::temperature;
            case UN_IONISED_AMMONIA -> ammonia();
            case NITRITE -> nitrite();
        });
    }

    private static Analyte analyte(Series series) {
        return switch (series) {
            case TEMPERATURE -> Analyte.TEMPERATURE;
            case UN_IONISED_AMMONIA -> Analyte.TOTAL_AMMONIA;
            case NITRITE -> Analyte.NITRITE;
        };
    }

    private Judged temperature(Observation seen) {
        return judged(seen, seen.value(), limits.ofTemperature(lots.stageAt(seen.at()), seen.value()));
    }

    private Function<Observation, Judged> ammonia() {
        Map<LocalDate, List<Observation>> ph = byDay(Analyte.PH);
        Map<LocalDate, List<Observation>> temperature = byDay(Analyte.TEMPERATURE);
        return seen -> {
            Optional<Observation> withPh = nearest(ph, seen);
            Optional<Observation> withTemperature = nearest(temperature, seen);
            double total = bound(seen);
            if (withPh.isEmpty() || withTemperature.isEmpty() || Double.isNaN(total)) {
                return undecided(seen);
            }
            double mgPerL = Ammonia.unIonisedMgPerL(total, withPh.get().value(), withTemperature.get().value());
            return judged(seen, mgPerL, limits.ofUnIonisedAmmonia(mgPerL));
        };
    }

    private Function<Observation, Judged> nitrite() {
        TreeMap<Instant, Double> chloride = new TreeMap<>();
        usable(Analyte.CHLORIDE).forEach(seen -> chloride.put(seen.at(), seen.value()));
        double source = tank.chlorideMgPerL().orElse(Limits.CHLORIDE_WHERE_UNKNOWN_MG_PER_L);
        return seen -> {
            double mgPerL = bound(seen);
            if (Double.isNaN(mgPerL)) {
                return undecided(seen);
            }
            var measured = chloride.floorEntry(seen.at());
            return judged(seen, mgPerL, limits.ofNitrite(mgPerL, measured == null ? source : measured.getValue()));
        };
    }

    private WithinLimit within(Analyte analyte, SortedMap<LocalDate, Day> days) {
        int values = 0;
        int notDetected = 0;
        Optional<Worst> worst = Optional.empty();
        for (Day day : days.values()) {
            values += day.values();
            notDetected += day.notDetected();
            worst = WithinLimit.worse(worst, day.worst());
        }
        return new WithinLimit(days.size(), count(days.values(), Verdict.WITHIN),
                count(days.values(), Verdict.UNDECIDED), values, notDetected, doubtful(analyte), worst, longest(days));
    }

    private SortedMap<LocalDate, Day> days(Analyte analyte, Function<Observation, Judged> judge) {
        SortedMap<LocalDate, Day> days = new TreeMap<>();
        for (Observation seen : usable(analyte)) {
            Judged one = judge.apply(seen);
            days.merge(one.day(), new Day(one.verdict(), 1, one.notDetected() ? 1 : 0, one.worst()), Day::and);
        }
        return days;
    }

    /** The longest run beyond the limit; of equals the worse. */
    private static Optional<Spell> longest(SortedMap<LocalDate, Day> days) {
        Optional<Spell> longest = Optional.empty();
        Optional<Spell> running = Optional.empty();
        for (Map.Entry<LocalDate, Day> day : days.entrySet()) {
            // Only a number that was detected can be beyond.
            Optional<Worst> beyond = day.getValue().worst().filter(any -> day.getValue().verdict() == Verdict.BEYOND);
            running = beyond.isEmpty() ? Optional.empty()
                    : Optional.of(running.filter(spell -> spell.goesOnWith(day.getKey()))
                            .map(spell -> spell.and(day.getKey(), beyond.get()))
                            .orElseGet(() -> Spell.of(day.getKey(), beyond.get())));
            longest = WithinLimit.longer(longest, running);
        }
        return longest;
    }

    private Judged judged(Observation seen, double value, double ofLimit) {
        LocalDate day = day(seen);
        if (seen.below()) {
            return new Judged(day, ofLimit > 1 ? Verdict.UNDECIDED : Verdict.WITHIN, true, Optional.empty());
        }
        return new Judged(day, ofLimit > 1 ? Verdict.BEYOND : Verdict.WITHIN, false,
                Optional.of(new Worst(value, ofLimit, seen.at(), day, tank.code())));
    }

    private Judged undecided(Observation seen) {
        return new Judged(day(seen), Verdict.UNDECIDED, seen.below(), Optional.empty());
    }

    /** The number itself, or the least that a value which was not detected is known to be below; NaN where unknown. */
    private static double bound(Observation seen) {
        if (!seen.below() || seen.value() > 0) {
            return seen.value();
        }
        return seen.halfStep() > 0 ? seen.halfStep() : Double.NaN;
    }

    private Optional<Observation> nearest(Map<LocalDate, List<Observation>> byDay, Observation seen) {
        return byDay.getOrDefault(day(seen), List.of()).stream().min(Comparator
                .comparing((Observation other) -> Duration.between(seen.at(), other.at()).abs())
                .thenComparing(Observation::at));
    }

    private Map<LocalDate, List<Observation>> byDay(Analyte analyte) {
        Map<LocalDate, List<Observation>> days = new TreeMap<>();
        usable(analyte).forEach(seen -> days.computeIfAbsent(day(seen), day -> new ArrayList<>()).add(seen));
        return days;
    }

    private List<Observation> usable(Analyte analyte) {
        return observations.stream().filter(seen -> seen.analyte() == analyte && !seen.doubtful()).toList();
    }

    private int doubtful(Analyte analyte) {
        return (int) observations.stream().filter(seen -> seen.analyte() == analyte && seen.doubtful()).count();
    }

    /** A probe reads many times a day, one after the other. */
    private LocalDate day(Observation seen) {
        if (lastDay == null || seen.at().isBefore(lastBegins) || !seen.at().isBefore(lastEnds)) {
            lastDay = seen.at().atZone(zone).toLocalDate();
            lastBegins = lastDay.atStartOfDay(zone).toInstant();
            lastEnds = lastDay.plusDays(1).atStartOfDay(zone).toInstant();
        }
        return lastDay;
    }

    private static int count(Collection<Day> days, Verdict wanted) {
        return (int) days.stream().filter(day -> day.verdict() == wanted).count();
    }
}
