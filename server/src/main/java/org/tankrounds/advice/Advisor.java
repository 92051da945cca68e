package org.tankrounds.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.belief.BeliefFilter;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.FanPoint;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Limits;
import org.tankrounds.forecast.Reason;
import org.tankrounds.forecast.SeriesForecast;
import org.tankrounds.tankmodel.TankParameters;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Chlorine;
import org.tankrounds.water.HeatBalance;
import org.tankrounds.water.Salt;
import org.tankrounds.water.WaterChange;

/**
 * What to bring and do for a tank, most useful first. Decision support for volunteers; it is no veterinary,
 * legal or electrical advice, and an agency's instruction outranks it.
 */
public final class Advisor {

    /** A tank bears this much at once; beyond, change twice (common practice, no source). */
    public static final double MOST_CHANGED_AT_ONCE = 0.5;
    private static final double LEAST_CHANGE = 0.1;
    /** Bring a level to this share of its limit, not onto it. */
    private static final double AIM = 0.8;
    private static final double SALT_TARGET_MG_PER_L = 60;
    private static final double ENOUGH_CHLORIDE_MG_PER_L = 50;
    private static final double ROOM_C = 21;
    private static final double ICE_HOURS = 12;
    private static final double SKIP_FEED_HOURS = 24;
    private static final double MATTERS = 0.1;
    /** From this chance on a tank is gone to within the week. */
    private static final double WORRYING_CHANCE = 0.2;

    private final Limits limits;

    public Advisor(Limits limits) {
        this.limits = Objects.requireNonNull(limits, "limits");
    }

    public Advisor() {
        this(Limits.DEFAULT);
    }

    /** The acts that the forecast calls for; empty for a tank that needs nothing. */
    public List<Act> advise(TankFacts facts, Forecast forecast, List<Observation> observations) {
        List<Act> acts = new ArrayList<>();
        for (Reason reason : forecast.reasons()) {
            if (reason.driver().isPresent() && reason.share() >= MATTERS) {
                forReason(reason, facts, forecast, observations, acts);
            }
        }
        if (acts.isEmpty() && isWorrying(forecast)) {
            acts.add(Act.ask(forecast.driver(), analyteOf(forecast.driver())));
        }
        return withoutRepeats(acts);
    }

    /** Nobody is sent to such a tank with nothing to do. */
    private static boolean isWorrying(Forecast forecast) {
        return forecast.chance() >= WORRYING_CHANCE || forecast.hoursToLimit().orElse(1) == 0;
    }

    private void forReason(Reason reason, TankFacts facts, Forecast forecast,
            List<Observation> observations, List<Act> acts) {
        Driver driver = reason.driver().get();
        if (reason.kind() == Reason.Kind.SERIES_NOT_READ || reason.kind() == Reason.Kind.READING_SET_ASIDE) {
            acts.add(Act.ask(driver, analyteOf(driver)));
            return;
        }
        boolean likely = forecast.hoursToLimit().isPresent() || reason.hoursToLimit().isPresent();
        switch (driver) {
            case TEMPERATURE -> warm(reason, facts, likely, acts);
            case UN_IONISED_AMMONIA -> {
                change(driver, facts, forecast, acts);
                acts.add(Act.skipFeed(driver, SKIP_FEED_HOURS));
            }
            case NITRITE -> nitrite(facts, forecast, observations, acts);
            case DISSOLVED_OXYGEN -> acts.add(Act.plain(Act.Kind.MORE_AIR, driver));
            case PH -> acts.addAll(new PhAdvice(facts, forecast, observations, limits).acts());
            case CHLORINE -> chlorine(reason, facts, acts);
            case DEATHS -> {
                acts.add(Act.plain(Act.Kind.LOOK_AT_FISH, driver));
                acts.add(Act.ask(driver, Analyte.DISSOLVED_OXYGEN));
            }
            case SILENCE -> {
                acts.add(Act.ask(driver, Analyte.TEMPERATURE));
                acts.add(Act.ask(driver, Analyte.NITRITE));
            }
        }
    }

    private void warm(Reason reason, TankFacts facts, boolean likely, List<Act> acts) {
        acts.add(Act.plain(Act.Kind.CHECK_CHILLER, Driver.TEMPERATURE));
        if (!likely || reason.limit().isEmpty()) {
            return;
        }
        double holdC = reason.limit().getAsDouble() - 1;
        double tooWarmK = Math.max(0, reason.value().orElse(holdC) - holdC);
        acts.add(facts.volumeL().isEmpty() ? Act.plain(Act.Kind.ICE, Driver.TEMPERATURE)
                : Act.amount(Act.Kind.ICE, Driver.TEMPERATURE,
                        iceKg(facts.volumeL().getAsDouble(), tooWarmK, holdC), "kg",
                        "HeatBalance.iceToHoldKg"));
    }

