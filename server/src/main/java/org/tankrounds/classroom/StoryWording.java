package org.tankrounds.classroom;

import java.util.ArrayList;
import java.util.List;
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
        sentences.add("Each day adds the water’s temperature: a day at 11 °C adds 11 degree-days. The warmer, the faster.");
        tank.expected(Reason.Kind.HATCH_EXPECTED).ifPresent(reason -> sentences.add(window("They will hatch", reason)));
        tank.expected(Reason.Kind.FIRST_FEEDING_EXPECTED)
                .ifPresent(reason -> sentences.add(window("They will want their first feed", reason)));
        if (!lot.stageAt(formats.now()).isBeforeFirstFeeding()) {
            sentences.add("They have been feeding since about " + formats.date(lot.firstFeedingAt()) + ".");
        }
        return new Warmth(Math.round(lot.thermalUnitsC()) + " degree-days",
                percent(lot.thermalUnitsC() / way), hatch > 0 && hatch < way ? percent(hatch / way) : "", sentences);
    }

    private String window(String what, Reason reason) {
        return what + " " + formats.window(reason.earliest().orElseThrow(), reason.latest().orElseThrow()) + ".";
    }

    private static String percent(double share) {
        return Formats.number(ALL * Math.max(0, Math.min(1, share)), 1);
    }

    List<Step> nitrogen(List<Level> newest, LevelWording levels) {
        return List.of(
                new Step("Feed and fish", "What fish eat and cannot use leaves them as ammonia, most of it through the"
                        + " gills. Feed that rots becomes ammonia too.", ""),
                new Step("Ammonia", "The first kind of bacteria in the filter eats it and makes nitrite of it.",
                        levels.whole(Analyte.TOTAL_AMMONIA, newest)),
                new Step("Nitrite", "The second kind, which grows more slowly, makes nitrate of it.",
                        levels.whole(Analyte.NITRITE, newest)),
                new Step("Nitrate", "It harms little and stays, until fresh water carries it away.",
                        levels.whole(Analyte.NITRATE, newest)));
    }

    static String now(Ripeness filter) {
        return switch (filter) {
            case UNFED -> "Here: there is little ammonia yet, so the bacteria are few. They will be needed when the fish"
                    + " begin to feed.";
            case BEHIND -> "Here: there is more ammonia than the first bacteria can eat. They are still too few, or there"
                    + " was too much feed.";
            case HALF_RIPE -> "Here: the first bacteria keep up, the second do not yet.";
            case RIPE -> "Here: both kinds of bacteria keep up with the feed.";
        };
    }
}
