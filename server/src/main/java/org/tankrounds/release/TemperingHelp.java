package org.tankrounds.release;

import java.util.ArrayList;
import java.util.List;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.ReleaseDayPage;
import org.tankrounds.transport.Tempering;
import org.tankrounds.transport.Tempering.Pace;
import org.tankrounds.web.Scale;
import org.tankrounds.web.TypedNumber;

/** How long fish take from one temperature to the other, by how far they are apart: readable without a connection. */
final class TemperingHelp {
    private static final int WIDEST_K = 10;
    private static final int STEP_K = 2;

    private TemperingHelp() {}

    static List<ReleaseDayPage.Apart> rows(Scale scale) {
        List<ReleaseDayPage.Apart> rows = new ArrayList<>();
        for (int apartK = STEP_K; apartK <= WIDEST_K; apartK += STEP_K) {
            rows.add(new ReleaseDayPage.Apart(
                    TypedNumber.text(scale.ofDifference(apartK), 0) + " " + scale.sign(),
                    apartK * Tempering.minutesPerK(Stage.FEEDING, Pace.QUICK) + "–"
                            + apartK * Tempering.minutesPerK(Stage.FEEDING, Pace.SLOW) + " min"));
        }
        return rows;
    }
}
