package org.tankrounds.summary;

import java.util.Optional;
import org.tankrounds.water.Analyte;

/**
 * How an analyte, in its canonical unit, is called in the vocabulary of the US EPA's Water Quality Exchange (domain
 * lists Characteristic, MeasureUnit, MethodSpeciation) and in UCUM. What was done rather than measured is not in it.
 *
 * @param unit of WQX
 * @param speciation what the number counts; empty where nothing can be mistaken
 * @param ucum case-sensitive code
 */
record Wqx(String characteristic, String unit, String speciation, String ucum) {
    /** The condition of a result that was below what the method shows. */
    static final String NOT_DETECTED = "Not Detected";
    private static final String MG_PER_L = "mg/L";

    static Optional<Wqx> of(Analyte analyte) {
        return switch (analyte) {
            case TEMPERATURE -> Optional.of(new Wqx("Temperature, water", "deg C", "", "Cel"));
            case PH -> Optional.of(new Wqx("pH", "None", "", "[pH]"));
            case TOTAL_AMMONIA -> milligrams("Ammonia and ammonium", "as N");
            case NITRITE -> milligrams("Nitrite", "as N");
            case NITRATE -> milligrams("Nitrate", "as N");
            case DISSOLVED_OXYGEN -> milligrams("Dissolved oxygen (DO)", "");
            case ALKALINITY -> milligrams("Alkalinity, total", "as CaCO3");
            case HARDNESS -> milligrams("Hardness, Ca, Mg", "as CaCO3");
            case CHLORIDE -> milligrams("Chloride", "");
            case CHLORINE -> milligrams("Chlorine, Total Residual", "");
            case DEATHS, FEED, WATER_CHANGE -> Optional.empty();
        };
    }

    private static Optional<Wqx> milligrams(String characteristic, String speciation) {
        return Optional.of(new Wqx(characteristic, MG_PER_L, speciation, MG_PER_L));
    }
}
