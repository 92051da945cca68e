package org.tankrounds.rounds;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tankrounds.config.CommandException;
import org.tankrounds.water.Range;

/** One row of a CSV file; its cells by column name, read as what they ought to be or refused with a sentence. */
final class CsvRow {

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d{1,30}(\\.\\d{0,30})?|\\.\\d{1,30})([eE][+-]?\\d{1,3})?");
    private static final Instant YEAR_2000 = Instant.parse("2000-01-01T00:00:00Z");
    private static final int LONGEST_SHOWN = 40;

    private final String file;
    private final long line;
    private final Map<String, Integer> columns;
    private final List<String> cells;

    CsvRow(String file, long line, Map<String, Integer> columns, List<String> cells) {
        this.file = file;
        this.line = line;
        this.columns = columns;
        this.cells = cells;
    }

    /** The cell without spaces around it; empty where the column or the cell is missing. */
    String text(String column) {
        Integer place = columns.get(column);
        return place == null || place >= cells.size() ? "" : cells.get(place).strip();
    }

    String needed(String column, String allowed) {
        String text = text(column);
        if (text.isEmpty()) {
            throw refused(column, "it is empty; " + allowed);
        }
        return text;
    }

    /** A number within a range, if there is one. */
    Optional<Double> number(String column, Range range) {
        String text = text(column);
        return text.isEmpty() ? Optional.empty() : Optional.of(neededNumber(column, range));
    }

    double neededNumber(String column, Range range) {
        double number = neededNumber(column);
        if (!range.holds(number)) {
            throw refused(column, shown(column) + " is out of range; allowed is " + plain(range.min())
                    + " to " + plain(range.max()) + ".");
        }
        return number;
    }

    double neededNumber(String column) {
        String text = needed(column, "allowed is a number such as 0.5.");
        double number = NUMBER.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
        if (!Double.isFinite(number)) {
            throw refused(column, shown(column)
                    + " is not a number; allowed is a number with a decimal point, such as 0.5.");
        }
        return number;
    }

    Optional<Integer> wholeNumber(String column, Range range) {
        return number(column, range).map(number -> {
            if (number != Math.rint(number)) {
                throw refused(column, shown(column) + " is not a whole number; allowed is one such as 150.");
            }
            return number.intValue();
        });
    }

    Instant neededTime(String column) {
        needed(column, timeAllowed());
        return parsedTime(column)
                .orElseThrow(() -> refused(column, shown(column) + " is no such time; " + timeAllowed()));
    }

    Optional<Instant> parsedTime(String column) {
        try {
            Instant at = OffsetDateTime.parse(text(column)).toInstant().truncatedTo(ChronoUnit.MICROS);
            if (at.isBefore(YEAR_2000)) {
                throw refused(column, shown(column) + " is before 2000; allowed are times since then.");
            }
            return Optional.of(at);
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    static String timeAllowed() {
        return "allowed is a time with its offset, such as 2027-01-12T14:05:00-05:00 or 2027-01-12T19:05:00Z.";
    }

    /** A refusal of the whole file because of one cell. */
    CommandException refused(String column, String sentence) {
        return CommandException.wrongCall(
                file + ", line " + line + ", column " + column + ": " + sentence);
    }

    /** The cell as typed, shortened and without what would break a terminal's line. */
    String shown(String column) {
        String text = text(column).replaceAll("\\p{Cntrl}", " ");
        return "'" + (text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text) + "'";
    }

    private static String plain(double bound) {
        return bound == Math.rint(bound) ? String.valueOf((long) bound) : String.valueOf(bound);
    }
}
