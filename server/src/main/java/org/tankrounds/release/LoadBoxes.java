package org.tankrounds.release;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tankrounds.fish.LengthWeight;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.season.FishSample;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** The boxes of a plan's form that are about the fish of one tank. */
final class LoadBoxes {
    private static final double HEAVIEST_G = 1000;
    private static final int MOST_CONTAINERS = 100;
    private static final double LARGEST_L = 1000;
    private static final int MOST_FISH = 100_000;

    private final TankStock stock;
    private final boolean isOut;
    private final String fish;
    private final String length;
    private final String weight;
    private final String containers;
    private final String litres;

    /** @param isOut whether its fish are out by this plan already: how many may go was asked when they went */
    LoadBoxes(TankStock stock, boolean isOut) {
        String code = stock.tank().code();
        this.stock = stock;
        this.isOut = isOut;
        this.fish = "fish_" + code;
        this.length = "length_" + code;
        this.weight = "weight_" + code;
        this.containers = "boxes_" + code;
        this.litres = "litres_" + code;
    }

    int tankId() {
        return stock.tank().tankId();
    }

    /** Name of the box that decides whether the tank is in the plan. */
    String fish() {
        return fish;
    }

    Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(fish, ofTank("release.plan.fish"));
        labels.put(length, ofTank("release.plan.length"));
        labels.put(weight, ofTank("release.plan.weight"));
        labels.put(containers, ofTank("release.plan.boxes"));
        labels.put(litres, ofTank("release.plan.litres"));
        return labels;
    }

    /** What was measured last stands there already. */
    void putMeasured(Map<String, String> text) {
        stock.measured().ifPresent(sample -> {
            text.put(length, TypedNumber.text(sample.meanLengthMm(), 1));
            sample.totalWeightG().ifPresent(grams -> text.put(weight, TypedNumber.text(sample.meanWeightG(), 2)));
        });
    }

    void put(Map<String, String> text, Load load) {
        text.put(fish, Integer.toString(load.fish()));
        load.meanLengthMm().ifPresent(mm -> text.put(length, TypedNumber.text(mm, 1)));
        load.meanWeightG().ifPresent(grams -> text.put(weight, TypedNumber.text(grams, 2)));
        text.put(containers, Integer.toString(load.boxes()));
        text.put(litres, TypedNumber.text(load.boxL(), 1));
    }

    Group group(FormInput form) {
        return new Group(stock.spread() == 0 ? form.say("release.plan.tank", stock.place(), stock.alive())
                : form.say("release.plan.tank.about", stock.place(), stock.alive(), stock.spread()),
                stock.measured().map(sample -> measured(form, sample)).orElse(""), List.of(
                List.of(form.numberBox(fish, "release.plan.fish", "").withHint(form.say("release.plan.fish.hint")),
                        form.numberBox(containers, "release.plan.boxes", ""),
                        form.numberBox(litres, "release.plan.litres", "L")),
                List.of(form.optional(form.numberBox(length, "release.plan.length", "mm")),
                        form.optional(form.numberBox(weight, "release.plan.weight", "g"))
                                .withHint(form.say("release.plan.weight.hint")))));
    }

    /** Of a tank that is in the plan; what cannot be taken is said by the form. */
    Load parse(FormInput form) {
        int many = whole(form, fish, MOST_FISH, "release.plan.fish.wrong");
        if (many > 0 && !isOut) {
            stock.refusal(many).ifPresent(why -> form.refuse(fish, why));
        }
        OptionalDouble meanMm = form.decimal(length, "release.plan.length", LengthWeight.LENGTH_MM.min(),
                LengthWeight.LENGTH_MM.max(), Saying.of("release.plan.length.wrong"));
        OptionalDouble meanG = form.decimal(weight, "release.plan.weight", Double.MIN_VALUE, HEAVIEST_G,
                Saying.of("release.plan.weight.wrong"));
        if (!form.wrong(length) && !form.wrong(weight)) {
            refuseUnlikely(form, meanMm, meanG);
        }
        int boxes = whole(form, containers, MOST_CONTAINERS, "release.plan.boxes.wrong");
        OptionalDouble eachL = form.decimal(litres, "release.plan.litres", 1, LARGEST_L,
                Saying.of("release.plan.litres.wrong"));
        if (form.text(litres).isEmpty()) {
            form.refuse(litres, "release.plan.litres.wrong");
        }
        return new Load(tankId(), many, meanMm, meanG, Math.max(1, boxes), eachL.orElse(1));
    }

    /** A weight that stayed when the length was changed would understate what the boxes carry. */
    private void refuseUnlikely(FormInput form, OptionalDouble meanMm, OptionalDouble meanG) {
        if (meanMm.isPresent() && meanG.isPresent() && !LengthWeight.LIKELY_CONDITION.holds(
                LengthWeight.condition(meanMm.getAsDouble(), meanG.getAsDouble()))) {
            form.refuse(weight, "release.plan.weight.unlikely", form.text(length), TypedNumber.text(
                    LengthWeight.weightG(meanMm.getAsDouble(), LengthWeight.USUAL_CONDITION), 2));
        }
    }

    private static int whole(FormInput form, String name, int most, String wrong) {
        OptionalInt number = TypedNumber.whole(form.text(name));
        if (number.isEmpty() || number.getAsInt() < 1 || number.getAsInt() > most) {
            form.refuse(name, wrong);
        }
        return number.orElse(0);
    }

    private String measured(FormInput form, FishSample sample) {
        return form.say("release.plan.measured", sample.fish(),
                form.date(sample.measuredAt().atZone(stock.tank().zone()).toLocalDate()),
                TypedNumber.text(sample.meanLengthMm(), 1));
    }

    private Saying ofTank(String key) {
        return Saying.of("release.plan.ofTank", stock.place(), Saying.of(key));
    }
}
