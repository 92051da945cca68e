package org.tankrounds.classroom;

import java.time.Duration;
import java.util.List;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.ClassPage.Measured;
import org.tankrounds.readings.LogBoxes;
import org.tankrounds.readings.Wording;
import org.tankrounds.rounds.TankToday;
import org.tankrounds.rounds.TankToday.Level;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Units;
import org.tankrounds.web.Formats;

/** What a number means for the fish, in a sentence that a ten-year-old can read. */
final class LevelWording {
    private static final Duration STILL_TODAYS = Duration.ofDays(7);
    private static final double CLOSE = 0.6;
    /** Colder, eggs and fish are slow (common practice, no source). */
    private static final double COLD_C = 5;
    private static final double NEARLY_SOUR_PH = 6.5;
    private static final double NEARLY_ALKALINE_PH = 8.5;
    private static final double NEUTRAL_PH = 7;

    /** So much above the usual, a chiller may stand (common practice, no source). */
    private static final double MUCH_WARMER_C = 2;

    private static final String FAHRENHEIT = "[degF]";

    private final Formats formats;
    private final Stage stage;
    private final TankToday tank;
    private final LogBoxes boxes;

    /** @param boxes in which unit and form the class reads, and so is told */
    LevelWording(Formats formats, TankToday tank, LogBoxes boxes) {
        this.formats = formats;
        this.stage = tank.stage();
        this.tank = tank;
        this.boxes = boxes;
    }

    Measured measured(Level level) {
        boolean old = level.at().isBefore(formats.now().minus(STILL_TODAYS));
        boolean beyond = isBeyond(level);
        return new Measured(name(level), value(level), level.notDetected() ? ""
                : formats.speech().say(Wording.unit(boxes.form(level.analyte()))),
                old ? "Too long ago to tell. Measure it again." : meaning(level),
                formats.moment(level.at()), beyond && !old);
    }

    boolean isBeyondLately(Level level) {
        return isBeyond(level) && !level.at().isBefore(formats.now().minus(STILL_TODAYS));
    }

    static String name(Level level) {
        return switch (level.analyte()) {
            case TEMPERATURE -> "Temperature";
            case PH -> "pH";
            case TOTAL_AMMONIA -> "Ammonia";
            case NITRITE -> "Nitrite";
            case NITRATE -> "Nitrate";
            default -> "Oxygen";
        };
    }

    String value(Level level) {
        if (level.notDetected()) {
            return "none to see";
        }
        double value = Units.fromCanonical(level.analyte(), boxes.form(level.analyte()), level.value(),
                tank.temperatureC(), tank.tank().elevationM().orElse(0));
        return switch (level.analyte()) {
            case TEMPERATURE, PH, DISSOLVED_OXYGEN -> Formats.number(value, 1);
            default -> Formats.significant(value, 2);
        };
    }

    /** The value with its unit, or that it was not measured. */
    String whole(Analyte analyte, List<Level> levels) {
        return levels.stream().filter(level -> level.analyte() == analyte).findFirst()
                .map(level -> level.notDetected() ? value(level)
                        : value(level) + Formats.NO_BREAK + formats.speech().say(Wording.unit(boxes.form(analyte))))
                .orElse("not measured");
    }

    private static boolean isBeyond(Level level) {
        return level.ofLimit().orElse(0) > 1;
    }

    private String meaning(Level level) {
        return switch (level.analyte()) {
            case TEMPERATURE -> temperature(level);
            case PH -> ph(level);
            case TOTAL_AMMONIA -> ammonia(level);
            case NITRITE -> nitrite(level);
            case NITRATE -> "What the bacteria leave over. Plants eat it, and fresh water thins it out.";
            default -> oxygen(level);
        };
    }

    private String temperature(Level level) {
        String who = stage.isBeforeFirstFeeding() ? stage == Stage.EGG ? "eggs" : "young fish" : "trout";
        if (isBeyond(level)) {
            return "Too warm for " + who + ". Tell an adult now.";
        }
        double above = level.value() - tank.usualTemperatureC().orElse(level.value());
        if (above >= MUCH_WARMER_C) {
            double degrees = tank.tank().thermometerUnit().equals(FAHRENHEIT) ? above * 1.8 : above;
            return "Warmer than usual, by " + Formats.number(degrees, 0) + " degrees. Is the chiller running?";
        }
        if (level.ofLimit().orElse(0) > CLOSE) {
            return "Getting warm for " + who + ". Look again soon.";
        }
        return level.value() < COLD_C ? "Very cold: everything goes slowly." : "Cool, just as " + who + " need it.";
    }

    private static String ph(Level level) {
        if (isBeyond(level)) {
            return level.value() < NEUTRAL_PH ? "Too sour for the fish. Tell an adult now."
                    : "Too alkaline for the fish. Tell an adult now.";
        }
        if (level.value() < NEARLY_SOUR_PH) {
            return "Rather sour: the bacteria in the filter get slow.";
        }
        return level.value() > NEARLY_ALKALINE_PH ? "Rather alkaline: more of the ammonia is the harmful kind."
                : "Good for the fish and for the bacteria in the filter.";
    }

    private static String ammonia(Level level) {
        if (isBeyond(level)) {
            return "Too much of it is the harmful kind. Tell an adult now.";
        }
        if (level.notDetected()) {
            return "The bacteria eat what the fish give off.";
        }
        if (level.harmfulShare().isEmpty()) {
            return "Measure pH too: it says how much of it is the harmful kind.";
        }
        String part = "Only 1 part in " + Formats.significant(1 / level.harmfulShare().getAsDouble(), 2)
                + " of it is the harmful kind.";
        return level.ofLimit().orElse(0) > CLOSE ? "Nearly too much. Feed little, and measure again tomorrow."
                : part + " The fish can bear it.";
    }

    private static String nitrite(Level level) {
        if (isBeyond(level)) {
            return "Too much: the blood can’t carry enough oxygen. Tell an adult now.";
        }
        return level.ofLimit().orElse(0) > CLOSE ? "Nearly too much. Measure again tomorrow."
                : level.notDetected() ? "The second kind of bacteria eats it all." : "A little, and the fish can bear it.";
    }

    private static String oxygen(Level level) {
        return isBeyond(level) ? "Too little to breathe well. Tell an adult now: more air."
                : "Enough to breathe.";
    }
}
