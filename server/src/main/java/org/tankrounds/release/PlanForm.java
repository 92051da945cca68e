package org.tankrounds.release;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.readings.PersonalText;
import org.tankrounds.season.TypedMoment;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Scale;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** The form of a release plan. */
final class PlanForm {
    static final String APPROVAL = "approval";
    static final String DAY = "day";
    private static final String TIME = "time";
    private static final String ROAD = "road_hours";
    private static final String AIR = "air_pumps";
    private static final String OXYGEN = "oxygen";
    private static final String TANK = "tank_temperature";
    private static final String STREAM = "stream_temperature";
    private static final String OUTSIDE = "outside_temperature";
    private static final String CHILDREN = "children";
    private static final String ADULTS = "adults";
    private static final String NOTE = "note";
    private static final String YES = "yes";
    private static final String NO = "no";
    private static final String DUTY = "duty_";

    private static final LocalTime USUAL_TIME = LocalTime.of(10, 0);
    private static final double LONGEST_ROAD_H = 24;
    private static final double WARMEST_WATER_C = 35;
    private static final double COLDEST_AIR_C = -40;
    private static final double WARMEST_AIR_C = 60;
    private static final double MOST_OXYGEN = 25;
    private static final int MOST_PEOPLE = 1000;
    private static final int LONGEST_DUTY = 60;

    /** One that can be chosen: it stands, or the plan leans on it. */
    record Choice(Approval approval, Site site, int left) {}

    private final List<Choice> choices;
    private final List<LoadBoxes> tanks;
    private final ZoneId zone;
    private final Scale scale;
    private final Optional<LocalDate> wished;
    private final Instant now;

    /**
     * @param out tanks whose fish are out by this plan already: how many may go was asked when they went
     * @param wished day for which the season's release is meant; empty where nobody said, or where it is over
     */
    PlanForm(List<Choice> choices, List<TankStock> stocks, Set<Integer> out, ZoneId zone, Scale scale,
            Optional<LocalDate> wished, Instant now) {
        this.choices = choices;
        this.tanks = stocks.stream()
                .map(stock -> new LoadBoxes(stock, out.contains(stock.tank().tankId()))).toList();
        this.zone = zone;
        this.scale = scale;
        this.wished = wished;
        this.now = now;
    }

    List<String> names() {
        return List.copyOf(empty().keySet());
    }

    /** With what is known of the tanks; a tank whose number of fish stays empty is not in the plan. */
    Map<String, String> blank() {
        Map<String, String> text = empty();
        text.put(APPROVAL, choices.size() == 1 ? Integer.toString(choices.get(0).approval().approvalId()) : "");
        text.put(DAY, wished.map(LocalDate::toString).orElse(""));
        text.put(TIME, TypedMoment.CLOCK.format(USUAL_TIME));
        text.put(AIR, YES);
        tanks.forEach(tank -> tank.putMeasured(text));
        return text;
    }

    Map<String, String> textOf(ReleasePlan plan) {
        ReleasePlan.Details details = plan.details();
        LocalDateTime starts = LocalDateTime.ofInstant(details.startsAt(), zone);
        Map<String, String> text = empty();
        text.put(APPROVAL, Integer.toString(plan.approvalId()));
        text.put(DAY, starts.toLocalDate().toString());
        text.put(TIME, TypedMoment.CLOCK.format(starts));
        text.put(ROAD, TypedNumber.text(details.roadHours(), 2));
        text.put(AIR, details.hasAir() ? YES : NO);
        text.put(OXYGEN, written(details.oxygenMgPerL(), 1));
        text.put(TANK, temperature(details.tankC()));
        text.put(STREAM, temperature(details.streamC()));
        text.put(OUTSIDE, temperature(details.outsideC()));
        text.put(CHILDREN, Integer.toString(details.children()));
        text.put(ADULTS, Integer.toString(details.adults()));
        text.put(NOTE, details.note().orElse(""));
        details.duties().forEach((duty, by) -> text.put(DUTY + duty.code(), by));
        details.loads().forEach(load -> tanks.stream().filter(tank -> tank.tankId() == load.tankId()).findFirst()
                .ifPresent(tank -> tank.put(text, load)));
        return text;
    }

