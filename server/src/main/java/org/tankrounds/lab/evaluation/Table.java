package org.tankrounds.lab.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A table of a report.
 *
 * @param name of its file
 * @param title above it
 * @param note below the title; may be empty
 */
public record Table(String name, String title, String note, List<Column> columns, List<List<Cell>> rows) {

    private enum Kind { WORDS, NUMBER, ESTIMATE }

    /** Words stand to the left, numbers to the right; an estimate takes three columns of a CSV. */
    record Column(String heading, Kind kind) {

        static Stream<Column> words(String... headings) {
            return of(Kind.WORDS, headings);
        }

        static Stream<Column> numbers(String... headings) {
            return of(Kind.NUMBER, headings);
        }

        static Stream<Column> estimates(String... headings) {
            return of(Kind.ESTIMATE, headings);
        }

        private static Stream<Column> of(Kind kind, String... headings) {
            return Stream.of(headings).map(heading -> new Column(heading, kind));
        }

        private String csv() {
            String plain = heading.replace(' ', '_');
            return kind == Kind.ESTIMATE ? plain + "," + plain + "_low," + plain + "_high" : plain;
        }
    }

    /** The columns in their order. */
    @SafeVarargs
    static List<Column> columns(Stream<Column>... parts) {
        return Stream.of(parts).flatMap(part -> part).toList();
    }

    /** For a terminal: columns aligned, words to the left, numbers to the right. */
    public List<String> text() {
        List<String> lines = new ArrayList<>(List.of(title));
        if (!note.isEmpty()) {
            lines.add(note);
        }
        int[] widths = IntStream.range(0, columns.size()).map(this::width).toArray();
        lines.add(line(widths, columns.stream().map(Column::heading).toList()));
        rows.forEach(row -> lines.add(line(widths, row.stream().map(Cell::text).toList())));
        return lines;
    }

    private int width(int column) {
        return Math.max(columns.get(column).heading().length(),
                rows.stream().mapToInt(row -> row.get(column).text().length()).max().orElse(0));
    }

    private String line(int[] widths, List<String> cells) {
        List<String> padded = IntStream.range(0, widths.length).mapToObj(i -> {
            String gap = " ".repeat(widths[i] - cells.get(i).length());
            return columns.get(i).kind == Kind.WORDS ? cells.get(i) + gap : gap + cells.get(i);
        }).toList();
        return String.join("  ", padded).stripTrailing();
    }

    /** For programs: a heading and a line per row. */
    public List<String> csv() {
        List<String> lines = new ArrayList<>();
        lines.add(String.join(",", columns.stream().map(Column::csv).toList()));
        rows.forEach(row -> lines.add(String.join(",", row.stream().map(Cell::csv).toList())));
        return lines;
    }
}
