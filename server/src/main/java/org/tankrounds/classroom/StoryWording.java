package org.tankrounds.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tankrounds.fish.Development;
import org.tankrounds.forecast.Reason;
import org.tankrounds.forecast.Ripeness;
import org.tankrounds.pages.ClassPage.Step;
import org.tankrounds.pages.ClassPage.Warmth;
import org.tankrounds.rounds.TankToday;
import org.tankrounds.rounds.TankToday.Level;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;

/** The two stories that a tank tells a class: how warmth makes fish of eggs, and how bacteria clean the water. */
final class StoryWording {
    private static final double ALL = 100;

    private final Formats formats;

    StoryWording(Formats formats) {
        this.formats = formats;
    }

    Warmth warmth(TankToday tank, Development lot) {
        double way = Math.max(Development.FIRST_FEEDING_C_DAYS, tank.degreeDaysAt(lot.firstFeedingAt()));
        double hatch = tank.degreeDaysAt(lot.hatchAt());
        List<String> sentences = new ArrayList<>();
        sentences.add(say("classroom.warmth.eachDay"));
        tank.expected(Reason.Kind.HATCH_EXPECTED)
                .ifPresent(reason -> sentences.add(say("classroom.warmth.willHatch", window(reason))));
        tank.expected(Reason.Kind.FIRST_FEEDING_EXPECTED)
                .ifPresent(reason -> sentences.add(say("classroom.warmth.willFeed", window(reason))));
        if (!lot.stageAt(formats.now()).isBeforeFirstFeeding()) {
            sentences.add(say("classroom.warmth.feeding", formats.date(lot.firstFeedingAt())));
        }
        return new Warmth(say("classroom.warmth.collected", Math.round(lot.thermalUnitsC())),
                percent(lot.thermalUnitsC() / way),
                hatch > 0 && hatch < way ? percent(hatch / way) : "", sentences);
    }

    private String window(Reason reason) {
        return formats.window(reason.earliest().orElseThrow(), reason.latest().orElseThrow());
    }

    private static String percent(double share) {
        return Formats.number(ALL * Math.max(0, Math.min(1, share)), 1);
    }

    List<Step> nitrogen(List<Level> newest, LevelWording levels) {
        return List.of(
                new Step(say("classroom.nitrogen.fish"), say("classroom.nitrogen.fish.story"), ""),
                step("classroom.nitrogen.ammonia.story", Analyte.TOTAL_AMMONIA, newest, levels),
                step("classroom.nitrogen.nitrite.story", Analyte.NITRITE, newest, levels),
                step("classroom.nitrogen.nitrate.story", Analyte.NITRATE, newest, levels));
    }

    private Step step(String story, Analyte analyte, List<Level> newest, LevelWording levels) {
        return new Step(levels.name(analyte), say(story), levels.whole(analyte, newest));
    }

    String now(Ripeness filter) {
        return say("classroom.filter." + filter.name().toLowerCase(Locale.ROOT));
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
