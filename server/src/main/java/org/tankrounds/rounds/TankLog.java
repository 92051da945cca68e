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
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** Readings as they were written down, for the tank's log. */
final class TankLog {
    private static final int FIRST_VERSION = 1;

    private final Formats formats;
    private final Speech speech;

    TankLog(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
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
                reading.values().stream().map(this::value).collect(Collectors.joining(", ")),
                reading.note().orElse(""),
                marks(reading),
                mayCorrect ? "/tanks/" + tankCode + "/readings/" + reading.code() : "",
                speech.say("tank.log.correct"), "");
    }

    private String writer(Reading reading) {
        if (reading.cardId().isPresent()) {
            return speech.say("tank.log.theClass");
        }
        if (reading.fileId().isPresent()) {
            return speech.say("tank.log.loggerFile");
        }
        if (reading.channel().equals(Reading.CHANNEL_PROBE)) {
            return speech.say("tank.log.probe");
        }
        return reading.personId().isPresent() ? "" : speech.say("tank.log.byScript");
    }

    private String value(EnteredValue entered) {
        return speech.say("tank.log.value", Wording.inSentence(entered.analyte()), Wording.value(entered));
    }

    private String marks(Reading reading) {
        List<String> marks = new ArrayList<>();
        reading.flags().forEach(flag -> marks.add(mark(flag)));
        if (reading.version() > FIRST_VERSION) {
            marks.add(speech.say("tank.mark.corrected", reading.version() - FIRST_VERSION));
        }
        return String.join(", ", marks);
    }

    /** "unlikely:ph" becomes "pH unlikely"; "time_doubtful" becomes "time doubtful". */
    private String mark(String flag) {
        int colon = flag.indexOf(':');
        if (colon < 0) {
            return speech.say("tank.mark." + flag);
        }
        return speech.say("tank.mark." + flag.substring(0, colon), new Levels(speech).asked(flag.substring(colon + 1)));
    }
}
