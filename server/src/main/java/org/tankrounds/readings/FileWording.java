package org.tankrounds.readings;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import org.tankrounds.readings.files.LoggerFile;
import org.tankrounds.readings.files.SetAside;
import org.tankrounds.readings.files.UnreadableFileException.Trouble;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;
import org.tankrounds.words.Saying;
import org.tankrounds.words.Words;

/** What is said of logger files. */
final class FileWording {
    private static final int LONGEST_CELL = 60;
    private static final long SECONDS_UP_TO = 90;
    private static final long MINUTES_UP_TO_S = 3_000;

    private final Formats formats;

    FileWording(Formats formats) {
        this.formats = formats;
    }

    String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }

    String say(Saying saying) {
        return formats.speech().say(saying);
    }

    String trouble(Trouble trouble) {
        return say("loggers.trouble." + trouble.name());
    }

    String why(SetAside.Why why) {
        return say("loggers.why." + why.name());
    }

    /** For scripts, which read English. */
    static String whyInEnglish(SetAside.Why why) {
        return Words.english().say("loggers.why." + why.name());
    }

    static String cell(String cell) {
        return cell.length() <= LONGEST_CELL ? cell : cell.substring(0, LONGEST_CELL) + "…";
    }

    String time(Instant at) {
        return formats.dateYearAndClock(at);
    }

    String more(int count) {
        return count > 0 ? say("loggers.more", count) : "";
    }

    /** Nothing new is said only of what was read and is there. */
    String fresh(int readings, LoggerFile read, String name) {
        if (readings > 0) {
            return say("loggers.fresh", readings, name);
        }
        if (read.lines().isEmpty()) {
            return say("loggers.nothingRead", name);
        }
        int unread = read.notUnderstood();
        return unread > 0 ? say("loggers.nothingNewBut", unread, name) : say("loggers.nothingNew", name);
    }

    String keep(int readings) {
        return readings == 0 ? "" : say("loggers.keep", readings);
    }

    String state(KeptFile file) {
        if (file.takenBackAt().isPresent()) {
            return say("loggers.state.takenBack");
        }
        return file.isKept() ? say("loggers.state.kept", file.stored()) : say("loggers.state.waits");
    }

    String gap(Instant from, Instant until) {
        return say("loggers.note.gap", time(from), time(until));
    }

    String every(Duration apart) {
        long seconds = apart.toSeconds();
        if (seconds < SECONDS_UP_TO) {
            return say("loggers.every.seconds", seconds);
        }
        return seconds < MINUTES_UP_TO_S ? say("loggers.every.minutes", Math.round(seconds / 60.0))
                : say("loggers.every.hours", Math.round(seconds / 3600.0));
    }

    String unusual(int values, Analyte analyte) {
        return say("loggers.note.unusual", values, Wording.inSentence(analyte));
    }

    String value(EnteredValue value) {
        return say(Wording.inSentence(value.analyte())) + " " + say(Wording.value(value));
    }

    Locale locale() {
        return formats.speech().language().locale();
    }
}