    /** Empty where something cannot be taken; the form says so. */
    Optional<ReleasePlan> parse(FormInput form, int planId, int seasonId) {
        Optional<Choice> choice = chosen(form);
        Optional<Instant> startsAt = startsAt(form);
        OptionalDouble road = form.decimal(ROAD, "release.plan.road", 0, LONGEST_ROAD_H,
                Saying.of("release.plan.road.wrong"));
        if (form.text(ROAD).isEmpty()) {
            form.refuse(ROAD, "release.plan.road.none");
        }
        OptionalDouble tankC = celsius(form, TANK, "release.plan.tankTemperature", 0, WARMEST_WATER_C);
        OptionalDouble streamC = celsius(form, STREAM, "release.plan.streamTemperature", 0, WARMEST_WATER_C);
        OptionalDouble outsideC = celsius(form, OUTSIDE, "release.plan.outside", COLDEST_AIR_C, WARMEST_AIR_C);
        OptionalDouble oxygen = form.decimal(OXYGEN, "release.plan.oxygen", 0, MOST_OXYGEN,
                Saying.of("release.plan.oxygen.wrong"));
        if (!form.text(AIR).equals(YES) && !form.text(AIR).equals(NO)) {
            form.refuse(AIR, "release.plan.air.none");
        }
        int children = people(form, CHILDREN);
        int adults = people(form, ADULTS);
        Map<Duty, String> duties = duties(form);
        Optional<String> note = form.optional(NOTE, 500);
        List<Load> loads = loads(form);
        return form.ok() ? Optional.of(new ReleasePlan(planId, seasonId, choice.orElseThrow().approval().approvalId(),
                new ReleasePlan.Details(startsAt.orElseThrow(), road.orElseThrow(), tankC, streamC, outsideC, oxygen,
                        form.text(AIR).equals(YES), children, adults, duties, note, loads), Optional.empty()))
                : Optional.empty();
    }

    List<Group> groups(FormInput form) {
        List<Group> groups = new ArrayList<>();
        groups.add(whenAndWhere(form));
        groups.add(who(form));
        groups.add(theWay(form));
        tanks.forEach(tank -> groups.add(tank.group(form)));
        return groups;
    }

