package org.tankrounds.readings;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.ReadingPage;
import org.tankrounds.pages.ReadingPage.Version;
import org.tankrounds.places.Kit;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.LogPageMaker.Message;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/** Makes the page of one reading: its versions, and the form with which it is corrected. */
final class ReadingPageMaker {
    static final String REASON = "reason";
    static final String VERSION = "version";
    private static final DateTimeFormatter DAY_AND_TIME = DateTimeFormatter.ofPattern("d MMMM, H:mm", Locale.ENGLISH);
    private static final DateTimeFormatter TYPED_TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ENGLISH);

    private final Tank tank;
    private final List<Reading> versions;
    private final Map<Integer, String> names;

    /** @param names of people, by number */
    ReadingPageMaker(Tank tank, List<Reading> versions, Map<Integer, String> names) {
        this.tank = tank;
        this.versions = versions;
        this.names = names;
    }

    /** Boxes for what was written down, in its own units, then for what else a class reads. */
    static Map<Analyte, UnitForm> forms(Tank tank, Kit kit, Reading holding) {
        Map<Analyte, UnitForm> forms = new LinkedHashMap<>();
        holding.values().forEach(value -> forms.put(value.analyte(), value.form()));
        LogBoxes boxes = new LogBoxes(tank, kit);
        Stream.of(List.of(Analyte.TEMPERATURE), LogBoxes.HUSBANDRY, LogBoxes.ALWAYS)
                .flatMap(List::stream)
                .forEach(analyte -> forms.putIfAbsent(analyte, boxes.form(analyte)));
        return forms;
    }

    /** The form as it opens: what holds now. */
    static LogForm filledIn(Tank tank, Reading holding) {
        Map<String, String> text = new TreeMap<>();
        for (EnteredValue value : holding.values()) {
            text.put(value.analyte().code(), value.value().toPlainString());
            if (value.analyte() == Analyte.TEMPERATURE) {
                text.put(value.analyte().code() + LogForm.UNIT, value.form().unit());
            }
        }
        text.put(LogForm.MEASURED_AT, typedTime(tank, holding.measuredAt()));
        holding.by().ifPresent(by -> text.put(LogForm.BY, by));
        holding.note().ifPresent(note -> text.put(LogForm.NOTE, note));
        return PersonalAsks.settled(new LogForm(text));
    }

    static String typedTime(Tank tank, Instant measuredAt) {
        return TYPED_TIME.format(measuredAt.atZone(tank.zone()));
    }

    /** @param overtaken empty unless somebody else has corrected it meanwhile */
    ReadingPage page(Map<Analyte, UnitForm> forms, LogForm form, Message message, String overtaken) {
        LogFields fields = new LogFields(form, message.errors());
        List<FormField> values = forms.keySet().stream().map(analyte -> fields.box(analyte, forms.get(analyte)))
                .toList();
        FormField measuredAt = fields.measuredAt("school’s clock");
        FormField reason = fields.field(REASON, "Why is it corrected?", "", "text");
        List<FormField> wrong = Stream.concat(values.stream(),
                Stream.of(measuredAt, fields.by(), fields.note(), reason)).filter(FormField::wrong).toList();
        String heading = "Reading of " + DAY_AND_TIME.format(versions.get(0).measuredAt().atZone(tank.zone()));
        String title = wrong.isEmpty() && overtaken.isEmpty() ? heading : "Error: " + heading;
        return new ReadingPage(title, heading, tank.school() + ", " + tank.classroom(), "/tanks/" + tank.code(),
                "/tanks/" + tank.code() + "/readings/" + versions.get(0).code(), versions.get(0).version(), overtaken,
                versions.stream().map(this::version).toList(), message.asks(), fields.kept(message.confirmed()),
                fields.scales(tank.thermometerUnit()), values, fields.by(), fields.note(), measuredAt, reason, wrong);
    }

    private Version version(Reading reading) {
        List<String> lines = new ArrayList<>();
        for (EnteredValue value : reading.values()) {
            lines.add(Wording.name(value.analyte()) + " " + Wording.value(value) + mark(reading, value.analyte()));
        }
        String heading = "Version " + reading.version()
                + (reading.holds() ? ", the one that counts" : ", no longer counts");
        String measured = "Measured " + local(reading.measuredAt())
                + doubt(reading);
        return new Version(heading, who(reading), reading.reason().orElse(""), measured, lines, reading.note()
                .orElse(""));
    }

    private static String doubt(Reading reading) {
        if (!reading.timeDoubtful()) {
            return "";
        }
        return reading.measuredAt().isAfter(reading.receivedAt()) ? " (a time that was still to come)"
                : " (doubtful: the clock of the device was far off)";
    }

    private static String mark(Reading reading, Analyte analyte) {
        if (reading.flags().contains("unlikely:" + analyte.code())) {
            return " (unusual, nobody confirmed it yet)";
        }
        return reading.flags().contains("confirmed:" + analyte.code()) ? " (unusual, confirmed)" : "";
    }

    private String who(Reading reading) {
        return "By " + writer(reading) + reading.by().map(by -> " (" + by + ")").orElse("") + ", received "
                + local(reading.receivedAt());
    }

    private String writer(Reading reading) {
        if (reading.cardId().isPresent()) {
            return "the class, with its card";
        }
        return reading.personId().isPresent()
                ? names.getOrDefault(reading.personId().getAsInt(), "somebody who has left") : "a probe or script";
    }

    private String local(Instant time) {
        return DAY_AND_TIME.format(time.atZone(tank.zone()));
    }
}
