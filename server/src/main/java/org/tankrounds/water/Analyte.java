package org.tankrounds.water;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What can be read of a tank, or done to it and counted. Each has one canonical unit, in which all
 * of the core computes; {@link Units} converts at the door.
 *
 * <p>{@link #possible} is what a person can have meant to write at all (outside it a value is
 * refused; water far below freezing is ice, and no thermometer was read in it);
 * {@link #likely} is what classroom tanks show (outside it, ask back once). Common practice, no source.
 */
public enum Analyte {
    /** Water temperature, °C. */
    TEMPERATURE("temperature", "°C", new Range(-10, 100), new Range(0.5, 26),
            UnitForm.of("Cel"), UnitForm.of("[degF]")),
    /** pH. */
    PH("ph", "pH", new Range(0, 14), new Range(5.5, 9.0), UnitForm.of("[pH]")),
    /** Un-ionised and ionised ammonia together, mg N/L. */
    TOTAL_AMMONIA("total_ammonia", "mg/L as N", new Range(0, 500), new Range(0, 12),
            form("N"), form("NH3"), form("NH4")),
    /** Nitrite, mg N/L. */
    NITRITE("nitrite", "mg/L as N", new Range(0, 500), new Range(0, 15), form("N"), form("NO2")),
    /** Nitrate, mg N/L. */
    NITRATE("nitrate", "mg/L as N", new Range(0, 5000), new Range(0, 80), form("N"), form("NO3")),
    /** Dissolved oxygen, mg/L. */
    DISSOLVED_OXYGEN("dissolved_oxygen", "mg/L", new Range(0, 50), new Range(3, 15),
            UnitForm.of("mg/L"), UnitForm.of("%")),
    /** Alkalinity, mg/L as CaCO3. */
    ALKALINITY("alkalinity", "mg/L as CaCO₃", new Range(0, 5000), new Range(0, 400),
            form("CaCO3"), UnitForm.of("[dH]")),
    /** Hardness, mg/L as CaCO3. */
    HARDNESS("hardness", "mg/L as CaCO₃", new Range(0, 5000), new Range(0, 500),
            form("CaCO3"), UnitForm.of("[dH]")),
    /** Chloride, mg/L. */
    CHLORIDE("chloride", "mg/L", new Range(0, 20000), new Range(0, 500), UnitForm.of("mg/L")),
    /** Total residual chlorine, mg Cl2/L. The last colour of many strips is 10; few taps bring 5 (from memory). */
    CHLORINE("chlorine", "mg/L", new Range(0, 10), new Range(0, 5), UnitForm.of("mg/L")),
    /** Fish or eggs found dead and removed since the last count. */
    DEATHS("deaths", "", new Range(0, 100_000), new Range(0, 40), UnitForm.of("1")),
    /** Feed given since the last note, g. */
    FEED("feed", "g", new Range(0, 10_000), new Range(0, 60), UnitForm.of("g")),
    /** Share of the volume replaced, %. */
    WATER_CHANGE("water_change", "%", new Range(0, 100), new Range(0, 60), UnitForm.of("%"));

    private final String code;
    private final String unitLabel;
    private final Range possible;
    private final Range likely;
    private final List<UnitForm> accepted;

    Analyte(String code, String unitLabel, Range possible, Range likely, UnitForm... accepted) {
        this.code = code;
        this.unitLabel = unitLabel;
        this.possible = possible;
        this.likely = likely;
        this.accepted = List.of(accepted);
    }

    /** The analyte of a code of the public interface, exactly as spelt there. */
    public static Optional<Analyte> ofCode(String code) {
        return Stream.of(values()).filter(analyte -> analyte.code.equals(code)).findFirst();
    }

    /** The public interface's code, such as {@code total_ammonia}. */
    public String code() {
        return code;
    }

    /** The canonical unit as a person reads it; empty for a count. */
    public String unitLabel() {
        return unitLabel;
    }

    /** What was done or counted rather than read from the water. */
    public boolean isHusbandry() {
        return this == DEATHS || this == FEED || this == WATER_CHANGE;
    }

    /** A count of animals: whole numbers only. */
    public boolean isWholeNumber() {
        return this == DEATHS;
    }

    /** So much of it in a litre: a method may detect none. */
    public boolean isDissolved() {
        return !isHusbandry() && this != TEMPERATURE && this != PH;
    }

    /** Whether its 0 says "below half the first step above it", never none at all. Oxygen's is a meter's. */
    public boolean isUndetectedAtZero() {
        return isDissolved() && this != DISSOLVED_OXYGEN;
    }

    /** Values that can be meant at all, in the canonical unit. */
    public Range possible() {
        return possible;
    }

    /** Values that a classroom tank shows, in the canonical unit; outside, ask back once. */
    public Range likely() {
        return likely;
    }

    /**
     * Whether a classroom tank shows such a value; any other counts for little until somebody says that it is right.
     */
    public boolean isLikely(double value) {
        return likely.holds(value);
    }

    /** The units and forms of the public interface, the canonical one first. */
    public List<UnitForm> accepted() {
        return accepted;
    }

    /** The canonical unit and form. */
    public UnitForm canonical() {
        return accepted.get(0);
    }

    /** Whether this unit and form is one of {@link #accepted}. */
    public boolean accepts(UnitForm form) {
        return accepted.contains(form);
    }

    /** The accepted unit and form for a unit and a form as written ({@code null} or empty: none). */
    public Optional<UnitForm> form(String unit, String as) {
        UnitForm written = new UnitForm(unit, as == null ? "" : as);
        return accepts(written) ? Optional.of(written) : Optional.empty();
    }

    /** The accepted units in words, for a refusal: {@code mg/L as N, mg/L as NO2}. */
    public String acceptedSpelling() {
        return String.join(", ", accepted.stream().map(UnitForm::spelling).toList());
    }

    /** A mass per litre of the named form; a static of its own because enum constants come first. */
    private static UnitForm form(String as) {
        return new UnitForm("mg/L", as);
    }
}