    /** Names of its boxes, for what somebody else changed meanwhile. */
    Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(APPROVAL, Saying.of("release.plan.approval"));
        labels.put(DAY, Saying.of("release.plan.day"));
        labels.put(TIME, Saying.of("release.plan.time"));
        labels.put(ROAD, Saying.of("release.plan.road"));
        labels.put(AIR, Saying.of("release.plan.air"));
        labels.put(OXYGEN, Saying.of("release.plan.oxygen"));
        labels.put(TANK, Saying.of("release.plan.tankTemperature"));
        labels.put(STREAM, Saying.of("release.plan.streamTemperature"));
        labels.put(OUTSIDE, Saying.of("release.plan.outside"));
        labels.put(CHILDREN, Saying.of("release.plan.children"));
        labels.put(ADULTS, Saying.of("release.plan.adults"));
        labels.put(NOTE, Saying.of("release.plan.note"));
        for (Duty duty : Duty.values()) {
            labels.put(DUTY + duty.code(), Saying.of("release.duty." + duty.code()));
        }
        tanks.forEach(tank -> labels.putAll(tank.labels()));
        return labels;
    }

    private Map<String, String> empty() {
        Map<String, String> text = new LinkedHashMap<>();
        labels().keySet().forEach(name -> text.put(name, ""));
        return text;
    }

    private Group whenAndWhere(FormInput form) {
        List<Option> options = new ArrayList<>(List.of(new Option("", form.say("release.plan.approval.choose"))));
        choices.forEach(choice -> options.add(new Option(Integer.toString(choice.approval().approvalId()),
                form.say("release.plan.approval.option", choice.site().name(), choice.approval().number(),
                        form.date(choice.approval().details().firstDay()),
                        form.date(choice.approval().details().lastGoodDay()), choice.left()))));
        return new Group(form.say("release.plan.when"), "", form.say("release.notThePermit"), List.of(
                List.of(form.choice(APPROVAL, "release.plan.approval", options)),
                List.of(form.dayBox(DAY, "release.plan.day"),
                        form.textBox(TIME, "release.plan.time").withType("time", "off")
                                .withHint(form.say("release.plan.time.hint", zone.getId().replace('_', ' '))))));
    }

    private Group who(FormInput form) {
        List<List<FormField>> rows = new ArrayList<>();
        rows.add(List.of(form.numberBox(CHILDREN, "release.plan.children", ""),
                form.numberBox(ADULTS, "release.plan.adults", "").withHint(form.say("release.plan.adults.hint"))));
        for (Duty duty : Duty.values()) {
            rows.add(List.of(form.optional(form.textBox(DUTY + duty.code(), "release.duty." + duty.code()))));
        }
        return new Group(form.say("release.plan.who"), form.say("release.plan.who.note"),
                form.say("release.plan.who.caution"), rows);
    }

    private Group theWay(FormInput form) {
        String sign = scale.sign();
        return new Group(form.say("release.plan.way"), form.say("release.plan.way.note"), List.of(
                List.of(form.numberBox(ROAD, "release.plan.road", "h").withHint(form.say("release.plan.road.hint")),
                        form.choice(AIR, "release.plan.air", List.of(
                                new Option(YES, form.say("release.plan.air.yes")),
                                new Option(NO, form.say("release.plan.air.no"))))),
                List.of(form.optional(form.numberBox(TANK, "release.plan.tankTemperature", sign)),
                        form.optional(form.numberBox(STREAM, "release.plan.streamTemperature", sign))),
                List.of(form.optional(form.numberBox(OUTSIDE, "release.plan.outside", sign)),
                        form.optional(form.numberBox(OXYGEN, "release.plan.oxygen", "mg/L"))),
                List.of(form.optional(form.textBox(NOTE, "release.plan.note"))
                        .withHint(form.say("release.plan.note.hint")))));
    }

    private Optional<Choice> chosen(FormInput form) {
        Optional<Choice> choice = choices.stream()
                .filter(one -> Integer.toString(one.approval().approvalId()).equals(form.text(APPROVAL))).findFirst();
        if (choice.isEmpty()) {
            form.refuse(APPROVAL, "release.plan.approval.none");
        }
        return choice;
    }

    private Optional<Instant> startsAt(FormInput form) {
        if (form.text(DAY).isEmpty()) {
            form.refuse(DAY, "release.plan.day.none");
        }
        Optional<LocalDate> day = form.day(DAY, "release.plan.day");
        LocalDate today = now.atZone(zone).toLocalDate();
        if (day.filter(one -> one.isAfter(today.plusYears(2)) || one.isBefore(today.minusYears(2))).isPresent()) {
            form.refuse(DAY, "release.plan.day.far");
            return Optional.empty();
        }
        return day.flatMap(one -> TypedMoment.of(form, TIME, one, USUAL_TIME, zone));
    }

    private OptionalDouble celsius(FormInput form, String name, String what, double leastC, double mostC) {
        return form.celsius(name, what, scale, leastC, mostC,
                Saying.of("release.plan.temperature.wrong", Saying.of(what), degrees(leastC), degrees(mostC)));
    }

    private String degrees(double celsius) {
        return TypedNumber.text(scale.of(celsius), 0) + " " + scale.sign();
    }

    private static int people(FormInput form, String name) {
        OptionalInt number = TypedNumber.whole(form.text(name));
        if (number.isEmpty() || number.getAsInt() > MOST_PEOPLE) {
            form.refuse(name, "release.plan.people.wrong", MOST_PEOPLE);
        }
        return number.orElse(0);
    }

    /** No pupil's name is kept, nor how to reach anybody. */
    private static Map<Duty, String> duties(FormInput form) {
        Map<Duty, String> duties = new EnumMap<>(Duty.class);
        for (Duty duty : Duty.values()) {
            String name = DUTY + duty.code();
            form.optional(name, LONGEST_DUTY).ifPresent(by -> {
                if (PersonalText.tellsHowToReach(by) || !PersonalText.namesOfWho(by).isEmpty()) {
                    form.refuse(name, "release.duty.aName", by);
                }
                duties.put(duty, by);
            });
        }
        return duties;
    }

    private List<Load> loads(FormInput form) {
        List<Load> loads = tanks.stream().filter(tank -> !form.text(tank.fish()).isEmpty())
                .map(tank -> tank.parse(form)).toList();
        if (loads.isEmpty()) {
            form.refuse(tanks.isEmpty() ? APPROVAL : tanks.get(0).fish(), "release.plan.fish.none");
        }
        return loads;
    }

    private String temperature(OptionalDouble celsius) {
        return celsius.isPresent() ? TypedNumber.text(scale.of(celsius.getAsDouble()), 1) : "";
    }

    private static String written(OptionalDouble number, int decimals) {
        return number.isPresent() ? TypedNumber.text(number.getAsDouble(), decimals) : "";
    }
}
