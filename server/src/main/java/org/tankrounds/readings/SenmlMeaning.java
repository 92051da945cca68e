package org.tankrounds.readings;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.readings.SenmlPack.Resolved;
import org.tankrounds.water.Analyte;

/**
 * What a record means here: its name says the analyte, its unit how the number is to be taken. Units as SenML's
 * registry has them: Cel, K, pH, kg/m3, / and % are primary units (RFC 8428 §12.1), mg/L is a secondary one
 * (RFC 8798's registry; from memory).
 */
final class SenmlMeaning {
    private static final Map<String, Analyte> NAMES = Map.ofEntries(
            Map.entry("temperature", Analyte.TEMPERATURE), Map.entry("temp", Analyte.TEMPERATURE),
            Map.entry("water_temperature", Analyte.TEMPERATURE), Map.entry("watertemperature", Analyte.TEMPERATURE),
            Map.entry("water_temp", Analyte.TEMPERATURE), Map.entry("ph", Analyte.PH),
            Map.entry("dissolved_oxygen", Analyte.DISSOLVED_OXYGEN), Map.entry("do", Analyte.DISSOLVED_OXYGEN),
            Map.entry("dissolvedoxygen", Analyte.DISSOLVED_OXYGEN), Map.entry("oxygen", Analyte.DISSOLVED_OXYGEN));
    private static final String NAMES_THAT_ARE_KNOWN = "temperature, ph or dissolved_oxygen";
    /** The end of a device's own address, such as 10e2073a01080063: it says nothing of what is measured. */
    private static final Pattern ADDRESS = Pattern.compile("[0-9a-f]{8,}", Pattern.CASE_INSENSITIVE);
    private static final BigDecimal ZERO_CELSIUS_K = new BigDecimal("273.15");

    /** How many digits of a unit of ours make one of theirs, and what lies between. */
    private record Conversion(String unit, int digits, BigDecimal less) {}

    private static final Map<Analyte, Map<String, Conversion>> UNITS = Map.of(
            Analyte.TEMPERATURE, Map.of("Cel", same("Cel"), "K", new Conversion("Cel", 0, ZERO_CELSIUS_K)),
            Analyte.PH, Map.of("pH", same("[pH]")),
            Analyte.DISSOLVED_OXYGEN, Map.of("mg/L", same("mg/L"), "kg/m3", new Conversion("mg/L", 3, BigDecimal.ZERO),
                    "%", same("%"), "/", new Conversion("%", 2, BigDecimal.ZERO)));
    private static final Map<Analyte, List<String>> SPELLINGS = Map.of(
            Analyte.TEMPERATURE, List.of("Cel", "K"), Analyte.PH, List.of("pH"),
            Analyte.DISSOLVED_OXYGEN, List.of("mg/L", "kg/m3", "%", "/"));

    private SenmlMeaning() {}

    /**
     * The record's value in a unit of ours.
     *
     * @param faults hears of it where it means nothing here
     * @return empty where it is at fault, or has a text for a value
     */
    static Optional<GivenValue> of(Resolved record, Faults faults) {
        Optional<Analyte> analyte = analyte(record);
        if (analyte.isEmpty()) {
            faults.add(record.at() + "/n", "The last part of the name “" + record.name() + "” says what was measured: "
                    + NAMES_THAT_ARE_KNOWN + ". Leave other records out.");
            return Optional.empty();
        }
        Conversion conversion = UNITS.get(analyte.get()).get(record.unit());
        if (conversion == null && !(analyte.get() == Analyte.PH && record.unit().isEmpty())) {
            faults.add(record.at() + "/u", "The unit (u or bu) of " + analyte.get().code() + " is one of: "
                    + String.join(", ", SPELLINGS.get(analyte.get())) + ".");
            return Optional.empty();
        }
        Conversion taken = conversion == null ? same("[pH]") : conversion;
        return record.value().map(value -> new GivenValue(record.at(), analyte.get(),
                ReadingParser.plain(value.movePointRight(taken.digits()).subtract(taken.less())), taken.unit(),
                Optional.empty(), Optional.empty(), false, false));
    }

    /** The last part of its name; a name that is nothing but a device's address leaves it to the unit. */
    private static Optional<Analyte> analyte(Resolved record) {
        String last = record.name().replaceFirst(".*[:/.]", "").toLowerCase(Locale.ROOT).replace('-', '_');
        Optional<Analyte> named = Optional.ofNullable(NAMES.get(last));
        return named.isPresent() || !ADDRESS.matcher(last).matches() ? named
                : UNITS.keySet().stream().filter(analyte -> analyte != Analyte.DISSOLVED_OXYGEN)
                        .filter(analyte -> UNITS.get(analyte).containsKey(record.unit())).findFirst();
    }

    private static Conversion same(String unit) {
        return new Conversion(unit, 0, BigDecimal.ZERO);
    }
}
