package org.tankrounds.fish;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.fish.WarmthPath.Side;

/**
 * Between which days a lot of eggs comes to each of its milestones, by the warmth of its own water.
 *
 * <p>Development adds up by the day (Sparks et al. 2019, doi:10.1139/cjfas-2017-0468): a day at a temperature is
 * 1/D2 of the way to hatch, D2 by {@link HatchModel}. Half are eyed at 0.5 and swim up at 1.7 of that way (Crisp 1988,
 * doi:10.1111/j.1365-2427.1988.tb00325.x; 0.5 is from Atlantic salmon).
 *
 * <p>A window holds what published observations differ by, {@link #earlierBy} and {@link #laterBy} of the way from
 * fertilisation, and what is not known of the water's temperature ({@link WarmthPath}). First feeding opens at 0.9 of
 * {@link Development#FIRST_FEEDING_C_DAYS} and no sooner than {@link Development#YOLK_C_DAYS} °C-days after hatch
 * (commercial egg guidance: 10 to 14 days), and closes by the swim-up of the model. Eggs without a history have 0.55
 * to 0.85 of the way to hatch behind them. What a class saw ends the guessing up to there, and what comes next counts
 * from it.
 */
public record LotCalendar(DateWindow eyed, DateWindow hatch, DateWindow firstFeeding) {
    private static final double EYED = 0.5;
    private static final double HATCH = 1;
    private static final double FEEDING_OPENS_C_DAYS = 0.9 * Development.FIRST_FEEDING_C_DAYS;
    private static final double DELIVERED_AT_C = 10;
    private static final double UNKNOWN_AT_LEAST = 0.55;
    private static final double UNKNOWN_AT_MOST = 0.85;

    private static final double USUAL_SPREAD = 0.1;
    private static final double COLD_C = 4;
    private static final double COLD_EARLIER_PER_C = 0.05;
    private static final double WARM_C = 13;
    private static final double WARM_LATER_PER_C = 0.17;

    private static final Duration STEP = Duration.ofHours(6);
    private static final double STEP_DAYS = 0.25;
    private static final int LONGEST_STEPS = 4 * 500;

    public DateWindow of(Milestone milestone) {
        return switch (milestone) {
            case EYED -> eyed;
            case HATCH -> hatch;
            case FIRST_FEEDING -> firstFeeding;
        };
    }

