package org.tankrounds.readings;

import java.time.ZoneId;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.readings.files.Choices;
import org.tankrounds.readings.files.DateOrder;
import org.tankrounds.readings.files.Guess;
import org.tankrounds.readings.files.TimeColumns;
import org.tankrounds.readings.files.Understanding;
import org.tankrounds.water.Analyte;

/** The boxes in which it is said how a file is to be read: those that must be filled in, and those that may. */
final class FileFields {
    private static final String FILE_SAYS = "So says the file.";
    private static final String SOMEBODY_SAYS = "As you said.";

    private final Understanding read;
    private final ZoneId zone;
    private final List<FormField> questions = new ArrayList<>();
    private final List<FormField> understood = new ArrayList<>();

    FileFields(Understanding read, ZoneId zone) {
        this.read = read;
        this.zone = zone;
        if (read.timesToChooseFrom().size() > 1) {
            add(Choices.TIME, "Which column has the time", read.time(), times());
        }
        add(Choices.ORDER, "Order of day and month", read.order(), List.of(
                new Option("dmy", "Day, then month"), new Option("mdy", "Month, then day")));
        if (!read.saysZoneInEachRow()) {
            add(Choices.ZONE, "Clock of the logger", read.zone(), zones());
        }
        column(Choices.TEMPERATURE, "Temperature of the water", Analyte.TEMPERATURE);
        add(Choices.TEMPERATURE_UNIT, "Unit of temperature", read.temperatureUnit(), List.of(
                new Option("Cel", "°C"), new Option("[degF]", "°F")));
        column(Choices.PH, "pH", Analyte.PH);
        column(Choices.OXYGEN, "Dissolved oxygen", Analyte.DISSOLVED_OXYGEN);
        add(Choices.OXYGEN_UNIT, "Unit of oxygen", read.oxygenUnit(), List.of(
                new Option("mg/L", "mg/L"), new Option("%", "% of saturation")));
        add(Choices.DECIMAL, "Decimal mark", read.decimal(), List.of(
                new Option("point", "Point: 11.3"), new Option("comma", "Comma: 11,3")));
        addDelimiter();
    }

    List<FormField> questions() {
        return questions;
    }

    List<FormField> understood() {
        return understood;
    }

    /** What the boxes say of themselves, by name; those left to the file say nothing. */
    Map<String, String> said() {
        return understood.stream().filter(field -> !field.value().isEmpty())
                .collect(Collectors.toMap(FormField::name, FormField::value));
    }

    private void column(String name, String label, Analyte analyte) {
        List<Option> options = new ArrayList<>();
        read.columnsToChooseFrom().forEach(column -> options.add(
                new Option(Integer.toString(column), columnName(column))));
        options.add(new Option("none", "No column"));
        Guess<Integer> guess = read.column(analyte);
        if (guess.source() == Guess.Source.NO_MATTER && read.columnsToChooseFrom().size() > read.taken().size()) {
            understood.add(field(name, label, "", "", "None found", options));
        } else {
            add(name, label, guess, options);
        }
    }

    private <T> void add(String name, String label, Guess<T> guess, List<Option> options) {
        switch (guess.source()) {
            case ASKED -> questions.add(field(name, label, "", "", FileWording.CHOOSE, options));
            case SAID -> understood.add(field(name, label, SOMEBODY_SAYS, read.said(name), "As the file says", options));
            case FOUND -> understood.add(field(
                    name, label, FILE_SAYS, "", found(guess.value().orElseThrow(), options), options));
            case NO_MATTER -> { }
        }
    }

    private static FormField field(String name, String label, String hint, String value, String blank,
            List<Option> options) {
        List<Option> all = new ArrayList<>();
        all.add(new Option("", blank));
        all.addAll(options);
        FormField field = FormField.select(name, label, value, all);
        return hint.isEmpty() ? field : field.withHint(hint);
    }

    /** How what was found is called among what can be chosen. */
    private String found(Object value, List<Option> options) {
        String code = value instanceof Character mark ? (mark == '.' ? "point" : "comma")
                : value instanceof DateOrder order ? order.code()
                : value instanceof TimeColumns time ? time.code() : value.toString();
        return options.stream().filter(option -> option.value().equals(code)).map(Option::text).findFirst()
                .or(read::zoneInHeader).orElse("As the file says");
    }

    private List<Option> times() {
        return read.timesToChooseFrom().stream().map(time -> new Option(time.code(), time.date() == time.clock()
                ? columnName(time.date()) : columnName(time.date()) + " and " + columnName(time.clock()))).toList();
    }

    private List<Option> zones() {
        String name = zone.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
        Map<String, String> texts = Map.of("school", "The school’s clock, summer and winter: " + name,
                "standard", "The school’s winter clock all year: " + name, "utc", "UTC");
        return Understanding.ZONES.stream().map(code -> new Option(code, texts.get(code))).toList();
    }

    private String columnName(int column) {
        String name = FileWording.cell(read.name(column));
        return name.isEmpty() ? "Column " + (column + 1) : name;
    }

    private void addDelimiter() {
        List<Option> options = List.of(new Option("comma", "Comma"), new Option("semicolon", "Semicolon"),
                new Option("tab", "Tab"), new Option("bar", "Upright bar"));
        Map<Character, String> codes = Map.of(',', "comma", ';', "semicolon", '\t', "tab", '|', "bar");
        Guess<String> guess = new Guess<>(Optional.of(codes.get(read.delimiter())),
                read.delimiterSaid() ? Guess.Source.SAID : Guess.Source.FOUND);
        add(Choices.DELIMITER, "Between the columns", guess, options);
    }
}
