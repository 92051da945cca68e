package org.tankrounds.places;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;

/** A tank's form. Units are chosen beside the number and converted once, here. */
final class TankForm {
    static final String ROOM = "room";
    static final String VOLUME = "volume";
    static final String VOLUME_UNIT = "volume_unit";
    static final String SET_POINT = "chiller";
    static final String SET_POINT_UNIT = "chiller_unit";
    static final String FILTER = "filter";
    static final String FILTER_STARTED = "filter_started_on";
    static final String KIT = "kit";
    static final String THERMOMETER = "thermometer";
    static final String ALKALINITY = "alkalinity";
    static final String ALKALINITY_UNIT = "alkalinity_unit";
    static final String CHLORIDE = "chloride";
    static final String DISINFECTANT = "disinfectant";
    static final Map<String, String> LABELS = labels();
    static final String UNKNOWN = "unknown";

    /** Litres per US gallon, exact by definition. */
    static final double L_PER_US_GALLON = 3.785411784;

    private static final String GALLON = "[gal_us]";
    private static final String FAHRENHEIT = "[degF]";
    private static final String GERMAN_DEGREE = "[dH]";
    private static final List<String> FILTERS = List.of("sponge", "hang_on", "canister", "trickle", "other");
    private static final List<String> DISINFECTANTS = List.of("none", "chlorine", "chloramine");

    private TankForm() {}

    /** What a form says once every field could be read; room and kit still by name. */
    record Typed(
            RoomChoice room, String kit, double volumeL, OptionalDouble chillerSetPointC, String filterKind,
            Optional<LocalDate> filterStartedOn, OptionalDouble alkalinityMgPerL, OptionalDouble chlorideMgPerL,
            Optional<String> disinfectant, String thermometerUnit) {}

    static Map<String, String> blank(String room, String kit) {
        Map<String, String> text = new LinkedHashMap<>();
        text.put(ROOM, room);
        text.put(VOLUME, "");
        text.put(VOLUME_UNIT, GALLON);
        text.put(SET_POINT, "");
        text.put(SET_POINT_UNIT, FAHRENHEIT);
        text.put(FILTER, "canister");
        text.put(FILTER_STARTED, "");
        text.put(KIT, kit);
        text.put(THERMOMETER, FAHRENHEIT);
        text.put(ALKALINITY, "");
        text.put(ALKALINITY_UNIT, Analyte.ALKALINITY.canonical().unit());
        text.put(CHLORIDE, "");
        text.put(DISINFECTANT, UNKNOWN);
        return text;
    }

    static Map<String, String> textOf(Tank tank, String kit) {
        UnitForm scale = UnitForm.of(tank.thermometerUnit());
        Map<String, String> text = blank(RoomChoice.of(tank).value(), kit);
        text.put(VOLUME, TypedNumber.text(tank.volumeL(), 1));
        text.put(VOLUME_UNIT, "L");
        text.put(SET_POINT, tank.chillerSetPointC().isEmpty() ? "" : TypedNumber.text(Units.fromCanonical(
                Analyte.TEMPERATURE, scale, tank.chillerSetPointC().getAsDouble(), Double.NaN, 0), 1));
        text.put(SET_POINT_UNIT, tank.thermometerUnit());
        text.put(FILTER, tank.filterKind());
        text.put(FILTER_STARTED, tank.filterStartedOn().map(LocalDate::toString).orElse(""));
        text.put(THERMOMETER, tank.thermometerUnit());
        text.put(ALKALINITY, number(tank.alkalinityMgPerL()));
        text.put(CHLORIDE, number(tank.chlorideMgPerL()));
        text.put(DISINFECTANT, tank.disinfectant().orElse(UNKNOWN));
        return text;
    }

