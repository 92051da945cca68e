package org.tankrounds.forecast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.fish.Stage;
import org.tankrounds.water.Ammonia;

/** Why a tank stands where it does, the largest share first. */
final class Reasons {

    private static final double WORTH_NAMING = 0.1;
    private static final double LIKELY_ENOUGH = 0.1;
    private static final double AS_LIKELY_AS_NOT = 0.4;
    private static final double STALE_HOURS = 24.0 * 7;
    /** Later nobody can say any more what was in the tube. */
    private static final double WORTH_CONFIRMING_HOURS = 24.0 * 7;
    /** Among the first that are read. */
    private static final double MASS_DEATHS_SHARE = 0.5;

    private final TankBelief belief;
    private final Outcome outcome;
    private final Judgement judgement;
    private final Limits limits;
    private final Stage stage;
    private final List<Reason> reasons = new ArrayList<>();

    private Reasons(TankBelief belief, Outcome outcome, Judgement judgement, Limits limits, Stage stage) {
        this.belief = belief;
        this.outcome = outcome;
        this.judgement = judgement;
        this.limits = limits;
        this.stage = stage;
    }

    static List<Reason> of(
            TankBelief belief, Outcome outcome, Judgement judgement, Limits limits, Stage stage) {
        return new Reasons(belief, outcome, judgement, limits, stage).list();
    }

    private List<Reason> list() {
        byShare().filter(this::isWorthNaming).forEach(limit -> {
            reasons.add(main(limit));
            Circumstances.of(limit, judgement.share(limit), belief, limits).stream()
                    .filter(reason -> !has(reason.kind())).forEach(reasons::add);
        });
        alkalinityUsedUp();
        deaths();
        silence();
        setAside();
        if (reasons.isEmpty()) {
            steady();
        }
        reasons.addAll(StageReasons.of(belief, stage));
        reasons.sort(Comparator.comparingDouble(Reason::share).reversed());
        return reasons;
    }

    private Stream<Driver> byShare() {
        return Arrays.stream(Outcome.limits()).sorted(Comparator.comparingDouble(judgement::share).reversed());
    }

    /** What is passed as likely as not is named, however much worse another limit is. */
    private boolean isWorthNaming(Driver limit) {
        boolean likelyEnough = outcome.chanceOf(limit) >= LIKELY_ENOUGH || judgement.movedBy(limit) >= LIKELY_ENOUGH;
        return isOpen(limit) || likelyEnough && judgement.shareBesideChlorine(limit) >= WORTH_NAMING;
    }

    private double shareToName(Driver limit) {
        double share = judgement.share(limit) * (driver() == Driver.SILENCE ? 0.5 : 1);
        return isOpen(limit) ? Math.max(WORTH_NAMING, share) : share;
    }

    private Reason main(Driver limit) {
        OptionalDouble hours = outcome.hoursToLimit(limit);
        LastRead read = told(limit);
        Reason reason = Reason.of(kind(limit, read, hours), limit, shareToName(limit))
                .withLimit(limitLevel(limit))
                .withHoursToLimit(hours);
        if (read.reading().isEmpty()) {
            return reason.withValue(heldNow(limit), unit(limit));
        }
        Observation newest = read.reading().get();
        reason = reason.withValue(read.value().getAsDouble(), unit(limit)).withAt(newest.at());
        boolean notRead = reason.kind() == Reason.Kind.SERIES_NOT_READ;
        if (read.change().isPresent() && !notRead) {
            double over = read.overHours().getAsDouble();
            reason = reason
                    .withChange(read.previous().getAsDouble(), read.change().getAsDouble(), over)
                    .withSince(newest.at().minusSeconds(Math.round(over * 3600)));
        }
        return notRead ? reason.withOverHours(hoursSince(newest.at())) : reason;
    }

    /** The reading behind a verdict: one set aside, where it is the worse and as likely right as wrong. */
    private LastRead told(Driver limit) {
        LastRead believed = judgement.lastRead().get(limit);
        LastRead newest = LastRead.ofAll(limit, belief);
        double differs = newest.value().orElse(0) - believed.value().orElse(0);
        return isOpen(limit) && isTowards(limit, newest, differs) ? newest : believed;
    }

    private boolean isOpen(Driver limit) {
        return outcome.chanceOf(limit) >= AS_LIKELY_AS_NOT;
    }

    private Reason.Kind kind(Driver limit, LastRead read, OptionalDouble hours) {
        boolean stale = read.reading().isEmpty()
                || hoursSince(read.reading().get().at()) > Math.max(STALE_HOURS, judgement.ageHours() + 72);
        if (stale) {
            return Reason.Kind.SERIES_NOT_READ;
        }
        if (limit == Driver.TEMPERATURE && belief.temperature().likelyStands()) {
            return Reason.Kind.CHILLER_LOOKS_STOPPED;
        }
        boolean saysSo = isOpen(limit) && Judgement.isBeyond(limit, read, belief, limits, stage);
        if (isMetNow(hours) || saysSo) {
            return Reason.Kind.BEYOND_LIMIT;
        }
        return isTowards(limit, read, read.change().orElse(0)) && hours.isPresent()
                ? Reason.Kind.HEADED_FOR_LIMIT : Reason.Kind.NEAR_LIMIT;
    }

