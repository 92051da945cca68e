package org.tankrounds.belief;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Follows a tank's temperature with some thousand possible states: the chiller holds it, or it stands (or no
 * longer keeps up) and the room warms the tank as a heat balance says. Standing is tried more often than it
 * happens and weighted down in return, so that one reading is enough to see it coming. A reading that fits no
 * state is a slip of the pen, or the tank warmed in a way that none of them took; the odds of the two are the
 * same at every distance, as far as a bare tank in a hot room can have come.
 */
final class TemperatureFilter {

    private static final int STATES = TemperatureStates.COUNT;
    private static final double REPAIRS_PER_DAY = 0.25;
    /** Where nobody reads for days, nobody repairs either. */
    private static final double UNREAD_REPAIRS_PER_DAY = 0.08;
    static final double UNREAD_HOURS = 72;
    private static final double TRIED_STOPS = 0.25;
    private static final double HELD_SD_C = 1.4;
    private static final double HELD_SD_WITH_SET_POINT_C = 0.8;
    private static final double HELD_WALK_SD_C = 0.15;
    private static final double CONSTANT_WALK_LOG_SD = 0.1;
    private static final double READER_SD_C = 0.25;
    private static final double TYPO_SHARE = 0.02;
    private static final double DOUBTFUL_SHARE = 0.5;
    private static final double TYPO_SPAN_C = 40;
    /** Two readings so near each other within so many hours speak for each other. */
    private static final double SAME_C = 1.5;
    private static final double SAME_WITHIN_H = 96;
    private static final double STANDING_ABOVE_HELD_C = 2;
    /** Tanks that stand on the day somebody first reads them, spread evenly over so many degrees. */
    private static final double STANDING_AT_FIRST = 0.1;
    private static final double STANDING_SPAN_C = 10;
    /** How likely a warming that no state took is, per degree: five times as likely as a slip of the pen. */
    private static final double UNFORESEEN_PER_C = 5 * TYPO_SHARE / TYPO_SPAN_C;
    /** A bare tank in a hot room: nothing warms faster than that. */
    private static final double HOTTEST_ROOM_C = 28;
    private static final double BARE_TANK_H = 12;
    /** A share worth replacing states for. */
    private static final double WORTH_FOLLOWING = 0.01;
    private static final double[] SPREAD = Draws.spreadNormal(STATES, 1);
    /** Which states are first to be put elsewhere: the same ones whatever is read. */
    private static final double[] ORDER = Draws.spread(STATES, 2);
    /** Of every draw: a day stops hundreds of states. */
    private static final double[] TIME_CONSTANTS_H = Draws.ofNormals(ChillerFailure::timeConstantH);

    private final TemperatureStates states = new TemperatureStates();
    private final double usualC;
    private final double heldSdC;
    private double lastC;
    private double unreadHours;
    private int draw;

    TemperatureFilter(double usualC, boolean isSetPoint) {
        this.usualC = usualC;
        heldSdC = isSetPoint ? HELD_SD_WITH_SET_POINT_C : HELD_SD_C;
        lastC = usualC;
        for (int i = 0; i < STATES; i++) {
            states.heldC[i] = usualC + SPREAD[i] * heldSdC;
            states.nowC[i] = states.heldC[i] + ChillerFailure.RUN_SD_C * normal();
        }
    }

    /** Time passes without a reading. */
    void advance(double hours, boolean isRead) {
        unreadHours += hours;
        double days = hours / 24;
        double stops = ChillerFailure.chanceWithin(days);
        double tried = Math.max(stops, Math.min(TRIED_STOPS, days));
        double repaired = 1 - StrictMath.exp(-(isRead ? REPAIRS_PER_DAY : UNREAD_REPAIRS_PER_DAY) * days);
        double settle = StrictMath.exp(-hours / ChillerFailure.RUN_HOURS);
        double settleSd = ChillerFailure.RUN_SD_C * Math.sqrt(1 - settle * settle);
        double walkSd = HELD_WALK_SD_C * Math.sqrt(days);
        for (int i = 0; i < STATES; i++) {
            states.heldC[i] += walkSd * normal();
            if (states.stopped[i]) {
                stand(i, hours, repaired);
            } else if (uniform() < tried) {
                states.weight[i] *= stops / tried;
                stop(i);
                warm(i, hours * uniform());
            } else {
                states.weight[i] *= (1 - stops) / (1 - tried);
                settle(i, settle, settleSd * normal());
            }
        }
    }

    private void stand(int i, double hours, double repaired) {
        if (uniform() < repaired) {
            states.stopped[i] = false;
            settle(i, Decay.after(hours * uniform() / ChillerFailure.RUN_HOURS), 0);
        } else {
            warm(i, hours);
            wander(i, hours / 24);
        }
    }

    private void settle(int i, double left, double swingC) {
        states.nowC[i] = states.heldC[i] + (states.nowC[i] - states.heldC[i]) * left + swingC;
    }

    /**
     * The first reading of all, which only tanks in general speak against, is believed. Either the chiller
     * holds about that, or it stands, the likelier the further the water is above what tanks are held at. As
     * many states as readings are slips of the pen keep what was held before, should the next reading deny it.
     */
    void seeFirst(double readC, double halfStepC, boolean doubtful) {
        double sd = sd(halfStepC);
        double keepers = doubtful ? DOUBTFUL_SHARE : TYPO_SHARE;
        double standing = (1 - keepers) * standingChanceAtFirst(readC, sd);
        for (int i = 0; i < STATES; i++) {
            if (ORDER[i] < standing) {
                standAt(i, readC, sd);
            } else if (ORDER[i] < 1 - keepers) {
                holdAbout(i, readC, sd);
            }
        }
        read(readC);
    }