    static Optional<Typed> parse(FormInput form, LocalDate today) {
        Optional<RoomChoice> room = RoomChoice.parse(form.text(ROOM));
        if (room.isEmpty()) {
            form.refuse(ROOM, "Choose the room that the tank stands in.");
        }
        double volumeL = volumeL(form);
        OptionalDouble setPointC = setPointC(form);
        String filter = oneOf(form, FILTER, FILTERS, "Choose the filter, or \"another kind\".");
        Optional<LocalDate> started = form.day(FILTER_STARTED, "The day the filter started");
        if (started.isPresent() && (started.get().isAfter(today) || started.get().getYear() < 2000)) {
            form.refuse(FILTER_STARTED, "The filter can have started on a day from 2000 to today; leave it empty "
                    + "until it has.");
        }
        OptionalDouble alkalinity = alkalinityMgPerL(form);
        OptionalDouble chloride = within(form, CHLORIDE, "Chloride", 0, 2000, "mg/L");
        String disinfectant = oneOf(form, DISINFECTANT, with(DISINFECTANTS, UNKNOWN),
                "Choose what the water works adds, or \"unknown\".");
        String thermometer = oneOf(form, THERMOMETER, List.of("Cel", FAHRENHEIT), "Choose °C or °F.");
        String kit = form.required(KIT, 80, "Choose the kit that the class uses.");
        return !form.ok() ? Optional.empty() : Optional.of(new Typed(room.orElseThrow(), kit, volumeL, setPointC,
                filter, started, alkalinity, chloride,
                Optional.of(disinfectant).filter(known -> !known.equals(UNKNOWN)), thermometer));
    }

    static List<Group> groups(FormInput form, List<Option> rooms, List<Option> kits) {
        return List.of(
                new Group("The tank", "", List.of(
                        List.of(form.choice(ROOM, "Room", rooms)),
                        List.of(form.numberBox(VOLUME, "Water volume", "")
                                        .withHint("What is in it, not what the tank is sold as."),
                                form.choice(VOLUME_UNIT, "Volume in", List.of(
                                        new Option(GALLON, "US gallons"), new Option("L", "litres")))),
                        List.of(form.numberBox(SET_POINT, "Chiller set to (optional)", "")
                                        .withHint("Empty counts as an ordinary classroom chiller."),
                                form.choice(SET_POINT_UNIT, "Chiller set in", scales())))),
                new Group("Filter and tests", "", List.of(
                        List.of(form.choice(FILTER, "Filter", filterOptions())),
                        List.of(form.dayBox(FILTER_STARTED, "Filter started on (optional)")
                                .withHint("Day since which it has had ammonia to live on: fish, or an ammonia dose. "
                                        + "It then takes weeks to ripen.")),
                        List.of(form.choice(KIT, "Test kit", kits)
                                .withHint("Its steps are the buttons of the class's form.")),
                        List.of(form.choice(THERMOMETER, "The class reads its thermometer in", scales())))),
                new Group("Tap water", "From the water works' yearly report, or one strip test.", List.of(
                        List.of(form.numberBox(ALKALINITY, "Alkalinity (optional)", "")
                                        .withHint("What keeps the pH up while the filter works. "
                                                + "Unknown counts as ordinary tap water."),
                                form.choice(ALKALINITY_UNIT, "Alkalinity in", List.of(
                                        new Option("mg/L", "mg/L as CaCO\u2083"),
                                        new Option(GERMAN_DEGREE, "German degrees (°dH)")))),
                        List.of(form.numberBox(CHLORIDE, "Chloride in mg/L (optional)", "mg/L")
                                .withHint("Protects from nitrite. Unknown counts as 5 mg/L, which is little.")),
                        List.of(form.choice(DISINFECTANT, "Disinfectant", disinfectantOptions())
                                .withHint("Decides what a water change needs. Unknown counts as chlorine or "
                                        + "chloramine: treat the water for both.")))));
    }

    private static double volumeL(FormInput form) {
        String unit = oneOf(form, VOLUME_UNIT, List.of("L", GALLON), "Choose litres or US gallons.");
        form.required(VOLUME, 20, "Give the water volume: the dose of everything depends on it.");
        OptionalDouble typed = form.decimal(VOLUME, "The water volume");
        double volumeL = typed.orElse(Double.NaN) * (unit.equals(GALLON) ? L_PER_US_GALLON : 1);
        if (typed.isPresent() && !(volumeL >= 5 && volumeL <= 5000)) {
            form.refuse(VOLUME, "The water volume can be from 5 to 5000 L, which is 1.4 to 1320 US gallons.");
        }
        return volumeL;
    }

