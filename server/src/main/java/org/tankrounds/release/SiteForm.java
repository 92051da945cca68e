package org.tankrounds.release;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** A site's form. */
final class SiteForm {
    static final String NAME = "name";
    private static final String WATER = "water";
    private static final String WAY = "way_there";
    private static final String NORTH = "latitude";
    private static final String EAST = "longitude";
    private static final String ELEVATION = "elevation";
    static final Map<String, Saying> LABELS = labels();

    private static final int PLACE_DECIMALS = 6;
    private static final double LOWEST_M = -430;
    private static final double HIGHEST_M = 5500;

    private SiteForm() {}

    static Map<String, String> blank() {
        Map<String, String> text = new LinkedHashMap<>();
        LABELS.keySet().forEach(name -> text.put(name, ""));
        return text;
    }

    static Map<String, String> textOf(Site.Details site) {
        Map<String, String> text = blank();
        text.put(NAME, site.name());
        text.put(WATER, site.water());
        text.put(WAY, site.wayThere().orElse(""));
        site.point().ifPresent(point -> {
            text.put(NORTH, TypedNumber.text(point.north(), PLACE_DECIMALS));
            text.put(EAST, TypedNumber.text(point.east(), PLACE_DECIMALS));
        });
        site.elevationM().ifPresent(metres -> text.put(ELEVATION, TypedNumber.text(metres, 1)));
        return text;
    }

    /** Empty where something cannot be taken; the form says so. */
    static Optional<Site.Details> parse(FormInput form) {
        String name = form.required(NAME, 120, "release.site.name.none");
        String water = form.required(WATER, 120, "release.site.water.none");
        Optional<String> wayThere = form.optional(WAY, 500);
        Optional<Site.Point> point = point(form);
        OptionalDouble elevationM = form.decimal(ELEVATION, "release.site.elevation", LOWEST_M, HIGHEST_M,
                Saying.of("release.site.elevation.wrong"));
        return form.ok() ? Optional.of(new Site.Details(name, water, wayThere, point, elevationM)) : Optional.empty();
    }

    static List<Group> groups(FormInput form) {
        return List.of(
                new Group(form.say("release.site.group"), "", List.of(
                        List.of(form.textBox(NAME, "release.site.name").withHint(form.say("release.site.name.hint"))),
                        List.of(form.textBox(WATER, "release.site.water")
                                .withHint(form.say("release.site.water.hint"))),
                        List.of(form.optional(form.textBox(WAY, "release.site.way"))
                                .withHint(form.say("release.site.way.hint"))))),
                new Group(form.say("release.site.where"), form.say("release.site.where.note"), List.of(
                        List.of(form.optional(form.numberBox(NORTH, "release.site.latitude", "°")),
                                form.optional(form.numberBox(EAST, "release.site.longitude", "°"))
                                        .withHint(form.say("release.site.longitude.hint"))),
                        List.of(form.optional(form.numberBox(ELEVATION, "release.site.elevation", "m"))
                                .withHint(form.say("release.site.elevation.hint"))))));
    }

    /** Half of it is no place. */
    private static Optional<Site.Point> point(FormInput form) {
        OptionalDouble north = form.decimal(NORTH, "release.site.latitude", -90, 90,
                Saying.of("release.site.latitude.wrong"));
        OptionalDouble east = form.decimal(EAST, "release.site.longitude", -180, 180,
                Saying.of("release.site.longitude.wrong"));
        if (north.isPresent() != east.isPresent() && form.ok()) {
            form.refuse(north.isPresent() ? EAST : NORTH, "release.site.where.half");
        }
        return north.isPresent() && east.isPresent()
                ? Optional.of(new Site.Point(north.getAsDouble(), east.getAsDouble())) : Optional.empty();
    }

    private static Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(NAME, Saying.of("release.site.name"));
        labels.put(WATER, Saying.of("release.site.water"));
        labels.put(WAY, Saying.of("release.site.way"));
        labels.put(NORTH, Saying.of("release.site.latitude"));
        labels.put(EAST, Saying.of("release.site.longitude"));
        labels.put(ELEVATION, Saying.of("release.site.elevation"));
        return labels;
    }
}
