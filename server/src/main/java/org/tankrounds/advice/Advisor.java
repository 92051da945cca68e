package org.tankrounds.advice;

import java.util.List;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Forecast;

/** What to bring and do for a tank, most useful first. Decision support, no veterinary advice. */
public final class Advisor {

    /** The acts that the forecast calls for; empty for a tank that needs nothing. */
    public List<Act> advise(TankFacts facts, Forecast forecast, List<Observation> observations) {
        return List.of();
    }
}