    private static OptionalDouble setPointC(FormInput form) {
        String unit = oneOf(form, SET_POINT_UNIT, List.of("Cel", FAHRENHEIT), "Choose °C or °F.");
        OptionalDouble typed = form.decimal(SET_POINT, "The chiller's setting");
        if (typed.isEmpty() || form.wrong(SET_POINT_UNIT)) {
            return typed;
        }
        double setPointC = Units.toCanonical(
                Analyte.TEMPERATURE, UnitForm.of(unit), typed.getAsDouble(), Double.NaN);
        if (!(setPointC >= 1 && setPointC <= 25)) {
            form.refuse(SET_POINT, "The chiller can be set from 1 to 25 °C, which is 34 to 77 °F; "
                    + "look at the unit chosen beside it.");
        }
        return OptionalDouble.of(setPointC);
    }

    private static OptionalDouble alkalinityMgPerL(FormInput form) {
        String unit = oneOf(form, ALKALINITY_UNIT, List.of("mg/L", GERMAN_DEGREE), "Choose mg/L or German degrees.");
        OptionalDouble typed = form.decimal(ALKALINITY, "Alkalinity");
        if (typed.isEmpty()) {
            return typed;
        }
        double mgPerL = typed.getAsDouble() * (unit.equals(GERMAN_DEGREE) ? Units.CACO3_PER_GERMAN_DEGREE : 1);
        if (!(mgPerL >= 0 && mgPerL <= 1000)) {
            form.refuse(ALKALINITY, "Alkalinity can be from 0 to 1000 mg/L as CaCO\u2083, which is 0 to 56 °dH.");
        }
        return OptionalDouble.of(mgPerL);
    }

    private static OptionalDouble within(
            FormInput form, String name, String what, double least, double most, String unit) {
        OptionalDouble typed = form.decimal(name, what);
        if (typed.isPresent() && !(typed.getAsDouble() >= least && typed.getAsDouble() <= most)) {
            form.refuse(name, what + " can be from " + TypedNumber.text(least, 0) + " to "
                    + TypedNumber.text(most, 0) + " " + unit + ".");
        }
        return typed;
    }

    private static String oneOf(FormInput form, String name, List<String> allowed, String sentence) {
        String value = form.text(name);
        if (!allowed.contains(value)) {
            form.refuse(name, sentence);
        }
        return value;
    }

    private static List<Option> scales() {
        return List.of(new Option(FAHRENHEIT, "°F"), new Option("Cel", "°C"));
    }

    private static List<Option> filterOptions() {
        return FILTERS.stream().map(kind -> new Option(kind, filterWords(kind))).toList();
    }

    static String filterWords(String kind) {
        return switch (kind) {
            case "hang_on" -> "hang-on-back";
            case "other" -> "another kind";
            default -> kind;
        };
    }

    private static List<Option> disinfectantOptions() {
        return with(DISINFECTANTS, UNKNOWN).stream().map(word -> new Option(word, word)).toList();
    }

    private static List<String> with(List<String> words, String last) {
        List<String> all = new ArrayList<>(words);
        all.add(last);
        return all;
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? TypedNumber.text(value.getAsDouble(), 1) : "";
    }

    private static Map<String, String> labels() {
        Map<String, String> labels = new LinkedHashMap<>();
        labels.put(ROOM, "Room");
        labels.put(VOLUME, "Water volume");
        labels.put(VOLUME_UNIT, "Volume in");
        labels.put(SET_POINT, "Chiller set to");
        labels.put(SET_POINT_UNIT, "Chiller set in");
        labels.put(FILTER, "Filter");
        labels.put(FILTER_STARTED, "Filter started on");
        labels.put(KIT, "Test kit");
        labels.put(THERMOMETER, "Thermometer read in");
        labels.put(ALKALINITY, "Alkalinity");
        labels.put(ALKALINITY_UNIT, "Alkalinity in");
        labels.put(CHLORIDE, "Chloride");
        labels.put(DISINFECTANT, "Disinfectant");
        return labels;
    }
}
