package org.tankrounds.rounds;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.tankrounds.config.CommandException;

/**
 * A CSV file with a header, read row by row. Spreadsheet habits are accepted: a byte-order mark, CRLF, quoted
 * cells, blank lines, columns in any order, columns of one's own beside ours.
 */
final class CsvTable {

    private static final int BYTE_ORDER_MARK = 0xFEFF;

    private final String file;
    private final Map<String, Integer> columns = new HashMap<>();
    private int width;

    private CsvTable(Path path) {
        file = path.getFileName().toString();
    }

    /** Hands over every row that is not blank; refuses the whole file with a sentence at the first fault. */
    static void read(Path path, List<String> required, Consumer<CsvRow> each) {
        CsvTable table = new CsvTable(path);
        try (Reader text = open(path); CsvReader<CsvRecord> records = rowsOf(text)) {
            boolean header = true;
            for (CsvRecord row : records) {
                if (row.getFields().stream().allMatch(String::isBlank)) {
                    continue;
                }
                if (header) {
                    table.header(row, required);
                    header = false;
                } else {
                    each.accept(table.row(row));
                }
            }
            if (header) {
                throw CommandException.wrongCall(
                        table.file + " is empty; its first line names the columns, at least "
                                + String.join(", ", required) + ".");
            }
        } catch (CsvParseException e) {
            throw table.notCsv(e);
        } catch (UncheckedIOException e) {
            throw table.unreadable(path, e.getCause());
        } catch (IOException e) {
            throw table.unreadable(path, e);
        }
    }

    /**
     * Rows of any length: spreadsheets leave out empty cells at the end, and what is too long is refused in
     * our words.
     */
    private static CsvReader<CsvRecord> rowsOf(Reader text) {
        return CsvReader.builder().allowMissingFields(true).allowExtraFields(true).ofCsvRecord(text);
    }

    private static Reader open(Path path) throws IOException {
        BufferedReader text = new BufferedReader(new InputStreamReader(Files.newInputStream(path),
                StandardCharsets.UTF_8.newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT)), 1 << 16);
        text.mark(1);
        if (text.read() != BYTE_ORDER_MARK) {
            text.reset();
        }
        return text;
    }

    private void header(CsvRecord row, List<String> required) {
        width = row.getFieldCount();
        for (int i = 0; i < row.getFieldCount(); i++) {
            String name = row.getField(i).strip();
            if (!name.isEmpty() && columns.put(name, i) != null) {
                throw CommandException.wrongCall(
                        file + ", line " + row.getStartingLineNumber() + ": the column " + name
                                + " is there twice; keep one.");
            }
        }
        for (String name : required) {
            if (!columns.containsKey(name)) {
                checkDividedByCommas(row);
                throw CommandException.wrongCall(file + ", line " + row.getStartingLineNumber()
                        + ": the column " + name + " is missing; needed are "
                        + String.join(", ", required) + ".");
            }
        }
    }

    private void checkDividedByCommas(CsvRecord header) {
        String only = header.getField(0);
        if (header.getFieldCount() == 1 && (only.contains(";") || only.contains("\t"))) {
            throw CommandException.wrongCall(file + ", line " + header.getStartingLineNumber()
                    + ": the columns are divided by " + (only.contains(";") ? "semicolons" : "tabs")
                    + "; save it with commas between the columns and decimal points in the numbers.");
        }
    }

    private CsvRow row(CsvRecord row) {
        for (int i = width; i < row.getFieldCount(); i++) {
            if (!row.getField(i).isBlank()) {
                throw CommandException.wrongCall(file + ", line " + row.getStartingLineNumber()
                        + ": it has more cells than the header has columns; a cell with a comma in it needs"
                        + " quotes around it.");
            }
        }
        return new CsvRow(file, row.getStartingLineNumber(), columns, row.getFields());
    }

    private CommandException notCsv(CsvParseException e) {
        Throwable cause = e.getCause();
        if (cause instanceof CharacterCodingException) {
            return notUtf8();
        }
        String detail = cause != null && cause.getMessage() != null ? cause.getMessage() : e.getMessage();
        return CommandException.wrongCall(file + " cannot be read as CSV: " + detail
                + " Every opening quote needs a closing one.");
    }

    private CommandException unreadable(Path path, IOException e) {
        if (e instanceof CharacterCodingException) {
            return notUtf8();
        }
        return Files.isReadable(path) && Files.isRegularFile(path)
                ? CommandException.failed(path + " cannot be read: " + e.getMessage())
                : CommandException.wrongCall("There is no readable file " + path + "; name an existing CSV file.");
    }

    private CommandException notUtf8() {
        return CommandException.wrongCall(file + " is not UTF-8 text; save it as CSV UTF-8.");
    }
}
