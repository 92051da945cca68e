package org.tankrounds.eggday;

import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tankrounds.pages.FormField;
import org.tankrounds.places.Tank;
import org.tankrounds.season.TypedMoment;
import org.tankrounds.web.FormInput;
import org.tankrounds.words.Saying;

/** The form that says which tank gets how many eggs when: two boxes a tank, of which empty ones are no stop. */
final class StopsForm {
    private StopsForm() {}

    static Map<String, String> textOf(List<EggStop> stops, List<Tank> tanks) {
        Map<Integer, EggStop> byTank = stops.stream().collect(Collectors.toMap(EggStop::tankId, Function.identity()));
        Map<String, String> text = new LinkedHashMap<>();
        tanks.forEach(tank -> {
            Optional<EggStop> stop = Optional.ofNullable(byTank.get(tank.tankId()));
            text.put(eggs(tank), stop.map(known -> Integer.toString(known.eggs())).orElse(""));
            text.put(time(tank), stop.flatMap(EggStop::plannedFor).map(TypedMoment.CLOCK::format).orElse(""));
        });
        return text;
    }

    static Map<String, Saying> labels(List<Tank> tanks) {
        Map<String, Saying> labels = new LinkedHashMap<>();
        tanks.forEach(tank -> {
            labels.put(eggs(tank), Saying.of("eggday.stops.eggsFor", place(tank)));
            labels.put(time(tank), Saying.of("eggday.stops.timeFor", place(tank)));
        });
        return labels;
    }

    /** What is planned by tank; what cannot be taken leaves a sentence behind. */
    static Map<Integer, EggStop.Planned> parse(FormInput form, List<Tank> tanks) {
        Map<Integer, EggStop.Planned> planned = new LinkedHashMap<>();
        tanks.forEach(tank -> {
            OptionalInt eggs = RunForm.count(form, eggs(tank), 1);
            Optional<LocalTime> time = RunForm.time(form, time(tank));
            if (eggs.isPresent()) {
                planned.put(tank.tankId(), new EggStop.Planned(eggs.getAsInt(), time));
            } else if (!form.text(time(tank)).isEmpty()) {
                form.refuse(eggs(tank), "eggday.stops.eggs.none", place(tank));
            }
        });
        return planned;
    }

    static FormField eggsBox(FormInput form, Tank tank) {
        return form.numberBox(eggs(tank), "eggday.stops.eggs", "")
                .withLabel(form.say("eggday.stops.eggsFor", place(tank)));
    }

    static FormField timeBox(FormInput form, Tank tank) {
        return form.textBox(time(tank), "eggday.stops.time").withType("time", "off")
                .withLabel(form.say("eggday.stops.timeFor", place(tank)));
    }

    static String eggs(Tank tank) {
        return "eggs-" + tank.code();
    }

    private static String time(Tank tank) {
        return "time-" + tank.code();
    }

    static String place(Tank tank) {
        return tank.school() + ", " + tank.classroom();
    }
}