    /**
     * @param thermalUnitsOnArrivalC °C-days from fertilisation; empty where nobody told
     * @param warmth of its water
     */
    public static LotCalendar of(Instant receivedAt, OptionalDouble thermalUnitsOnArrivalC,
            Warmth warmth, SeenStages seen) {
        Map<Side, Run> runs = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            Run run = new Run(side, receivedAt, thermalUnitsOnArrivalC, warmth.of(side), seen.notBefore(receivedAt));
            run.run();
            runs.put(side, run);
        }
        Run early = runs.get(Side.WARM);
        Run middle = runs.get(Side.MIDDLE);
        Run late = runs.get(Side.COLD);
        return new LotCalendar(
                seen.eyedAt().map(DateWindow::ofSeen)
                        .orElseGet(() -> DateWindow.around(early.eyedAt, middle.eyedAt, late.eyedAt)),
                seen.hatchedAt().map(DateWindow::ofSeen)
                        .orElseGet(() -> DateWindow.around(early.hatchAt, middle.hatchAt, late.hatchAt)),
                seen.firstFeedingAt().map(DateWindow::ofSeen)
                        .orElseGet(() -> DateWindow.around(early.feedingAt, between(early.feedingAt, late.feedingAt),
                                late.feedingAt)));
    }

    /**
     * By what share of the way observations run ahead of the model at a temperature: a tenth, and more below 4 °C
     * (O. mykiss at 2 °C: 115 d, of which the model makes 137.5).
     */
    static double earlierBy(double temperatureC) {
        return USUAL_SPREAD + COLD_EARLIER_PER_C * Math.max(0, COLD_C - temperatureC);
    }

    /**
     * By what share they lag behind it: a tenth, and more above 13 °C (Kwain 1975, J. Fish. Res. Board Can.
     * 32:397–402: 25 to 26 d at 15 °C, of which the model makes 18.2).
     */
    static double laterBy(double temperatureC) {
        return USUAL_SPREAD + WARM_LATER_PER_C * Math.max(0, temperatureC - WARM_C);
    }

    private static Instant between(Instant one, Instant other) {
        return one.plus(Duration.between(one, other).dividedBy(2));
    }

    /** One way in which it may go, followed step by step. */
    private static final class Run {
        private final Side side;
        private final WarmthPath path;
        private final SeenStages seen;
        private Instant at;
        /** Of the way to hatch, by the model. */
        private double way;
        /** How much of that may be more, or less, than it was. */
        private double leeway;
        private double unitsC;
        private double unitsAtHatchC = Double.NaN;
        private final boolean isHistoryTold;
        private boolean isHistoryKept = true;
        private Instant eyedAt;
        private Instant hatchAt;
        private Instant feedingAt;

        Run(Side side, Instant receivedAt, OptionalDouble thermalUnitsC, WarmthPath path, SeenStages seen) {
            this.side = side;
            this.path = path;
            this.seen = seen;
            at = receivedAt;
            isHistoryTold = thermalUnitsC.isPresent();
            if (thermalUnitsC.isPresent()) {
                unitsC = thermalUnitsC.getAsDouble();
                go(unitsC / DELIVERED_AT_C, DELIVERED_AT_C);
            } else {
                way = switch (side) {
                    case WARM -> UNKNOWN_AT_MOST;
                    case MIDDLE -> (UNKNOWN_AT_LEAST + UNKNOWN_AT_MOST) / 2;
                    case COLD -> UNKNOWN_AT_LEAST;
                };
                unitsC = way * DELIVERED_AT_C * HatchModel.daysToHatch(DELIVERED_AT_C);
            }
            note();
        }

        void run() {
            for (int i = 0; i < LONGEST_STEPS && feedingAt == null; i++) {
                double temperatureC = Math.max(0, path.at(at.plus(STEP.dividedBy(2))));
                at = at.plus(STEP);
                unitsC += temperatureC * STEP_DAYS;
                go(STEP_DAYS, temperatureC);
                begin(seen.eyedAt(), EYED);
                begin(seen.hatchedAt(), HATCH);
                note();
            }
            eyedAt = eyedAt == null ? at : eyedAt;
            hatchAt = hatchAt == null ? at : hatchAt;
            feedingAt = feedingAt == null ? at : feedingAt;
        }

        private void go(double days, double temperatureC) {
            double share = days * HatchModel.hatchSharePerDay(temperatureC);
            way += share;
            leeway += share * switch (side) {
                case WARM -> 1 / (1 - earlierBy(temperatureC)) - 1;
                case MIDDLE -> 0;
                case COLD -> 1 / (1 + laterBy(temperatureC)) - 1;
            };
        }

        /** What was seen counts from the moment on which it was. */
        private void begin(Optional<Instant> seenAt, double share) {
            if (seenAt.isEmpty() || seenAt.get().isAfter(at) || !seenAt.get().isAfter(at.minus(STEP))) {
                return;
            }
            if (share < HATCH && isHistoryKept && isHistoryTold && way > share) {
                // Eyes stay to be seen; where the supplier told more, the eggs do not go back.
                return;
            }
            // To see half of them eyed is no sharper than the model; to see half of them hatched is.
            leeway = share < HATCH ? lean() * USUAL_SPREAD * share : 0;
            way = share;
            isHistoryKept = false;
            if (share == HATCH) {
                hatchAt = seenAt.get();
                unitsAtHatchC = unitsC;
            }
        }

        private int lean() {
            return switch (side) {
                case WARM -> 1;
                case MIDDLE -> 0;
                case COLD -> -1;
            };
        }

        private void note() {
            double reached = way + leeway;
            if (eyedAt == null && reached >= EYED) {
                eyedAt = at;
            }
            if (hatchAt == null && seen.hatchedAt().isEmpty() && hasCome(seen.eyedAt()) && reached >= HATCH) {
                hatchAt = at;
                unitsAtHatchC = unitsC;
            }
            boolean feeds = side == Side.WARM ? feedsEarly() : reached >= HatchModel.SWIM_UP_PER_HATCH;
            if (feedingAt == null && feeds && hasCome(seen.hatchedAt()) && hasCome(seen.eyedAt())) {
                feedingAt = at;
            }
        }

        /** What was seen late says that what comes after it had not been before. */
        private boolean hasCome(Optional<Instant> seenAt) {
            return seenAt.filter(moment -> moment.isAfter(at)).isEmpty();
        }

        private boolean feedsEarly() {
            return hatchAt != null && unitsC - unitsAtHatchC >= Development.YOLK_C_DAYS
                    && (!isHistoryKept || unitsC >= FEEDING_OPENS_C_DAYS);
        }
    }
}
