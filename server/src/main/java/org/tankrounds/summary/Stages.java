package org.tankrounds.summary;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.tankrounds.fish.Stage;
import org.tankrounds.season.Account;
import org.tankrounds.season.CountEntry;

/**
 * One tank's count, cut at hatch and at first feeding. Each stage begins with those that outlived the one before.
 *
 * <p>Where hatch was counted, eggs that did not hatch may still be there by count. Until first feeding the next that
 * die are these: they are lost as eggs already, and no fry is charged with them. Those that nobody found dead by then
 * are no feeding fish.
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
     * What a tank went through.
     *
     * @param lines of the account, none after the last that is known of the tank
     * @param stages how far the fish had come, at each line and at the last
     * @param until the last that is known of the tank: what comes after it is not over
     */
    record Course(List<Account.Line> lines, Map<Instant, Stage> stages, Instant until) {
        static Course of(List<Account.Line> lines, Function<Instant, Stage> stageAt, Instant until) {
            List<Account.Line> known = lines.stream().filter(line -> !line.at().isAfter(until)).toList();
            Map<Instant, Stage> stages = new HashMap<>(Map.of(until, stageAt.apply(until)));
            known.forEach(line -> stages.computeIfAbsent(line.at(), stageAt));
            return new Course(known, stages, until);
        }
    }

    static Stages of(List<Account.Line> lines, Function<Instant, Stage> stageAt, Instant until) {
        return of(Course.of(lines, stageAt, until), Map.of());
    }

    /** @param letGo of what was moved here, by the number of its entry: as many as can have left where they were */
    static Stages of(Course course, Map<Integer, Integer> letGo) {
        return walk(course, letGo).map(walk -> new Stages(walk.survival, walk.lines)).orElse(NONE);
    }

    /**
     * How many of each move can have left where they were, by the number of its entry. By eye more may be written down
     * than came there and did not die; they are nowhere else for that.
     *
     * @param senders tanks that something was moved from
     */
    static Map<Integer, Integer> letGo(Collection<Course> senders) {
        Map<Integer, Integer> known = Map.of();
        // What a tank could let go hangs on what came to it from others: each round settles one move more at least.
        while (true) {
            Map<Integer, Integer> next = new HashMap<>();
            for (Course course : senders) {
                walk(course, known).ifPresent(walk -> next.putAll(walk.letGo));
            }
            if (next.equals(known)) {
                return next;
            }
            known = next;
        }
    }

    /** Empty where no stage can be told. */
    private static Optional<Walk> walk(Course course, Map<Integer, Integer> letGo) {
        Walk walk = new Walk(course.lines().stream().filter(line -> line.what() == Account.What.HATCHED).toList(),
                letGo);
        for (Account.Line line : course.lines()) {
            if (!walk.goTo(course.stages().get(line.at()), line.at())) {
                return Optional.empty();
            }
            walk.take(line);
        }
        if (walk.stage == null || !walk.goTo(course.stages().get(course.until()), course.until())) {
            return Optional.empty();
        }
        if (walk.stage == Stage.FEEDING) {
            walk.end(course.until());
        }
        return Optional.of(walk);
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
        private final Map<Integer, Integer> letGo = new HashMap<>();
        private final Map<Integer, Integer> letGoByOthers;
        private Stage stage;
        private int alive;
        private int spread;
        private int began;
        private int died;
        private int left;
        /** Alive by count, but eggs that were not among those counted as hatched. */
        private int unhatched;
        private int survived;
        private double spreadOfBeganSquared;
        private boolean countedAgain;
        private final int hatched;
        private final int hatchSpread;

        /** @param counts of what hatched, whenever they were made: a class counts later than temperatures tell */
        Walk(List<Account.Line> counts, Map<Integer, Integer> letGoByOthers) {
            this.letGoByOthers = letGoByOthers;
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
                case RECEIVED -> came(line, What.RECEIVED, line.fish());
                case MOVED_IN -> came(line, What.MOVED_IN, Math.min(line.fish(), line.entry()
                        .map(entry -> letGoByOthers.getOrDefault(entry.entryId(), entry.fish())).orElse(line.fish())));
                case DIED -> died(line);
                case MOVED_OUT -> movedOut(line);
                case THINNED, RELEASED -> left += line.fish();
                case COUNTED -> {
                    countedAgain = true;
                    int others = stage == Stage.FEEDING ? 0 : line.fish() - (began - died - left);
                    unhatched = Math.max(0, Math.min(unhatched, others));
                }
                case HATCHED -> { }
            }
            alive = line.left();
            spread = line.spread();
        }

        private void came(Account.Line line, What what, int fish) {
            began += fish;
            // The account adds squares up.
            spreadOfBeganSquared += (double) line.spread() * line.spread() - (double) spread * spread;
            add(line.at(), what, fish);
        }

        private void died(Account.Line line) {
            int eggs = stage == Stage.SAC_FRY ? Math.min(unhatched, line.fish()) : 0;
            unhatched -= eggs;
            died += line.fish() - eggs;
            add(line.at(), What.DIED, eggs - line.fish());
        }

        /** No more than there can have been: what is beyond that nobody can explain. */
        private void movedOut(Account.Line line) {
            int fish = Math.min(line.fish(), Math.max(0, began - died));
            began -= fish;
            unhatched = Math.max(0, unhatched - (line.fish() - fish));
            line.entry().ifPresent(entry -> letGo.put(entry.entryId(), fish));
            spreadOfBeganSquared += (double) line.spread() * line.spread() - (double) spread * spread;
            add(line.at(), What.MOVED_OUT, -fish);
        }

        private void begin(Stage next, Instant at) {
            boolean isOfHatch = stage == Stage.EGG && hatched > 0;
            stage = next;
            began = Math.max(0, survived - left);
            unhatched = isOfHatch ? Math.max(0, alive - began) : unhatched;
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
            int livingAndGone = left + (isOfHatch ? hatched : Math.max(0, alive - unhatched));
            survived = Math.min(most, livingAndGone);
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
