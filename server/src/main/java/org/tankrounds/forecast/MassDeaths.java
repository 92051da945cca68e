package org.tankrounds.forecast;

import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Fish that die en masse, as told by the reasons of a forecast (common practice, no source). */
public final class MassDeaths {

    private static final double SHARE = 0.05;
    private static final int MANY = 10;
    /** Of a dozen fish one is five per cent, and no mass. */
    private static final int FEWEST = 3;
    private static final double PRESSING_SHARE = 0.1;

    private MassDeaths() {
    }

    /** One in twenty within a day, or ten. */
    static boolean are(int inADay, int fishAlive) {
        return inADay >= MANY || isShare(SHARE, inADay, fishAlive);
    }

    /** The same of what a forecast names. */
    public static boolean in(Forecast forecast) {
        return are(inADay(forecast), forecast.fishAlive());
    }

    /** One in ten within a day: nothing else presses more. */
    public static boolean pressIn(Forecast forecast) {
        return isShare(PRESSING_SHARE, inADay(forecast), forecast.fishAlive());
    }

    /** The least number of dead within a day that are a mass of so many fish; empty where those are too few. */
    public static OptionalInt fewestOf(int fish) {
        return least(fish, dead -> are(dead, fish - dead));
    }

    /** The least that press. */
    public static OptionalInt fewestThatPressOf(int fish) {
        return least(fish, dead -> isShare(PRESSING_SHARE, dead, fish - dead));
    }

    private static OptionalInt least(int fish, IntPredicate isEnough) {
        return IntStream.rangeClosed(1, fish).filter(isEnough).findFirst();
    }

    private static boolean isShare(double share, int inADay, int fishAlive) {
        return inADay >= FEWEST && inADay >= share * (fishAlive + inADay);
    }

    private static int inADay(Forecast forecast) {
        return forecast.reasons().stream().filter(reason -> reason.kind() == Reason.Kind.DEATHS)
                .mapToInt(reason -> (int) reason.value().orElse(0)).max().orElse(0);
    }
}
