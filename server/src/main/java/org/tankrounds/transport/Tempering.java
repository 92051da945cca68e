package org.tankrounds.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tankrounds.fish.Stage;
import org.tankrounds.water.WaterChange;

/**
 * From the temperature of the water that eggs or fish came in to that of the water they go into: the carrying water is
 * replaced a little at a time by the other, in equal steps of no more than 1 °C, and they go over with the last.
 *
 * <p>Eggs and sac fry: at most 1 °C in 15 to 30 minutes, 5 °C in all; fry at release: 1 °C in 10 to 15 minutes (common
 * practice, no source). The need is less sure than the practice: fish of 10 g came through 8 to 24 °C at once (North
 * American Journal of Aquaculture 65:67, 2003; confirmed), eggs through 5 and 10 °C (Weber et al. 2016; confirmed).
 * What no tempering helps is water that is too warm: of fish reared at 11.2 °C half lived at 25 °C and none at 26 °C,
 * tempered or not (Huysman et al. 2020; confirmed).
 */
public final class Tempering {

    /** What eggs and sac fry are tempered across at most, °C (common practice, no source). */
    public static final double MOST_FOR_EGGS_K = 5;
    /** Many suppliers temper fry from here on, °C: 10 °F, told as 5.6 °C (confirmed from one supplier). */
    public static final double FRY_OFTEN_FROM_K = 10 / 1.8;
    /** Eggs: 15 °C is near the limit (Kwain 1975; confirmed), 13 °C that of spawning to emergence (US EPA 2003). */
    public static final double EGGS_NOT_ABOVE_C = 13;
    /** Eggs: 3 °C is near the limit (Kwain 1975; confirmed). */
    public static final double EGGS_NOT_BELOW_C = 3;
    /** Fry go into water below this, °C (common practice, no source; the permit governs). */
    public static final double FRY_BELOW_C = 18;
    /** From here on fish die whether tempered or not, °C (Huysman et al. 2020; confirmed). */
    public static final double DEADLY_FROM_C = 25;
    /** The lowest that trout stand, °C: about 0 (Currie et al. 1998; confirmed). */
    public static final double FRY_ABOVE_C = 0;
    /** Total ammonia of the box above which water is mixed slowly, mg N/L: fresh water lifts the pH of sour water. */
    public static final double MIX_SLOWLY_ABOVE_MG_N_PER_L = 1;

    /** Beyond it a thermometer's last digit would make a step of its own. */
    private static final double ROUNDING_K = 1e-9;

    /** No thermometer tells less, and what was read in Fahrenheit is kept rounded. */
    private static final double READ_K = 0.005;

    /** Which end of the range of minutes for 1 °C is taken. */
    public enum Pace { SLOW, QUICK }

    /** Why they must not go over as things stand. */
    public enum Bar {
        /** Eggs or sac fry would cross more than they are tempered across. */
        TOO_FAR_APART,
        /** The water that they go into is colder than this stage stands. */
        TOO_COLD,
        /** It is warmer than this stage is put into. */
        TOO_WARM,
        /** It is so warm that fish die in it, tempered or not. */
        DEADLY
    }

    /**
     * @param fromMinute when replacing begins, counted from the start
     * @param minute when it is done, and the temperature is to be read
     * @param temperatureC of the carrying water by then
     * @param share of the carrying water to replace meanwhile, 0 to 1; 1 where they go over
     */
    public record Step(int fromMinute, int minute, double temperatureC, double share) {
        /** They go over into the other water. */
        public boolean isGoingOver() {
            return share == 1;
        }
    }

    private Tempering() {
    }

    /** Minutes for 1 °C. */
    public static int minutesPerK(Stage stage, Pace pace) {
        if (stage.isBeforeFirstFeeding()) {
            return pace == Pace.SLOW ? 30 : 15;
        }
        return pace == Pace.SLOW ? 15 : 10;
    }

    /** Empty where they may go over. */
    public static Optional<Bar> bar(Stage stage, double carryingC, double receivingC) {
        requireFinite(carryingC, receivingC);
        if (receivingC >= DEADLY_FROM_C) {
            return Optional.of(Bar.DEADLY);
        }
        boolean egg = stage.isBeforeFirstFeeding();
        if (egg ? receivingC > EGGS_NOT_ABOVE_C : receivingC >= FRY_BELOW_C) {
            return Optional.of(Bar.TOO_WARM);
        }
        if (egg ? receivingC < EGGS_NOT_BELOW_C : receivingC <= FRY_ABOVE_C) {
            return Optional.of(Bar.TOO_COLD);
        }
        return egg && Math.abs(receivingC - carryingC) > MOST_FOR_EGGS_K + ROUNDING_K
                ? Optional.of(Bar.TOO_FAR_APART) : Optional.empty();
    }

    /**
     * In order of time; the last is going over. Empty where a {@link #bar} forbids it.
     *
     * @param carryingC of the water that they came in, °C
     * @param receivingC of the water that they go into, °C
     */
    public static List<Step> steps(Stage stage, double carryingC, double receivingC, Pace pace) {
        if (bar(stage, carryingC, receivingC).isPresent()) {
            return List.of();
        }
        double apartK = receivingC - carryingC;
        int count = Math.max(1, (int) Math.ceil(Math.abs(apartK) - ROUNDING_K));
        double stepK = apartK / count;
        int stepMinutes = (int) Math.ceil(Math.abs(stepK) * minutesPerK(stage, pace) - ROUNDING_K);
        List<Step> steps = new ArrayList<>();
        double currentC = carryingC;
        for (int i = 1; i <= count; i++) {
            double nextC = i == count ? receivingC : carryingC + i * stepK;
            steps.add(new Step((i - 1) * stepMinutes, i * stepMinutes, nextC,
                    i == count ? 1 : share(currentC, receivingC, nextC)));
            currentC = nextC;
        }
        return steps;
    }

    /** Whether the waters are so far apart that suppliers temper fry: {@link #FRY_OFTEN_FROM_K} or more. */
    public static boolean isFarForFry(double carryingC, double receivingC) {
        requireFinite(carryingC, receivingC);
        return Math.abs(receivingC - carryingC) >= FRY_OFTEN_FROM_K - READ_K;
    }

    /** The slower pace where the carrying water holds more than {@link #MIX_SLOWLY_ABOVE_MG_N_PER_L}. */
    public static Pace paceAt(double totalAmmoniaMgNPerL) {
        return totalAmmoniaMgNPerL > MIX_SLOWLY_ABOVE_MG_N_PER_L ? Pace.SLOW : Pace.QUICK;
    }

    /** The formula of a water change brings a level down; warmth that is to rise is a lack of it that is to fall. */
    private static double share(double fromC, double receivingC, double toC) {
        return fromC > receivingC ? WaterChange.shareFor(fromC, receivingC, toC)
                : WaterChange.shareFor(-fromC, -receivingC, -toC);
    }

    private static void requireFinite(double carryingC, double receivingC) {
        if (!Double.isFinite(carryingC) || !Double.isFinite(receivingC)) {
            throw new IllegalArgumentException("temperatures must be numbers: " + carryingC + ", " + receivingC);
        }
    }
}
