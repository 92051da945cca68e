package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A square that phones read, in modules.
 *
 * @param size with the light margin around it
 * @param runs of dark modules, row by row
 */
public record QrSquare(int size, List<Run> runs) {
    public record Run(int x, int y, int length) {}

    public String viewBox() {
        return "0 0 " + size + " " + size;
    }

    /** Where a run lies on a square of any size. */
    public String boxOf(Run run) {
        return "left: %s; top: %s; width: %s; height: %s".formatted(
                percent(run.x()), percent(run.y()), percent(run.length()), percent(1));
    }

    private String percent(int modules) {
        return 100.0 * modules / size + "%";
    }

    /** All of it as one path. */
    public String path() {
        return runs.stream()
                .map(run -> "M" + run.x() + " " + run.y() + "h" + run.length() + "v1h-" + run.length() + "z")
                .collect(Collectors.joining());
    }
}
