package org.tankrounds.tankmodel;

import org.tankrounds.water.Carbonate;
import org.tankrounds.water.WaterChange;

/**
 * A tank at one moment.
 *
 * @param temperatureC °C
 * @param ammoniaMgPerL total ammonia, mg N/L
 * @param nitriteMgPerL mg N/L
 * @param nitrateMgPerL mg N/L
 * @param alkalinityMgPerL mg/L as CaCO3; may fall below 0, which is free acid
 * @param ammoniaOxidisersCodPerL biomass on the filter, mg COD per litre of tank
 * @param nitriteOxidisersCodPerL the same for the second guild
 */
public record TankState(
        double temperatureC,
        double ammoniaMgPerL,
        double nitriteMgPerL,
        double nitrateMgPerL,
        double alkalinityMgPerL,
        double ammoniaOxidisersCodPerL,
        double nitriteOxidisersCodPerL) {

    /** Water that is all but without alkalinity counts as holding this much when its pH is asked for. */
    private static final double LEAST_ALKALINITY_MG_PER_L = 0.5;

    /** Clean water over a filter with hardly anything on it. */
    public static TankState fresh(
            double temperatureC, double alkalinityMgPerL, double ammoniaOxidisers, double nitriteOxidisers) {
        return new TankState(temperatureC, 0, 0, 0, alkalinityMgPerL, ammoniaOxidisers, nitriteOxidisers);
    }

    /**
     * pH from alkalinity and the carbon dioxide held in the water: {@code pH = pK1 + log10([HCO3] / [CO2])}, the
     * inverse of {@link Carbonate#carbonDioxideMgPerL}. Fresh water below pH 8.5.
     */
    public double ph(double carbonDioxideMgPerL) {
        double alkalinity = Math.max(LEAST_ALKALINITY_MG_PER_L, alkalinityMgPerL);
        return StrictMath.log10(Carbonate.carbonDioxideMgPerL(0, alkalinity, temperatureC) / carbonDioxideMgPerL);
    }

    /** All nitrogen in the water, mg N/L. */
    public double nitrogenMgPerL() {
        return ammoniaMgPerL + nitriteMgPerL + nitrateMgPerL;
    }

    /**
     * A share of the water replaced at once. The bacteria sit on the filter and stay.
     *
     * @param share 0 to 1
     */
    public TankState changed(double share, SourceWater source) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share must be 0 to 1, was " + share);
        }
        return new TankState(
                WaterChange.after(temperatureC, source.temperatureC(), share, 1),
                WaterChange.after(ammoniaMgPerL, source.ammoniaMgPerL(), share, 1),
                WaterChange.after(nitriteMgPerL, source.nitriteMgPerL(), share, 1),
                WaterChange.after(nitrateMgPerL, source.nitrateMgPerL(), share, 1),
                WaterChange.after(alkalinityMgPerL, source.alkalinityMgPerL(), share, 1),
                ammoniaOxidisersCodPerL, nitriteOxidisersCodPerL);
    }

    public TankState withTemperatureC(double newTemperatureC) {
        return new TankState(newTemperatureC, ammoniaMgPerL, nitriteMgPerL, nitrateMgPerL, alkalinityMgPerL,
                ammoniaOxidisersCodPerL, nitriteOxidisersCodPerL);
    }

    /** Baking soda stirred in: so many mg/L as CaCO3 more. */
    public TankState buffered(double raiseMgPerL) {
        return new TankState(temperatureC, ammoniaMgPerL, nitriteMgPerL, nitrateMgPerL,
                alkalinityMgPerL + raiseMgPerL, ammoniaOxidisersCodPerL, nitriteOxidisersCodPerL);
    }

    /** The filter set back: dried out, chlorinated, medicated. @param left share of both guilds that lives on */
    public TankState filterSetBack(double left) {
        return new TankState(temperatureC, ammoniaMgPerL, nitriteMgPerL, nitrateMgPerL, alkalinityMgPerL,
                left * ammoniaOxidisersCodPerL, left * nitriteOxidisersCodPerL);
    }

    /** This plus a rate of change over some days. */
    TankState plus(TankState perDay, double days) {
        return new TankState(
                temperatureC + days * perDay.temperatureC,
                ammoniaMgPerL + days * perDay.ammoniaMgPerL,
                nitriteMgPerL + days * perDay.nitriteMgPerL,
                nitrateMgPerL + days * perDay.nitrateMgPerL,
                alkalinityMgPerL + days * perDay.alkalinityMgPerL,
                ammoniaOxidisersCodPerL + days * perDay.ammoniaOxidisersCodPerL,
                nitriteOxidisersCodPerL + days * perDay.nitriteOxidisersCodPerL);
    }
}
