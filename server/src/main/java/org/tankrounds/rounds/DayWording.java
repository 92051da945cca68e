package org.tankrounds.rounds;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.tankrounds.pages.TankPage.LogRow;
import org.tankrounds.readings.DeviceDay;
import org.tankrounds.readings.DeviceDay.Hour;
import org.tankrounds.readings.Wording;
import org.tankrounds.water.Analyte;

/** What a device read in a day, in a line: "288 temperatures, 10.9 to 12.1 °C", and the course of it. */
final class DayWording {
    static final int WIDTH = 120;
    static final int HEIGHT = 22;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final int HOURS = 24;
    /** Less than this is drawn flat, °C or as it comes: a sensor's own noise is no course. */
    private static final double LEAST_SPAN = 1.5;

    private DayWording() {}

    static LogRow row(String tankCode, DeviceDay day) {
        return new LogRow(DAY.format(day.day()), day.fromFile() ? "logger file" : "probe", sum(day), "", "",
                to(tankCode, day), "Each reading", course(day.hours().values().iterator().next()));
    }

    static String to(String tankCode, DeviceDay day) {
        return "/tanks/" + tankCode + "/days/" + day.day();
    }

    static String sum(DeviceDay day) {
        return day.hours().keySet().stream().map(analyte -> sum(day, analyte)).collect(Collectors.joining("; "));
    }

    private static String sum(DeviceDay day, Analyte analyte) {
        Map<Analyte, String> many = Map.of(Analyte.TEMPERATURE, "temperatures", Analyte.PH, "times pH",
                Analyte.DISSOLVED_OXYGEN, "times oxygen");
        String unit = analyte == Analyte.PH ? "" : " " + analyte.unitLabel();
        return day.count(analyte) + " " + many.getOrDefault(analyte, "times " + analyte.code().replace('_', ' ')) + ", "
                + Wording.plain(day.least(analyte)) + " to " + Wording.plain(day.most(analyte)) + unit;
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
