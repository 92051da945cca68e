package org.tankrounds.readings.files;

import java.util.List;

/** @param line of the file on which it begins, from 1 */
record FileRow(int line, List<String> cells) {

    /** Empty where the row is shorter. */
    String cell(int column) {
        return column < cells.size() ? cells.get(column) : "";
    }

    int width() {
        return cells.size();
    }
}
