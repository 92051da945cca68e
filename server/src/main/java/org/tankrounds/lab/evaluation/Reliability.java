package org.tankrounds.lab.evaluation;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * What came true of chances within one tenth.
 *
 * @param tenth 0 for chances from 0 to 0.1, 9 for those from 0.9 to 1
 * @param said mean chance
 * @param cameTrue share of the cases; NaN without any
 * @param miss how much more came true than was said
 */
record Reliability(int tenth, int cases, double said, double cameTrue, Estimate miss) {

    static List<Reliability> of(Answered answered) {
        List<Brier.ChanceClass> classes = Brier.of(answered).classes();
        return IntStream.range(0, classes.size()).mapToObj(tenth -> new Reliability(tenth,
                classes.get(tenth).cases(), classes.get(tenth).given(), classes.get(tenth).came(),
                Bootstrap.of(Brier.miss(answered, tenth)))).toList();
    }

    String title() {
        return String.format(Locale.ROOT, "%.1f to %.1f", tenth / 10.0, (tenth + 1) / 10.0);
    }
}
