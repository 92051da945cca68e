package org.tankrounds.advice;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.forecast.Reason;
import org.tankrounds.tankmodel.TankParameters;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Chlorine;
import org.tankrounds.water.HeatBalance;
import org.tankrounds.water.Salt;

/** What the reasons behind a forecast call for, with amounts. */
final class Proposals {

    private static final double SALT_TARGET_MG_PER_L = 60;
    private static final double ENOUGH_CHLORIDE_MG_PER_L = 50;
    private static final double ROOM_C = 21;
    /** Ice is much work; it is for water too warm already, or with a chiller that likely stands. */
    private static final double STANDS = 0.5;
    /** One load of ice is meant to last half a day. */
    private static final double ICE_HOURS = 12;
    private static final Duration AMMONIA_COUNTS = Duration.ofDays(7);
    /** A label's double dose (common practice, no source). */
    private static final double HIDDEN_CHLORINE_TIMES = 2;
    /** For what the water feels where nobody has said how much there is; no amount is then named. */
    private static final double USUAL_VOLUME_L = 190;

    private final LookAhead ahead;
    private final Forecast forecast;
    private final TankFacts facts;
    private final List<Observation> observations;
    private final List<Proposal> all = new ArrayList<>();

    Proposals(LookAhead ahead, List<Observation> observations) {
        this.ahead = ahead;
        this.forecast = ahead.forecast();
        this.facts = ahead.belief().facts();
        this.observations = observations;
    }

    List<Proposal> all() {
        return all;
    }

    void add(Reason reason) {
        Driver driver = reason.driver().orElseThrow();
        if (reason.kind() == Reason.Kind.READING_SET_ASIDE) {
            all.add(Proposal.of(Act.ask(driver, Asked.of(driver))));
            return;
        }
        if (reason.kind() == Reason.Kind.SERIES_NOT_READ) {
            ask(driver, Asked.of(driver));
            return;
        }
        switch (driver) {
            case TEMPERATURE -> warm(reason);
            case UN_IONISED_AMMONIA -> ammonia();
            case NITRITE -> nitrite();
            case DISSOLVED_OXYGEN -> oxygen();
            case PH -> all.addAll(new PhAdvice(ahead, observations).proposals());
            case CHLORINE -> chlorine(reason);
            case DEATHS -> {
                all.add(Proposal.of(Act.plain(Act.Kind.LOOK_AT_FISH, driver)));
                Asked.missing(driver, observations, forecast)
                        .ifPresent(analyte -> all.add(Proposal.of(Act.ask(driver, analyte))));
            }
            case SILENCE -> {
                ask(driver, Analyte.TEMPERATURE);
                ask(driver, Analyte.NITRITE);
            }
        }
    }

    /** What was read within a day is known. */
    private void ask(Driver driver, Analyte analyte) {
        if (!Asked.isReadLately(analyte, observations, forecast)) {
            all.add(Proposal.of(Act.ask(driver, analyte)));
        }
    }

    private void warm(Reason reason) {
        all.add(Proposal.of(Act.plain(Act.Kind.CHECK_CHILLER, Driver.TEMPERATURE), Deed.mendedChiller()));
        boolean isWarm = reason.hoursToLimit().orElse(forecast.hoursToLimit().orElse(1)) == 0;
        boolean stands = forecast.hoursToLimit().isPresent()
                && ahead.belief().temperature().stoppedChance() > STANDS;
        if ((isWarm || stands) && reason.limit().isPresent()) {
            double holdC = reason.limit().getAsDouble() - 1;
            all.add(ice(holdC, Math.max(0, reason.value().orElse(holdC) - holdC)));
        }
    }

    private Proposal ice(double holdC, double tooWarmK) {
        double volumeL = facts.volumeL().orElse(USUAL_VOLUME_L);
        double kg = iceKg(volumeL, tooWarmK, holdC);
        Act act = facts.volumeL().isEmpty() ? Act.plain(Act.Kind.ICE, Driver.TEMPERATURE)
                : Act.amount(Act.Kind.ICE, Driver.TEMPERATURE, kg, "kg", "HeatBalance.iceToHoldKg");
        return Proposal.of(act, Deed.ice(kg / HeatBalance.iceToCoolKg(volumeL, 1, holdC), holdC));
    }

