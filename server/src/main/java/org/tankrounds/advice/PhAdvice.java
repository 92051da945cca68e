package org.tankrounds.advice;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.LookAhead;
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
    /** Raise at most 20 to 30 mg/L a day (common practice, no source). */
    private static final double MOST_ALKALINITY_A_DAY_MG_PER_L = 20;
    private static final double AMMONIA_TOO_HIGH_FOR_BICARBONATE = 0.5;
    private static final Duration ALKALINITY_AGE = Duration.ofDays(30);
    private static final Duration AMMONIA_AGE = Duration.ofDays(7);
    /** Moves the pH by less than a fish minds (common practice, no source). */
    private static final double CHANGE_PERCENT = 20;

    private final LookAhead ahead;
    private final Forecast forecast;
    private final OptionalDouble volumeL;
    private final List<Observation> observations;

    PhAdvice(LookAhead ahead, List<Observation> observations) {
        this.ahead = ahead;
        this.forecast = ahead.forecast();
        this.volumeL = ahead.belief().facts().volumeL();
        this.observations = observations;
    }

    List<Proposal> proposals() {
        double held = forecast.series().stream().filter(s -> s.series() == Driver.PH).findFirst()
                .map(s -> s.fan().get(0).q50()).orElse(MIDDLE_PH);
        double read = newest(Analyte.PH).map(Observation::value).orElse(held);
        if (read < MIDDLE_PH) {
            return againstLow();
        }
        Proposal another = Proposal.of(Act.ask(Driver.PH, Analyte.PH));
        return held > ahead.limits().highestPh() ? List.of(another, change()) : List.of(another);
    }

    /**
     * With alkalinity enough the acid is carbon dioxide, which air drives out; fresh water brings what is
     * missing.
     */
    private List<Proposal> againstLow() {
        if (isAmmoniaHigh()) {
            return List.of(change());
        }
        Optional<Observation> alkalinity =
                newest(Analyte.ALKALINITY).filter(o -> isWithin(o, ALKALINITY_AGE));
        if (alkalinity.isEmpty()) {
            return List.of(Proposal.of(Act.ask(Driver.PH, Analyte.ALKALINITY)));
        }
        if (newest(Analyte.TOTAL_AMMONIA).filter(o -> isWithin(o, AMMONIA_AGE)).isEmpty()) {
            return List.of(Proposal.of(Act.ask(Driver.PH, Analyte.TOTAL_AMMONIA)));
        }
        double missing = ALKALINITY_AIM_MG_PER_L - alkalinity.get().value();
        return missing > 0 ? List.of(bicarbonate(Math.min(missing, MOST_ALKALINITY_A_DAY_MG_PER_L)))
                : List.of(air(), change());
    }

    private boolean isWithin(Observation reading, Duration age) {
        return reading.at().isAfter(forecast.asOf().minus(age));
    }

    private boolean isAmmoniaHigh() {
        double read = newest(Analyte.TOTAL_AMMONIA).map(Observation::value).orElse(0.0);
        return Math.max(read, ahead.belief().totalAmmonia().valueNow()) >= AMMONIA_TOO_HIGH_FOR_BICARBONATE;
    }

    private Proposal bicarbonate(double raiseMgPerL) {
        Act act = volumeL.isEmpty() ? Act.plain(Act.Kind.BICARBONATE, Driver.PH)
                : Act.amount(Act.Kind.BICARBONATE, Driver.PH,
                        Carbonate.bicarbonateG(raiseMgPerL, volumeL.getAsDouble()), "g", "Carbonate.bicarbonateG");
        return Proposal.of(act, Deed.bakingSoda(raiseMgPerL));
    }

    private static Proposal air() {
        return Proposal.of(Act.plain(Act.Kind.MORE_AIR, Driver.PH), Deed.moreAir());
    }

    private Proposal change() {
        return Proposal.of(Act.waterChange(Driver.PH, CHANGE_PERCENT, volumeL, "WaterChange.after"),
                Deed.waterChange(CHANGE_PERCENT / 100));
    }

    private Optional<Observation> newest(Analyte analyte) {
        return Asked.newest(observations, analyte, forecast);
    }
}
