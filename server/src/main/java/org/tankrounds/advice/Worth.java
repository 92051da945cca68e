package org.tankrounds.advice;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Effect;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Prospect;

/** Whether an act is worth a volunteer's while, by what the model expects of it. */
public final class Worth {

    /**
     * A look costs little and may find what no reading shows, and alkalinity that is used up has to be
     * brought back before it shows in the pH; so these need no effect within three days.
     */
    private static final Set<Act.Kind> LOOKS = EnumSet.of(Act.Kind.ASK_FOR_READING,
            Act.Kind.LOOK_AT_FISH, Act.Kind.LEAVE_WATER, Act.Kind.BICARBONATE);
    /** Of a hundred courses a few may (the project's choice). */
    private static final double MOST_NEWLY_BEYOND = 0.02;
    /** Of what the salt and the fast beside it spare (the project's choice). */
    private static final double MOST_UNDONE = 0.1;
    private static final double LEAST_UNDONE_CHANCE = 0.005;
    private static final double LEAST_UNDONE_SHARE = 0.02;
    private static final double CHANCE_FALL = 0.03;
    private static final double EXPOSURE_FALL = 0.1;
    private static final double LATER_HOURS = 3;

    private Worth() {
    }

    /** The model finds no harm in it, and hardly a course that it alone takes beyond a limit. */
    static boolean isSafe(Prospect prospect) {
        return !prospect.effect().harms() && prospect.newlyBeyond() <= MOST_NEWLY_BEYOND;
    }

    /**
     * What is not good by itself may undo a little of what others do, for the good of it comes after three days; and
     * a look ahead takes the filter to wake as fast as any may.
     *
     * @param all with the others
     * @param others by themselves
     */
    static boolean isBorne(Effect all, Effect others) {
        return all.chanceWith() - others.chanceWith()
                        <= Math.max(LEAST_UNDONE_CHANCE, MOST_UNDONE * others.chanceFall())
                && all.exposureWith() - others.exposureWith()
                        <= MOST_UNDONE * Math.max(0, others.exposureWithout() - others.exposureWith())
                                + LEAST_UNDONE_SHARE * others.exposureWithout();
    }

    /** The same of an act; for breath, and of {@link Fasting}, more ammonia by a higher pH is put up with. */
    static boolean isSafe(Act act, Prospect prospect) {
        return isNeededInTrouble(act) || isSafe(prospect);
    }

    /** Whatever the model makes of the pH: fish without oxygen die first. */
    static boolean isNeededInTrouble(Act act) {
        return act.kind() == Act.Kind.SKIP_FEED
                || act.kind() == Act.Kind.MORE_AIR && act.driver().equals(Optional.of(Driver.DISSOLVED_OXYGEN));
    }

    /**
     * Harmless, and lowers the chance or the exposure, or buys time. Where somebody has to go anyhow, what
     * is needed in trouble is worth it even where it does little or a little harm ({@link Fasting}).
     *
     * @param driver of the forecast
     * @param worrying whether somebody goes there within the week
     */
    static boolean isWorthDoing(Act act, Optional<Effect> effect, Driver driver, boolean worrying) {
        return effect.isEmpty() || worrying && isNeededInTrouble(act)
                || !effect.get().harms() && (LOOKS.contains(act.kind())
                || worrying && isLookAtWhatDrives(act, driver)
                || lowersChance(effect.get()) || lowersExposure(effect.get()) || buysTime(effect.get()));
    }

    /** A chiller is looked at where it is the temperature that somebody goes for. */
    private static boolean isLookAtWhatDrives(Act act, Driver driver) {
        return act.kind() == Act.Kind.CHECK_CHILLER && driver == Driver.TEMPERATURE;
    }

    public static boolean lowersChance(Effect effect) {
        return effect.chanceFall() >= CHANCE_FALL;
    }

    public static boolean lowersExposure(Effect effect) {
        return effect.exposureFall() >= EXPOSURE_FALL;
    }

    /** The limit is met hours later. */
    public static boolean buysTime(Effect effect) {
        double without = effect.hoursToLimitWithout().orElse(Forecast.HORIZON_HOURS);
        return effect.hoursToLimitWith().orElse(Forecast.HORIZON_HOURS) - without >= LATER_HOURS;
    }
}
