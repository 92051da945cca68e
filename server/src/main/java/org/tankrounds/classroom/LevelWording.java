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
        return new Measured(name(level.analyte()), value(level), level.notDetected() ? ""
                : formats.speech().say(Wording.unit(boxes.form(level.analyte()))),
                old ? formats.speech().say("classroom.level.old") : meaning(level),
                formats.moment(level.at()), beyond && !old);
    }

    boolean isBeyondLately(Level level) {
        return isBeyond(level) && !level.at().isBefore(formats.now().minus(STILL_TODAYS));
    }

    String name(Analyte analyte) {
        return formats.speech().say("classroom.level." + analyte.code());
    }

    String value(Level level) {
        if (level.notDetected()) {
            return formats.speech().say("classroom.level.none");
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
                .orElse(formats.speech().say("classroom.level.unread"));
    }

    private static boolean isBeyond(Level level) {
        return level.ofLimit().orElse(0) > 1;
    }

    private String meaning(Level level) {
        if (level.setAside()) {
            return means(isBeyond(level) ? "setAsideBeyond" : "setAside");
        }
        return switch (level.analyte()) {
            case TEMPERATURE -> temperature(level);
            case PH -> means(ph(level));
            case TOTAL_AMMONIA -> ammonia(level);
            case NITRITE -> means(nitrite(level));
            case NITRATE -> means("nitrate");
            default -> means(isBeyond(level) ? "oxygenTooLittle" : "oxygenEnough");
        };
    }

    private String means(String end, Object... with) {
        return formats.speech().say("classroom.means." + end, with);
    }

    private String temperature(Level level) {
        if (isBeyond(level)) {
            return means("tooWarm." + who());
        }
        double above = level.value() - tank.usualTemperatureC().orElse(level.value());
        if (above >= MUCH_WARMER_C) {
            double degrees = tank.tank().thermometerUnit().equals(FAHRENHEIT) ? above * 1.8 : above;
            return means("warmer", Formats.number(degrees, 0));
        }
        if (isClose(level)) {
            return means("gettingWarm");
        }
        return level.value() < COLD_C ? means("veryCold") : means("cool." + who());
    }

    private String who() {
        return switch (stage) {
            case EGG -> "eggs";
            case SAC_FRY -> "fry";
            case FEEDING -> "trout";
        };
    }

    private static String ph(Level level) {
        if (isBeyond(level)) {
            return level.value() < NEUTRAL_PH ? "tooSour" : "tooAlkaline";
        }
        if (level.value() < NEARLY_SOUR_PH) {
            return "ratherSour";
        }
        return level.value() > NEARLY_ALKALINE_PH ? "ratherAlkaline" : "goodPh";
    }

    private String ammonia(Level level) {
        if (isBeyond(level)) {
            return means("ammoniaTooMuch");
        }
        if (level.notDetected()) {
            return means("ammoniaNone");
        }
        if (level.harmfulShare().isEmpty()) {
            return means("ammoniaNoPh");
        }
        return isClose(level) ? means("ammoniaNearly")
                : means("ammoniaPart", Formats.significant(1 / level.harmfulShare().getAsDouble(), 2));
    }

    private static String nitrite(Level level) {
        if (isBeyond(level)) {
            return "nitriteTooMuch";
        }
        if (isClose(level)) {
            return "nitriteNearly";
        }
        return level.notDetected() ? "nitriteNone" : "nitriteLittle";
    }

    private static boolean isClose(Level level) {
        return level.ofLimit().orElse(0) > CLOSE;
    }
}
