package org.tankrounds.release;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tankrounds.pages.StreamFormPage;
import org.tankrounds.pages.StreamPage;
import org.tankrounds.stream.FamilyBioticIndex;
import org.tankrounds.stream.GroupScore;
import org.tankrounds.stream.KindCount;
import org.tankrounds.stream.StreamGroup;
import org.tankrounds.stream.StreamSample;
import org.tankrounds.transport.ReleaseWater;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;

/** From a look at a stream to its pages. */
final class StreamPages {

    /** Parts of the sheet, in its order. */
    private enum Part {
        STONEFLIES, MAYFLIES, CADDISFLIES, OTHER_LARVAE, FLIES, CRUSTACEANS, SOFT, NOBODY_KNOWS;

        static Part of(StreamGroup group) {
            return switch (group) {
                case GIANT_STONEFLY, GOLDEN_STONEFLY, STONEFLY_UNSURE -> STONEFLIES;
                case FLAT_MAYFLY, SWIMMING_MAYFLY, CRAWLING_MAYFLY, PLATED_MAYFLY, MAYFLY_UNSURE -> MAYFLIES;
                case NET_CADDIS, ROAMING_CADDIS, SADDLE_CADDIS, SQUARE_CADDIS, STICK_CADDIS, CADDIS_UNSURE ->
                        CADDISFLIES;
                case WATER_PENNY, RIFFLE_BEETLE, DOBSONFLY, ALDERFLY, DRAGONFLY, DAMSELFLY -> OTHER_LARVAE;
                case CRANE_FLY, SNIPE_FLY, BLACK_FLY, MIDGE, RED_MIDGE -> FLIES;
                case SCUD, SOWBUG, CRAYFISH -> CRUSTACEANS;
                case GILLED_SNAIL, POUCH_SNAIL, CLAM, WORM, LEECH -> SOFT;
                case UNKNOWN -> NOBODY_KNOWS;
            };
        }
    }

    private final Site site;
    private final Formats formats;
    private final Speech speech;

    StreamPages(Site site, Formats formats) {
        this.site = site;
        this.formats = formats;
        this.speech = formats.speech();
    }

    StreamFormPage form(FormInput form, UUID submission, Scale scale) {
        Map<Part, List<StreamFormPage.Animal>> parts = new EnumMap<>(Part.class);
        for (StreamGroup group : StreamGroup.values()) {
            parts.computeIfAbsent(Part.of(group), part -> new ArrayList<>()).add(new StreamFormPage.Animal(
                    StreamCheckForm.found(form, group).withHint(say("stream.look." + group.code())),
                    StreamSketch.of(group)));
        }
        return new StreamFormPage(form.titled(say("stream.title", site.name())), say("stream.title", site.name()),
                site.name(), site.address(), site.address() + "/checks/new", submission.toString(), scale.unit(),
                StreamCheckForm.water(form, scale), parts.entrySet().stream().map(part -> new StreamFormPage.Part(
                        say("stream.part." + part.getKey().name()), part.getValue())).toList(),
                StreamCheckForm.note(form), StreamCheckForm.when(form));
    }

    /** @param mayWithdraw whether the reader may take it back */
    StreamPage page(StreamCheck check, boolean mayWithdraw) {
        StreamSample sample = check.sample();
        List<StreamPage.Found> found = sample.counts().entrySet().stream().map(count -> new StreamPage.Found(
                say("stream.group." + count.getKey().code()), Integer.toString(count.getValue()),
                StreamSketch.of(count.getKey()))).toList();
        return new StreamPage(title(sample), site.name(), site.address(),
                say("stream.by", formats.dateYearAndClock(check.at()), check.by().orElse("")), water(check),
                forFish(check), sample.animals() == 0 ? List.of() : results(sample), outside(sample), found,
                say("stream.animals", sample.animals()), check.note().orElse(""),
                mayWithdraw ? check.address() + "/withdrawn" : "");
    }

    /** In a line, for the list of a site. */
    String line(StreamCheck check) {
        List<String> parts = new ArrayList<>();
        check.temperatureC().ifPresent(celsius -> parts.add(formats.temperature(celsius, 1)));
        check.oxygenMgPerL().ifPresent(oxygen -> parts.add(say("stream.line.oxygen", Formats.number(oxygen, 1))));
        check.sample().index().ifPresent(index -> parts.add(say("stream.line.index",
                Formats.number(index.value(), 2), say("stream.index." + index.water().name()))));
        if (check.sample().animals() > 0) {
            parts.add(say("stream.animals", check.sample().animals()));
        }
        return String.join(" · ", parts);
    }

