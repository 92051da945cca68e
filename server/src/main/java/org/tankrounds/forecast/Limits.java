package org.tankrounds.forecast;

import java.util.OptionalDouble;
import org.tankrounds.belief.BeliefFilter;
import org.tankrounds.fish.Stage;

/**
 * The limits that chance and exposure speak of. u is the level as a share of its limit; u > 1 is
 * beyond it. {@link #DEFAULT} has the sourced values; a chapter may set its own.
 *
 * @param eggTemperatureC limit for eggs and sac fry (US EPA Region 10, 2003: 13 °C)
 * @param feedingTemperatureC limit for feeding fish (same: 18 °C)
 * @param temperatureSpanC how many degrees below the limit u is 0
 * @param unIonisedAmmoniaMgPerL mg/L as NH3 (Piper et al. 1982: 0.0125)
 * @param nitriteAtChloride mg N/L at 1, 5, 10, 20 and 40 mg/L chloride (EIFAC 1984, 95th percentile, from memory)
 * @param eggOxygenMgPerL least oxygen for eggs and sac fry (US EPA 1986: 8)
 * @param feedingOxygenMgPerL least oxygen for feeding fish (US EPA 1986: 6)
 * @param lowestPh culture practice: 6.0
 * @param highestPh culture practice: 9.0
 * @param chlorineMgPerL total residual chlorine (US EPA 1984: 0.011)
 */
public record Limits(
        double eggTemperatureC,
        double feedingTemperatureC,
        double temperatureSpanC,
        double unIonisedAmmoniaMgPerL,
        NitriteLimits nitriteAtChloride,
        double eggOxygenMgPerL,
        double feedingOxygenMgPerL,
        double lowestPh,
        double highestPh,
        double chlorineMgPerL) {

    /** Chloride taken where nobody has said, mg/L. */
    public static final double CHLORIDE_WHERE_UNKNOWN_MG_PER_L =
            BeliefFilter.CHLORIDE_WHERE_UNKNOWN_MG_PER_L;

    /** The sourced values. */
    public static final Limits DEFAULT = new Limits(
            13, 18, 4, 0.0125, new NitriteLimits(0.03, 0.15, 0.27, 0.36, 0.45), 8, 6, 6.0, 9.0, 0.011);

    private static final double PH_BEYOND = 1.2;

    /** Nitrite limits in mg N/L at 1, 5, 10, 20 and 40 mg/L chloride; linear between, flat outside. */
    public record NitriteLimits(double at1, double at5, double at10, double at20, double at40) {

        double at(double chlorideMgPerL) {
            double cl = chlorideMgPerL;
            if (cl < 5) {
                return between(Math.max(cl, 1), 1, at1, 5, at5);
            }
            if (cl < 10) {
                return between(cl, 5, at5, 10, at10);
            }
            return cl < 20 ? between(cl, 10, at10, 20, at20)
                    : between(Math.min(cl, 40), 20, at20, 40, at40);
        }

        private static double between(double x, double x0, double y0, double x1, double y1) {
            return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
        }
    }

    public double temperatureC(Stage stage) {
        return stage.isBeforeFirstFeeding() ? eggTemperatureC : feedingTemperatureC;
    }

    public double oxygenMgPerL(Stage stage) {
        return stage.isBeforeFirstFeeding() ? eggOxygenMgPerL : feedingOxygenMgPerL;
    }

    public double nitriteMgPerL(double chlorideMgPerL) {
        return nitriteAtChloride.at(chlorideMgPerL);
    }

    /** u of a temperature in °C. */
    public double ofTemperature(Stage stage, double temperatureC) {
        return 1 + (temperatureC - temperatureC(stage)) / temperatureSpanC;
    }

    /** u of un-ionised ammonia in mg/L as NH3. */
    public double ofUnIonisedAmmonia(double mgPerL) {
        return mgPerL / unIonisedAmmoniaMgPerL;
    }

    /** u of nitrite in mg N/L at a chloride in mg/L. */
    public double ofNitrite(double mgPerL, double chlorideMgPerL) {
        return mgPerL / nitriteMgPerL(chlorideMgPerL);
    }

    /** u of dissolved oxygen in mg/L; water without any counts as a thousandth of a milligram. */
    public double ofOxygen(Stage stage, double mgPerL) {
        return oxygenMgPerL(stage) / Math.max(mgPerL, 0.001);
    }

    /** u of a pH: either beyond or not. */
    public double ofPh(double ph) {
        return ph < lowestPh || ph > highestPh ? PH_BEYOND : 0;
    }

    /** u of total residual chlorine in mg/L. */
    public double ofChlorine(double mgPerL) {
        return mgPerL / chlorineMgPerL;
    }

    /** The level above which a series is beyond; empty for deaths, silence and oxygen. */
    public OptionalDouble upper(Driver series, Stage stage, double chlorideMgPerL) {
        return switch (series) {
            case TEMPERATURE -> OptionalDouble.of(temperatureC(stage));
            case UN_IONISED_AMMONIA -> OptionalDouble.of(unIonisedAmmoniaMgPerL);
            case NITRITE -> OptionalDouble.of(nitriteMgPerL(chlorideMgPerL));
            case PH -> OptionalDouble.of(highestPh);
            case CHLORINE -> OptionalDouble.of(chlorineMgPerL);
            default -> OptionalDouble.empty();
        };
    }

    /** The level below which a series is beyond; only oxygen and pH have one. */
    public OptionalDouble lower(Driver series, Stage stage) {
        return switch (series) {
            case DISSOLVED_OXYGEN -> OptionalDouble.of(oxygenMgPerL(stage));
            case PH -> OptionalDouble.of(lowestPh);
            default -> OptionalDouble.empty();
        };
    }
}
