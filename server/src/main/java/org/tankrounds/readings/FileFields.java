package org.tankrounds.readings;

import java.time.ZoneId;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    private final Understanding read;
    private final ZoneId zone;
    private final FileWording wording;
    private final List<FormField> questions = new ArrayList<>();
    private final List<FormField> understood = new ArrayList<>();

    FileFields(Understanding read, ZoneId zone, FileWording wording) {
        this.read = read;
        this.zone = zone;
        this.wording = wording;
        if (read.timesToChooseFrom().size() > 1 || !read.timesToChooseFrom().get(0).sure()) {
            add(Choices.TIME, read.time(), times());
        }
        add(Choices.ORDER, read.order(), List.of(option("order", "dmy"), option("order", "mdy")));
        if (!read.saysZoneInEachRow()) {
            add(Choices.ZONE, read.zone(), zones());
        }
        column(Choices.TEMPERATURE, Analyte.TEMPERATURE);
        add(Choices.TEMPERATURE_UNIT, read.temperatureUnit(), List.of(
                new Option("Cel", "°C"), new Option("[degF]", "°F")));
        column(Choices.PH, Analyte.PH);
        column(Choices.OXYGEN, Analyte.DISSOLVED_OXYGEN);
        add(Choices.OXYGEN_UNIT, read.oxygenUnit(), List.of(
                new Option("mg/L", "mg/L"), new Option("%", say("oxygen_unit.percent"))));
        add(Choices.DECIMAL, read.decimal(), List.of(option("decimal", "point"), option("decimal", "comma")));
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

    private String say(String key, Object... with) {
        return wording.say("loggers.box." + key, with);
    }

    private Option option(String box, String value) {
        return new Option(value, say(box + "." + value));
    }

    private void column(String name, Analyte analyte) {
        List<Option> options = new ArrayList<>();
        read.columnsToChooseFrom().forEach(column -> options.add(
                new Option(Integer.toString(column), columnName(column))));
        options.add(new Option("none", say("noColumn")));
        Guess<Integer> guess = read.column(analyte);
        if (guess.source() == Guess.Source.NO_MATTER && read.columnsToChooseFrom().size() > read.taken().size()) {
            understood.add(field(name, "", "", say("noneFound"), options));
        } else {
            add(name, guess, options);
        }
    }

    private <T> void add(String name, Guess<T> guess, List<Option> options) {
        switch (guess.source()) {
            case ASKED -> questions.add(field(name, "", "", say("choose"), options));
            case SAID -> understood.add(
                    field(name, say("youSaid"), read.said(name), say("asFileSays"), options));
            case FOUND -> understood.add(
                    field(name, say("fileSays"), "", found(guess.value().orElseThrow(), options), options));
            case NO_MATTER -> { }
        }
    }

    private FormField field(String name, String hint, String value, String blank, List<Option> options) {
        List<Option> all = new ArrayList<>();
        all.add(new Option("", blank));
        all.addAll(options);
        FormField field = FormField.select(name, say(name), value, all);
        return hint.isEmpty() ? field : field.withHint(hint);
    }

    /** How what was found is called among what can be chosen. */
    private String found(Object value, List<Option> options) {
        String code = value instanceof Character mark ? (mark == '.' ? "point" : "comma")
                : value instanceof DateOrder order ? order.code()
                : value instanceof TimeColumns time ? time.code() : value.toString();
        return options.stream().filter(option -> option.value().equals(code)).map(Option::text).findFirst()
                .or(read::zoneInHeader).orElse(say("asFileSays"));
    }

    private List<Option> times() {
        return read.timesToChooseFrom().stream().map(time -> new Option(time.code(), columnNames(time))).toList();
    }

    private String columnNames(TimeColumns time) {
        String date = columnName(time.date());
        if (time.date() != time.clock()) {
            return say("columns", date, columnName(time.clock()));
        }
        return time.how() == TimeColumns.How.DAY_ALONE ? say("dayAlone", date) : date;
    }

    private List<Option> zones() {
        String name = zone.getDisplayName(TextStyle.FULL, wording.locale());
        return Understanding.ZONES.stream().map(code -> new Option(code, say("zone." + code, name))).toList();
    }

    private String columnName(int column) {
        String name = FileWording.cell(read.name(column));
        return name.isEmpty() ? say("column", column + 1) : name;
    }

    private void addDelimiter() {
        List<Option> options = Stream.of("comma", "semicolon", "tab", "bar")
                .map(code -> option("delimiter", code)).toList();
        Map<Character, String> codes = Map.of(',', "comma", ';', "semicolon", '\t', "tab", '|', "bar");
        Guess<String> guess = new Guess<>(Optional.of(codes.get(read.delimiter())),
                read.delimiterSaid() ? Guess.Source.SAID : Guess.Source.FOUND);
        add(Choices.DELIMITER, guess, options);
    }
}