    private String title(StreamSample sample) {
        return sample.index().map(index -> say("stream.heading", site.name(),
                        say("stream.index." + index.water().name())))
                .orElseGet(() -> say("stream.heading.water", site.name()));
    }

    private List<StreamPage.Reading> water(StreamCheck check) {
        List<StreamPage.Reading> readings = new ArrayList<>();
        check.temperatureC().ifPresent(celsius -> readings.add(new StreamPage.Reading(
                say("stream.temperature"), formats.temperature(celsius, 1), "")));
        check.ph().ifPresent(ph -> readings.add(new StreamPage.Reading(
                say("stream.ph"), Formats.significant(ph, 3), "")));
        check.oxygenMgPerL().ifPresent(oxygen -> readings.add(new StreamPage.Reading(
                say("stream.oxygen"), Formats.number(oxygen, 1) + " mg/L", saturation(check.saturationPercent(site)))));
        return readings;
    }

    private String saturation(OptionalDouble percent) {
        return percent.isEmpty() ? say("stream.saturation.unknown")
                : say("stream.saturation", Formats.number(percent.getAsDouble(), 0));
    }

    private String forFish(StreamCheck check) {
        if (check.temperatureC().isEmpty() || check.oxygenMgPerL().isEmpty()) {
            return say("stream.fish.unknown");
        }
        return say(switch (ReleaseWater.of(check.temperatureC().getAsDouble(), check.oxygenMgPerL().getAsDouble())) {
            case FIT -> "stream.fish.fit";
            case WARM -> "stream.fish.warm";
            case AIRLESS -> "stream.fish.airless";
            case WARM_AND_AIRLESS -> "stream.fish.both";
        });
    }

    private List<StreamPage.Result> results(StreamSample sample) {
        List<StreamPage.Result> results = new ArrayList<>();
        Optional<FamilyBioticIndex> index = sample.index();
        results.add(index.map(this::index).orElseGet(() -> new StreamPage.Result(
                say("stream.result.index"), "–", say("stream.result.index.none"))));
        sample.indexWithLaterGroups().filter(later -> !later.equals(index.orElse(null))).ifPresent(later ->
                results.add(new StreamPage.Result(say("stream.result.later"), Formats.number(later.value(), 2),
                        say("stream.result.later.means", later.animals()))));
        results.add(new StreamPage.Result(say("stream.result.ept"), Integer.toString(sample.eptFamilies()),
                say("stream.result.ept.means")));
        KindCount kinds = sample.kindCount();
        results.add(new StreamPage.Result(say("stream.result.kinds"), say("stream.result.of", kinds.points(),
                say("stream.kinds." + kinds.water().name())),
                say("stream.result.kinds.means", kinds.sensitive(), kinds.somewhatSensitive(), kinds.tolerant())));
        GroupScore score = sample.groupScore();
        results.add(new StreamPage.Result(say("stream.result.score"), say("stream.result.of",
                Formats.number(score.value(), 1), say("stream.score." + score.water().name())),
                say("stream.result.score.means")));
        return results;
    }

    private StreamPage.Result index(FamilyBioticIndex index) {
        String means = say("stream.result.index.means", index.animals());
        return new StreamPage.Result(say("stream.result.index"), say("stream.result.of",
                Formats.number(index.value(), 2), say("stream.index." + index.water().name())),
                index.isOfEnoughAnimals() ? means
                        : means + " " + say("stream.result.index.few", FamilyBioticIndex.ENOUGH_ANIMALS));
    }

    /** Who is counted, and in no index of 1988; empty for nobody. */
    private String outside(StreamSample sample) {
        String groups = sample.outsideIndex().entrySet().stream().map(count -> say("stream.outside.group",
                say("stream.group." + count.getKey().code()), count.getValue())).collect(Collectors.joining(", "));
        return groups.isEmpty() ? "" : say("stream.outside", groups);
    }

    private String say(String key, Object... with) {
        return speech.say(key, with);
    }
}
