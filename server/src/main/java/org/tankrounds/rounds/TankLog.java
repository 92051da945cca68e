package org.tankrounds.rounds;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tankrounds.pages.TankPage.LogRow;
import org.tankrounds.readings.EnteredValue;
import org.tankrounds.readings.DeviceDay;
import org.tankrounds.readings.Reading;
import org.tankrounds.readings.Wording;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;
import org.tankrounds.words.Words;

/** Readings as they were written down, for the tank's log. */
final class TankLog {
    private final Formats formats;

    TankLog(Formats formats) {
        this.formats = formats;
    }

    /** Readings and the sums of a device's days, newest first. */
    List<LogRow> rows(String tankCode, List<Reading> readings, List<DeviceDay> days, boolean mayCorrect) {
        List<Map.Entry<Instant, LogRow>> rows = new ArrayList<>();
        readings.forEach(one -> rows.add(Map.entry(one.measuredAt(), row(tankCode, one, mayCorrect))));
        DayWording wording = new DayWording(formats);
        days.forEach(one -> rows.add(Map.entry(one.last(), wording.row(tankCode, one))));
        return rows.stream().sorted(Map.Entry.<Instant, LogRow>comparingByKey().reversed()).map(Map.Entry::getValue)
                .limit(TankHandlers.LOG_ROWS).toList();
    }

    /** @param mayCorrect whether the row leads to its reading's own page */
    LogRow row(String tankCode, Reading reading, boolean mayCorrect) {
        return new LogRow(
                formats.full(reading.measuredAt()),
                reading.by().orElseGet(() -> writer(reading)),
                reading.values().stream().map(TankLog::value).collect(Collectors.joining(", ")),
                reading.note().orElse(""),
                marks(reading),
                mayCorrect ? "/tanks/" + tankCode + "/readings/" + reading.code() : "", "Correct", "");
    }

    private static String writer(Reading reading) {
        if (reading.cardId().isPresent()) {
            return "the class";
        }
        if (reading.fileId().isPresent()) {
            return "logger file";
        }
        if (reading.channel().equals(Reading.CHANNEL_PROBE)) {
            return "probe";
        }
        return reading.personId().isPresent() ? "" : "by script";
    }

    private static String value(EnteredValue entered) {
        Words words = Words.english();
        return words.say(Wording.inSentence(entered.analyte())) + " " + words.say(Wording.value(entered));
    }

    private static String marks(Reading reading) {
        List<String> marks = new ArrayList<>();
        reading.flags().forEach(flag -> marks.add(mark(flag)));
        if (reading.version() > 1) {
            marks.add("corrected " + (reading.version() == 2 ? "once" : reading.version() - 1 + " times"));
        }
        return String.join(", ", marks);
    }

    /** "unlikely:ph" becomes "pH unlikely"; "time_doubtful" becomes "time doubtful". */
    private static String mark(String flag) {
        int colon = flag.indexOf(':');
        if (colon < 0) {
            return flag.replace('_', ' ');
        }
        String code = flag.substring(colon + 1);
        return Analyte.ofCode(code).map(analyte -> Analytes.inSentence(code)).orElse(code)
                + " " + flag.substring(0, colon).replace('_', ' ');
    }
}
