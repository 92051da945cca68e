package org.tankrounds.rounds;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tankrounds.pages.TankPage.Numbers;
import org.tankrounds.pages.TankPage.NumbersRow;
import org.tankrounds.web.Formats;

/** The pictures as a table, newest first: for readers, and for whoever wants the digits. */
final class SeasonNumbers {
    private static final int MOST_ROWS = 200;

    private SeasonNumbers() {}

    static Numbers of(List<SeasonSeries> series, Instant from, Formats formats) {
        Levels levels = new Levels(formats.speech());
        Map<Instant, String[]> rows = new TreeMap<>(Comparator.reverseOrder());
        List<SeasonSeries> read = series.stream().filter(one -> !one.points().isEmpty()).toList();
        for (int i = 0; i < read.size(); i++) {
            for (SeriesPoint point : read.get(i).drawn(from)) {
                rows.computeIfAbsent(point.at(), at -> new String[read.size()])[i] =
                        point.notDetected() ? levels.notDetected() : levels.bare(read.get(i).code(), point.value());
            }
        }
        List<NumbersRow> printed = new ArrayList<>();
        rows.entrySet().stream().limit(MOST_ROWS).forEach(row -> {
            List<String> cells = new ArrayList<>();
            for (String cell : row.getValue()) {
                cells.add(cell == null ? "" : cell);
            }
            printed.add(new NumbersRow(formats.full(row.getKey()), cells));
        });
        List<String> columns = read.stream().map(one -> levels.nameAndUnit(one.code())).toList();
        return new Numbers(columns, printed);
    }
}