    /** Down to what is to be held, then against the room. */
    private static double iceKg(double volumeL, double tooWarmK, double holdC) {
        return HeatBalance.iceToCoolKg(volumeL, tooWarmK, holdC) + HeatBalance.iceToHoldKg(
                TankParameters.bareGlassWPerK(volumeL), ROOM_C, holdC, ICE_HOURS);
    }

    private void ammonia() {
        changeWater(Driver.UN_IONISED_AMMONIA);
        skipFeed(Driver.UN_IONISED_AMMONIA);
    }

    private void changeWater(Driver driver) {
        ChangeSize size = new ChangeSize(ahead, driver);
        if (size.isCalledFor()) {
            Asked.beforeChange(driver, observations, forecast)
                    .map(analyte -> Proposal.of(Act.ask(driver, analyte)))
                    .or(size::proposal)
                    .or(() -> alkalinityFirst(driver))
                    .ifPresent(all::add);
        }
    }

    /** Where fresh water may harm, it is the alkalinity held that tells whether it does. */
    private Optional<Proposal> alkalinityFirst(Driver driver) {
        return Asked.isReadLately(Analyte.ALKALINITY, observations, forecast) ? Optional.empty()
                : Optional.of(Proposal.of(Act.ask(driver, Analyte.ALKALINITY)));
    }

    private void nitrite() {
        changeWater(Driver.NITRITE);
        double chloride = ahead.belief().chlorideMgPerL();
        if (chloride < ENOUGH_CHLORIDE_MG_PER_L) {
            all.add(salt(chloride));
        }
        skipFeed(Driver.NITRITE);
    }

    private Proposal salt(double chlorideMgPerL) {
        Act act = facts.volumeL().isEmpty() ? Act.plain(Act.Kind.SALT, Driver.NITRITE)
                : Act.amount(Act.Kind.SALT, Driver.NITRITE, Salt.grams(chlorideMgPerL, SALT_TARGET_MG_PER_L,
                        facts.volumeL().getAsDouble()), "g", "Salt.grams");
        return Proposal.of(act, Deed.salt(SALT_TARGET_MG_PER_L - chlorideMgPerL));
    }

    private void skipFeed(Driver driver) {
        if (Fasting.isPossible(ahead)) {
            all.add(Fasting.against(driver));
        }
    }

    /**
     * A tank short of oxygen is often crowded: air lifts the pH, and with it the harm of ammonia that nobody
     * read.
     */
    private void oxygen() {
        air(Driver.DISSOLVED_OXYGEN);
        skipFeed(Driver.DISSOLVED_OXYGEN);
        if (Asked.newest(observations, Analyte.TOTAL_AMMONIA, forecast)
                .filter(read -> read.at().isAfter(forecast.asOf().minus(AMMONIA_COUNTS))).isEmpty()) {
            ask(Driver.DISSOLVED_OXYGEN, Analyte.TOTAL_AMMONIA);
        }
    }

    private void air(Driver driver) {
        all.add(Proposal.of(Act.plain(Act.Kind.MORE_AIR, driver), Deed.moreAir()));
    }

    /**
     * For more than was read: between two colours of a card there may be twice as much, the least that is
     * left harms, and what is too much of thiosulfate does not.
     */
    private void chlorine(Reason reason) {
        double held = HIDDEN_CHLORINE_TIMES * reason.value().orElse(ahead.belief().chlorineMgPerL());
        Act act = facts.volumeL().isPresent() && reason.value().isPresent()
                ? Act.amount(Act.Kind.THIOSULFATE, Driver.CHLORINE,
                        Chlorine.thiosulfateG(held, facts.volumeL().getAsDouble()), "g",
                        "Chlorine.thiosulfateG")
                : Act.plain(Act.Kind.THIOSULFATE, Driver.CHLORINE);
        all.add(Proposal.of(act, Deed.thiosulfate(held)));
    }
}
