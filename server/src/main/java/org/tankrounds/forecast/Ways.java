package org.tankrounds.forecast;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Twenty equally likely ways in which the next 72 hours could go: quantiles of when the water first goes beyond a
 * limit. How many of them do is the chance, rounded to twentieths; so few can be counted at a glance and still agree
 * with the odds beside them.
 *
 * <p>Source of the picture made of it: Fernandes et al. 2018, CHI, quantile dot plots for decisions.
 *
 * @param beyond those that go beyond a limit for two hours or more, the soonest first; at most {@link #COUNT}
 */
public record Ways(List<Way> beyond) {

    public static final int COUNT = 20;

    private static final Comparator<Way> SOONEST_FIRST = Comparator
            .comparingInt((Way way) -> way.afterHours().orElse(Forecast.HORIZON_HOURS))
            .thenComparing(way -> way.limit().map(Driver::ordinal).orElse(Integer.MAX_VALUE));

    public Ways {
        if (beyond.size() > COUNT) {
            throw new IllegalArgumentException("at most " + COUNT + " ways, were " + beyond.size());
        }
        beyond = List.copyOf(beyond);
    }

    /** @param chance as published: it may hold trouble that none of the paths goes through */
    static Ways of(Outcome outcome, double chance) {
        return of(outcome.waysBeyond(), chance, outcome.unseenChance());
    }

    /**
     * @param paths every equally likely path that goes beyond a limit, in any order
     * @param unseenChance of trouble that only deaths tell of, independent of what is on the paths
     */
    static Ways of(List<Way> paths, double chance, double unseenChance) {
        List<Way> sorted = paths.stream().sorted(SOONEST_FIRST).toList();
        int count = (int) Math.rint(COUNT * chance);
        double known = Math.max(0, (chance - unseenChance) / (1 - unseenChance));
        int seen = sorted.isEmpty() ? 0 : (int) Math.min(count, Math.rint(COUNT * known));
        List<Way> beyond = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            beyond.add(i < seen ? sorted.get((int) ((i + 0.5) / seen * sorted.size())) : Way.UNSEEN);
        }
        return new Ways(beyond);
    }

    /** How many stay within every limit. */
    public int within() {
        return COUNT - beyond.size();
    }
}
