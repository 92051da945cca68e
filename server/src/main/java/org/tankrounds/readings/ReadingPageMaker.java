package org.tankrounds.readings;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** Makes the page of one reading: its versions, and the form with which it is corrected. */
final class ReadingPageMaker {
    static final String REASON = "reason";
    static final String VERSION = "version";
    static final String ACT = "act";
    static final String TAKE_BACK = "take_back";
    private static final DateTimeFormatter TYPED_TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ENGLISH);

    private final Tank tank;
    private final List<Reading> versions;
    private final Map<Integer, String> names;
    private final Speech speech;

    /** @param names of people, by number */
    ReadingPageMaker(Tank tank, List<Reading> versions, Map<Integer, String> names, Speech speech) {
        this.tank = tank;
        this.versions = versions;
        this.names = names;
        this.speech = speech;
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
    ReadingPage page(Kit kit, LogForm form, Message message, String overtaken) {
        Map<Analyte, UnitForm> forms = forms(tank, kit, versions.get(0));
        LogFields fields = new LogFields(form, message.errors(), speech);
        List<FormField> values = forms.keySet().stream().map(analyte -> fields.box(analyte, forms.get(analyte)))
                .toList();
        FormField measuredAt = fields.measuredAt(speech.say("readings.page.schoolClock"));
        FormField reason = fields.field(REASON, speech.say("readings.page.why"), "", "text");
        List<FormField> wrong = Stream.concat(values.stream(),
                Stream.of(measuredAt, fields.by(), fields.note(), reason)).filter(FormField::wrong).toList();
        String heading = speech.say("readings.page.heading", local(versions.get(0).measuredAt()));
        boolean hasError = !wrong.isEmpty() || !overtaken.isEmpty();
        String title = !hasError && !message.asks().isEmpty() ? speech.say("frame.titleAsking", heading)
                : speech.titled(hasError, heading);
        return new ReadingPage(title, heading, tank.school() + ", " + tank.classroom(), "/tanks/" + tank.code(),
                "/tanks/" + tank.code() + "/readings/" + versions.get(0).code(), versions.get(0).version(), overtaken,
                versions.stream().map(this::version).toList(), message.asks(),
                ShownCards.beside(fields.kept(message.confirmed()), kit),
                fields.scales(tank.thermometerUnit()), values, fields.by(), fields.note(), measuredAt, reason, wrong,
                gone(), form.text(ACT).equals(TAKE_BACK) && !message.asks().isEmpty());
    }

    /** Why nothing of it counts any more; empty where a version does. */
    private String gone() {
        Reading newest = versions.get(0);
        if (newest.holds()) {
            return "";
        }
        return newest.isTakingBack()
                ? speech.say("readings.page.takenBack", writer(newest), local(newest.receivedAt()))
                : speech.say("readings.page.replaced");
    }

    private Version version(Reading reading) {
        if (reading.isTakingBack()) {
            return new Version(speech.say("readings.page.versionBack"), speech.say("readings.page.backBy",
                    writer(reading), local(reading.receivedAt())), reading.reason().orElse(""), "", List.of(), "");
        }
        List<String> lines = reading.values().stream().map(value -> speech.say(line(reading, value))).toList();
        String heading = reading.holds() ? "readings.page.versionCounts" : "readings.page.versionOld";
        return new Version(speech.say(heading, reading.version()), who(reading), reading.reason().orElse(""),
                speech.say(measured(reading), local(reading.measuredAt())), lines, reading.note().orElse(""));
    }

    private static String measured(Reading reading) {
        if (!reading.timeDoubtful()) {
            return "readings.page.measured";
        }
        return reading.measuredAt().isAfter(reading.receivedAt())
                ? "readings.page.measuredAhead" : "readings.page.measuredDoubtful";
    }

    private static Saying line(Reading reading, EnteredValue value) {
        String code = value.analyte().code();
        String mark = reading.flags().contains("unlikely:" + code) ? "readings.page.valueUnlikely"
                : reading.flags().contains("confirmed:" + code) ? "readings.page.valueConfirmed"
                : "readings.page.value";
        return Saying.of(mark, Wording.name(value.analyte()), Wording.value(value));
    }

    private String who(Reading reading) {
        String received = local(reading.receivedAt());
        return reading.by().map(by -> speech.say("readings.page.byLabelled", writer(reading), by, received))
                .orElseGet(() -> speech.say("readings.page.by", writer(reading), received));
    }

    private Saying writer(Reading reading) {
        if (reading.cardId().isPresent()) {
            return Saying.of("readings.page.theClass");
        }
        if (reading.personId().isEmpty()) {
            return Saying.of("readings.page.aProbe");
        }
        return Optional.ofNullable(names.get(reading.personId().getAsInt()))
                .map(Saying::asIs).orElse(Saying.of("readings.page.somebodyGone"));
    }

    private String local(Instant time) {
        return speech.formats(tank.zone(), time).dateAndClock(time);
    }
}
