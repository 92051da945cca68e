package org.tankrounds.belief;

import static java.util.stream.Collectors.toSet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tankrounds.water.Analyte;

/**
 * Leaves out a log that was pasted again under other hours, with the time zone mistaken say. Its dead would be dead
 * twice and its water changed twice, which makes a bad tank look better than it is. Told by looks that come again
 * whole, with the same values, one after another at one distance. At a distance of whole days a timetable looks the
 * same, and nothing is left out; nor where looks follow each other at one interval, as a probe's do, or where every
 * look is like every other. All figures are the project's choice.
 */
public final class PastedLog {

    private static final Duration NEAREST_TIMETABLE = Duration.ofDays(1);
    /** So many looks in a row come again at the same distance by no accident. */
    private static final int RUN = 6;
    /** Tests of the water that make a look; one value alone is the same again too easily. */
    private static final int TESTS = 2;
    private static final int DIFFERENT_LOOKS = 2;
    /** Of the looks in a run one in so many may have been put right or added afterwards. */
    private static final int ALIKE_PER_ODD = 10;
    /** A probe has many within a day, and is not what is pasted by hand. */
    private static final int NEXT_LOOKS = 24;

    private final Looks looks;

    private PastedLog(List<Observation> observations) {
        looks = new Looks(observations);
    }

    /** The observations in the same order, without those that are there a second time. */
    public static List<Observation> once(List<Observation> observations) {
        PastedLog log = new PastedLog(observations);
        Set<Observation> again = new HashSet<>();
        log.distances().forEach(later -> again.addAll(log.again(later)));
        return again.isEmpty() ? observations : observations.stream().filter(o -> !again.contains(o)).toList();
    }

    /** At which enough looks come again to be a log. */
    private List<Duration> distances() {
        List<Instant> full = looks.byTime().entrySet().stream().filter(look -> isFull(look.getValue()))
                .map(Map.Entry::getKey).toList();
        Map<Duration, Integer> counts = new TreeMap<>();
        for (int i = 0; i < full.size(); i++) {
            for (Instant next : full.subList(i + 1, Math.min(full.size(), i + 1 + NEXT_LOOKS))) {
                Duration later = Duration.between(full.get(i), next);
                if (later.compareTo(NEAREST_TIMETABLE) < 0 && isFull(firsts(looks.at(full.get(i)), later))) {
                    counts.merge(later, 1, Integer::sum);
                }
            }
        }
        return counts.keySet().stream().filter(later -> counts.get(later) >= RUN).toList();
    }

    private List<Observation> again(Duration later) {
        List<Observation> again = new ArrayList<>();
        Run run = new Run();
        for (List<Observation> look : looks.byTime().values()) {
            if (look.stream().allMatch(o -> looks.isThere(o, later) || looks.isThere(o, later.negated()))) {
                run.take(look, later);
            } else if (!run.bearsOneMoreOdd()) {
                again.addAll(run.again());
                run = new Run();
            }
        }
        again.addAll(run.again());
        return again;
    }

    private static boolean isFull(List<Observation> look) {
        return look.stream().map(Observation::analyte).filter(analyte -> !analyte.isHusbandry()).distinct().count()
                >= TESTS;
    }

    private List<Observation> firsts(List<Observation> look, Duration later) {
        return look.stream().filter(o -> isFirstOfTwo(o, later)).toList();
    }

    /** There again once, and at no regular interval. */
    private boolean isFirstOfTwo(Observation o, Duration later) {
        return looks.isThere(o, later) && !isRead(o.analyte(), o.at().minus(later))
                && !isRead(o.analyte(), o.at().plus(later.multipliedBy(2)));
    }

    private boolean isSecondOfTwo(Observation o, Duration later) {
        return looks.isThere(o, later.negated()) && !isRead(o.analyte(), o.at().plus(later))
                && !isRead(o.analyte(), o.at().minus(later.multipliedBy(2)));
    }

    private boolean isRead(Analyte analyte, Instant at) {
        return looks.at(at).stream().anyMatch(o -> o.analyte() == analyte);
    }

    /** Looks in a row that come again, or are what came again. */
    private final class Run {

        private final List<Observation> seconds = new ArrayList<>();
        private final Set<Set<List<Object>>> different = new HashSet<>();
        private int full;
        private int alike;
        private int odd;

        void take(List<Observation> look, Duration later) {
            List<Observation> firsts = firsts(look, later);
            if (!firsts.isEmpty()) {
                different.add(firsts.stream().map(o -> List.<Object>of(o.analyte(), o.value())).collect(toSet()));
            }
            full += isFull(firsts) ? 1 : 0;
            alike++;
            look.stream().filter(o -> isSecondOfTwo(o, later)).forEach(seconds::add);
        }

        boolean bearsOneMoreOdd() {
            return ++odd * ALIKE_PER_ODD <= alike;
        }

        List<Observation> again() {
            return full >= RUN && different.size() >= DIFFERENT_LOOKS ? seconds : List.of();
        }
    }
}
