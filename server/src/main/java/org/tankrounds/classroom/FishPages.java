package org.tankrounds.classroom;

import io.javalin.http.Context;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tankrounds.behaviour.Behaviour;
import org.tankrounds.behaviour.Look;
import org.tankrounds.behaviour.LookWording;
import org.tankrounds.behaviour.Seen;
import org.tankrounds.fish.LengthWeight;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.FishPage;
import org.tankrounds.pages.FishPage.Group;
import org.tankrounds.pages.FishPage.Past;
import org.tankrounds.pages.FishPage.Way;
import org.tankrounds.pages.FormField;
import org.tankrounds.season.FishSample;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;

/** From what is known of a tank's fish to the page on which a class says how they are. */
final class FishPages {
    static final String FISH = "fish";
    static final String LENGTH = "mean_length_mm";
    static final String WEIGHT = "total_weight_g";
    /** Hidden: the length that was asked about when the form was shown. */
    static final String ASKED = "asked_length";
    static final List<String> MEASURES = List.of(FISH, LENGTH, WEIGHT);

    /** What was typed and chosen, and what is to be said about it. */
    record Typed(String saved, String lookError, List<Seen> seen, FormInput measures, Just just) {
        static Typed nothing(Context ctx, String saved, Just just) {
            return new Typed(saved, "", List.of(), FormInput.showing(ctx, Map.of()), just);
        }
    }

    /** What was kept a moment ago. */
    enum Just { NOTHING, LOOKED, MEASURED }

    /** A row with its time, to put sightings and measurements in one order. */
    private record Dated(Instant at, Past past) {}

    private final ClassPages.Known known;
    private final Formats formats;

    FishPages(ClassPages.Known known, Formats formats) {
        this.known = known;
        this.formats = formats;
    }

    FishPage page(Typed typed) {
        List<FormField> measures = List.of(
                typed.measures().numberBox(FISH, "classroom.fish.count", ""),
                typed.measures().numberBox(LENGTH, "classroom.fish.length", "mm"),
                typed.measures().numberBox(WEIGHT, "classroom.fish.weight", say("classroom.fish.weight.unit")));
        boolean wrong = !typed.lookError().isEmpty() || !typed.measures().ok();
        return new FishPage(formats.speech().titled(wrong, formats.speech().say("classroom.fish")),
                formats.speech().say("classroom.place", known.tank().school(), known.tank().classroom()),
                known.tank().code(), receipt(typed), typed.just() == Just.LOOKED ? advice() : "",
                UUID.randomUUID().toString(), known.today().stage() != Stage.EGG,
                groups(typed.seen()), typed.lookError(), measures,
                typed.measures().wrong(LENGTH) ? typed.measures().text(LENGTH) : "", past(),
                known.samples().stream().anyMatch(this::tellsCondition));
    }

    /** What was measured is told at once: a slip shows while the fish are still in the box. */
    private String receipt(Typed typed) {
        return typed.just() != Just.MEASURED ? typed.saved() : known.samples().stream().findFirst()
                .map(sample -> say("classroom.fish.receipt", typed.saved(), words(sample))).orElse(typed.saved());
    }

    private String advice() {
        return LookWording.advice(known.seen(), known.today().stage())
                .map(formats.speech()::say).orElse("");
    }

    private List<Group> groups(List<Seen> chosen) {
        boolean feeds = !known.today().stage().isBeforeFirstFeeding();
        return Arrays.stream(Behaviour.values()).filter(behaviour -> feeds || behaviour != Behaviour.APPETITE)
                .map(behaviour -> new Group(behaviour.code(), formats.speech().say(LookWording.label(behaviour)),
                        ways(behaviour, chosen)))
                .toList();
    }

    /** The first has the group's own name as its id: that is where the error summary leads. */
    private List<Way> ways(Behaviour behaviour, List<Seen> chosen) {
        List<Way> ways = new ArrayList<>();
        for (Seen seen : behaviour.ways()) {
            String id = ways.isEmpty() ? behaviour.code() : behaviour.code() + "-" + seen.code();
            ways.add(new Way(id, seen.code(), formats.speech().say(LookWording.choice(seen)), chosen.contains(seen)));
        }
        ways.add(new Way(behaviour.code() + "-none", "", say("classroom.fish.notLooked"),
                chosen.stream().noneMatch(seen -> seen.behaviour() == behaviour)));
        return ways;
    }

    private List<Past> past() {
        String here = "/tanks/" + known.tank().code() + "/fish/";
        List<Dated> all = new ArrayList<>();
        for (Look look : known.looks()) {
            all.add(new Dated(look.seenAt(), new Past(formats.moment(look.seenAt()),
                    LookWording.list(look.seen(), formats.speech().words()),
                    here + "looks/" + look.lookId() + "/withdrawn")));
        }
        for (FishSample sample : known.samples()) {
            all.add(new Dated(sample.measuredAt(), new Past(formats.moment(sample.measuredAt()), words(sample),
                    here + "samples/" + sample.sampleId() + "/withdrawn")));
        }
        return all.stream().sorted(Comparator.comparing(Dated::at).reversed()).map(Dated::past).toList();
    }

    private String words(FishSample sample) {
        String length = Formats.number(sample.meanLengthMm(), 0);
        if (sample.totalWeightG().isEmpty()) {
            return say("classroom.fish.measured", sample.fish(), length);
        }
        String weighed = say("classroom.fish.weighed", sample.fish(), length,
                Formats.significant(sample.meanWeightG(), 2));
        return !tellsCondition(sample) ? weighed : say("classroom.fish.condition", weighed,
                Formats.significant(LengthWeight.fishPerPound(sample.meanWeightG()), 3),
                Formats.number(sample.condition(), 2),
                say("classroom.fish.build." + LengthWeight.build(sample.condition()).name()));
    }

    /** Not of sac fry, whose yolk weighs too. */
    private boolean tellsCondition(FishSample sample) {
        return sample.totalWeightG().isPresent() && known.today().development()
                .filter(lot -> sample.measuredAt().isBefore(lot.firstFeedingAt())).isEmpty();
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
