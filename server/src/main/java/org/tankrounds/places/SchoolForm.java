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
import org.tankrounds.words.Saying;

/** A school's form: text in, typed values or sentences out. */
final class SchoolForm {
    static final String NAME = "name";
    static final String PLACE = "place";
    static final String ELEVATION = "elevation";
    static final String ZONE = "time_zone";
    static final String OTHER_ZONE = "other_time_zone";
    static final Map<String, Saying> LABELS = labels();

    private static final String OTHER = "other";
    /** Names of zones, by IANA name. */
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
        String name = form.required(NAME, 120, "places.school.noName");
        Optional<String> place = form.optional(PLACE, 300);
        OptionalDouble elevationM = form.decimal(ELEVATION, "places.school.height.what");
        if (elevationM.isPresent() && (elevationM.getAsDouble() < LOWEST_M || elevationM.getAsDouble() > HIGHEST_M)) {
            form.refuse(ELEVATION, "places.school.wrongHeight");
        }
        Optional<ZoneId> zone = zone(form);
        return form.ok()
                ? Optional.of(new School.Details(name, place, elevationM, zone.orElseThrow()))
                : Optional.empty();
    }

    static List<Group> groups(FormInput form) {
        FormField name = form.textBox(NAME, "places.school").withHint(form.say("places.school.hint"));
        FormField place = form.optional(form.textBox(PLACE, "places.school.where"))
                .withHint(form.say("places.school.where.hint"));
        FormField elevation = form.optional(form.numberBox(ELEVATION, "places.school.height", "m"))
                .withHint(form.say("places.school.height.hint"));
        FormField zone = form.choice(ZONE, "places.school.zone", zoneOptions(form))
                .withHint(form.say("places.school.zone.hint"));
        FormField other = form.textBox(OTHER_ZONE, "places.school.otherZone")
                .withHint(form.say("places.school.otherZone.hint"));
        return List.of(
                new Group(form.say("places.school.group"), "", List.of(List.of(name), List.of(place))),
                new Group(form.say("places.school.clockAndHeight"), "",
                        List.of(List.of(zone), List.of(other), List.of(elevation))));
    }

    private static Optional<ZoneId> zone(FormInput form) {
        String other = form.text(OTHER_ZONE);
        boolean listed = COMMON_ZONES.containsKey(form.text(ZONE));
        String name = other.isEmpty() && listed ? form.text(ZONE) : other;
        if (name.isEmpty()) {
            form.refuse(form.text(ZONE).equals(OTHER) ? OTHER_ZONE : ZONE, "places.school.noZone");
            return Optional.empty();
        }
        if (!ZoneId.getAvailableZoneIds().contains(name)) {
            form.refuse(OTHER_ZONE, "places.school.unknownZone", name);
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

    private static List<Option> zoneOptions(FormInput form) {
        List<Option> options = new ArrayList<>();
        COMMON_ZONES.forEach((id, name) ->
                options.add(new Option(id, form.say("places.zone.named", Saying.of(name), id))));
        options.add(new Option(OTHER, form.say("places.zone.another")));
        return options;
    }

    private static Map<String, String> commonZones() {
        Map<String, String> zones = new LinkedHashMap<>();
        zones.put("America/New_York", "places.zone.eastern");
        zones.put("America/Chicago", "places.zone.central");
        zones.put("America/Denver", "places.zone.mountain");
        zones.put("America/Phoenix", "places.zone.arizona");
        zones.put("America/Los_Angeles", "places.zone.pacific");
        zones.put("America/Anchorage", "places.zone.alaska");
        zones.put("Pacific/Honolulu", "places.zone.hawaii");
        zones.put("America/Halifax", "places.zone.atlantic");
        zones.put("America/St_Johns", "places.zone.newfoundland");
        zones.put("Europe/London", "places.zone.british");
        zones.put("Europe/Berlin", "places.zone.europe");
        zones.put("Pacific/Auckland", "places.zone.newZealand");
        zones.put("UTC", "places.zone.universal");
        return zones;
    }

    private static Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(NAME, Saying.of("places.school"));
        labels.put(PLACE, Saying.of("places.school.where"));
        labels.put(ELEVATION, Saying.of("places.school.height"));
        labels.put(ZONE, Saying.of("places.school.zone"));
        labels.put(OTHER_ZONE, Saying.of("places.school.otherZone"));
        return labels;
    }
}
