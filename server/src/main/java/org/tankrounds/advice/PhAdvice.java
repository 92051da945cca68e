package org.tankrounds.advice;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Limits;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Carbonate;

/**
 * What a pH too low or too high calls for. Baking soda only against a lack of alkalinity, and never while
 * ammonia is high: a higher pH makes more of it harmful.
 */
final class PhAdvice {

    /** A trouble with pH is one of too low below, of too high above. */
    private static final double MIDDLE_PH = 7.5;
    private static final double ALKALINITY_AIM_MG_PER_L = 50;
    private static final double MOST_ALKALINITY_A_DAY_MG_PER_L = 20;
    private static final double AMMONIA_TOO_HIGH_FOR_BICARBONATE = 0.5;
    private static final Duration ALKALINITY_AGE = Duration.ofDays(30);
    /** Moves the pH by less than a fish minds (common practice, no source). */
    private static final double CHANGE_PERCENT = 20;

    private final TankFacts facts;
    private final Forecast forecast;
    private final List<Observation> observations;
    private final Limits limits;

    PhAdvice(TankFacts facts, Forecast forecast, List<Observation> observations, Limits limits) {
        this.facts = facts;
        this.forecast = forecast;
        this.observations = observations;
        this.limits = limits;
    }

    List<Act> acts() {
        double held = Advisor.series(forecast, Driver.PH).map(s -> s.fan().get(0).q50()).orElse(MIDDLE_PH);
        double read = newest(Analyte.PH).map(Observation::value).orElse(held);
        if (read < MIDDLE_PH) {
            return againstLow();
        }
        Act another = Act.ask(Driver.PH, Analyte.PH);
        return held > limits.highestPh() ? List.of(another, change()) : List.of(another);
    }

    /** With alkalinity enough the acid is carbon dioxide, which air drives out and fresh water thins. */
    private List<Act> againstLow() {
        if (isAmmoniaHigh()) {
            return List.of(change());
        }
        Optional<Observation> alkalinity = newest(Analyte.ALKALINITY)
                .filter(o -> o.at().isAfter(forecast.asOf().minus(ALKALINITY_AGE)));
        if (alkalinity.isEmpty()) {
            return List.of(Act.plain(Act.Kind.MORE_AIR, Driver.PH), Act.ask(Driver.PH, Analyte.ALKALINITY));
        }
        double missing = ALKALINITY_AIM_MG_PER_L - alkalinity.get().value();
        return missing > 0 ? List.of(bicarbonate(Math.min(missing, MOST_ALKALINITY_A_DAY_MG_PER_L)))
                : List.of(Act.plain(Act.Kind.MORE_AIR, Driver.PH), change());
    }

    private boolean isAmmoniaHigh() {
        return newest(Analyte.TOTAL_AMMONIA)
                .map(o -> o.value() >= AMMONIA_TOO_HIGH_FOR_BICARBONATE).orElse(false);
    }

    private Act bicarbonate(double raiseMgPerL) {
        return facts.volumeL().isEmpty() ? Act.plain(Act.Kind.BICARBONATE, Driver.PH)
                : Act.amount(Act.Kind.BICARBONATE, Driver.PH, Carbonate.bicarbonateG(raiseMgPerL,
                        facts.volumeL().getAsDouble()), "g", "Carbonate.bicarbonateG");
    }

    private Act change() {
        return Act.waterChange(Driver.PH, CHANGE_PERCENT, facts.volumeL(), "");
    }

    private Optional<Observation> newest(Analyte analyte) {
        return Advisor.newest(observations, analyte, forecast);
    }
}
