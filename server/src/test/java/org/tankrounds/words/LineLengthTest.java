package org.tankrounds.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is longer is cut off where two files stand beside each other. */
class LineLengthTest {
    private static final int LONGEST = 120;
    /** The path of a drawing; wrapped it would be no easier to read. */
    private static final Set<String> PATH_DATA = Set.of("release/StreamSketch.java");

    @Test
    void lines_areNoLongerThan120Characters() {
        List<String> found = new ArrayList<>();
        Sources.javaOfAllModules().stream().filter(file -> !PATH_DATA.contains(Sources.name(file)))
                .forEach(file -> found.addAll(tooLong(file)));
        assertThat(found).as("lines of more than %d characters", LONGEST).isEmpty();
    }

    /** Counts characters, not bytes: some sentences are Spanish. */
    private static List<String> tooLong(Path file) {
        List<String> lines = Sources.read(file).lines().toList();
        List<String> found = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            int length = lines.get(i).codePointCount(0, lines.get(i).length());
            if (length > LONGEST) {
                found.add(file + ":" + (i + 1) + ": " + length + " characters");
            }
        }
        return found;
    }
}
