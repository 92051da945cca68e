package org.tankrounds.rounds;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.tankrounds.pages.DeviceDayPage;
import org.tankrounds.pages.DeviceDayPage.HourRow;
import org.tankrounds.pages.TankPage.LogRow;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.DeviceDay;
import org.tankrounds.readings.DeviceDay.Hour;
import org.tankrounds.readings.Reading;
import org.tankrounds.readings.Wording;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;

/** From a device's day to its page: hour by hour, and each reading. */
final class DayPages {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);

    private final TankLog log;

    DayPages(Formats formats) {
        this.log = new TankLog(formats);
    }

    DeviceDayPage page(Caller caller, Tank tank, DeviceDay day, List<Reading> each) {
        List<LogRow> rows = each.stream().map(one -> log.row(tank.code(), one, caller.signedIn())).toList();
        return new DeviceDayPage(DAY.format(day.day()), tank.school() + ", " + tank.classroom(), "/tanks/" + tank.code(),
                (day.fromFile() ? "A logger" : "A probe") + " read " + DayWording.sum(day) + ".",
                day.hours().keySet().stream().map(DayPages::column).toList(), hours(day), rows);
    }

    private static String column(Analyte analyte) {
        String unit = analyte == Analyte.PH ? "" : ", " + analyte.unitLabel();
        return Wording.name(analyte) + unit;
    }

    private static List<HourRow> hours(DeviceDay day) {
        TreeMap<Integer, List<String>> rows = new TreeMap<>();
        int column = 0;
        for (List<Hour> hours : day.hours().values()) {
            for (Hour hour : hours) {
                List<String> cells = rows.computeIfAbsent(hour.hour(), at -> new ArrayList<>());
                while (cells.size() < column) {
                    cells.add("");
                }
                cells.add(Wording.plain(hour.mean()) + " (" + Wording.plain(hour.least()) + " to "
                        + Wording.plain(hour.most()) + ")");
            }
            column++;
        }
        return rows.entrySet().stream().map(row -> new HourRow(row.getKey() + ":00", row.getValue())).toList();
    }
}
