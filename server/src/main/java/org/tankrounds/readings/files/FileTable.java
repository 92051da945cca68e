package org.tankrounds.readings.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.tankrounds.readings.files.UnreadableFileException.Trouble;

/**
 * The file as a table: what stands before it, the names of its columns, its rows.
 *
 * @param titles lines before the names of the columns
 * @param header names of the columns; empty where they have none
 */
record FileTable(char delimiter, List<FileRow> titles, Optional<FileRow> header, List<FileRow> rows) {
    static final List<Character> DELIMITERS = List.of('\t', ';', ',', '|');
    static final int MOST_ROWS = 50_000;
    private static final int LONGEST_ROW = 10_000;
    private static final int MOST_COLUMNS = 200;
    private static final int SAMPLE = 200;
    /** So many in a row must look like rows, or a title with a date would be one of them. */
    private static final int ROWS_THAT_TELL = 3;

    /** @param chosen how its columns are divided, where somebody said so */
    static FileTable read(String text, Optional<Character> chosen) {
        char delimiter = chosen.orElseGet(() -> likeliest(text));
        List<FileRow> all = split(text, delimiter, Integer.MAX_VALUE);
        int first = firstRow(all);
        if (first < 0) {
            throw new UnreadableFileException(Trouble.NO_ROWS);
        }
        boolean named = first > 0 && all.get(first - 1).width() > 1;
        FileTable table = new FileTable(delimiter, List.copyOf(all.subList(0, named ? first - 1 : first)),
                named ? Optional.of(all.get(first - 1)) : Optional.empty(), all.subList(first, all.size()));
        table.refuseTooMuch();
        return table;
    }

    String name(int column) {
        return header.map(row -> row.cell(column).strip()).orElse("");
    }

    int width() {
        return Math.max(header.map(FileRow::width).orElse(0),
                sample().stream().mapToInt(FileRow::width).max().orElse(0));
    }

    /** Enough rows to see what a column holds. */
    List<FileRow> sample() {
        return rows.subList(0, Math.min(SAMPLE, rows.size()));
    }

    private void refuseTooMuch() {
        if (rows.size() > MOST_ROWS) {
            throw new UnreadableFileException(Trouble.TOO_MANY_LINES);
        }
        int names = header.map(FileRow::width).orElse(Integer.MAX_VALUE);
        boolean wider = sample().stream().allMatch(row -> row.width() > names);
        if (delimiter == ',' && wider) {
            throw new UnreadableFileException(Trouble.COMMAS_IN_NUMBERS);
        }
    }

    /** The one by which most rows have a time in one column and a number in another. */
    private static char likeliest(String text) {
        char best = DELIMITERS.get(0);
        long most = -1;
        for (char delimiter : DELIMITERS) {
            long told = split(text, delimiter, SAMPLE).stream().filter(FileTable::tells).count();
            if (told > most) {
                best = delimiter;
                most = told;
            }
        }
        return best;
    }

    private static boolean tells(FileRow row) {
        List<String> cells = row.cells();
        return IntStream.range(0, cells.size()).filter(time -> isTime(cells.get(time)) || isSerial(cells.get(time)))
                .anyMatch(time -> IntStream.range(0, cells.size()).filter(other -> other != time)
                        .anyMatch(other -> isValue(cells.get(other))));
    }

    private static boolean isValue(String cell) {
        return WrittenNumber.isOne(cell) || WrittenNumber.isNothing(cell);
    }

    private static boolean isSerial(String cell) {
        return WrittenTime.readSerial(cell).isPresent();
    }

    private static boolean isTime(String cell) {
        return WrittenTime.read(cell).isPresent();
    }

    private static int firstRow(List<FileRow> all) {
        int times = columnOfTimes(all.subList(0, Math.min(SAMPLE, all.size())));
        if (times < 0) {
            return -1;
        }
        for (int i = 0; i < all.size(); i++) {
            if (all.subList(i, Math.min(all.size(), i + ROWS_THAT_TELL)).stream().allMatch(row -> isRow(row, times))) {
                return i;
            }
        }
        return -1;
    }

    /**
     * That in which most rows have a time; counted days may be numbers, so they are looked for where nothing else is.
     */
    private static int columnOfTimes(List<FileRow> sample) {
        int written = columnOfMost(sample, FileTable::isTime);
        return written >= 0 ? written : columnOfMost(sample, FileTable::isSerial);
    }

    private static int columnOfMost(List<FileRow> sample, Predicate<String> wanted) {
        int width = sample.stream().mapToInt(FileRow::width).max().orElse(0);
        int best = -1;
        long most = 0;
        for (int column = 0; column < width; column++) {
            int looked = column;
            long found = sample.stream().filter(row -> row.width() > 1 && wanted.test(row.cell(looked))).count();
            if (found > most) {
                best = column;
                most = found;
            }
        }
        return best;
    }

    /** With its time, or with a number and no time: a clock that was lost is told of, row by row. */
    private static boolean isRow(FileRow row, int times) {
        String time = row.cell(times);
        return row.width() > 1 && (isTime(time) || isSerial(time)
                || WrittenNumber.isNothing(time) && row.cells().stream().anyMatch(WrittenNumber::isOne));
    }

    private static List<FileRow> split(String text, char delimiter, int most) {
        List<FileRow> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> records = CsvReader.builder().fieldSeparator(delimiter)
                .allowMissingFields(true)
                .allowExtraFields(true).allowExtraCharsAfterClosingQuote(true).ofCsvRecord(text)) {
            for (CsvRecord record : records) {
                if (record.getFields().stream().allMatch(String::isBlank)) {
                    continue;
                }
                rows.add(row(record));
                if (rows.size() == most || rows.size() > MOST_ROWS + SAMPLE) {
                    break;
                }
            }
        } catch (CsvParseException e) {
            throw new UnreadableFileException(Trouble.LINE_TOO_LONG);
        } catch (IOException e) {
            throw new UncheckedIOException("a text can always be read", e);
        }
        return rows;
    }

    private static FileRow row(CsvRecord record) {
        int length = record.getFields().stream().mapToInt(String::length).sum();
        if (length > LONGEST_ROW || record.getFieldCount() > MOST_COLUMNS) {
            throw new UnreadableFileException(Trouble.LINE_TOO_LONG);
        }
        return new FileRow((int) record.getStartingLineNumber(), record.getFields());
    }
}
