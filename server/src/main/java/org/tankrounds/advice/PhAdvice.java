package org.tankrounds.advice;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Alkalinity;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.forecast.Reason;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Carbonate;

/**
 * What a pH too low or too high calls for, of each the most that the model finds no harm in. Baking soda only
 * against a lack of alkalinity, and never while ammonia is high: a higher pH makes more of it harmful. Where
 * what ammonia there is could bring nitrite near its limit, only after salt has raised that and while no feed is
 * given: alkalinity wakes the guild that makes it first. Where nothing is safe even so, it is said so.
 */
final class PhAdvice {

    /** A trouble with pH is one of too low below, of too high above. */
    static final double MIDDLE_PH = 7.5;
    private static final double ALKALINITY_AIM_MG_PER_L = 50;
    /** Below the 20 to 30 mg/L a day of common practice, which in soft water wakes nitrifiers at a stroke. */
    private static final List<Double> RAISES_MG_PER_L = List.of(10.0, 5.0, 2.0);
    private static final double AMMONIA_TOO_HIGH_FOR_BICARBONATE = 0.5;
    /** From here on fresh water did a sour tank more harm than good (learned on simulated tanks). */
    private static final double AMMONIA_TOO_HIGH_FOR_CHANGE = 4;
    /** Of its limit, with all the ammonia turned into it (learned on simulated soft water). */
    private static final double NITRITE_SHARE_FOR_BICARBONATE = 0.7;
    private static final List<Double> CHANGES_PERCENT = List.of(20.0, 15.0, 10.0, 5.0);
    /** In a day (common practice, no source). */
    static final double MOST_LIFT_PH = 0.5;

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
        boolean isBeyond = held() > ahead.limits().highestPh();
        if (read() < MIDDLE_PH || isAlkalinityUsedUp() && !isBeyond) {
            return againstLow();
        }
        List<Proposal> proposals = new ArrayList<>(isBeyond ? changes() : List.of());
        if (isBeyond || !Asked.isReadLately(Analyte.PH, observations, forecast)) {
            proposals.add(0, Proposal.of(Act.ask(Driver.PH, Analyte.PH)));
        }
        return proposals;
    }

    private double held() {
        return forecast.series().stream().filter(s -> s.series() == Driver.PH).findFirst()
                .map(s -> s.fan().get(0).q50()).orElse(MIDDLE_PH);
    }

    private double read() {
        return newest(Analyte.PH).map(Observation::value).orElseGet(this::held);
    }

    /**
     * With alkalinity enough the acid is carbon dioxide, which air drives out; fresh water brings what is
     * missing.
     */
    private List<Proposal> againstLow() {
        if (isTooMuchForChange()) {
            return withCare(List.of(Proposal.of(Act.plain(Act.Kind.LEAVE_WATER, Driver.PH)),
                    Proposal.of(Act.plain(Act.Kind.LOOK_AT_FISH, Driver.PH))));
        }
        if (isAmmoniaHigh()) {
            boolean isBeyond = ahead.highU(Deed.NOTHING, Driver.PH) > 1;
            return withCare(isBeyond ? changesWith(care()) : foreseeing());
        }
        Optional<Observation> alkalinity = alkalinity();
        if (alkalinity.isEmpty()) {
            return List.of(Proposal.of(Act.ask(Driver.PH, Analyte.ALKALINITY)));
        }
        if (isUnread(Analyte.TOTAL_AMMONIA)) {
            return List.of(Proposal.of(Act.ask(Driver.PH, Analyte.TOTAL_AMMONIA)));
        }
        double missing = ALKALINITY_AIM_MG_PER_L - alkalinity.get().value();
        return missing > 0 ? enriching(missing) : airAndChanges();
    }

    private boolean isAlkalinityUsedUp() {
        return alkalinity().filter(read -> read.value() < Reason.LEAST_ALKALINITY_MG_PER_L).isPresent();
    }

    private Optional<Observation> alkalinity() {
        return newest(Analyte.ALKALINITY).filter(o -> isWithin(o, Alkalinity.READING_COUNTS));
    }

    private List<Proposal> enriching(double missingMgPerL) {
        if (isUnread(Analyte.NITRITE)) {
            return List.of(Proposal.of(Act.ask(Driver.PH, Analyte.NITRITE)));
        }
        List<Proposal> soda = mayNitriteRise(ahead.belief().chlorideMgPerL()) ? List.of()
                : soda(missingMgPerL, Deed.NOTHING);
        return soda.isEmpty() ? withCare(littleAtATime(missingMgPerL)) : soda;
    }

    /** At the nitrite limit that salt has raised by then. */
    private List<Proposal> littleAtATime(double missingMgPerL) {
        double chloride = Math.max(Salting.targetMgPerL(ahead.belief()), ahead.belief().chlorideMgPerL());
        List<Proposal> soda = mayNitriteRise(chloride) ? List.of() : soda(missingMgPerL, care());
        return soda.isEmpty() ? foreseeing() : soda;
    }

    /** First salt, for a woken filter makes nitrite; then what brings alkalinity, or why nothing does; and no feed. */
    private List<Proposal> withCare(List<Proposal> raise) {
        List<Proposal> rest = raise.isEmpty() ? LastResort.against(Driver.PH, ahead, observations) : raise;
        return Stream.of(salt(), rest.stream(), fast()).flatMap(Function.identity()).toList();
    }

    /** Much ammonia in sour water is a filter that has stopped for want of alkalinity, read or not. */
    private Stream<Proposal> salt() {
        return isAlkalinityUsedUp() || isTooMuchForChange()
                ? Salting.against(Driver.PH, ahead.belief()).map(Proposal::asForesight).stream() : Stream.empty();
    }

    private Stream<Proposal> fast() {
        return Fasting.against(Driver.PH, ahead, observations).stream();
    }

    /** What stands beside whatever is to bring alkalinity back with care. */
    private Deed care() {
        return Proposal.deedOf(Stream.concat(salt(), fast()));
    }

    private List<Proposal> soda(double missingMgPerL, Deed beside) {
        return largestHarmless(RAISES_MG_PER_L.stream().map(raise -> Math.min(raise, missingMgPerL)).toList(),
                this::bicarbonate, beside);
    }

    /**
     * The largest that lifts the pH by no more than fish bear and that the model finds no harm in, with what is done
     * beside it; none where it finds harm in all.
     */
    private List<Proposal> largestHarmless(List<Double> sizes, DoubleFunction<Proposal> proposal, Deed beside) {
        return sizes.stream().map(size -> proposal.apply(size).with(beside))
                .filter(each -> ahead.liftsPh(each.deed().orElseThrow()) <= MOST_LIFT_PH)
                .filter(each -> each.isHarmless(ahead)).limit(1).toList();
    }

    private boolean isUnread(Analyte analyte) {
        return !Asked.isReadWithin(Asked.NITROGEN_COUNTS, analyte, observations, forecast);
    }

    private boolean isWithin(Observation reading, Duration age) {
        return reading.at().isAfter(forecast.asOf().minus(age));
    }

    private boolean isAmmoniaHigh() {
        return ammonia() >= AMMONIA_TOO_HIGH_FOR_BICARBONATE;
    }

    /** In a sour tank. */
    private boolean isTooMuchForChange() {
        return read() < MIDDLE_PH && ammonia() >= AMMONIA_TOO_HIGH_FOR_CHANGE;
    }

    /** As read or as held, whichever is more, mg N/L. */
    private double ammonia() {
        double read = newest(Analyte.TOTAL_AMMONIA).map(Observation::value).orElse(0.0);
        return Math.max(read, ahead.belief().totalAmmonia().valueNow());
    }

    /**
     * Whether nitrite, at its highest of the week and with all the ammonia turned into it before anything
     * takes it up, would come near its limit at so much chloride.
     */
    private boolean mayNitriteRise(double chlorideMgPerL) {
        double highest = observations.stream()
                .filter(o -> o.analyte() == Analyte.NITRITE && isWithin(o, Asked.NITROGEN_COUNTS))
                .filter(o -> !o.at().isAfter(forecast.asOf()))
                .mapToDouble(Observation::value).reduce(ahead.belief().nitrite().valueNow(), Math::max);
        return ahead.limits().ofNitrite(highest + ahead.belief().totalAmmonia().valueNow(),
                chlorideMgPerL) > NITRITE_SHARE_FOR_BICARBONATE;
    }

    private Proposal bicarbonate(double raiseMgPerL) {
        return Proposal.of(Act.dose(Act.Kind.BICARBONATE, Driver.PH,
                litres -> Carbonate.bicarbonateG(raiseMgPerL, litres), volumeL, "Carbonate.bicarbonateG"),
                Deed.bakingSoda(raiseMgPerL));
    }

    /** In water that is too sour already air is given however little it does. */
    private List<Proposal> airAndChanges() {
        List<Proposal> both = new ArrayList<>(changes());
        Proposal air = Proposal.moreAir(Driver.PH);
        both.add(0, held() < ahead.limits().lowestPh() ? air.asForesight() : air);
        return both;
    }

    /** Where there is much ammonia, a pH that comes back makes it harmful, and woken nitrifiers nitrite of it. */
    private List<Proposal> changes() {
        return changesWith(Deed.NOTHING);
    }

    private List<Proposal> changesWith(Deed beside) {
        Optional<Analyte> unread = Asked.beforeChange(Driver.PH, observations, forecast);
        return unread.isPresent() ? List.of(Proposal.of(Act.ask(Driver.PH, unread.get())))
                : largestHarmless(CHANGES_PERCENT, this::change, beside);
    }

    /** Alkalinity that is used up is brought back before three days show the good of it. */
    private List<Proposal> foreseeing() {
        List<Proposal> changes = changesWith(care());
        return isAlkalinityUsedUp() && isSourceHarder()
                ? changes.stream().map(Proposal::asForesight).toList() : changes;
    }

    private boolean isSourceHarder() {
        return ahead.belief().facts().sourceAlkalinityMgPerL().orElse(Double.MAX_VALUE)
                > alkalinity().map(Observation::value).orElse(0.0);
    }

    private Proposal change(double percent) {
        return Proposal.waterChange(Driver.PH, percent, volumeL, Optional.empty());
    }

    private Optional<Observation> newest(Analyte analyte) {
        return Asked.newest(observations, analyte, forecast);
    }
}
