package org.tankrounds.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.tankrounds.pages.DeviceDayPage;
import org.tankrounds.pages.DeviceDayPage.HourRow;
import org.tankrounds.pages.TankPage.LogRow;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.DeviceDay;
import org.tankrounds.readings.Reading;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;

/** From a device's day to its page: hour by hour, and each reading. */
final class DayPages {
    private final Formats formats;
    private final TankLog log;
    private final DayWording wording;

    DayPages(Formats formats) {
        this.formats = formats;
        this.log = new TankLog(formats);
        this.wording = new DayWording(formats);
    }

    DeviceDayPage page(Caller caller, Tank tank, DeviceDay day, List<Reading> each) {
        List<LogRow> rows = each.stream().map(one -> log.row(tank.code(), one, caller.signedIn())).toList();
        return new DeviceDayPage(formats.weekdayAndLongDate(day.day()), tank.school() + ", " + tank.classroom(),
                "/tanks/" + tank.code(), wording.read(day),
                day.hours().keySet().stream().map(wording::column).toList(), hours(day), rows);
    }

    private List<HourRow> hours(DeviceDay day) {
        TreeMap<Integer, List<String>> rows = new TreeMap<>();
        int column = 0;
        for (var read : day.hours().entrySet()) {
            for (DeviceDay.Hour hour : read.getValue()) {
                List<String> cells = rows.computeIfAbsent(hour.hour(), at -> new ArrayList<>());
                while (cells.size() < column) {
                    cells.add("");
                }
                cells.add(wording.hour(read.getKey(), hour));
            }
            column++;
        }
        return rows.entrySet().stream().map(row -> new HourRow(row.getKey() + ":00", row.getValue())).toList();
    }
}
