package org.tankrounds.advice;

import org.tankrounds.belief.ChillerFailure;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Limits;
import org.tankrounds.tankmodel.Chiller;
import org.tankrounds.tankmodel.TankParameters;
import org.tankrounds.water.HeatBalance;

/**
 * What a tank takes in trouble whatever was read of it, for a sheet on the wall; never more than the advice of the day
 * would say. A change and a load of ice hang on the volume alone, the hours on where the water stands and on its walls.
 *
 * @param volumeL water volume, L; above 0
 * @param heldC what the chiller holds, °C
 */
public record StandingAmounts(double volumeL, double heldC) {

    /** From this temperature on nobody is fed, °C. */
    public static final double TOO_WARM_TO_FEED_C = Fasting.TOO_WARM_TO_FEED_C;
    /** The most that is changed at once, % of the water. */
    public static final int MOST_CHANGED_PERCENT = ChangeSize.MOST_PERCENT;
    /** The room that all of it is worked out for, °C. */
    public static final double ROOM_C = ChillerFailure.ROOM_C;

    /** A bottle of 2 L that is filled nine tenths, for ice takes more room (common practice, no source). */
    private static final double BOTTLE_KG = 1.8;
    /** A bucket that an adult pours from without spilling (common practice, no source). */
    private static final double BUCKET_L = 10;

    /**
     * Hours without a chiller until a temperature is reached, in a room of {@link #ROOM_C}; 0 where the water is as
     * warm already, infinite where it never becomes so.
     *
     * @param bareGlassH with bare walls, while the pump goes on: the soonest
     * @param foamedH with an inch of foam on sides and bottom, with the pump at rest: among the latest
     */
    public record Warming(double bareGlassH, double foamedH) {}

    public StandingAmounts {
        if (!(volumeL > 0)) {
            throw new IllegalArgumentException("volume must be above 0 L: " + volumeL);
        }
    }

    /** °C beyond which it is too warm. */
    public static double limitC(Stage stage) {
        return Limits.DEFAULT.temperatureC(stage);
    }

    /** °C to which ice brings the water, and at which it holds it. */
    public static double holdC(Stage stage) {
        return IceLoad.holdC(limitC(stage));
    }

    /** The most ice at once, kg. */
    public double iceAtOnceKg() {
        return IceLoad.mostKg(volumeL);
    }

    /** Ice that brings the water down by so many kelvin to what is held, kg. */
    public double iceToCoolKg(double byK, Stage stage) {
        return HeatBalance.iceToCoolKg(volumeL, byK, holdC(stage));
    }

    /** Ice that holds it there for half a day, kg. */
    public double iceToHoldKg(Stage stage) {
        return IceLoad.neededKg(volumeL, 0, holdC(stage));
    }

    /** Whole bottles of 2 L that weigh no more than so much. */
    public static int bottlesWithin(double kg) {
        return (int) (kg / BOTTLE_KG);
    }

    /** Litres of a change of so many per cent. */
    public double changeL(double percent) {
        return volumeL * percent / 100;
    }

    /** Buckets of 10 L for so many litres. */
    public static int buckets(double litres) {
        return (int) Math.ceil(litres / BUCKET_L);
    }

    /** How long until the limit of a stage is met. */
    public Warming warming(Stage stage) {
        TankParameters foamed = TankParameters.ofVolume(volumeL, Chiller.NONE);
        return new Warming(hoursTo(limitC(stage), TankParameters.bareGlassWPerK(volumeL), foamed.pumpW()),
                hoursTo(limitC(stage), foamed.lossWPerK(), 0));
    }

    private double hoursTo(double limitC, double lossWPerK, double pumpW) {
        return heldC >= limitC ? 0 : HeatBalance.hoursTo(limitC, heldC,
                HeatBalance.endTemperatureC(ROOM_C, pumpW, lossWPerK), HeatBalance.timeConstantH(volumeL, lossWPerK));
    }
}
