package org.tankrounds.readings.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What somebody said of a file, by the names that the page's form and the database give it. What is not among the
 * answers that there are counts as not said.
 */
public record Choices(Map<String, String> said) {
    public static final String DELIMITER = "delimiter";
    public static final String DECIMAL = "decimal";
    public static final String TIME = "time";
    public static final String ORDER = "order";
    public static final String ZONE = "zone";
    public static final String TEMPERATURE = "temperature";
    public static final String TEMPERATURE_UNIT = "temperature_unit";
    public static final String PH = "ph";
    public static final String OXYGEN = "oxygen";
    public static final String OXYGEN_UNIT = "oxygen_unit";
    /** What becomes of values that differ from what is stored for the same time: keep those, or take the file's. */
    public static final String CONFLICTS = "conflicts";
    public static final String FROM_FILE = "file";
    public static final List<String> NAMES = List.of(DELIMITER, DECIMAL, TIME, ORDER, ZONE, TEMPERATURE,
            TEMPERATURE_UNIT, PH, OXYGEN, OXYGEN_UNIT, CONFLICTS);
    /** A column that there is not. */
    static final int NO_COLUMN = -1;
    static final String NONE = "none";

    private static final Map<String, Character> DELIMITER_CODES =
            Map.of("tab", '\t', "semicolon", ';', "comma", ',', "bar", '|');

    public Choices {
        said = Map.copyOf(said);
    }

    public static Choices none() {
        return new Choices(Map.of());
    }

    /** These, and others where these say nothing. */
    public Choices or(Choices others) {
        Map<String, String> all = new LinkedHashMap<>(others.said);
        all.putAll(said);
        return new Choices(all);
    }

    public Choices without(String name) {
        Map<String, String> all = new LinkedHashMap<>(said);
        all.remove(name);
        return new Choices(all);
    }

    public boolean takesFromFile() {
        return FROM_FILE.equals(said.get(CONFLICTS));
    }

    static String code(char delimiter) {
        return DELIMITER_CODES.entrySet().stream().filter(entry -> entry.getValue() == delimiter)
                .map(Map.Entry::getKey).findFirst().orElseThrow();
    }

    Optional<String> text(String name) {
        return Optional.ofNullable(said.get(name)).filter(text -> !text.isEmpty());
    }

    Optional<Character> delimiter() {
        return text(DELIMITER).map(DELIMITER_CODES::get);
    }

    Optional<Character> decimal() {
        return text(DECIMAL).filter(text -> List.of("point", "comma").contains(text))
                .map(text -> text.equals("point") ? '.' : ',');
    }

    Optional<DateOrder> order() {
        return text(ORDER).flatMap(text -> List.of(DateOrder.values()).stream()
                .filter(order -> order.code().equals(text)).findFirst());
    }

    /** Empty where nothing was said; {@link #NO_COLUMN} where somebody said that there is none. */
    OptionalInt column(String name) {
        String text = said.getOrDefault(name, "");
        if (text.equals(NONE)) {
            return OptionalInt.of(NO_COLUMN);
        }
        return text.matches("\\d{1,3}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
    }
}