    private static boolean isMetNow(OptionalDouble hours) {
        return hours.isPresent() && hours.getAsDouble() == 0;
    }

    private static boolean isTowards(Driver limit, LastRead read, double change) {
        boolean falls = limit == Driver.DISSOLVED_OXYGEN
                || limit == Driver.PH && read.value().orElse(7) < 7.5;
        return falls ? change < 0 : change > 0;
    }

    /** Without it the pH may fall any day, however steady it was read. */
    private void alkalinityUsedUp() {
        belief.newestAlkalinity()
                .filter(read -> read.value() < Reason.LEAST_ALKALINITY_MG_PER_L && !has(Reason.Kind.ALKALINITY_LOW))
                .filter(read -> hoursSince(read.at()) <= Alkalinity.READING_COUNTS.toHours())
                .ifPresent(read -> reasons.add(Reason.of(Reason.Kind.ALKALINITY_LOW, Driver.PH, WORTH_NAMING)
                        .withValue(read.value(), "mg/L as CaCO₃").withAt(read.at())));
    }

    private void deaths() {
        if (belief.deaths().count() < 1 || belief.deaths().count() < 2 && judgement.deathsShare() < 0.05) {
            return;
        }
        boolean areMany = MassDeaths.are(belief.deaths().mostInADay(), belief.fishAlive());
        double share = driver() == Driver.DEATHS ? 0.95
                : Math.max(areMany ? MASS_DEATHS_SHARE : 0.15, judgement.deathsShare());
        reasons.add(Reason.of(Reason.Kind.DEATHS, Driver.DEATHS, share)
                .withCount(belief.deaths().count())
                .withValue(belief.deaths().mostInADay(), "1")
                .withOverHours(belief.deaths().overHours())
                .withAt(belief.deaths().newest().orElse(null)));
    }

    private void silence() {
        double oneIn = Math.max(1, 1 / outcome.chance());
        if (belief.newest().isEmpty()) {
            reasons.add(Reason.of(Reason.Kind.NO_READINGS, Driver.SILENCE, 0.9).withOneIn(oneIn));
        } else if (judgement.ageHours() >= Judgement.SILENT_HOURS) {
            reasons.add(Reason.of(Reason.Kind.SILENCE, Driver.SILENCE,
                    driver() == Driver.SILENCE ? 0.9 : 0.2)
                    .withOverHours(judgement.ageHours()).withAt(belief.newest().get())
                    .withOneIn(oneIn));
        }
    }

    private void steady() {
        Reason reason = Reason.of(Reason.Kind.STEADY, null, 0.01)
                .withLimit(limits.upper(Driver.TEMPERATURE, stage, belief.chlorideMgPerL()));
        reasons.add(belief.temperature().newest()
                .map(o -> reason.withValue(o.value(), "°C").withAt(o.at())).orElse(reason));
    }

    private void setAside() {
        setAside(belief.temperature().setAside(), Driver.TEMPERATURE);
        setAside(belief.totalAmmonia().setAside(), Driver.UN_IONISED_AMMONIA);
        setAside(belief.nitrite().setAside(), Driver.NITRITE);
        setAside(belief.ph().setAside(), Driver.PH);
        setAside(belief.oxygenShare().setAside(), Driver.DISSOLVED_OXYGEN);
        setAside(belief.chlorineSetAside(), Driver.CHLORINE);
    }

    private void setAside(Optional<Observation> reading, Driver limit) {
        reading.filter(o -> hoursSince(o.at()) <= WORTH_CONFIRMING_HOURS).ifPresent(o -> reasons.add(
                Reason.of(Reason.Kind.READING_SET_ASIDE, limit, WORTH_NAMING)
                        .withValue(o.value(), o.analyte().unitLabel()).withAt(o.at())));
    }

    private boolean has(Reason.Kind kind) {
        return reasons.stream().anyMatch(reason -> reason.kind() == kind);
    }

    private Driver driver() {
        return judgement.driver();
    }

    private double hoursSince(Instant at) {
        return (belief.asOf().getEpochSecond() - at.getEpochSecond()) / 3600.0;
    }

    private OptionalDouble limitLevel(Driver limit) {
        OptionalDouble lower = limits.lower(limit, stage);
        boolean low = limit == Driver.DISSOLVED_OXYGEN
                || limit == Driver.PH && belief.ph().valueNow() < 7.5;
        return low ? lower : limits.upper(limit, stage, belief.chlorideMgPerL());
    }

    private double heldNow(Driver limit) {
        return switch (limit) {
            case TEMPERATURE -> belief.temperature().medianC();
            case UN_IONISED_AMMONIA -> Ammonia.unIonisedMgPerL(belief.totalAmmonia().valueNow(),
                    belief.ph().valueNow(), belief.temperature().medianC());
            case NITRITE -> belief.nitrite().valueNow();
            case DISSOLVED_OXYGEN -> belief.oxygenMgPerLNow();
            case PH -> belief.ph().valueNow();
            default -> belief.chlorineMgPerL();
        };
    }

    private static String unit(Driver limit) {
        return switch (limit) {
            case TEMPERATURE -> "°C";
            case UN_IONISED_AMMONIA -> "mg/L as NH₃";
            case NITRITE -> "mg/L as N";
            case PH -> "pH";
            default -> "mg/L";
        };
    }
}
