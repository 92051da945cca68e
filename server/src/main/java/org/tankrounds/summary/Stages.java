package org.tankrounds.summary;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.tankrounds.fish.Stage;
import org.tankrounds.season.Account;
import org.tankrounds.season.CountEntry;

/**
 * One tank's count, cut at hatch and at first feeding.
 *
 * <p>A stage tells something when it is over, the last one as soon as it has begun. Where some came to others of
 * another stage, nobody can say which of them died, and no stage tells anything.
 *
 * @param lines of each stage, which add up to those that survived it
 */
record Stages(Map<Stage, StageSurvival> survival, Map<Stage, List<Line>> lines) {
    static final Stages NONE = new Stages(Map.of(), Map.of());

    enum What {
        /** Alive by count when the stage began. */
        THERE,
        RECEIVED,
        MOVED_IN,
        DIED,
        /** It goes on where it came to, so that several tanks together have it once. */
        MOVED_OUT,
        /** A count found fewer. */
        MISSING,
        /** A count found more than it can say where they came from, or hatched were counted. */
        FOUND,
        COUNTED_AS_HATCHED
    }

    /** @param fish added to those that survived, or taken from them */
    record Line(Instant at, What what, int fish) {}

    /**
     * @param lines of the account
     * @param stageAt how far the fish had come
     * @param until the last that is known of the tank: what comes after it is not over
     */
    static Stages of(List<Account.Line> lines, Function<Instant, Stage> stageAt, Instant until) {
        Walk walk = new Walk(lines.stream()
                .filter(line -> line.what() == Account.What.HATCHED && !line.at().isAfter(until)).toList());
        for (Account.Line line : lines) {
            if (line.at().isAfter(until)) {
                break;
            }
            if (!walk.goTo(stageAt.apply(line.at()), line.at())) {
                return NONE;
            }
            walk.take(line);
        }
        if (walk.stage == null || !walk.goTo(stageAt.apply(until), until)) {
            return NONE;
        }
        if (walk.stage == Stage.FEEDING) {
            walk.end(until);
        }
        return new Stages(walk.survival, walk.lines);
    }

    StageSurvival of(Stage stage) {
        return survival.getOrDefault(stage, StageSurvival.NONE);
    }

    /** Sums only: the rows behind them are the tanks'. */
    Stages plus(Stages other) {
        Map<Stage, StageSurvival> sum = new EnumMap<>(Stage.class);
        for (Stage stage : Stage.values()) {
            sum.put(stage, of(stage).plus(other.of(stage)));
        }
        return new Stages(sum, Map.of());
    }

    private static final class Walk {
        private final Map<Stage, StageSurvival> survival = new EnumMap<>(Stage.class);
        private final Map<Stage, List<Line>> lines = new EnumMap<>(Stage.class);
        private Stage stage;
        private int alive;
        private int spread;
        private int began;
        private int died;
        private int left;
        private double spreadOfBeganSquared;
        private boolean countedAgain;
        private final int hatched;
        private final int hatchSpread;

        /** @param counts of what hatched, whenever they were made: a class counts later than temperatures tell */
        Walk(List<Account.Line> counts) {
            hatched = counts.stream().mapToInt(Account.Line::fish).sum();
            hatchSpread = counts.stream().mapToInt(line -> line.entry().map(CountEntry::spread).orElse(0)).sum();
        }

        /** @return false where it would go back */
        boolean goTo(Stage next, Instant at) {
            if (stage == null) {
                stage = next;
            }
            while (stage.compareTo(next) < 0) {
                end(at);
                begin(Stage.values()[stage.ordinal() + 1], at);
            }
            return stage == next;
        }

        void take(Account.Line line) {
            switch (line.what()) {
                case RECEIVED -> came(line, What.RECEIVED);
                case MOVED_IN -> came(line, What.MOVED_IN);
                case DIED -> {
                    died += line.fish();
                    add(line.at(), What.DIED, -line.fish());
                }
                case MOVED_OUT -> movedOut(line);
                case THINNED, RELEASED -> left += line.fish();
                case COUNTED -> countedAgain = true;
                case HATCHED -> { }
            }
            alive = line.left();
            spread = line.spread();
        }

        private void came(Account.Line line, What what) {
            began += line.fish();
            // The account adds squares up.
            spreadOfBeganSquared += (double) line.spread() * line.spread() - (double) spread * spread;
            add(line.at(), what, line.fish());
        }

        /** No more than there can have been: what is beyond that nobody can explain. */
        private void movedOut(Account.Line line) {
            int fish = Math.min(line.fish(), Math.max(0, began - died));
            began -= fish;
            spreadOfBeganSquared += (double) line.spread() * line.spread() - (double) spread * spread;
            add(line.at(), What.MOVED_OUT, -fish);
        }

        private void begin(Stage next, Instant at) {
            boolean isOfHatch = stage == Stage.EGG && hatched > 0;
            stage = next;
            began = isOfHatch ? hatched : alive;
            died = 0;
            left = 0;
            countedAgain = false;
            int off = isOfHatch ? hatchSpread : spread;
            spreadOfBeganSquared = (double) off * off;
            if (began > 0) {
                add(at, isOfHatch ? What.COUNTED_AS_HATCHED : What.THERE, began);
            }
        }

        void end(Instant at) {
            boolean isOfHatch = stage == Stage.EGG && hatched > 0;
            int most = Math.max(0, began - died);
            // What left alive before it hatched outlived as much of the stage as it was here for.
            int survived = isOfHatch ? Math.min(hatched + left, began) : Math.min(most, Math.max(0, alive + left));
            int unlike = survived - (began - died);
            if (unlike != 0) {
                add(at, unlike < 0 ? What.MISSING : What.FOUND, unlike);
            }
            survival.put(stage, new StageSurvival(began, survived, isOfHatch ? 1 : 0, began == 0 ? 0 : 1,
                    began == 0 ? 0 : spreadSquared(isOfHatch, (double) survived / began)));
        }

        /**
         * Where nothing was counted again those that survived are those that began less the dead: too many at the
         * beginning are too many at the end, and only the share that died is off.
         * Two counts are each off by chance of their own.
         */
        private double spreadSquared(boolean isOfHatch, double share) {
            if (!isOfHatch && !countedAgain) {
                return (1 - share) * (1 - share) * spreadOfBeganSquared;
            }
            int atEnd = isOfHatch ? hatchSpread : spread;
            return (double) atEnd * atEnd + share * share * spreadOfBeganSquared;
        }

        private void add(Instant at, What what, int fish) {
            lines.computeIfAbsent(stage, any -> new ArrayList<>()).add(new Line(at, what, fish));
        }
    }
}
