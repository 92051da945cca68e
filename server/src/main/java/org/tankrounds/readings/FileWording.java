package org.tankrounds.readings;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.tankrounds.readings.files.SetAside;
import org.tankrounds.readings.files.UnreadableFileException.Trouble;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;

/** What is said of logger files. */
final class FileWording {
    static final String NONE_CHOSEN = "Choose the file that your logger wrote.";
    static final String LABEL = "File of the logger";
    static final String LIMITS = "CSV or another table as text; up to 5 MB and 50,000 rows.";
    static final String LOOK = "Nothing is kept yet. Look whether it was understood; times below are on the school’s clock.";
    static final String CHANGED = "You changed how the file is read. Below is what comes of it now; keep it if that is right.";
    static final String DIVIDED_OTHERWISE =
            "Divided like that, the file is no table with times. It is read again as the file says.";
    static final String CHOOSE = "Please choose";
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMM uuuu, H:mm", Locale.ENGLISH);
    private static final int LONGEST_CELL = 60;

    private FileWording() {}

    static String trouble(Trouble trouble) {
        return switch (trouble) {
            case EMPTY -> "The file is empty. Let the logger write it again, and choose it then.";
            case ZIP -> "This is a workbook or an archive, whatever its name says. Open it, save the table as CSV, and"
                    + " choose that file.";
            case OLD_WORKBOOK -> "This is a workbook of a spreadsheet program. Save the table in it as CSV, and choose"
                    + " that file.";
            case PDF -> "This is a PDF. Let the logger’s program export a table as CSV, and choose that file.";
            case NOT_TEXT -> "This is no text. Let the logger’s program export a table as CSV, and choose that file.";
            case TOO_MANY_LINES -> "The file has more than 50,000 rows. Export fewer days at a time, or split it.";
            case LINE_TOO_LONG -> "A row of the file has no end: a quotation mark may be missing. Let the logger write it"
                    + " again, or mend the row.";
            case NO_ROWS -> "No row of the file has a date and time and a number behind it. Choose the file with the"
                    + " measured values.";
            case COMMAS_IN_NUMBERS -> "Commas stand between the columns and also in the numbers, so that nobody can tell"
                    + " them apart. Export the file with semicolons, or with points in the numbers.";
        };
    }

    static String why(SetAside.Why why) {
        return switch (why) {
            case NO_VALUE -> "The logger has no value here.";
            case POWER_ON -> "A sensor says 85 °C when it has not measured since it was switched on.";
            case DISCONNECTED -> "A sensor says −127 °C when it is not connected.";
            case NOT_A_NUMBER -> "This is no number.";
            case IMPOSSIBLE -> "No water is like this.";
            case NO_TIME -> "There is no date and time that can be read.";
            case NO_SUCH_DAY -> "There is no such day.";
            case SKIPPED_HOUR -> "This hour was skipped when clocks were put forward. If many rows are in it, the logger"
                    + " stays on standard time.";
            case CLOCK_NOT_SET -> "Before 2000: the logger’s clock was not set.";
            case AHEAD -> "Still to come: the logger’s clock is wrong, or its zone is another.";
            case CONTRADICTED -> "Another row has another value for the same time.";
        };
    }

    static String cell(String cell) {
        return cell.length() <= LONGEST_CELL ? cell : cell.substring(0, LONGEST_CELL) + "…";
    }

    static String time(Instant at, ZoneId zone) {
        return TIME.format(at.atZone(zone));
    }

    static String more(int count) {
        return count > 0 ? "And " + count + " more." : "";
    }

    static String asked(int questions, String name) {
        return Formats.count(questions, "question") + " before " + name + " can be kept";
    }

    static String fresh(int readings, String name) {
        return readings == 0 ? "Nothing new in " + name : Formats.count(readings, "new reading") + " in " + name;
    }

    static String keep(int readings) {
        return readings == 0 ? "" : readings == 1 ? "Keep this reading" : "Keep these " + readings + " readings";
    }

    static String kept(KeptFile file) {
        return "Kept: " + Formats.count(file.stored(), "reading") + " from " + file.name();
    }

    static String takenBack(KeptFile file) {
        return "Taken back: " + file.name();
    }

    static String state(KeptFile file) {
        if (file.takenBackAt().isPresent()) {
            return "Taken back";
        }
        return file.isKept() ? Formats.count(file.stored(), "reading") + " kept" : "Waits to be kept";
    }

    static String gap(Instant from, Instant until, ZoneId zone) {
        return "Nothing from " + time(from, zone) + " to " + time(until, zone) + ".";
    }

    static String every(Duration apart) {
        long seconds = apart.toSeconds();
        return seconds < 90 ? "about every " + seconds + " seconds"
                : seconds < 3_000 ? "about every " + Formats.count(Math.round(seconds / 60.0), "minute")
                : "about every " + Formats.count(Math.round(seconds / 3600.0), "hour");
    }

    static String doubled(int rows) {
        return Formats.count(rows, "row") + " lie in the hour that came twice when clocks were put back. They were taken in"
                + " their order: first the earlier hour, then the later.";
    }

    static String unusual(int values, Analyte analyte) {
        return Formats.count(values, "value") + " of " + Wording.lower(analyte) + " are unlike what classroom tanks show."
                + " They are kept with a mark and count for little; if the unit is wrong, change it.";
    }

    static String ahead(int rows) {
        return Formats.count(rows, "row") + " lie in the future. Check the zone and the order of day and month.";
    }

    static String corrected(int readings) {
        return Formats.count(readings, "reading") + " of it were corrected since; taking the file back takes these too.";
    }
}