    /** Down to what is to be held, then against the room. */
    private static double iceKg(double volumeL, double tooWarmK, double holdC) {
        return HeatBalance.iceToCoolKg(volumeL, tooWarmK, holdC)
                + HeatBalance.iceToHoldKg(TankParameters.bareGlassWPerK(volumeL), ROOM_C, holdC, ICE_HOURS);
    }

    private void nitrite(
            TankFacts facts, Forecast forecast, List<Observation> observations, List<Act> acts) {
        change(Driver.NITRITE, facts, forecast, acts);
        double chloride = newest(observations, Analyte.CHLORIDE, forecast).map(Observation::value)
                .orElse(facts.chlorideMgPerL().orElse(BeliefFilter.CHLORIDE_WHERE_UNKNOWN_MG_PER_L));
        if (chloride < ENOUGH_CHLORIDE_MG_PER_L) {
            acts.add(facts.volumeL().isEmpty() ? Act.plain(Act.Kind.SALT, Driver.NITRITE)
                    : Act.amount(Act.Kind.SALT, Driver.NITRITE, Salt.grams(chloride,
                            SALT_TARGET_MG_PER_L, facts.volumeL().getAsDouble()), "g", "Salt.grams"));
        }
        acts.add(Act.skipFeed(Driver.NITRITE, SKIP_FEED_HOURS));
    }

    /** The share that brings the level held likely in a day well under its limit. */
    private void change(Driver driver, TankFacts facts, Forecast forecast, List<Act> acts) {
        Optional<SeriesForecast> series = series(forecast, driver);
        if (series.isEmpty() || series.get().limit().isEmpty()) {
            return;
        }
        double level = series.get().fan().stream().filter(point -> point.hours() <= 24)
                .mapToDouble(FanPoint::q75).max().orElse(0);
        double share = WaterChange.shareFor(level, 0, AIM * series.get().limit().getAsDouble());
        if (share < LEAST_CHANGE) {
            return;
        }
        double percent = Math.ceil(Math.min(share, MOST_CHANGED_AT_ONCE) * 20) * 5;
        acts.add(Act.waterChange(driver, percent, facts.volumeL(), "WaterChange.shareFor"));
    }

    private static void chlorine(Reason reason, TankFacts facts, List<Act> acts) {
        if (facts.volumeL().isPresent() && reason.value().isPresent()) {
            acts.add(Act.amount(Act.Kind.THIOSULFATE, Driver.CHLORINE, Chlorine.thiosulfateG(
                    reason.value().getAsDouble(), facts.volumeL().getAsDouble()), "g",
                    "Chlorine.thiosulfateG"));
        } else {
            acts.add(Act.plain(Act.Kind.THIOSULFATE, Driver.CHLORINE));
        }
        acts.add(Act.plain(Act.Kind.MORE_AIR, Driver.CHLORINE));
    }

    static Optional<SeriesForecast> series(Forecast forecast, Driver driver) {
        return forecast.series().stream().filter(s -> s.series() == driver).findFirst();
    }

    static Optional<Observation> newest(
            List<Observation> observations, Analyte analyte, Forecast forecast) {
        return observations.stream()
                .filter(o -> o.analyte() == analyte && !o.doubtful() && !o.at().isAfter(forecast.asOf()))
                .max(Comparator.comparing(Observation::at));
    }

    private static Analyte analyteOf(Driver driver) {
        return switch (driver) {
            case TEMPERATURE, SILENCE, DEATHS -> Analyte.TEMPERATURE;
            case UN_IONISED_AMMONIA -> Analyte.TOTAL_AMMONIA;
            case NITRITE -> Analyte.NITRITE;
            case DISSOLVED_OXYGEN -> Analyte.DISSOLVED_OXYGEN;
            case PH -> Analyte.PH;
            case CHLORINE -> Analyte.CHLORINE;
        };
    }

    /** One act of a kind, the first and so the largest cause's; of water changes the largest. */
    private static List<Act> withoutRepeats(List<Act> acts) {
        List<Act> kept = new ArrayList<>();
        for (Act act : acts) {
            int same = -1;
            for (int i = 0; i < kept.size(); i++) {
                boolean alike = kept.get(i).kind() == act.kind() && kept.get(i).asks().equals(act.asks());
                same = alike ? i : same;
            }
            if (same < 0) {
                kept.add(act);
            } else if (act.amount().orElse(0) > kept.get(same).amount().orElse(0)) {
                kept.set(same, act);
            }
        }
        return List.copyOf(kept);
    }
}
