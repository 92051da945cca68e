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
import org.tankrounds.words.Saying;

/** A tank's form. Units are chosen beside the number and converted once, here. */
final class TankForm {
    static final String ROOM = "room";
    static final String VOLUME = "volume";
    static final String VOLUME_UNIT = "volume_unit";
    static final String SET_POINT = "chiller";
    static final String SET_POINT_UNIT = "chiller_unit";
    static final String FILTER = "filter";
    static final String FILTER_STARTED = "filter_started_on";
    static final String FILTER_AREA = "filter_area_m2";
    static final String KIT = "kit";
    static final String THERMOMETER = "thermometer";
    static final String ALKALINITY = "alkalinity";
    static final String ALKALINITY_UNIT = "alkalinity_unit";
    static final String CHLORIDE = "chloride";
    static final String DISINFECTANT = "disinfectant";
    static final Map<String, Saying> LABELS = labels();
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
            Optional<LocalDate> filterStartedOn, OptionalDouble filterAreaM2, OptionalDouble alkalinityMgPerL,
            OptionalDouble chlorideMgPerL, Optional<String> disinfectant, String thermometerUnit) {}

    static Map<String, String> blank(String room, String kit) {
        Map<String, String> text = new LinkedHashMap<>();
        text.put(ROOM, room);
        text.put(VOLUME, "");
        text.put(VOLUME_UNIT, GALLON);
        text.put(SET_POINT, "");
        text.put(SET_POINT_UNIT, FAHRENHEIT);
        text.put(FILTER, "canister");
        text.put(FILTER_STARTED, "");
        text.put(FILTER_AREA, "");
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
        text.put(FILTER_AREA, number(tank.filterAreaM2()));
        text.put(THERMOMETER, tank.thermometerUnit());
        text.put(ALKALINITY, number(tank.alkalinityMgPerL()));
        text.put(CHLORIDE, number(tank.chlorideMgPerL()));
        text.put(DISINFECTANT, tank.disinfectant().orElse(UNKNOWN));
        return text;
    }

    static Optional<Typed> parse(FormInput form, LocalDate today) {
        Optional<RoomChoice> room = RoomChoice.parse(form.text(ROOM));
        if (room.isEmpty()) {
            form.refuse(ROOM, "places.tank.noRoom");
        }
        double volumeL = volumeL(form);
        OptionalDouble setPointC = setPointC(form);
        String filter = oneOf(form, FILTER, FILTERS, "places.tank.noFilter");
        Optional<LocalDate> started = form.day(FILTER_STARTED, "places.tank.filterStarted.what");
        if (started.isPresent() && (started.get().isAfter(today) || started.get().getYear() < 2000)) {
            form.refuse(FILTER_STARTED, "places.tank.wrongFilterStart");
        }
        OptionalDouble area = filterAreaM2(form);
        OptionalDouble alkalinity = alkalinityMgPerL(form);
        OptionalDouble chloride = chlorideMgPerL(form);
        String disinfectant = oneOf(
                form, DISINFECTANT, with(DISINFECTANTS, UNKNOWN), "places.tank.noDisinfectant");
        String thermometer = oneOf(form, THERMOMETER, List.of("Cel", FAHRENHEIT), "places.tank.noScale");
        String kit = form.required(KIT, 80, "places.tank.noKit");
        return !form.ok() ? Optional.empty() : Optional.of(new Typed(room.orElseThrow(), kit, volumeL, setPointC,
                filter, started, area, alkalinity, chloride,
                Optional.of(disinfectant).filter(known -> !known.equals(UNKNOWN)), thermometer));
    }

    static List<Group> groups(FormInput form, List<Option> rooms, List<Option> kits) {
        return List.of(tank(form, rooms), filterAndTests(form, kits), tap(form));
    }

    private static Group tank(FormInput form, List<Option> rooms) {
        return new Group(form.say("places.tank.group"), "", List.of(
                List.of(form.choice(ROOM, "places.room", rooms)),
                List.of(form.numberBox(VOLUME, "places.tank.volume", "")
                                .withHint(form.say("places.tank.volume.hint")),
                        form.choice(VOLUME_UNIT, "places.tank.volumeIn", List.of(
                                new Option(GALLON, form.say("places.tank.gallons")),
                                new Option("L", form.say("places.tank.litres"))))),
                List.of(form.optional(form.numberBox(SET_POINT, "places.tank.chiller", ""))
                                .withHint(form.say("places.tank.chiller.hint")),
                        form.choice(SET_POINT_UNIT, "places.tank.chillerIn", scales()))));
    }

    private static Group filterAndTests(FormInput form, List<Option> kits) {
        return new Group(form.say("places.tank.filterAndTests"), "", List.of(
                List.of(form.choice(FILTER, "places.tank.filter", FILTERS.stream()
                        .map(kind -> new Option(kind, form.say(filterName(kind)))).toList())),
                List.of(form.optional(form.dayBox(FILTER_STARTED, "places.tank.filterStarted"))
                        .withHint(form.say("places.tank.filterStarted.hint")),
                        form.optional(form.numberBox(FILTER_AREA, "places.tank.filterArea", "m²"))
                                .withHint(form.say("places.tank.filterArea.hint"))),
                List.of(form.choice(KIT, "places.tank.kit", kits).withHint(form.say("places.tank.kit.hint"))),
                List.of(form.choice(THERMOMETER, "places.tank.thermometer", scales()))));
    }

    private static Group tap(FormInput form) {
        return new Group(form.say("places.tank.tap"), form.say("places.tank.tap.note"), List.of(
                List.of(form.optional(form.numberBox(ALKALINITY, "places.tank.alkalinity", ""))
                                .withHint(form.say("places.tank.alkalinity.hint")),
                        form.choice(ALKALINITY_UNIT, "places.tank.alkalinityIn", List.of(
                                new Option("mg/L", form.say("places.tank.asCalciumCarbonate")),
                                new Option(GERMAN_DEGREE, form.say("places.kit.germanDegrees"))))),
                List.of(form.optional(form.numberBox(CHLORIDE, "places.tank.chloride", "mg/L"))
                        .withHint(form.say("places.tank.chloride.hint"))),
                List.of(form.choice(DISINFECTANT, "places.tank.disinfectant",
                                with(DISINFECTANTS, UNKNOWN).stream()
                                        .map(one -> new Option(one, form.say("places.disinfectant." + one))).toList())
                        .withHint(form.say("places.tank.disinfectant.hint")))));
    }

    private static double volumeL(FormInput form) {
        String unit = oneOf(form, VOLUME_UNIT, List.of("L", GALLON), "places.tank.noVolumeUnit");
        form.required(VOLUME, 20, "places.tank.noVolume");
        OptionalDouble typed = form.decimal(VOLUME, "places.tank.volume.what");
        double volumeL = typed.orElse(Double.NaN) * (unit.equals(GALLON) ? L_PER_US_GALLON : 1);
        if (typed.isPresent() && !(volumeL >= 5 && volumeL <= 5000)) {
            form.refuse(VOLUME, "places.tank.wrongVolume");
        }
        return volumeL;
    }

    private static OptionalDouble setPointC(FormInput form) {
        String unit = oneOf(form, SET_POINT_UNIT, List.of("Cel", FAHRENHEIT), "places.tank.noScale");
        OptionalDouble typed = form.decimal(SET_POINT, "places.tank.chiller.what");
        if (typed.isEmpty() || form.wrong(SET_POINT_UNIT)) {
            return typed;
        }
        double setPointC = Units.toCanonical(
                Analyte.TEMPERATURE, UnitForm.of(unit), typed.getAsDouble(), Double.NaN);
        if (!(setPointC >= 1 && setPointC <= 25)) {
            form.refuse(SET_POINT, "places.tank.wrongChiller");
        }
        return OptionalDouble.of(setPointC);
    }

    private static OptionalDouble filterAreaM2(FormInput form) {
        OptionalDouble typed = form.decimal(FILTER_AREA, "places.tank.filterArea");
        if (typed.isPresent() && !(typed.getAsDouble() >= 0.01 && typed.getAsDouble() <= 1000)) {
            form.refuse(FILTER_AREA, "places.tank.wrongFilterArea");
        }
        return typed;
    }

    private static OptionalDouble alkalinityMgPerL(FormInput form) {
        String unit = oneOf(form, ALKALINITY_UNIT, List.of("mg/L", GERMAN_DEGREE), "places.tank.noAlkalinityUnit");
        OptionalDouble typed = form.decimal(ALKALINITY, "places.tank.alkalinity");
        if (typed.isEmpty()) {
            return typed;
        }
        double mgPerL = typed.getAsDouble() * (unit.equals(GERMAN_DEGREE) ? Units.CACO3_PER_GERMAN_DEGREE : 1);
        if (!(mgPerL >= 0 && mgPerL <= 1000)) {
            form.refuse(ALKALINITY, "places.tank.wrongAlkalinity");
        }
        return OptionalDouble.of(mgPerL);
    }

    private static OptionalDouble chlorideMgPerL(FormInput form) {
        OptionalDouble typed = form.decimal(CHLORIDE, "places.tank.chloride.what");
        if (typed.isPresent() && !(typed.getAsDouble() >= 0 && typed.getAsDouble() <= 2000)) {
            form.refuse(CHLORIDE, "places.tank.wrongChloride");
        }
        return typed;
    }

    private static String oneOf(FormInput form, String name, List<String> allowed, String key) {
        String value = form.text(name);
        if (!allowed.contains(value)) {
            form.refuse(name, key);
        }
        return value;
    }

    private static List<Option> scales() {
        return List.of(new Option(FAHRENHEIT, "°F"), new Option("Cel", "°C"));
    }

    /** Key of what a kind of filter is called. */
    static String filterName(String kind) {
        return "places.filter." + (kind.equals("other") ? "another" : kind);
    }

    private static List<String> with(List<String> words, String last) {
        List<String> all = new ArrayList<>(words);
        all.add(last);
        return all;
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? TypedNumber.text(value.getAsDouble(), 1) : "";
    }

    private static Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(ROOM, Saying.of("places.room"));
        labels.put(VOLUME, Saying.of("places.tank.volume"));
        labels.put(VOLUME_UNIT, Saying.of("places.tank.volumeIn"));
        labels.put(SET_POINT, Saying.of("places.tank.chiller"));
        labels.put(SET_POINT_UNIT, Saying.of("places.tank.chillerIn"));
        labels.put(FILTER, Saying.of("places.tank.filter"));
        labels.put(FILTER_STARTED, Saying.of("places.tank.filterStarted"));
        labels.put(FILTER_AREA, Saying.of("places.tank.filterArea"));
        labels.put(KIT, Saying.of("places.tank.kit"));
        labels.put(THERMOMETER, Saying.of("places.tank.thermometer"));
        labels.put(ALKALINITY, Saying.of("places.tank.alkalinity"));
        labels.put(ALKALINITY_UNIT, Saying.of("places.tank.alkalinityIn"));
        labels.put(CHLORIDE, Saying.of("places.tank.chloride"));
        labels.put(DISINFECTANT, Saying.of("places.tank.disinfectant"));
        return labels;
    }
}