    private double standingChanceAtFirst(double readC, double sd) {
        if (readC < usualC) {
            return 0;
        }
        double variance = heldSdC * heldSdC + ChillerFailure.RUN_SD_C * ChillerFailure.RUN_SD_C + sd * sd;
        double held = (1 - STANDING_AT_FIRST) * density(readC - usualC, Math.sqrt(variance));
        double standing = STANDING_AT_FIRST / STANDING_SPAN_C;
        return standing / (standing + held);
    }

    /** Normal variables given their sum: what is held, the chiller's swing and the reader's error. */
    private void holdAbout(int i, double readC, double sd) {
        double swing = ChillerFailure.RUN_SD_C * ChillerFailure.RUN_SD_C;
        double gain = heldSdC * heldSdC / (heldSdC * heldSdC + swing + sd * sd);
        states.heldC[i] = usualC + gain * (readC - usualC) + Math.sqrt(1 - gain) * heldSdC * SPREAD[i];
        double pull = swing / (swing + sd * sd);
        states.nowC[i] = states.heldC[i] + pull * (readC - states.heldC[i]) + Math.sqrt(pull) * sd * normal();
    }

    /** A reading; false when it fits none of the states and is a slip of the pen rather. */
    boolean see(double readC, double halfStepC, boolean doubtful) {
        double sd = sd(halfStepC);
        double typo = doubtful ? DOUBTFUL_SHARE : TYPO_SHARE;
        double sum = 0;
        double fitting = 0;
        for (int i = 0; i < STATES; i++) {
            double fit = (1 - typo) * density(readC - states.nowC[i], sd);
            fitting += states.weight[i] * fit;
            states.weight[i] *= fit + typo / TYPO_SPAN_C;
            sum += states.weight[i];
        }
        double typoWeight = sum - fitting;
        double unforeseen = !doubtful && isWithinReach(readC) ? UNFORESEEN_PER_C : 0;
        states.weighTo(sum);
        follow(unforeseen / (sum + unforeseen), readC, sd);
        boolean believed = fitting + unforeseen > typoWeight;
        if (believed) {
            read(readC);
        }
        return believed;
    }

    private boolean isWithinReach(double readC) {
        double left = StrictMath.exp(-unreadHours / BARE_TANK_H);
        return readC > lastC && readC <= HOTTEST_ROOM_C - (HOTTEST_ROOM_C - lastC) * left;
    }

    /** Puts a share of the states where nothing but the reading says that the tank is. */
    private void follow(double share, double readC, double sd) {
        if (share < WORTH_FOLLOWING) {
            return;
        }
        states.resample();
        for (int i = 0; i < STATES; i++) {
            if (ORDER[i] < share) {
                standAt(i, readC, sd);
            }
        }
    }

    private void read(double readC) {
        lastC = readC;
        unreadHours = 0;
    }

    /** Whether two readings that nothing held explains confirm each other. */
    boolean isSame(Observation before, Observation reading) {
        return Math.abs(reading.value() - before.value()) <= SAME_C
                && hours(before.at(), reading.at()) <= SAME_WITHIN_H;
    }

    /**
     * Believes a temperature that no state came to: either the chiller was set to it, or it stands, the more
     * likely the further the water is above what was held.
     */
    void beginAgainAt(double readC, double halfStepC) {
        double sd = sd(halfStepC);
        for (int i = 0; i < STATES; i++) {
            if (readC > states.heldC[i] + STANDING_ABOVE_HELD_C && i % 4 != 0) {
                standAt(i, readC, sd);
            } else {
                states.nowC[i] = readC + sd * normal();
                states.stopped[i] = false;
                states.heldC[i] = readC;
            }
            states.weight[i] = 1.0 / STATES;
        }
        read(readC);
    }

    TemperatureBelief belief(List<Observation> readings, Optional<Observation> setAside) {
        return states.belief(readings, setAside, draw);
    }

    private void standAt(int i, double readC, double sd) {
        states.nowC[i] = readC + sd * normal();
        stop(i);
        states.endC[i] = Math.max(states.endC[i], states.nowC[i]);
    }

    private void stop(int i) {
        states.stopped[i] = true;
        ChillerFailure failure =
                ChillerFailure.of(states.heldC[i], normal(), timeConstantH(), uniform(), uniform());
        states.endC[i] = failure.endC();
        states.timeConstantH[i] = failure.timeConstantH();
    }

    private void warm(int i, double hours) {
        double left = Decay.after(hours / states.timeConstantH[i]);
        states.nowC[i] = states.endC[i] - (states.endC[i] - states.nowC[i]) * left;
    }

    /**
     * Rooms are heated and aired, and no two states may stay alike: readings would leave one and its
     * certainty.
     */
    private void wander(int i, double days) {
        double share = Math.sqrt(days);
        states.endC[i] += ChillerFailure.ROOM_WALK_SD_C * share * normal();
        states.timeConstantH[i] *= StrictMath.exp(CONSTANT_WALK_LOG_SD * share * normal());
    }

    private static double sd(double halfStepC) {
        return Math.sqrt(halfStepC * halfStepC / 3 + READER_SD_C * READER_SD_C);
    }

    private static double density(double miss, double sd) {
        return Decay.after(miss * miss / (2 * sd * sd)) / (sd * 2.506628274631);
    }

    private double normal() {
        return Draws.normal(draw++);
    }

    private double timeConstantH() {
        return TIME_CONSTANTS_H[Draws.place(draw++)];
    }

    private double uniform() {
        return Draws.uniform(draw++);
    }

    /** Hours between two moments. */
    static double hours(Instant from, Instant to) {
        return (to.getEpochSecond() - from.getEpochSecond()) / 3600.0;
    }
}
