package org.tankrounds.places;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;

/** A school's form: text in, typed values or sentences out. */
final class SchoolForm {
    static final String NAME = "name";
    static final String PLACE = "place";
    static final String ELEVATION = "elevation";
    static final String ZONE = "time_zone";
    static final String OTHER_ZONE = "other_time_zone";
    static final Map<String, String> LABELS = labels();

    private static final String OTHER = "other";
    private static final Map<String, String> COMMON_ZONES = commonZones();
    private static final double LOWEST_M = -430;
    private static final double HIGHEST_M = 5500;

    private SchoolForm() {}

    static Map<String, String> blank(ZoneId chapterZone) {
        return text("", "", "", chapterZone);
    }

    static Map<String, String> textOf(School.Details school) {
        String elevation = school.elevationM().isPresent()
                ? TypedNumber.text(school.elevationM().getAsDouble(), 1) : "";
        return text(school.name(), school.place().orElse(""), elevation, school.zone());
    }

    static Optional<School.Details> parse(FormInput form) {
        String name = form.required(NAME, 120, "Give the school's name.");
        Optional<String> place = form.optional(PLACE, 300);
        OptionalDouble elevationM = form.decimal(ELEVATION, "The height above the sea");
        if (elevationM.isPresent() && (elevationM.getAsDouble() < LOWEST_M || elevationM.getAsDouble() > HIGHEST_M)) {
            form.refuse(ELEVATION, "The height above the sea can be from -430 to 5500 m; 1000 ft are 305 m.");
        }
        Optional<ZoneId> zone = zone(form);
        return form.ok()
                ? Optional.of(new School.Details(name, place, elevationM, zone.orElseThrow()))
                : Optional.empty();
    }

    static List<Group> groups(FormInput form) {
        FormField name = form.textBox(NAME, "School")
                .withHint("As the volunteers call it; it stands on the rounds.");
        FormField place = form.textBox(PLACE, "Where to drive (optional)")
                .withHint("Address, gate, where to park. Stands on the list for the car.");
        FormField elevation = form.numberBox(ELEVATION, "Height above the sea in m (optional)", "m")
                .withHint("Thin air holds less oxygen. Unknown counts as sea level. 1000 ft are 305 m.");
        FormField zone = form.choice(ZONE, "Time zone", zoneOptions())
                .withHint("The class's clock: readings and days are counted by it.");
        FormField other = form.textBox(OTHER_ZONE, "Another time zone")
                .withHint("Only if it is not in the list: its IANA name, such as Europe/Madrid.");
        return List.of(
                new Group("The school", "", List.of(List.of(name), List.of(place))),
                new Group("Clock and height", "", List.of(List.of(zone), List.of(other), List.of(elevation))));
    }

    private static Optional<ZoneId> zone(FormInput form) {
        String other = form.text(OTHER_ZONE);
        boolean listed = COMMON_ZONES.containsKey(form.text(ZONE));
        String name = other.isEmpty() && listed ? form.text(ZONE) : other;
        if (name.isEmpty()) {
            form.refuse(form.text(ZONE).equals(OTHER) ? OTHER_ZONE : ZONE,
                    "Choose the school's time zone, or write its IANA name, such as Europe/Madrid.");
            return Optional.empty();
        }
        if (!ZoneId.getAvailableZoneIds().contains(name)) {
            form.refuse(OTHER_ZONE, "There is no time zone \"" + name
                    + "\"; write an IANA name, such as America/Chicago or Europe/Madrid.");
            return Optional.empty();
        }
        return Optional.of(ZoneId.of(name));
    }

    private static Map<String, String> text(String name, String place, String elevation, ZoneId zone) {
        boolean listed = COMMON_ZONES.containsKey(zone.getId());
        Map<String, String> text = new LinkedHashMap<>();
        text.put(NAME, name);
        text.put(PLACE, place);
        text.put(ELEVATION, elevation);
        text.put(ZONE, listed ? zone.getId() : OTHER);
        text.put(OTHER_ZONE, listed ? "" : zone.getId());
        return text;
    }

    private static List<Option> zoneOptions() {
        List<Option> options = new ArrayList<>();
        COMMON_ZONES.forEach((id, words) -> options.add(new Option(id, words + " (" + id + ")")));
        options.add(new Option(OTHER, "Another, written below"));
        return options;
    }

    private static Map<String, String> commonZones() {
        Map<String, String> zones = new LinkedHashMap<>();
        zones.put("America/New_York", "Eastern");
        zones.put("America/Chicago", "Central");
        zones.put("America/Denver", "Mountain");
        zones.put("America/Phoenix", "Mountain without summer time");
        zones.put("America/Los_Angeles", "Pacific");
        zones.put("America/Anchorage", "Alaska");
        zones.put("Pacific/Honolulu", "Hawaii");
        zones.put("America/Halifax", "Atlantic");
        zones.put("America/St_Johns", "Newfoundland");
        zones.put("Europe/London", "British");
        zones.put("Europe/Berlin", "Central European");
        zones.put("Pacific/Auckland", "New Zealand");
        zones.put("UTC", "Universal time");
        return zones;
    }

    private static Map<String, String> labels() {
        Map<String, String> labels = new LinkedHashMap<>();
        labels.put(NAME, "School");
        labels.put(PLACE, "Where to drive");
        labels.put(ELEVATION, "Height above the sea, m");
        labels.put(ZONE, "Time zone");
        labels.put(OTHER_ZONE, "Another time zone");
        return labels;
    }
}
