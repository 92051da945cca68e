package org.tankrounds.rounds;

import java.util.List;
import java.util.stream.Collectors;
import org.tankrounds.pages.TankPage.LogRow;
import org.tankrounds.readings.DeviceDay;
import org.tankrounds.readings.DeviceDay.Hour;
import org.tankrounds.readings.Wording;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** What a device read in a day, in a line: "288 temperatures, 10.9 to 12.1 °C", and the course of it. */
final class DayWording {
    static final int WIDTH = 120;
    static final int HEIGHT = 22;
    private static final int HOURS = 24;
    /** Less than this is drawn flat, °C or as it comes: a sensor's own noise is no course. */
    private static final double LEAST_SPAN = 1.5;

    private final Formats formats;
    private final Speech speech;

    DayWording(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
    }

    LogRow row(String tankCode, DeviceDay day) {
        return new LogRow(formats.weekdayAndDate(day.day()),
                speech.say(day.fromFile() ? "loggers.day.file" : "loggers.day.probe"), sum(day), "", "",
                "/tanks/" + tankCode + "/days/" + day.day(), speech.say("loggers.day.each"),
                course(day.hours().values().iterator().next()));
    }

    String read(DeviceDay day) {
        return speech.say(day.fromFile() ? "loggers.day.readByLogger" : "loggers.day.readByProbe", sum(day));
    }

    /** "Temperature, °C" */
    String column(Analyte analyte) {
        String name = speech.say(Wording.name(analyte));
        String unit = unit(analyte);
        return unit.isEmpty() ? name : speech.say("loggers.day.column", name, unit);
    }

    /** "11.2 (11.1 to 11.3)" */
    String hour(Analyte analyte, Hour hour) {
        return speech.say("loggers.day.meanAndRange", number(analyte, hour.mean()), number(analyte, hour.least()),
                number(analyte, hour.most()));
    }

    private String sum(DeviceDay day) {
        return day.hours().keySet().stream().map(analyte -> sum(day, analyte)).collect(Collectors.joining("; "));
    }

    private String sum(DeviceDay day, Analyte analyte) {
        String bare = speech.say(
                "loggers.range", number(analyte, day.least(analyte)), number(analyte, day.most(analyte)));
        String unit = unit(analyte);
        String range = unit.isEmpty() ? bare : bare + Formats.NO_BREAK + unit;
        int count = day.count(analyte);
        return analyte == Analyte.TEMPERATURE ? speech.say("loggers.day.manyOf.temperature", count, range)
                : speech.say("loggers.day.many", count, Wording.inSentence(analyte), range);
    }

    private String number(Analyte analyte, double canonical) {
        return Wording.plain(analyte == Analyte.TEMPERATURE ? speech.scale().of(canonical) : canonical);
    }

    private String unit(Analyte analyte) {
        return switch (analyte) {
            case TEMPERATURE -> speech.scale().sign();
            case PH -> "";
            default -> speech.say(Wording.unit(analyte.canonical()));
        };
    }

    /** Path data of the hourly means, midnight to midnight; a gap in the hours is one in the line. */
    static String course(List<Hour> hours) {
        double least = hours.stream().mapToDouble(Hour::mean).min().orElseThrow();
        double most = hours.stream().mapToDouble(Hour::mean).max().orElseThrow();
        double middle = (least + most) / 2;
        double span = Math.max(LEAST_SPAN, most - least) * 1.2;
        SvgPath path = new SvgPath();
        StringBuilder data = new StringBuilder();
        int before = -1;
        for (Hour hour : hours) {
            if (before >= 0 && hour.hour() > before + 1) {
                data.append(path.data());
                path = new SvgPath();
            }
            path.to((hour.hour() + 0.5) / HOURS * WIDTH, HEIGHT / 2.0 - (hour.mean() - middle) / span * HEIGHT);
            before = hour.hour();
        }
        return data.append(path.data()).toString();
    }
}
