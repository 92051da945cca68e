package org.tankrounds.forecast;

import java.util.Comparator;
import java.util.List;

/** The order of the rounds: exposure, then chance, both largest first, then the tank's code. */
public final class Ranking {

    private static final Comparator<Forecast> FIRST_TO_VISIT =
            Comparator.comparingDouble(Forecast::exposure).reversed()
                    .thenComparing(Comparator.comparingDouble(Forecast::chance).reversed())
                    .thenComparing(Forecast::tank);

    private Ranking() {
    }

    /** The forecasts, the tank to visit first in front. Every forecast given is in the list. */
    public static List<Forecast> order(List<Forecast> forecasts) {
        return forecasts.stream().sorted(FIRST_TO_VISIT).toList();
    }
}
