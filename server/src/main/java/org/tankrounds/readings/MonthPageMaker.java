package org.tankrounds.readings;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.LogPage.Step;
import org.tankrounds.pages.MonthPage;
import org.tankrounds.pages.MonthPage.Cell;
import org.tankrounds.pages.MonthPage.Column;
import org.tankrounds.pages.MonthPage.Row;
import org.tankrounds.places.Kit;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;

/** Makes the page that takes a month in, with what was typed and what is to be said about that. */
final class MonthPageMaker {

    /** @param stored the days that have something already */
    record Known(Tank tank, Kit kit, SheetMonth month, Map<LocalDate, ReadDays.Looks> stored) {}

    static final FormField NOTHING_WRONG = FormField.text(MonthForm.TIME, "", "");

    private final Known known;
    private final Formats formats;
    private final Speech speech;
    private final LogBoxes boxes;

    MonthPageMaker(Known known, Formats formats) {
        this.known = known;
        this.formats = formats;
        this.speech = formats.speech();
        this.boxes = new LogBoxes(known.tank(), known.kit());
    }

    /**
     * @param saved sentence about what was stored just now; may be empty
     * @param whole what is wrong with the sheet as a whole, and at which box that is told
     */
    MonthPage page(MonthForm form, MonthHearing hearing, String saved, FormField whole) {
        Tank tank = known.tank();
        SheetMonth month = known.month();
        String here = "/tanks/" + tank.code();
        FormField time = FormField.text(MonthForm.TIME, speech.say("paper.month.time"), form.text(MonthForm.TIME))
                .withError(whole.name().equals(MonthForm.TIME) ? whole.error() : "");
        List<FormField> wrong = Stream.concat(Stream.of(whole), month.days().stream()
                .flatMap(day -> wrong(day, hearing))).filter(FormField::wrong).toList();
        String heading = speech.say("paper.month.title", formats.month(month.month()));
        return new MonthPage(title(heading, wrong, hearing), heading, tank.school() + ", " + tank.classroom(),
                month.month().toString(), here, here + "/month", form.text(LogForm.SUBMISSION), saved,
                month.others(here + "/month", formats), here + "/sheet?" + SheetMonth.MONTH + "=" + month.month(), time,
                scales(form), hearing.asks(), new MonthRepeatsPart(formats).of(hearing.repeats()),
                ShownCards.beside(hearing.kept(), known.kit()), columns(),
                month.days().stream().map(day -> row(day, form, hearing)).toList(), wrong);
    }

    private String title(String heading, List<FormField> wrong, MonthHearing hearing) {
        boolean asks = wrong.isEmpty() && !(hearing.asks().isEmpty() && hearing.repeats().all().isEmpty());
        return asks ? speech.say("paper.month.titleAsking", heading) : speech.titled(!wrong.isEmpty(), heading);
    }

    private static List<Step> scales(MonthForm form) {
        return Stream.of(Scale.FAHRENHEIT, Scale.CELSIUS).map(scale -> new Step(MonthForm.SCALE + "-" + scale.name(),
                scale.unit(), scale.sign(), scale.unit().equals(form.text(MonthForm.SCALE)))).toList();
    }

    private List<Analyte> analytes() {
        List<Analyte> all = new ArrayList<>(List.of(Analyte.TEMPERATURE));
        all.addAll(LogBoxes.HUSBANDRY);
        all.addAll(boxes.onPaper());
        return all;
    }

    private List<Column> columns() {
        Stream<Column> numbers = analytes().stream().map(analyte -> new Column(speech.say(Wording.name(analyte)),
                analyte == Analyte.TEMPERATURE ? "" : unit(analyte), "number"));
        return Stream.concat(numbers, Stream.of(new Column(speech.say("paper.sheet.class"), "", "class"),
                new Column(speech.say("paper.sheet.note"), "", "note"))).toList();
    }

    private String unit(Analyte analyte) {
        return speech.say(Wording.unit(boxes.form(analyte)));
    }

    private Row row(LocalDate day, MonthForm form, MonthHearing hearing) {
        LogForm typed = form.day(day);
        Map<String, String> errors = hearing.errors(day);
        Stream<Cell> numbers = analytes().stream()
                .map(analyte -> cell(day, analyte.code(), speech.say(Wording.name(analyte)), "number", typed, errors));
        Stream<Cell> words = Stream.of(
                cell(day, LogForm.BY, speech.say("paper.sheet.class"), "class", typed, errors),
                cell(day, LogForm.NOTE, speech.say("paper.sheet.note"), "note", typed, errors));
        return new Row(MonthForm.name(day, ""), formats.weekdayAndDay(day), there(day), SheetMonth.isWeekend(day),
                day.isAfter(known.month().today()), Stream.concat(numbers, words).toList(),
                List.copyOf(errors.values()));
    }

    private Cell cell(LocalDate day, String field, String name, String width, LogForm typed,
            Map<String, String> errors) {
        return new Cell(MonthForm.name(day, field), speech.say("paper.month.ofDay", formats.weekdayAndDay(day), name),
                typed.text(field), width, width.equals("number") ? "decimal" : "text", errors.containsKey(field));
    }

    private String there(LocalDate day) {
        return Optional.ofNullable(known.stored().get(day))
                .map(looks -> looks.readings() == 0 ? speech.say("paper.month.thereByProbe", looks.byDevice())
                        : speech.say("paper.month.there", looks.readings(), formats.clock(looks.first())))
                .orElse("");
    }

    private Stream<FormField> wrong(LocalDate day, MonthHearing hearing) {
        return hearing.errors(day).entrySet().stream().map(error -> FormField
                .text(MonthForm.name(day, box(error.getKey())), "", "")
                .withError(speech.say("paper.month.ofDay", formats.weekdayAndDay(day), error.getValue())));
    }

    /** A day has no box of its own for its time. */
    private static String box(String field) {
        return field.equals(LogForm.MEASURED_AT) ? Analyte.TEMPERATURE.code() : field;
    }
}
