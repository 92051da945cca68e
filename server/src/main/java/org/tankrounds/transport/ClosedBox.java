package org.tankrounds.transport;

/**
 * Fish in a box without air: {@code hours = (DO0 − DOmin) V / (M q)}, oxygen in mg/L, V in L, M in kg, q in mg/kg/h.
 *
 * <p>Holds for a lid shut on still water; what a battery pump adds is not counted, nor what carbon dioxide does
 * meanwhile: it stays below 20 to 30 mg/L where the box is aired (from memory), which pages say in words.
 *
 * @param waterL above 0
 * @param biomassG of all fish, g; above 0
 */
public record ClosedBox(double waterL, double biomassG) {

    /** Oxygen that small active trout breathe at 10 to 12 °C, mg/kg/h (from memory). */
    public static final double BREATHED_MG_PER_KG_H = 300;
    /** Oxygen to keep on the way, mg/L (from memory). */
    public static final double LEAST_MG_PER_L = 7;
    /** Up to here there is room, g/L, with air from a battery, a lid and an ice bottle (common practice, no source). */
    public static final double ROOMY_G_PER_L = 10;
    /** The most, g/L, with the same (common practice, no source). */
    public static final double MOST_G_PER_L = 20;
    /** What both are meant for, h (common practice, no source). */
    public static final double LONGEST_H = 2;

    /** What is to be said of a box. */
    public enum Crowding { ROOMY, TIGHT, TOO_TIGHT }

    public ClosedBox {
        if (!(waterL > 0) || !(biomassG > 0) || !Double.isFinite(waterL) || !Double.isFinite(biomassG)) {
            throw new IllegalArgumentException(
                    "water and biomass must be above 0, were " + waterL + " L and " + biomassG + " g");
        }
    }

    /** Hours until oxygen has fallen to {@link #LEAST_MG_PER_L}; 0 where it is there already. */
    public double hours(double startMgPerL) {
        return hours(startMgPerL, LEAST_MG_PER_L, BREATHED_MG_PER_KG_H);
    }

    /** Hours until oxygen has fallen to a level; 0 where it is there already. */
    public double hours(double startMgPerL, double leastMgPerL, double breathedMgPerKgH) {
        return Math.max(0, startMgPerL - leastMgPerL) * waterL / (biomassG / 1000 * breathedMgPerKgH);
    }

    public double densityGPerL() {
        return biomassG / waterL;
    }

    public Crowding crowding() {
        if (densityGPerL() <= ROOMY_G_PER_L) {
            return Crowding.ROOMY;
        }
        return densityGPerL() <= MOST_G_PER_L ? Crowding.TIGHT : Crowding.TOO_TIGHT;
    }

    /** Litres that as many fish need so as to be no tighter than a density. */
    public static double waterForL(double biomassG, double densityGPerL) {
        return biomassG / densityGPerL;
    }
}
