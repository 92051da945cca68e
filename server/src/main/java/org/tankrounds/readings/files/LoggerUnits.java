package org.tankrounds.readings.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** In which unit a column stands: by its name, by its cells, or by a line above the table. */
final class LoggerUnits {
    static final String CELSIUS = "Cel";
    static final String FAHRENHEIT = "[degF]";
    static final String MG_PER_L = "mg/L";
    static final String PERCENT = "%";
    private static final Pattern SAYS_CELSIUS = Pattern.compile(
            "[°º]\\s?c(?![a-z])|celsius|centigrade|deg(rees)?[\\s_.]?c(?![a-z])|\\(c\\)|\\[c]|,\\s?c$|[\\s_]c$|^c$");
    private static final Pattern SAYS_FAHRENHEIT = Pattern.compile(
            "[°º]\\s?f(?![a-z])|fahrenheit|deg(rees)?[\\s_.]?f(?![a-z])|\\(f\\)|\\[f]|,\\s?f$|[\\s_]f$|^f$");
    private static final Pattern SAYS_MG_PER_L = Pattern.compile("mg|ppm");
    private static final Pattern SAYS_PERCENT = Pattern.compile("%|sat|percent");

    private LoggerUnits() {}

    static Guess<String> ofTemperature(FileTable table, int column) {
        List<String> places = new ArrayList<>();
        places.add(table.name(column));
        table.sample().forEach(row -> places.add(WrittenNumber.unit(row.cell(column))));
        Optional<String> said = only(places, SAYS_CELSIUS, CELSIUS, SAYS_FAHRENHEIT, FAHRENHEIT);
        List<String> titles = table.titles().stream().flatMap(row -> row.cells().stream()).toList();
        return said.or(() -> only(titles, SAYS_CELSIUS, CELSIUS, SAYS_FAHRENHEIT, FAHRENHEIT))
                .map(Guess::found).orElseGet(Guess::asked);
    }

    static Guess<String> ofOxygen(FileTable table, int column) {
        List<String> places = new ArrayList<>();
        places.add(table.name(column));
        table.sample().forEach(row -> places.add(WrittenNumber.unit(row.cell(column))));
        return only(places, SAYS_MG_PER_L, MG_PER_L, SAYS_PERCENT, PERCENT).map(Guess::found).orElseGet(Guess::asked);
    }

    /** Empty where nothing is said, or both. */
    private static Optional<String> only(List<String> places, Pattern one, String oneUnit, Pattern other,
            String otherUnit) {
        Set<String> units = new TreeSet<>();
        for (String place : places) {
            String text = place.strip().toLowerCase(Locale.ROOT);
            if (one.matcher(text).find()) {
                units.add(oneUnit);
            }
            if (other.matcher(text).find()) {
                units.add(otherUnit);
            }
        }
        return units.size() == 1 ? units.stream().findFirst() : Optional.empty();
    }
}
