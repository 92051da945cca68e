package org.tankrounds.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.forecast.MassDeaths;
import org.tankrounds.forecast.Reason;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Chlorine;
import org.tankrounds.water.HeatBalance;

/** What the reasons behind a forecast call for, with amounts. */
final class Proposals {

    /** A label's double dose (common practice, no source). */
    private static final double HIDDEN_CHLORINE_TIMES = 2;

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

    /** What presses before any reason: fish that die en masse. */
    void addWhatPresses() {
        if (MassDeaths.in(forecast)) {
            all.addAll(new Losses(ahead, observations).proposals());
        }
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
            case NITRITE -> nitrite(reason);
            case DISSOLVED_OXYGEN -> oxygen();
            case PH -> all.addAll(new PhAdvice(ahead, observations).proposals());
            case CHLORINE -> chlorine(reason);
            case DEATHS -> deaths();
            case SILENCE -> {
                ask(driver, Analyte.TEMPERATURE);
                ask(driver, Analyte.NITRITE);
            }
        }
    }

    private void deaths() {
        all.add(Proposal.of(Act.plain(Act.Kind.LOOK_AT_FISH, Driver.DEATHS)));
        Asked.missing(Driver.DEATHS, observations, forecast)
                .ifPresent(analyte -> all.add(Proposal.of(Act.ask(Driver.DEATHS, analyte))));
    }

    /** What was read within a day is known. */
    private void ask(Driver driver, Analyte analyte) {
        if (!Asked.isReadLately(analyte, observations, forecast)) {
            all.add(Proposal.of(Act.ask(driver, analyte)));
        }
    }

    /**
     * In water that is too warm already, all that cools it is done, however little it can do by itself. Ice is much
     * work: it is for such water, or where the chiller likely stands.
     */
    private void warm(Reason reason) {
        Proposal chiller = Proposal.of(Act.plain(Act.Kind.CHECK_CHILLER, Driver.TEMPERATURE), Deed.mendedChiller());
        boolean isWarm = reason.hoursToLimit().orElse(1) == 0;
        all.add(isWarm ? chiller.asForesight() : chiller);
        boolean stands = forecast.hoursToLimit().isPresent()
                && ahead.belief().temperature().likelyStands();
        if ((isWarm || stands) && reason.limit().isPresent()) {
            double holdC = IceLoad.holdC(reason.limit().getAsDouble());
            Proposal ice = ice(holdC, Math.max(0, reason.value().orElse(holdC) - holdC));
            all.add(isWarm ? ice.asForesight() : ice);
        }
        if (isWarm) {
            all.add(Proposal.moreAir(Driver.TEMPERATURE).asForesight());
        }
        if (Fasting.isTooWarmToFeed(ahead)) {
            skipFeed(Driver.TEMPERATURE);
        }
    }

    /** A load that is carried at once; what half a day takes is told beside it, where that is more. */
    private Proposal ice(double holdC, double tooWarmK) {
        double volumeL = facts.volumeL().orElse(TankFacts.USUAL_VOLUME_L);
        double neededKg = IceLoad.neededKg(volumeL, tooWarmK, holdC);
        double kg = Math.min(IceLoad.mostKg(volumeL), neededKg);
        Act act = facts.volumeL().isEmpty() ? Act.plain(Act.Kind.ICE, Driver.TEMPERATURE)
                : Act.amount(Act.Kind.ICE, Driver.TEMPERATURE, kg, "kg", "HeatBalance.iceToHoldKg").withSecond(
                        neededKg > kg ? OptionalDouble.of(neededKg) : OptionalDouble.empty(), "kg");
        return Proposal.of(act, Deed.ice(kg / HeatBalance.iceToCoolKg(volumeL, 1, holdC), holdC));
    }

    private void ammonia() {
        changeWater(Driver.UN_IONISED_AMMONIA, Deed.NOTHING);
        skipFeed(Driver.UN_IONISED_AMMONIA);
    }

    private void changeWater(Driver driver, Deed beside) {
        ChangeSize size = new ChangeSize(ahead, driver, beside);
        Optional<Analyte> unread = Asked.beforeChange(driver, observations, forecast);
        if (!size.isCalledFor()) {
            return;
        }
        if (unread.isPresent()) {
            all.add(Proposal.of(Act.ask(driver, unread.get())));
            return;
        }
        Optional<Proposal> change = size.proposal();
        change.ifPresent(all::add);
        if (change.filter(each -> each.act().kind() == Act.Kind.WATER_CHANGE).isEmpty()) {
            alkalinityFirst(driver).ifPresent(all::add);
        }
    }

    /** Where fresh water may harm, it is the alkalinity held that tells whether it does. */
    private Optional<Proposal> alkalinityFirst(Driver driver) {
        return Asked.isReadLately(Analyte.ALKALINITY, observations, forecast) ? Optional.empty()
                : Optional.of(Proposal.of(Act.ask(driver, Analyte.ALKALINITY)));
    }

    /** Blood that nitrite has made brown carries less oxygen, so there had best be more (common practice). */
    private void nitrite(Reason reason) {
        Optional<Proposal> salt = Salting.against(Driver.NITRITE, ahead.belief());
        changeWater(Driver.NITRITE, salt.map(this::withoutFeed).orElse(Deed.NOTHING));
        boolean isLeanedOn = all.stream().anyMatch(Proposal::leansOnOthers);
        salt.map(each -> isLeanedOn ? each.asForesight() : each).ifPresent(all::add);
        skipFeed(Driver.NITRITE);
        if (reason.hoursToLimit().orElse(1) == 0) {
            all.add(Proposal.moreAir(Driver.NITRITE).asForesight());
        }
    }

    private Deed withoutFeed(Proposal salt) {
        return Proposal.deedOf(Stream.concat(
                Stream.of(salt), Fasting.against(Driver.NITRITE, ahead, observations).stream()));
    }

    private void skipFeed(Driver driver) {
        all.addAll(Fasting.against(driver, ahead, observations));
    }

    /**
     * Air, whatever it does, where fish have too little breath; else where it harms nothing. A tank short of
     * oxygen is often crowded: air lifts the pH, and with it the harm of ammonia that nobody read.
     */
    private void oxygen() {
        Proposal air = Proposal.moreAir(Driver.DISSOLVED_OXYGEN);
        if (Breath.isShort(ahead) || Worth.isSafe(ahead.prospect(Deed.moreAir(), Driver.DISSOLVED_OXYGEN))) {
            all.add(air);
        }
        skipFeed(Driver.DISSOLVED_OXYGEN);
        if (!Asked.isAmmoniaKnown(observations, forecast)) {
            ask(Driver.DISSOLVED_OXYGEN, Analyte.TOTAL_AMMONIA);
        }
    }

    /**
     * For more than was read: between two colours of a card there may be twice as much, the least that is
     * left harms, and what is too much of thiosulfate does not. What was read before yesterday has gone with the air,
     * or come again since: it is read first.
     */
    private void chlorine(Reason reason) {
        if (!Asked.isReadLately(Analyte.CHLORINE, observations, forecast)) {
            all.add(Proposal.of(Act.ask(Driver.CHLORINE, Analyte.CHLORINE)));
            return;
        }
        double held = HIDDEN_CHLORINE_TIMES * reason.value().orElse(ahead.belief().chlorineMgPerL());
        Act act = reason.value().isPresent()
                ? Act.dose(Act.Kind.THIOSULFATE, Driver.CHLORINE,
                        litres -> Chlorine.thiosulfateG(held, litres), facts.volumeL(), "Chlorine.thiosulfateG")
                : Act.plain(Act.Kind.THIOSULFATE, Driver.CHLORINE);
        all.add(Proposal.of(act, Deed.thiosulfate(held)));
    }
}
