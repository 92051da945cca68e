package org.tankrounds.tankmodel;

import java.util.Objects;

/**
 * What a tank is, as far as the model needs it.
 *
 * @param volumeL litres of water; one litre counts as one kilogram
 * @param lossWPerK UA: heat that comes in per kelvin that the room is warmer, W/K
 * @param pumpW heat of pumps and lamps that stays in the water, W
 * @param chiller its chiller
 * @param ammoniaOxidisers first guild of the filter
 * @param nitriteOxidisers second guild
 * @param halfAlkalinityMgPerL alkalinity (as CaCO3) at which the first guild works at half speed for want of
 * it; 0
 * leaves this out. "Below 20 to 50 mg/L nitrification stalls" is practice without a formula: 10 is our choice
 * @param carbonDioxideMgPerL dissolved CO2 that breathing and aeration settle at, mg/L; sets the pH
 */
public record TankParameters(
        double volumeL,
        double lossWPerK,
        double pumpW,
        Chiller chiller,
        Nitrifiers ammoniaOxidisers,
        Nitrifiers nitriteOxidisers,
        double halfAlkalinityMgPerL,
        double carbonDioxideMgPerL) {

    /** 48 × 13 × 21 in of bare glass with a lid: 18.0 W/K on 2.458 m² (film and glass from memory). */
    public static final double BARE_GLASS_W_PER_K = 18.028;
    /** The same with an inch of foam on sides and bottom. */
    public static final double FOAM_BARE_LID_W_PER_K = 5.044;
    /** With an inch of foam all round. */
    public static final double FOAM_ALL_ROUND_W_PER_K = 2.5005;

    public TankParameters {
        Objects.requireNonNull(chiller, "chiller");
        Objects.requireNonNull(ammoniaOxidisers, "ammoniaOxidisers");
        Objects.requireNonNull(nitriteOxidisers, "nitriteOxidisers");
        if (!(volumeL > 0) || !(lossWPerK >= 0) || !(halfAlkalinityMgPerL >= 0) || !(carbonDioxideMgPerL > 0)) {
            throw new IllegalArgumentException("volume and CO2 must be above 0, loss and half alkalinity 0 or more");
        }
    }

    /** A tank of a volume as classrooms have them, its loss scaled with its surface. */
    public static TankParameters ofVolume(double volumeL, Chiller chiller) {
        return new TankParameters(volumeL, FOAM_BARE_LID_W_PER_K * surfaceShare(volumeL), 15, chiller,
                Nitrifiers.AMMONIA_OXIDISERS, Nitrifiers.NITRITE_OXIDISERS, 10, 3);
    }

    /** Loss of a bare glass tank of a volume, W/K. */
    public static double bareGlassWPerK(double volumeL) {
        return BARE_GLASS_W_PER_K * surfaceShare(volumeL);
    }

    private static double surfaceShare(double volumeL) {
        return StrictMath.cbrt(volumeL / 190 * (volumeL / 190));
    }

    public TankParameters withLossWPerK(double newLossWPerK) {
        return new TankParameters(volumeL, newLossWPerK, pumpW, chiller, ammoniaOxidisers, nitriteOxidisers,
                halfAlkalinityMgPerL, carbonDioxideMgPerL);
    }

    public TankParameters withCarbonDioxideMgPerL(double newCarbonDioxideMgPerL) {
        return new TankParameters(volumeL, lossWPerK, pumpW, chiller, ammoniaOxidisers, nitriteOxidisers,
                halfAlkalinityMgPerL, newCarbonDioxideMgPerL);
    }
}
